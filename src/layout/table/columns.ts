// The width of every column. Where the paper is too narrow for all of them, a row is set in two or more tiers.
import { gutter } from '../scale.ts';
import type { TableModel } from './model.ts';
import type { ColumnNeed } from './prepare.ts';

export interface ColumnPlace {
  readonly index: number;
  /** Where the cell itself begins, after its label. */
  readonly x: number;
  readonly width: number;
  /** Room to the left of the cell for the name of its column; 0 where the head of the table says it. */
  readonly label: number;
}
export type Tier = readonly ColumnPlace[];

/**
 * Places the columns side by side, in as few tiers as their narrowest widths allow.
 * In the second tier and below every cell carries the name of its column, for which `labels` gives the room.
 */
export function placeColumns(
  table: TableModel,
  needs: readonly ColumnNeed[],
  labels: readonly number[],
  width: number,
): readonly Tier[] {
  const all = needs.map((_need, index) => index);
  const oneTier = needs.reduce((sum, need) => sum + need.least + gutter, -gutter);
  if (oneTier <= width + 0.01)
    return [
      placeTier(
        all,
        table,
        needs,
        labels.map(() => 0),
        width,
      ),
    ];
  const tiers: number[][] = [[]];
  let used = 0;
  for (const index of all) {
    const tier = tiers.at(-1);
    const label = tiers.length > 1 ? (labels[index] ?? 0) : 0;
    const room = Math.min((needs[index]?.least ?? 0) + label, width);
    const must = index === table.secondTier;
    if (tier !== undefined && !must && (tier.length === 0 || used + gutter + room <= width + 0.01)) {
      used += (tier.length === 0 ? 0 : gutter) + room;
      tier.push(index);
      continue;
    }
    tiers.push([index]);
    used = Math.min((needs[index]?.least ?? 0) + (labels[index] ?? 0), width);
  }
  return tiers.map((tier, at) =>
    placeTier(
      tier,
      table,
      needs,
      labels.map((label) => (at === 0 ? 0 : label)),
      width,
    ),
  );
}

function placeTier(
  tier: readonly number[],
  table: TableModel,
  needs: readonly ColumnNeed[],
  labels: readonly number[],
  width: number,
): Tier {
  const room = width - gutter * (tier.length - 1);
  const columns = tier.map((index) => ({
    index,
    label: labels[index] ?? 0,
    least: Math.min(room, (needs[index]?.least ?? 0) + (labels[index] ?? 0)),
    likes: (needs[index]?.likes ?? 0) + (labels[index] ?? 0),
    ticks: needs[index]?.ticks ?? false,
    share: Math.max(0.01, table.columns[index]?.width ?? 1),
  }));
  const widths = shareOut(columns, room);
  let x = 0;
  return columns.map((column, at) => {
    const wide = widths[at] ?? column.least;
    const label = Math.min(column.label, wide / 2);
    const place = { index: column.index, x: x + label, width: wide - label, label };
    x += wide + gutter;
    return place;
  });
}

interface Wanting {
  readonly least: number;
  readonly likes: number;
  readonly ticks: boolean;
  readonly share: number;
}

/**
 * Shares by the relative widths, but none below its least; what a column does not use goes to those that would like more,
 * and what nobody would like goes to all but the ticks.
 */
function shareOut(columns: readonly Wanting[], room: number): readonly number[] {
  const widths = columns.map((column) => column.least);
  let slack = room - widths.reduce((sum, width) => sum + width, 0);
  for (let turn = 0; turn < 8 && slack > 0.5; turn += 1) {
    const wanting = columns.map((column, index) => (widths[index] ?? 0) < column.likes - 0.01);
    const open = wanting.some((wants) => wants) ? wanting : columns.map((column) => !column.ticks);
    slack = give(
      columns,
      widths,
      open,
      slack,
      wanting.some((wants) => wants),
    );
  }
  return widths;
}

function give(
  columns: readonly Wanting[],
  widths: number[],
  open: readonly boolean[],
  slack: number,
  toLikes: boolean,
): number {
  const shares = columns.reduce((sum, column, index) => sum + (open[index] ? column.share : 0), 0);
  if (shares === 0) return 0;
  let left = slack;
  for (const [index, column] of columns.entries()) {
    if (!open[index]) continue;
    const part = (slack * column.share) / shares;
    const most = toLikes ? Math.max(0, column.likes - (widths[index] ?? 0)) : part;
    const given = Math.min(part, most);
    widths[index] = (widths[index] ?? 0) + given;
    left -= given;
  }
  return left;
}
