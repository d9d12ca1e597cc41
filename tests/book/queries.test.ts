// What an experienced reader would point at: for each, the smallest records that raise it and their neighbours that do not.
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { codes } from '../../src/problem/codes.ts';
import type { Content } from '../../src/records/content-model.ts';
import type { Job, Machine, MakerData } from '../../src/records/model.ts';
import {
  book,
  check,
  content,
  fastener,
  hold,
  interval,
  job,
  limit,
  machine,
  maker,
  money,
  nowhere,
  part,
  period,
  procedure,
  quantity,
  range,
  reading,
  ridden,
  service,
  setting,
  source,
  ticked,
  work,
} from './records.ts';

interface Case {
  readonly jobs?: readonly Job[];
  readonly machine?: Partial<Machine>;
  readonly maker?: Partial<MakerData>;
  readonly content?: Content;
}

function queriesOf({ jobs = [], machine: more = {}, maker: data = {}, content: words = content() }: Case) {
  return book(jobs, '2026-06-01', { content: words, records: { machine: machine(more), maker: maker(data) } }).queries;
}

const raised = (given: Case): readonly string[] => queriesOf(given).map((one) => one.code);
const gear = (driving: number, driven: number) => ({ driving, driven });

const ride = (date: string, more: Partial<Job> = {}): Job =>
  job(date, { kind: 'ride', ride: { weather: 'dry' }, ...more });
const removed = job('2026-01-01', { kind: 'strip', work: [work('removed', 'seat', { bag: '1' })] });
const refitted = job('2026-01-02', { work: [work('refitted', 'seat')] });
const found = (item: string, text: string, more: { condition?: readonly string[]; left?: string } = {}) =>
  reading(item, {
    found: text,
    ...(more.left === undefined ? {} : { left: more.left }),
    ...(more.condition === undefined ? {} : { condition: more.condition }),
  });
const read = (date: string, item: string, text: string, more: { condition?: readonly string[]; left?: string } = {}) =>
  job(date, { readings: [found(item, text, more)] });
const bore = { limits: [limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { of: 'barrels' })] };
const gap = {
  settings: [
    setting('points-gap', '0.35 mm', { rangeText: '0.30 to 0.40 mm', disturbs: ['ignition-timing'] }),
    setting('ignition-timing', '2.1 mm'),
  ],
};
const headNut = { fasteners: [fastener('cylinder-head-nut', { name: 'Cylinder head nuts' })] };
const tighten = (date: string) =>
  job(date, {
    kind: 'assembly',
    work: [work('loosened', 'cylinder-head-nut'), work('tightened', 'cylinder-head-nut')],
  });
const again = (date: string) => job(date, { kind: 'service', work: [work('tightened', 'cylinder-head-nut')] });
const heat = (date: string) => job(date, { heatCycles: 1 });
const road = content({
  holdPoints: [
    hold('before-road', 6, [check('insured'), check('photo', { proof: 'photo' }), check('oil', { proof: 'value' })]),
  ],
});
const allTicks = [ticked('insured'), ticked('oil', { value: '650 ml' })];
const photo = { file: 'photos/a.png', caption: 'a', private: false, at: nowhere };
const finding = (weight: 'stops' | 'note', became: string, until?: string) => ({
  id: 'f',
  saw: 'crack in the frame',
  weight,
  became,
  at: nowhere,
  ...(until === undefined ? {} : { until: ridden('1 mi') && dayOf(until) }),
});
const correction = (was: string) => ({
  record: 'gap',
  item: 'points-gap',
  was,
  is: '0.35 mm',
  why: 'wrong blade',
  at: nowhere,
});
const paid = (kind: 'paid' | 'deposit' | 'deposit back', amount: string) => ({
  kind,
  amount: money(amount),
  for: 'x',
  group: 'buying',
  at: nowhere,
});

const refund = (amount: string) => ({
  kind: 'refund' as const,
  amount: money(amount),
  for: 'x',
  group: 'parts',
  at: nowhere,
});
const generalTable = { title: 'General table of torques for metric screws', edition: '1968', page: '9' };
const step = (thing: string) => ({
  do: `${thing} out`,
  off: [thing],
  fasteners: [],
  bag: false,
  cautions: [],
  measure: [],
  set: [],
  applies: {},
});
const wheelOut = content({
  procedureList: [procedure('wheel-out', { steps: [step('rear wheel')] })],
});
const headOff = content({
  procedureList: [procedure('head-off', { steps: [{ ...step('cylinder head'), fasteners: ['cylinder-head-nut'] }] })],
});
const engineOf = (bore: string) => ({
  gears: [],
  bore: quantity(bore, 'length'),
  stroke: quantity('50 mm', 'length'),
});
const smallSingles = content({
  schedules: [
    {
      id: 'general',
      title: 'General',
      applies: {},
      meantFor: range('100 to 250 cc', 'volume'),
      services: [service('plug-look', { basis: 'general' })],
    },
  ],
});
const plan = (date: string, hand: string): Job =>
  job(date, { state: 'planned', hands: [hand], procedures: ['wheel-out'] });
const signature = { by: 'owner', date: dayOf('2026-01-02') };

function dayOf(text: string) {
  const span = job(text).date;
  return span.from;
}

const cases: Readonly<Record<string, readonly [raises: Case, quiet: Case]>> = {
  'ridden-with-thing-open': [
    { jobs: [removed, ride('2026-02-01')] },
    { jobs: [removed, refitted, ride('2026-02-01')] },
  ],
  'ridden-while-held': [
    { jobs: [ride('2026-02-01')], content: road },
    {
      jobs: [job('2026-01-01', { checks: [...allTicks, ticked('photo')], photos: [photo] }), ride('2026-02-01')],
      content: road,
    },
  ],
  'finding-past-its-day': [
    { jobs: [job('2026-01-01', { findings: [finding('note', 'left for now', '2026-05-31')] })] },
    { jobs: [job('2026-01-01', { findings: [finding('note', 'left for now', '2026-06-01')] })] },
  ],
  'ridden-with-stopping-fault': [
    { jobs: [job('2026-01-01', { findings: [finding('stops', 'open')] }), ride('2026-02-01')] },
    { jobs: [job('2026-01-01', { findings: [finding('stops', 'welded')] }), ride('2026-02-01')] },
  ],
  'stripped-not-repaired': [
    { jobs: [job('2026-01-01', { kind: 'service', work: [work('tightened', 'drain plug', { result: 'stripped' })] })] },
    {
      jobs: [
        job('2026-01-01', { kind: 'service', work: [work('tightened', 'drain plug', { result: 'stripped' })] }),
        job('2026-01-02', { repairs: [{ of: 'drain plug', now: 'insert', at: nowhere }] }),
      ],
    },
  ],
  'not-tightened-again': [
    {
      jobs: [
        job('2026-01-01', {
          kind: 'strip',
          work: [
            work('removed', 'head', { fasteners: [{ id: 'cylinder-head-nut', count: 8 }] }),
            work('refitted', 'head'),
          ],
        }),
      ],
      maker: headNut,
    },
    {
      jobs: [
        job('2026-01-01', {
          kind: 'strip',
          work: [
            work('removed', 'head', { fasteners: [{ id: 'cylinder-head-nut', count: 8 }] }),
            work('refitted', 'head'),
            work('tightened', 'cylinder-head-nut'),
          ],
        }),
      ],
      maker: headNut,
    },
  ],
  'torque-unit-slip': [
    {
      maker: { fasteners: [fastener('nut', { torqueText: '2.2 kgf·m' })] },
      jobs: [
        job('2026-01-01', {
          kind: 'service',
          work: [work('tightened', 'nut', { torque: quantity('2.2 N·m', 'torque') })],
        }),
      ],
    },
    {
      maker: { fasteners: [fastener('nut', { torqueText: '2.2 kgf·m' })] },
      jobs: [
        job('2026-01-01', {
          kind: 'service',
          work: [work('tightened', 'nut', { torque: quantity('21.6 N·m', 'torque') })],
        }),
      ],
    },
  ],
  'torque-above-strength': [
    { maker: { fasteners: [fastener('nut', { thread: 'M6x1.0', class: '8.8', torqueText: '40 N·m' })] } },
    { maker: { fasteners: [fastener('nut', { thread: 'M6x1.0', class: '8.8', torqueText: '9 N·m' })] } },
  ],
  'duty-against-its-name': [
    { maker: { fasteners: [fastener('a', { name: 'Brake plate nut', duty: 'cover' })] } },
    { maker: { fasteners: [fastener('a', { name: 'Clutch cover screw', duty: 'cover' })] } },
  ],
  'safety-work-unchecked': [
    { jobs: [job('2026-01-01', { work: [work('replaced', 'front brake cable')] })] },
    {
      jobs: [
        job('2026-01-01', { work: [work('replaced', 'front brake cable')], checks: [ticked('front-brake-holds')] }),
      ],
    },
  ],
  'tyre-code-of-three-digits': [
    { jobs: [read('2026-01-01', 'rear tyre date code', '129')] },
    { jobs: [read('2026-01-01', 'rear tyre date code', '1219')] },
  ],
  'petrol-without-oil': [
    {
      jobs: [job('2026-01-01', { work: [work('filled', 'fuel tank')] })],
      machine: { features: { ...machine().features, lubrication: 'premix' } },
    },
    {
      jobs: [job('2026-01-01', { work: [work('filled', 'fuel tank', { ratio: quantity('25:1', 'ratio') })] })],
      machine: { features: { ...machine().features, lubrication: 'premix' } },
    },
  ],
  'mixture-written-two-ways': [
    {
      jobs: [
        job('2026-01-01', { work: [work('filled', 'fuel', { ratio: quantity('25:1', 'ratio') })] }),
        job('2026-02-01', { work: [work('filled', 'fuel', { note: '4 % oil' })] }),
      ],
    },
    {
      jobs: [
        job('2026-01-01', { work: [work('filled', 'fuel', { ratio: quantity('25:1', 'ratio') })] }),
        job('2026-02-01', { work: [work('filled', 'fuel', { note: '25:1 again' })] }),
      ],
    },
  ],
  'torque-against-book': [
    {
      maker: { fasteners: [fastener('nut', { torqueText: '2.2 kgf·m' })] },
      jobs: [job('2026-01-01', { work: [work('tightened', 'nut', { torque: quantity('1.8 kgf·m', 'torque') })] })],
    },
    {
      maker: { fasteners: [fastener('nut', { torqueText: '2.2 kgf·m' })] },
      jobs: [job('2026-01-01', { work: [work('tightened', 'nut', { torque: quantity('2.2 kgf·m', 'torque') })] })],
    },
  ],
  'stages-against-torque': [
    { maker: { fasteners: [fastener('nut', { torqueText: '2.2 kgf·m', stages: [quantity('2.5 kgf·m', 'torque')] })] } },
    { maker: { fasteners: [fastener('nut', { torqueText: '2.2 kgf·m', stages: [quantity('2.2 kgf·m', 'torque')] })] } },
  ],
  'more-fasteners-than-book': [
    {
      maker: { fasteners: [fastener('nut', { count: 4 })] },
      jobs: [job('2026-01-01', { work: [work('removed', 'head', { fasteners: [{ id: 'nut', count: 5 }] })] })],
    },
    {
      maker: { fasteners: [fastener('nut', { count: 4 })] },
      jobs: [job('2026-01-01', { work: [work('removed', 'head', { fasteners: [{ id: 'nut', count: 4 }] })] })],
    },
  ],
  'feature-not-known': [
    { machine: { features: { ...machine().features, notKnown: ['lubrication'] } } },
    { machine: { features: machine().features } },
  ],
  'gearing-upside-down': [
    { machine: { geometry: { gears: [], final: { driving: 46, driven: 16 } } } },
    { machine: { geometry: { gears: [], final: { driving: 16, driven: 46 } } } },
  ],
  'gears-out-of-order': [
    { machine: { geometry: { gears: [gear(13, 36), gear(22, 27), gear(18, 31)] } } },
    { machine: { geometry: { gears: [gear(13, 36), gear(18, 31), gear(22, 27), gear(1, 1)] } } },
  ],
  'fasteners-left-over': [
    {
      jobs: [
        job('2026-01-01', {
          kind: 'strip',
          work: [work('removed', 'cover', { fasteners: [{ id: 'screw', count: 9 }] })],
        }),
        job('2026-01-02', { work: [work('refitted', 'cover', { fasteners: [{ id: 'screw', count: 8 }] })] }),
      ],
    },
    {
      jobs: [
        job('2026-01-01', {
          kind: 'strip',
          work: [work('removed', 'cover', { fasteners: [{ id: 'screw', count: 9 }] })],
        }),
        job('2026-01-02', { work: [work('refitted', 'cover', { fasteners: [{ id: 'screw', count: 9 }] })] }),
      ],
    },
  ],
  'no-re-torque-after-heat': [
    { jobs: [tighten('2026-01-01'), heat('2026-01-02')], maker: headNut },
    { jobs: [tighten('2026-01-01'), heat('2026-01-02'), again('2026-01-03'), heat('2026-01-04')], maker: headNut },
  ],
  'unit-slip': [
    { jobs: [read('2026-01-01', 'bore', '1.97 mm')], maker: bore },
    { jobs: [read('2026-01-01', 'bore', '50.30 mm')], maker: bore },
  ],
  'left-past-its-limit': [
    { jobs: [read('2026-01-01', 'bore', '50.20 mm')], maker: bore },
    {
      jobs: [
        read('2026-01-01', 'bore', '50.20 mm'),
        job('2026-01-02', { parts: [part('barrels', { price: money('9.00 GBP') })] }),
      ],
      maker: bore,
    },
  ],
  'setting-older-than-its-mover': [
    {
      jobs: [
        read('2026-01-01', 'ignition-timing', '2.1 mm'),
        read('2026-01-02', 'points-gap', '0.30 mm', { left: '0.35 mm' }),
      ],
      maker: gap,
    },
    {
      jobs: [
        read('2026-01-02', 'points-gap', '0.30 mm', { left: '0.35 mm' }),
        read('2026-01-03', 'ignition-timing', '2.1 mm'),
      ],
      maker: gap,
    },
  ],
  'corrected-value-was-used': [
    {
      jobs: [
        job('2026-01-01', { id: 'gap', readings: [found('points-gap', '0.50 mm')] }),
        read('2026-01-02', 'ignition-timing', '2.1 mm'),
        job('2026-01-03', { corrections: [correction('0.50 mm')] }),
      ],
      maker: gap,
    },
    {
      jobs: [
        job('2026-01-01', { id: 'gap', readings: [found('points-gap', '0.50 mm')] }),
        job('2026-01-03', { corrections: [correction('0.50 mm')] }),
        read('2026-01-04', 'ignition-timing', '2.1 mm'),
      ],
      maker: gap,
    },
  ],
  'correction-of-nothing': [
    {
      jobs: [
        job('2026-01-01', { id: 'gap', readings: [found('points-gap', '0.50 mm')] }),
        job('2026-01-03', { corrections: [correction('0.55 mm')] }),
      ],
    },
    {
      jobs: [
        job('2026-01-01', { id: 'gap', readings: [found('points-gap', '0.50 mm')] }),
        job('2026-01-03', { corrections: [correction('0.50 mm')] }),
      ],
    },
  ],
  'compression-before-tappets': [
    {
      jobs: [read('2026-01-01', 'compression', '6.8 bar')],
      machine: { features: { ...machine().features, stroke: 'four' } },
    },
    {
      jobs: [read('2026-01-01', 'inlet tappet', '0.05 mm'), read('2026-01-02', 'compression', '6.8 bar')],
      machine: { features: { ...machine().features, stroke: 'four' } },
    },
  ],
  'done-with-things-open': [
    { jobs: [job('2026-01-01', { work: [work('opened', 'points cover')] })] },
    { jobs: [job('2026-01-01', { work: [work('opened', 'points cover'), work('closed', 'points cover')] })] },
  ],
  'bag-half-emptied': [
    {
      jobs: [
        removed,
        job('2026-01-02', { kind: 'strip', work: [work('removed', 'tank', { bag: '1' }), work('refitted', 'seat')] }),
      ],
    },
    {
      jobs: [
        removed,
        job('2026-01-02', { kind: 'strip', work: [work('removed', 'tank', { bag: '2' }), work('refitted', 'seat')] }),
      ],
    },
  ],
  'refitted-while-sent-out': [
    {
      jobs: [
        removed,
        job('2026-01-02', { work: [work('sent out', 'seat', { to: 'the trimmer' })] }),
        job('2026-01-03', { work: [work('refitted', 'seat')] }),
      ],
    },
    {
      jobs: [
        removed,
        job('2026-01-02', { work: [work('sent out', 'seat', { to: 'the trimmer' })] }),
        job('2026-01-03', { work: [work('come back', 'seat'), work('refitted', 'seat')] }),
      ],
    },
  ],
  'promised-day-passed': [
    {
      jobs: [
        job('2026-01-02', { work: [work('sent out', 'seat', { to: 'the trimmer', promised: dayOf('2026-05-31') })] }),
      ],
    },
    {
      jobs: [
        job('2026-01-02', { work: [work('sent out', 'seat', { to: 'the trimmer', promised: dayOf('2026-06-01') })] }),
      ],
    },
  ],
  'taken-off-twice': [
    { jobs: [removed, job('2026-01-03', { work: [work('removed', 'seat', { bag: '1' })] })] },
    { jobs: [removed, refitted, job('2026-01-03', { kind: 'strip', work: [work('removed', 'seat', { bag: '1' })] })] },
  ],
  'put-back-never-off': [{ jobs: [refitted] }, { jobs: [removed, refitted] }],
  'tightened-never-loose': [
    { jobs: [job('2026-01-01', { work: [work('tightened', 'drain plug')] })] },
    { jobs: [job('2026-01-01', { work: [work('loosened', 'drain plug'), work('tightened', 'drain plug')] })] },
  ],
  'torque-from-general-table': [
    { maker: { fasteners: [fastener('rear-spindle-nut', { torqueText: '60 N·m', source: generalTable })] } },
    { maker: { fasteners: [fastener('side-screw', { torqueText: '6 N·m', duty: 'cover', source: generalTable })] } },
  ],
  'label-against-oiling': [
    {
      jobs: [job('2026-01-01', { checks: [ticked('cap-label-right', { value: 'petrol only' })] })],
      machine: { features: { ...machine().features, lubrication: 'premix' } },
    },
    {
      jobs: [job('2026-01-01', { checks: [ticked('cap-label-right', { value: 'premix 25:1' })] })],
      machine: { features: { ...machine().features, lubrication: 'premix' } },
    },
  ],
  'part-on-two-machines': [
    {
      jobs: [
        job('2026-01-01', { parts: [part('carburettor', { state: 'here', movedTo: 'the other one' })] }),
        job('2026-02-01', { work: [work('refitted', 'carburettor')] }),
      ],
    },
    {
      jobs: [
        job('2026-01-01', { parts: [part('carburettor', { state: 'here', movedTo: 'the other one' })] }),
        job('2026-01-20', { parts: [part('carburettor', { state: 'here', movedFrom: 'the other one' })] }),
        job('2026-02-01', { work: [work('refitted', 'carburettor')] }),
      ],
    },
  ],
  'head-torque-hot': [
    {
      jobs: [job('2026-01-01', { work: [work('tightened', 'cylinder-head-nut')], heatCycles: 1 })],
      maker: headNut,
    },
    {
      jobs: [job('2026-01-01', { work: [work('tightened', 'cylinder-head-nut', { note: 'cold' })], heatCycles: 1 })],
      maker: headNut,
    },
  ],
  'finding-never-answered': [
    { jobs: [job('2025-01-01', { findings: [finding('note', 'open')] })] },
    { jobs: [job('2025-01-01', { findings: [finding('note', 'welded 2025-02-01')] })] },
  ],
  'part-counted-twice': [
    {
      jobs: [
        job('2026-01-01', { parts: [part('chain', { state: 'here', price: money('31.00 GBP') })] }),
        job('2026-02-01', { parts: [part('chain', { state: 'fitted', price: money('31.00 GBP') })] }),
      ],
    },
    {
      jobs: [
        job('2026-01-01', { parts: [part('chain', { state: 'here', price: money('31.00 GBP') })] }),
        job('2026-02-01', { parts: [part('chain', { state: 'fitted' })] }),
      ],
    },
  ],
  'returned-still-counted': [
    {
      jobs: [
        job('2026-01-01', { parts: [part('chain', { state: 'here', price: money('31.00 GBP') })] }),
        job('2026-02-01', { parts: [part('chain', { state: 'returned' })] }),
      ],
    },
    {
      jobs: [
        job('2026-01-01', { parts: [part('chain', { state: 'here', price: money('31.00 GBP') })] }),
        job('2026-02-01', { parts: [part('chain', { state: 'returned' })], money: [refund('31.00 GBP')] }),
      ],
    },
  ],
  'jobs-in-each-others-way': [
    {
      jobs: [plan('2026-07-04', 'owner'), plan('2026-07-04', 'helper')],
      content: wheelOut,
    },
    {
      jobs: [plan('2026-07-04', 'owner'), plan('2026-07-05', 'helper')],
      content: wheelOut,
    },
  ],
  'two-people-disagree': [
    {
      jobs: [
        job('2026-01-01', { hands: ['owner'], work: [work('refitted', 'seat')] }),
        job('2026-01-01', { hands: ['helper'], work: [work('removed', 'seat')] }),
      ],
    },
    {
      jobs: [
        job('2026-01-01', { hands: ['owner'], work: [work('refitted', 'seat')] }),
        job('2026-01-02', { hands: ['helper'], work: [work('removed', 'seat')] }),
      ],
    },
  ],
  'checked-by-its-own-hand': [
    { jobs: [job('2026-01-01', { checks: [ticked('insured', { by: 'owner', checkedBy: 'owner' })] })] },
    { jobs: [job('2026-01-01', { checks: [ticked('insured', { by: 'owner', checkedBy: 'helper' })] })] },
  ],
  'changed-after-signing': [
    { jobs: [job('2026-01-01', { signed: { ...signature, print: '0abcdef' }, print: '1abcdef' })] },
    { jobs: [job('2026-01-01', { signed: { ...signature, print: '0abcdef' }, print: '0abcdef' })] },
  ],
  'wear-backwards': [
    { jobs: [read('2026-01-01', 'bore', '50.08 mm'), read('2026-02-01', 'bore', '50.03 mm')], maker: bore },
    { jobs: [read('2026-01-01', 'bore', '50.03 mm'), read('2026-02-01', 'bore', '50.08 mm')], maker: bore },
  ],
  'better-than-new': [
    { jobs: [read('2026-01-01', 'bore', '49.80 mm')], maker: bore },
    { jobs: [read('2026-01-01', 'bore', '50.00 mm')], maker: bore },
  ],
  'reading-without-condition': [
    {
      jobs: [read('2026-01-01', 'bore', '50.01 mm')],
      maker: { limits: [limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { condition: ['cold'] })] },
    },
    {
      jobs: [read('2026-01-01', 'bore', '50.01 mm', { condition: ['cold'] })],
      maker: { limits: [limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { condition: ['cold'] })] },
    },
  ],
  'reading-in-other-condition': [
    {
      jobs: [read('2026-01-01', 'bore', '50.01 mm', { condition: ['hot'] })],
      maker: { limits: [limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { condition: ['cold'] })] },
    },
    {
      jobs: [read('2026-01-01', 'bore', '50.01 mm', { condition: ['cold', 'clean'] })],
      maker: { limits: [limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { condition: ['cold'] })] },
    },
  ],
  'check-without-evidence': [
    { jobs: [job('2026-01-01', { checks: [ticked('photo')] })], content: road },
    { jobs: [job('2026-01-01', { checks: [ticked('photo')], photos: [photo] })], content: road },
  ],
  'service-without-reading': [
    {
      jobs: [job('2026-01-01', { services: ['gap'] })],
      maker: {
        ...gap,
        services: [service('gap', { action: 'adjust', uses: ['points-gap'], every: interval('6 months') })],
      },
    },
    {
      jobs: [job('2026-01-01', { services: ['gap'], readings: [found('points-gap', '0.35 mm')] })],
      maker: {
        ...gap,
        services: [service('gap', { action: 'adjust', uses: ['points-gap'], every: interval('6 months') })],
      },
    },
  ],
  'oil-without-quantity-or-grade': [
    {
      jobs: [job('2026-01-01', { work: [work('filled', 'gearbox-oil', { quantity: quantity('650 ml', 'volume') })] })],
    },
    {
      jobs: [
        job('2026-01-01', {
          work: [work('filled', 'gearbox-oil', { quantity: quantity('650 ml', 'volume'), grade: 'SAE 30' })],
        }),
      ],
    },
  ],
  'clock-not-described': [
    { jobs: [job('1968-01-01', { odometer: ridden('120 mi') })] },
    { jobs: [job('1970-01-01', { odometer: ridden('120 mi') })] },
  ],
  'too-far-in-a-day': [
    { jobs: [job('2026-01-01', { odometer: ridden('8000 mi') }), job('2026-01-02', { odometer: ridden('9000 mi') })] },
    { jobs: [job('2026-01-01', { odometer: ridden('8000 mi') }), job('2026-01-02', { odometer: ridden('8300 mi') })] },
  ],
  'number-differs': [
    { jobs: [job('2026-01-01', { checks: [ticked('frame-read', { value: 'LP175-04471' })] })] },
    { jobs: [job('2026-01-01', { checks: [ticked('frame-read', { value: 'LP175-04417' })] })] },
  ],
  'number-read-otherwise': [
    { jobs: [job('2026-01-01', { readings: [found('frame number', 'KR90-2231')] })] },
    { jobs: [job('2026-01-01', { readings: [found('frame number', 'lp175 -04417')] })] },
  ],
  'schedule-for-other-size': [
    { machine: { geometry: engineOf('80 mm') }, content: smallSingles },
    { machine: { geometry: engineOf('56 mm') }, content: smallSingles },
  ],
  'data-for-other-frames': [
    { maker: { settings: [setting('idle', '0.5 mm', { source: { ...source, frames: { from: 'LP175-05000' } } })] } },
    { maker: { settings: [setting('idle', '0.5 mm', { source: { ...source, frames: { from: 'LP175-04000' } } })] } },
  ],
  'limit-without-page': [
    { maker: { limits: [limit('bore', undefined, '50.10 mm max', { source: { title: 'book' } })] } },
    { maker: bore },
  ],
  'asked-by-another-id': [
    {
      maker: { settings: [setting('tappet-inlet', '0.10 mm', { name: 'Inlet valve clearances' })] },
      content: content({ procedureList: [procedure('tappets', { measure: ['valve-clearance-inlet', 'points-gap'] })] }),
    },
    {
      maker: {
        settings: [
          setting('tappet-inlet', '0.10 mm', { name: 'Inlet valve clearances' }),
          setting('valve-clearance-inlet', '0.10 mm', { name: 'Inlet valve clearance' }),
          setting('points-at-magneto', '0.30 mm', { name: 'Magneto points' }),
        ],
      },
      content: content({ procedureList: [procedure('tappets', { measure: ['valve-clearance-inlet', 'points-gap'] })] }),
    },
  ],
  'part-from-nowhere': [
    { jobs: [job('2026-01-01', { parts: [part('clip link')] })] },
    {
      jobs: [
        job('2025-12-01', { parts: [part('clip link', { state: 'ordered' })] }),
        job('2026-01-01', { parts: [part('Clip link')] }),
      ],
    },
  ],
  'deposit-not-back': [
    { jobs: [job('2026-01-01', { money: [paid('deposit', '40.00 GBP')] })] },
    {
      jobs: [
        job('2026-01-01', { money: [paid('deposit', '40.00 GBP')] }),
        job('2026-02-01', { money: [paid('deposit back', '40.00 GBP')] }),
      ],
    },
  ],
  'spending-limit-passed': [
    {
      jobs: [job('2026-01-01', { money: [paid('paid', '900.01 GBP')] })],
      machine: { spendingLimit: money('900.00 GBP') },
    },
    {
      jobs: [job('2026-01-01', { money: [paid('paid', '900.00 GBP')] })],
      machine: { spendingLimit: money('900.00 GBP') },
    },
  ],
  'done-in-the-future': [{ jobs: [job('2026-06-02')] }, { jobs: [job('2026-06-01')] }],
  'signed-before-its-work': [
    { jobs: [job('2026-01-01 to 2026-01-03', { signed: { by: 'owner', date: dayOf('2026-01-02') } })] },
    { jobs: [job('2026-01-01 to 2026-01-03', { signed: { by: 'owner', date: dayOf('2026-01-03') } })] },
  ],
  'private-in-open-text': [
    { jobs: [job('2026-01-01', { purpose: 'call the seller, 01632 960 123' })] },
    { jobs: [job('2026-01-01', { purpose: 'call the seller about 12 480 miles, part 0132-45' })] },
  ],
  'fastener-named-two-ways': [
    { maker: { fasteners: [fastener('cylinder-head-bolt')] }, content: headOff },
    { maker: { fasteners: [fastener('cylinder-head-bolt'), fastener('cylinder-head-nut')] }, content: headOff },
  ],
  'item-named-two-ways': [
    { jobs: [read('2026-01-01', 'chain slack', '25 mm'), read('2026-02-01', 'chian slack', '30 mm')] },
    { jobs: [read('2026-01-01', 'chain slack 1', '25 mm'), read('2026-02-01', 'chain slack 2', '30 mm')] },
  ],
  'read-twice-differently': [
    { jobs: [job('2026-01-01', { readings: [found('bore', '50.01 mm'), found('bore', '50.04 mm')] })] },
    // The same value twice, and what was found against what was left, are no two answers.
    {
      jobs: [
        job('2026-01-01', {
          readings: [found('bore', '50.01 mm'), found('bore', '50.01 mm', { left: '50.04 mm' })],
        }),
      ],
    },
  ],
  'planned-but-filled-in': [
    { jobs: [job('2026-07-01', { state: 'planned', readings: [found('bore', '50.01 mm')] })] },
    { jobs: [job('2026-07-01', { state: 'planned', readings: [reading('bore', {})] })] },
  ],
};

/** Every code that some look may raise, taken from the sources. */
function codesOfLooks(): readonly string[] {
  const folder = new URL('../../src/book/queries/', import.meta.url);
  const texts = readdirSync(folder).map((name) => readFileSync(new URL(name, folder), 'utf8'));
  return [
    ...new Set(texts.flatMap((text) => [...text.matchAll(/\bquery\(\s*'([a-z-]+)'/gu)].map((match) => match[1] ?? ''))),
  ].toSorted();
}

describe('a unit slip', () => {
  const slipped = (...texts: readonly string[]): boolean =>
    raised({ jobs: texts.map((text, index) => read(`2026-01-0${String(index + 1)}`, 'own play', text)) }).includes(
      'unit-slip',
    );
  it('is seen between neighbours where the book has no figure', () => {
    expect(slipped('0.40 mm', '0.40 in')).toBe(true);
    expect(slipped('0.40 mm', '4.0 mm')).toBe(true);
    expect(slipped('0.40 mm', '0.70 mm')).toBe(false);
    expect(slipped('0.40 mm')).toBe(false);
  });
  it('is seen of a worn part as well: thousandths of an inch written as millimetres', () => {
    const rings = { limits: [limit('ring-gap', '0.010 to 0.014 in', '0.030 in max')] };
    const codes = (text: string) => raised({ jobs: [read('2026-01-01', 'ring-gap', text)], maker: rings });
    expect(codes('14 mm')).toContain('unit-slip');
    expect(codes('22 mm')).toContain('unit-slip');
    expect(codes('0.032 in')).toContain('left-past-its-limit');
    expect(codes('0.032 in')).not.toContain('unit-slip');
    expect(codes('22 thou')).not.toContain('unit-slip');
  });
});

describe('a reading of the whole, and later ones position by position', () => {
  const timing = { settings: [setting('ignition-timing', '9.5 mm', { rangeText: '9 to 10 mm' })] };
  const whole = read('2026-01-01', 'ignition-timing', '11.1 mm');
  const asked = (...jobs: readonly Job[]) =>
    raised({ jobs, maker: timing }).filter((code) => code === 'left-past-its-limit').length;
  const sides = (left: string) =>
    job('2026-02-01', { readings: [reading('ignition-timing', { left: { right: '9.5 mm', left } })] });
  it('gives way to them, and to nothing else', () => {
    expect(asked(whole)).toBe(1);
    expect(asked(whole, sides('9.4 mm'))).toBe(0);
    expect(asked(whole, sides('10.8 mm'))).toBe(1);
  });
});

describe('a clock that machine.yaml does not describe', () => {
  const asked = (more: Case) => raised(more).filter((code) => code === 'clock-not-described').length;
  const ends = period('first-clock', ['1969-05-01', '0 mi'], { to: ['2020-01-01', '8000 mi'] });
  const next = period('second-clock', ['2021-01-01', '100 mi']);
  const at = (date: string, reads: string) => job(date, { odometer: ridden(reads) });
  it('is asked about once for each time without one', () => {
    const between = [at('2020-05-01', '8050 mi'), at('2020-06-01', '8060 mi')];
    expect(asked({ machine: { clock: [ends, next] }, jobs: between })).toBe(1);
    expect(asked({ machine: { clock: [ends, next] }, jobs: [at('1968-05-01', '50 mi'), ...between] })).toBe(2);
    expect(
      asked({ machine: { clock: [ends, next] }, jobs: [at('2020-01-01', '8000 mi'), at('2021-05-01', '150 mi')] }),
    ).toBe(0);
    expect(asked({ machine: { clock: [] }, jobs: between })).toBe(1);
    expect(asked({ machine: { clock: [] }, jobs: [ride('2020-05-01')] })).toBe(0);
  });
  it('is a changed one that no period begins with', () => {
    const changed = job('2021-01-01', { work: [work('replaced', 'speedometer')], parts: [part('Speedometer')] });
    expect(asked({ jobs: [changed] })).toBe(1);
    expect(asked({ machine: { clock: [ends, next] }, jobs: [changed] })).toBe(0);
    expect(asked({ jobs: [job('2021-01-01', { work: [work('replaced', 'speedometer cable')] })] })).toBe(0);
  });
  it('is a meter of hours, or a second clock, under a name of its own', () => {
    expect(
      asked({ jobs: [read('2021-01-01', 'hour meter', '12.4 h'), read('2021-02-01', 'Hour meter', '13 h')] }),
    ).toBe(1);
    expect(asked({ jobs: [read('2021-01-01', 'running-hours', '12.4 h')] })).toBe(0);
    expect(asked({ jobs: [read('2021-01-01', 'second clock', '812 mi')] })).toBe(1);
    expect(asked({ jobs: [read('2021-01-01', 'hours of soaking', '12 ml')] })).toBe(0);
  });
});

describe('a fastener under two names', () => {
  const tightened = (thing: string) => [
    job('2026-01-01', { work: [work('loosened', thing), work('tightened', thing)] }),
  ];
  const nut = { fasteners: [fastener('rear-spindle-nut', { name: 'Rear spindle nut' })] };
  const asked = (more: Case) => raised(more).filter((code) => code === 'fastener-named-two-ways').length;
  it('is asked once of a record that has its own words for it, in either dialect', () => {
    const words = content({ words: [{ uk: 'spindle', us: 'axle' }] });
    expect(asked({ jobs: tightened('rear axle bolts'), maker: nut, content: words })).toBe(1);
    expect(asked({ jobs: tightened('rear spindle nut'), maker: nut, content: words })).toBe(0);
    expect(asked({ jobs: tightened('rear axle bolts'), maker: nut })).toBe(0);
  });
  it('is not asked of another place, of a plug, or of steps for another kind of machine', () => {
    expect(asked({ jobs: tightened('front spindle bolt'), maker: nut })).toBe(0);
    expect(asked({ jobs: tightened('rear spindle'), maker: nut })).toBe(0);
    const other = content({
      procedureList: [
        procedure('head-off', {
          applies: { stroke: ['four'] },
          steps: [{ ...step('cylinder head'), fasteners: ['cylinder-head-nut'] }],
        }),
      ],
    });
    expect(asked({ maker: { fasteners: [fastener('cylinder-head-bolt')] }, content: other })).toBe(0);
  });
});

describe('gears out of order', () => {
  const asked = (...gears: readonly ReturnType<typeof gear>[]): readonly string[] =>
    queriesOf({ machine: { geometry: { gears } } })
      .filter(({ code }) => code === 'gears-out-of-order')
      .map(({ message }) => message.split(':').slice(0, 3).join(':'));
  it('names the first that is no faster, once for a list that was turned round', () => {
    expect(asked(gear(25, 24), gear(22, 27), gear(18, 31))).toEqual([
      'gear 2 (22:27) is no faster than gear 1 (25:24)',
    ]);
  });
  it('asks about two gears alike, and about nothing where there is one gear or none', () => {
    expect(asked(gear(18, 31), gear(18, 31))).toHaveLength(1);
    expect([asked(gear(18, 31)), asked()]).toEqual([[], []]);
  });
});

describe('wear that seems to run backwards', () => {
  it('is asked once for all that one record read so', () => {
    const gap = {
      limits: [
        limit('ring-gap', '0.2 to 0.4 mm', '0.8 mm max'),
        limit('second-ring-gap', '0.2 to 0.4 mm', '0.8 mm max'),
      ],
    };
    const at = (date: string, ring: readonly [string, string], second: readonly [string, string]): Job =>
      job(date, {
        readings: [
          reading('ring-gap', { found: { left: ring[0], right: ring[1] } }),
          reading('second-ring-gap', { found: { left: second[0], right: second[1] } }),
        ],
      });
    const worn = at('2026-01-01', ['0.70 mm', '0.65 mm'], ['0.60 mm', '0.61 mm']);
    const better = at('2026-02-01', ['0.30 mm', '0.31 mm'], ['0.32 mm', '0.61 mm']);
    const asked = queriesOf({ jobs: [worn, better], maker: gap }).filter(({ code }) => code === 'wear-backwards');
    expect(asked.map(({ message, hint }) => [message, hint])).toEqual([
      [
        'ring-gap: left 0.30 mm after left 0.70 mm on 2026-01-01, and nothing was renewed between; so is right 0.31 mm, second-ring-gap: left 0.32 mm',
        'measure again, or write what was renewed under `repairs:`, as {of: ring-gap, now: …}, and the same of second-ring-gap',
      ],
    ]);
  });
  const backwards = (jobs: readonly Job[], data: Partial<MakerData> = bore): boolean =>
    raised({ jobs, maker: data }).includes('wear-backwards');
  it('is not what a record found and left', () => {
    expect(backwards([read('2026-01-01', 'bore', '50.08 mm', { left: '50.03 mm' })])).toBe(false);
    const after = read('2026-02-01', 'bore', '50.00 mm');
    expect(backwards([read('2026-01-01', 'bore', '50.08 mm', { left: '50.03 mm' }), after])).toBe(true);
  });
  it('is not two readings in unlike conditions', () => {
    const [hot, cold] = [{ condition: ['hot'] }, { condition: ['clean', 'cold'] }];
    expect(backwards([read('2026-01-01', 'bore', '50.08 mm', hot), read('2026-02-01', 'bore', '50.03 mm', cold)])).toBe(
      false,
    );
    const turned = { condition: ['cold', 'clean'] };
    expect(
      backwards([read('2026-01-01', 'bore', '50.08 mm', turned), read('2026-02-01', 'bore', '50.03 mm', cold)]),
    ).toBe(true);
  });
  it('is not a rim that was trued between', () => {
    const data = {
      limits: [limit('rim-run-out', '0 to 0.5 mm', '2.0 mm max')],
      fasteners: [fastener('spoke-nipple', { disturbs: ['rim-run-out'] })],
    };
    const [first, second] = [read('2026-01-01', 'rim-run-out', '1.8 mm'), read('2026-03-01', 'rim-run-out', '0.6 mm')];
    const trued = job('2026-02-01', { kind: 'service', work: [work('tightened', 'spoke-nipple')] });
    expect(backwards([first, second], data)).toBe(true);
    expect(backwards([first, trued, second], data)).toBe(false);
  });
});

describe('queries', () => {
  it.each(Object.entries(cases))('%s', (code, [raises, quiet]) => {
    expect(raised(raises)).toContain(code);
    expect(raised(quiet)).not.toContain(code);
  });
  it('has a pair of cases for every code, and each code only asks', () => {
    const found = codesOfLooks();
    expect(found.length).toBeGreaterThan(30);
    expect(Object.keys(cases).toSorted()).toEqual(found);
    const severities: Readonly<Record<string, string>> = codes;
    expect(found.filter((code) => severities[code] !== 'query')).toEqual([]);
  });
  it('puts what can hurt the rider before the paper', () => {
    const jobs = [
      job('2026-01-01', { money: [paid('deposit', '40.00 GBP')], work: [work('opened', 'points cover')] }),
      ride('2026-02-01'),
    ];
    const order = raised({ jobs });
    expect(order.indexOf('ridden-with-thing-open')).toBeLessThan(order.indexOf('done-with-things-open'));
    expect(order.indexOf('done-with-things-open')).toBeLessThan(order.indexOf('deposit-not-back'));
  });
  it('counts later rides instead of repeating them', () => {
    const jobs = [ride('2026-02-01'), ride('2026-02-02'), ride('2026-02-03')];
    const made = book(jobs, '2026-06-01', { content: road });
    const held = made.queries.filter((one) => one.code === 'ridden-while-held');
    expect(held).toHaveLength(1);
    expect(held[0]?.message).toContain('and 2 more after it');
  });
  it('raises nothing on an empty folder', () => {
    expect(raised({ machine: { clock: [period('one', ['2020-01-01', '0 mi'])] } })).toEqual([]);
  });
});
