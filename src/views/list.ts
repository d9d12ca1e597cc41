// The shelf of views: a new view is one file and one line here.
import { adopted } from './adopted.ts';
import { airAndJet } from './air-and-jet.ts';
import { allHoldPoints } from './all-hold-points.ts';
import { assembly } from './assembly.ts';
import { bores } from './bores.ts';
import { bothHands } from './both-hands.ts';
import { calculations } from './calculations.ts';
import { caution } from './caution.ts';
import { characterGrid } from './character-grid.ts';
import { costs } from './costs.ts';
import { coverage } from './coverage.ts';
import { evening } from './evening.ts';
import { distancePlot } from './distance-plot.ts';
import { figureRules } from './figure-rules.ts';
import { fingerprint } from './fingerprint.ts';
import { form } from './form.ts';
import { historyCover } from './history-cover.ts';
import { holdPoint } from './hold-point.ts';
import { inspection } from './inspection.ts';
import { instruments } from './instruments.ts';
import { jobStory } from './job-story.ts';
import { knownFaults } from './known-faults.ts';
import { knownFindings } from './known-findings.ts';
import { layUpCard } from './lay-up-card.ts';
import { leftOver } from './left-over.ts';
import { offOverTime } from './off-over-time.ts';
import { onTheBench } from './on-the-bench.ts';
import { log } from './log.ts';
import { machineFigures } from './machine-figures.ts';
import { machineHead } from './machine-head.ts';
import { measurements } from './measurements.ts';
import { measures } from './measures.ts';
import { measuring } from './measuring.ts';
import { nextTest } from './next-test.ts';
import { noStartCard } from './no-start-card.ts';
import { note } from './note.ts';
import { odometerDeclared } from './odometer-declared.ts';
import { odometerSaid } from './odometer-said.ts';
import { oddMinutes } from './odd-minutes.ts';
import { oilInFuel } from './oil-in-fuel.ts';
import { comesFirst, orderOfWork } from './order-of-work.ts';
import { originality } from './originality.ts';
import { papers } from './papers.ts';
import { partHeading } from './part-heading.ts';
import { parts } from './parts.ts';
import { partsAndTubs } from './parts-and-tubs.ts';
import { photographs } from './photographs.ts';
import { planHead } from './plan-head.ts';
import { platingBatch } from './plating-batch.ts';
import { pocketCard } from './pocket-card.ts';
import { portrait } from './portrait.ts';
import { queries } from './queries.ts';
import { reTorque } from './re-torque.ts';
import { rideLog } from './ride-log.ts';
import { roadRules } from './road-rules.ts';
import { runLog } from './run-log.ts';
import { runningInCard } from './running-in-card.ts';
import { runningInPlan } from './running-in-plan.ts';
import { screwTemplate } from './screw-template.ts';
import { generalSchedulesUsed } from './general-schedules.ts';
import { serviceDue } from './service-due.ts';
import { serviceSheet } from './service-sheet.ts';
import { serviceVisits } from './service-visits.ts';
import { settings } from './settings.ts';
import { settingsCard } from './settings-card.ts';
import { sheetsList } from './sheets-list.ts';
import { shopping } from './shopping.ts';
import { sources } from './sources.ts';
import { standing } from './standing.ts';
import { whoseCopyView } from './whose-copy.ts';
import { stateLeft } from './state-left.ts';
import { stillHolds } from './still-holds.ts';
import { story } from './story.ts';
import { tables } from './tables.ts';
import { tags } from './tags.ts';
import { teardown } from './teardown.ts';
import { timingStrip } from './timing-strip.ts';
import { todayHead } from './today-head.ts';
import { thingIndex } from './thing-index.ts';
import { tighteningOrderView } from './tightening-order.ts';
import { toProve } from './to-prove.ts';
import { torqueByThread } from './torque-by-thread.ts';
import { torqueTable } from './torque-table.ts';
import { turn } from './turn.ts';
import { tyreAge } from './tyre-age.ts';
import type { View } from './view.ts';
import { wayBack } from './way-back.ts';
import { whatIsOff } from './what-is-off.ts';
import { wiring } from './wiring.ts';
import { workLog } from './work-log.ts';
import { workings } from './workings.ts';
import { wrenchAdaptor } from './wrench-adaptor.ts';

export const views: readonly View[] = [
  airAndJet,
  allHoldPoints,
  assembly,
  bores,
  bothHands,
  calculations,
  caution,
  characterGrid,
  comesFirst,
  costs,
  coverage,
  evening,
  distancePlot,
  figureRules,
  adopted,
  fingerprint,
  form,
  historyCover,
  holdPoint,
  inspection,
  instruments,
  jobStory,
  knownFaults,
  knownFindings,
  layUpCard,
  leftOver,
  onTheBench,
  offOverTime,
  log,
  machineFigures,
  machineHead,
  measurements,
  measures,
  measuring,
  nextTest,
  noStartCard,
  note,
  odometerDeclared,
  odometerSaid,
  oddMinutes,
  oilInFuel,
  orderOfWork,
  originality,
  papers,
  partHeading,
  parts,
  partsAndTubs,
  photographs,
  planHead,
  platingBatch,
  pocketCard,
  portrait,
  queries,
  reTorque,
  rideLog,
  roadRules,
  runLog,
  runningInCard,
  runningInPlan,
  screwTemplate,
  generalSchedulesUsed,
  serviceDue,
  serviceSheet,
  serviceVisits,
  settings,
  settingsCard,
  sheetsList,
  shopping,
  sources,
  standing,
  whoseCopyView,
  stateLeft,
  stillHolds,
  story,
  tables,
  tags,
  teardown,
  thingIndex,
  timingStrip,
  todayHead,
  toProve,
  torqueByThread,
  torqueTable,
  tighteningOrderView,
  turn,
  tyreAge,
  wayBack,
  whatIsOff,
  wiring,
  workings,
  workLog,
  wrenchAdaptor,
];

const byId: ReadonlyMap<string, View> = new Map(views.map((view) => [view.id, view]));

/** A view by its id. */
export function viewNamed(id: string): View | undefined {
  return byId.get(id);
}
