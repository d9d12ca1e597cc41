// data/binder.schema.json: what stands in data/binder.json, key by key; nothing else may stand there.
import {
  byName,
  day,
  either,
  flag,
  list,
  number,
  object,
  oneOf,
  ref,
  text,
  whole,
  type Schema,
} from './schema-parts.ts';
import { aroundParts } from './schema-around.ts';
import { recordParts } from './schema-records.ts';
import { wiringParts } from './schema-wiring.ts';

const figure = ref('figure');
const figures = ref('figure');
const place = ref('place');
const money = ref('money');
const openLine = { state: text, entry: ref('work'), job: text, since: day };
const ofJob = object({ job: text, entry: ref('work') });
const letPass = object({ job: text, release: ref('release') });
const saidOfJob = object({ job: text, text });

const kernelParts: Readonly<Record<string, Schema>> = {
  place: object({ file: text, path: list(either(text, whole)) }),
  money: object({ amount: { type: 'string', pattern: String.raw`^-?\d+(\.\d+)?$` }, currency: text }),
  measure: object({ unit: text, decimals: whole, text }, { value: number, low: number, high: number }),
  value: either(
    object({ kind: oneOf('read'), written: ref('measure') }),
    object({ kind: oneOf('words'), text }),
    object({ kind: oneOf('unknown') }),
  ),
  origin: either(
    object({ kind: oneOf('written'), at: place }, { source: text }),
    object({ kind: oneOf('published'), table: text, row: text }),
    object({ kind: oneOf('worked out'), working: text }),
  ),
  figure: object(
    { value: number, unit: text, decimals: whole, origin: ref('origin') },
    { low: number, high: number, uncertainty: number },
  ),
  working: object({
    id: text,
    calculation: text,
    formula: text,
    source: text,
    inputs: list(object({ symbol: text, name: text, figure })),
    remarks: list(text),
  }),
};

const bookParts: Readonly<Record<string, Schema>> = {
  distanceAt: object({ day }, { job: text, clock: figure, machine: figure }),
  odometer: object({
    readings: list(ref('distanceAt')),
    now: ref('distanceAt'),
    statement: object({ word: text, why: text }),
  }),
  openLine: object(openLine, { remaining: whole }),
  off: object(
    {
      open: list(ref('openLine')),
      closed: list(object({ ...openLine, by: ref('work'), byJob: text }, { remaining: whole })),
      bags: list(object({ bag: text, contents: list(ref('openLine')), emptied: flag })),
      stateLeft: list(saidOfJob),
    },
    { next: saidOfJob },
  ),
  checkState: object(
    { check: text, state: text },
    {
      by: object({ job: text, day }, { hand: text, checkedBy: text, value: text }),
      undoneBy: object({ job: text, what: text }),
      goodFor: object({ words: text }, { day }),
      released: letPass,
      why: text,
    },
  ),
  torqueRow: object(
    { fastener: text, basis: oneOf('maker', 'computed', 'none'), stages: list(figure) },
    {
      value: object({ low: figure }, { high: figure }),
      changed: object({ now: text, by: text }),
      note: text,
      touched: flag,
      last: ofJob,
      untightened: ofJob,
    },
  ),
  dueLine: object(
    { service: text, state: text, why: text, besides: list(text) },
    {
      lastDone: object({ job: text, day }, { machineDistance: figure }),
      dueDay: day,
      dueAt: figure,
      dueOnClock: figure,
      projected: object({ early: day, likely: day }, { late: day }),
      left: object({}, { days: number, distance: figure }),
    },
  ),
  point: object(
    { day, job: text, side: text, position: text, value: ref('value'), condition: list(text), at: place },
    { instrument: text, machineDistance: figures, corrected: object({ by: text, why: text }), verdict: text },
  ),
  series: object(
    { item: text, name: text, basis: list(object({ from: day, what: text })), points: list(ref('point')) },
    { limit: either(text, ref('limit')), setting: either(text, ref('setting')) },
  ),
  blank: object(
    { id: text, item: text, name: text, position: text, unit: text },
    {
      foundId: text,
      leftId: text,
      limit: either(text, ref('limit')),
      setting: either(text, ref('setting')),
      last: ref('point'),
      found: ref('value'),
      left: ref('value'),
      verdict: text,
    },
  ),
  plan: object({ job: text, procedures: list(text), blanks: list(ref('blank')), bagFrom: whole }),
  costs: object(
    {
      total: money,
      byGroup: list(object({ group: text, total: money })),
      byYear: list(object({ year: text, total: money })),
      fees: money,
      committed: money,
      entries: list(
        object({ day, entry: either(ref('part'), ref('moneyEntry')) }, { job: text, inOwn: money, committed: flag }),
      ),
      leftOut: list(text),
      pricedAgain: list(object({ part: ref('part'), job: text, before: text })),
    },
    { limit: money },
  ),
  moneyEntry: object({ kind: text, amount: money, for: text, group: text, at: place }),
  query: object(
    { code: text, severity: oneOf('problem', 'query'), at: ref('spot'), message: text },
    { hint: text, also: list(object({ at: ref('spot'), message: text })) },
  ),
  spot: place,
  check: object(
    { id: text, text, why: text, proof: text, undoneBy: list(text), applies: byName(list(text)), at: place },
    { unit: text, caution: text, goodFor: ref('interval'), eachTime: flag },
  ),
};

/** JSON Schema, draft 7. */
export const binderSchema: Schema = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'A Splitpin binder',
  description: 'Everything that was read and computed for one machine. Numbers carry their unit, decimals and origin.',
  ...object(
    {
      $schema: text,
      format: whole,
      today: day,
      recordsDate: day,
      recordsVersion: text,
      machine: ref('machine'),
      odometer: ref('odometer'),
      off: ref('off'),
      holdPoints: list(
        object(
          { id: text, title: text, clear: flag, because: list(text), checks: list(ref('checkState')) },
          { released: letPass },
        ),
      ),
      torque: list(ref('torqueRow')),
      due: list(ref('dueLine')),
      measurements: list(ref('series')),
      plans: list(ref('plan')),
      visits: list(object({ day, services: list(text) })),
      costs: ref('costs'),
      queries: list(ref('query')),
      jobs: list(ref('job')),
      instruments: list(ref('instrument')),
      fasteners: list(ref('fastener')),
      limits: list(ref('limit')),
      settings: list(ref('setting')),
      fluids: list(ref('fluid')),
      services: list(ref('service')),
      sources: list(ref('source')),
      checks: list(ref('check')),
      unread: list(object({ file: text, codes: list(text) })),
      kept: list(place),
      workings: list(ref('working')),
    },
    {
      story: object({ file: text, body: text }),
      workshop: ref('workshop'),
      adopted: ref('adopted'),
      wiring: ref('wiring'),
    },
  ),
  definitions: { ...kernelParts, ...recordParts, ...aroundParts, ...wiringParts, ...bookParts },
};
