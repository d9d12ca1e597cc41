// The shelf of content kinds.
import type { ToldKind } from '../kinds/record-kind.ts';
import { cautionsKind } from './cautions.ts';
import { faultsKind } from './faults.ts';
import { formsKind } from './forms.ts';
import { holdPointsKind } from './hold-points.ts';
import { orderKind } from './order.ts';
import { pagesKind, wordsKind } from './pages.ts';
import { proceduresKind } from './procedures.ts';
import { schedulesKind } from './schedules.ts';
import { sheetsKind } from './sheets.ts';

export const contentKinds: readonly ToldKind[] = [
  cautionsKind,
  proceduresKind,
  schedulesKind,
  holdPointsKind,
  faultsKind,
  formsKind,
  orderKind,
  sheetsKind,
  pagesKind,
  wordsKind,
];
