// The shelf of record kinds, in the order in which a machine folder is read.
import { adoptedKind } from './adopted.ts';
import { instrumentsKind } from './instruments.ts';
import { jobKind } from './job.ts';
import { machineKind } from './machine.ts';
import { makerKind } from './maker.ts';
import type { ToldKind } from './record-kind.ts';
import { storyKind } from './story.ts';
import { wiringKind } from './wiring.ts';
import { workshopKind } from './workshop.ts';

export const recordKinds: readonly ToldKind[] = [
  machineKind,
  makerKind,
  instrumentsKind,
  workshopKind,
  wiringKind,
  jobKind,
  storyKind,
  adoptedKind,
];
