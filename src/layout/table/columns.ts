// The width of every column. Where the paper is too narrow for all of them, a row is set in two or more tiers.
import { gutter } from '../scale.ts';
import { estimatedHeight, possibleTiers } from './tiers.ts';
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
 * Places the columns side by side, in tiers as `bestTiers` finds them.
 * In the second tier and below every cell carries the name of its column, for which `labels` gives the room.
 */
export function placeColumns(
  table: TableModel,
  needs: readonly ColumnNeed[],
  labels: readonly number[],
  width: number,
): readonly Tier[] {
  const place = (tiers: readonly (readonly number[])[]): readonly Tier[] =>
    tiers.map((tier, at) => placeTier(tier, table, needs, at === 0 ? [] : labels, width));
  const choices = possibleTiers(needs, labels, width, table.secondTier).map(place);
  const heights = choices.map((tiers) => estimatedHeight(tiers, needs, table.work));
  return choices[heights.indexOf(Math.min(...heights))] ?? [];
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
    const label = Math.min(column.label, wide * 0.7);
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
