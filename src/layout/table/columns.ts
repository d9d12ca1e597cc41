// The width of every column. Where the paper is too narrow for all of them, a row is set in two or more tiers.
import { gutter } from '../scale.ts';
import { shareOut, type Wanting } from './share-out.ts';
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
  const asked = tier.map((index) => ({
    index,
    label: labels[index] ?? 0,
    least: Math.min(room, (needs[index]?.least ?? 0) + (labels[index] ?? 0)),
    likes: (needs[index]?.likes ?? 0) + (labels[index] ?? 0),
    ticks: needs[index]?.ticks ?? false,
    written: needs[index]?.written ?? false,
    texts: needs[index]?.texts ?? [],
    share: Math.max(0.01, table.columns[index]?.width ?? 1),
  }));
  const columns = roomToWrite(asked, room);
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

/** A column that is written in by hand has the width that the sheet asks for, where the others can spare it. */
function roomToWrite<C extends Wanting & { readonly written: boolean }>(
  columns: readonly C[],
  room: number,
): readonly C[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  const wide = columns.map((column) => {
    const least = column.written ? Math.max(column.least, (0.85 * room * column.share) / shares) : column.least;
    return { ...column, least, likes: Math.max(column.likes, least) };
  });
  return wide.reduce((sum, column) => sum + column.least, 0) <= room * 0.9 ? wide : columns;
}
