// The width of every column. Where the paper is too narrow for all of them, a row is set in two or more tiers.
import { gutter } from '../scale.ts';
import type { TableModel } from './model.ts';
import type { ColumnNeed } from './prepare.ts';

export interface ColumnPlace {
  readonly index: number;
  readonly x: number;
  readonly width: number;
}
export type Tier = readonly ColumnPlace[];

/** Places the columns side by side, in as few tiers as their narrowest widths allow. */
export function placeColumns(table: TableModel, needs: readonly ColumnNeed[], width: number): readonly Tier[] {
  const tiers: number[][] = [[]];
  let used = 0;
  for (const [index, need] of needs.entries()) {
    const tier = tiers.at(-1);
    const room = Math.min(need.least, width);
    if (tier !== undefined && (tier.length === 0 || used + gutter + room <= width + 0.01)) {
      used += (tier.length === 0 ? 0 : gutter) + room;
      tier.push(index);
      continue;
    }
    tiers.push([index]);
    used = room;
  }
  return tiers.map((tier) => placeTier(tier, table, needs, width));
}

function placeTier(tier: readonly number[], table: TableModel, needs: readonly ColumnNeed[], width: number): Tier {
  const room = width - gutter * (tier.length - 1);
  const columns = tier.map((index) => ({
    index,
    least: Math.min(room, needs[index]?.least ?? 0),
    likes: needs[index]?.likes ?? 0,
    ticks: needs[index]?.ticks ?? false,
    share: Math.max(0.01, table.columns[index]?.width ?? 1),
  }));
  const widths = shareOut(columns, room);
  let x = 0;
  return columns.map((column, at) => {
    const wide = widths[at] ?? column.least;
    const place = { index: column.index, x, width: wide };
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
