// The workings at the bench: which calculations belong together when somebody stands there with one question, and which machines ask it.
import { appliesTo } from '../../book/applies.ts';
import type { Applies } from '../../records/content-model.ts';
import type { Features } from '../../records/model.ts';

/** A result that goes on into another calculation of the same page when nothing else is written there. */
export interface Passed {
  readonly from: string;
  readonly output: string;
  readonly to: string;
  readonly input: string;
}

export interface BenchWorking {
  /** Permanent: the name of its page, `bench/<id>.html`. */
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly calculations: readonly string[];
  readonly passed: readonly Passed[];
  /** What of the machine may be chosen between. */
  readonly choice?: 'fastener' | 'gear';
  /** Any value in every unit of its kind stands above the calculations. */
  readonly units?: boolean;
  /** Where only some kinds of machine ask it. */
  readonly applies?: Applies;
}

/** Calculations that a page leaves out where the machine has nothing of the kind. */
const forSome: Readonly<Record<string, Applies>> = {
  'oil-pump-use': { lubrication: ['pump'] },
  'gap-change': { trigger: ['points'] },
};

/** In the order in which a machine asks for them. */
export const benchWorkings: readonly BenchWorking[] = [
  {
    id: 'oil-in-fuel',
    title: 'Oil in the fuel, and topping up',
    about: 'How much oil goes into this much fuel, and how much into a tank that is not empty.',
    calculations: ['oil-in-fuel', 'tank-top-up', 'oil-pump-use'],
    passed: [],
    applies: { lubrication: ['premix', 'pump'] },
  },
  {
    id: 'torque-adaptor',
    title: 'Torque with an adaptor',
    about: 'What to set on the wrench when an adaptor makes it longer, and whether the wrench is fit for the figure.',
    calculations: ['wrench-setting', 'wrench-torque', 'wrench-range', 'torque-stages'],
    passed: [],
    choice: 'fastener',
  },
  {
    id: 'piston-position',
    title: 'Piston position and timing',
    about: 'Millimetres before the top, degrees of the crank and an arc on the rim, one from the other.',
    calculations: ['piston-position', 'crank-angle', 'rim-arc', 'top-from-stops', 'gap-change'],
    passed: [{ from: 'crank-angle', output: 'angle', to: 'rim-arc', input: 'angle' }],
  },
  {
    id: 'mixture',
    title: 'Mixture by altitude and temperature',
    about:
      'How the mixture shifts when the air is thinner or denser than where it was set, and the jet that makes up for it.',
    calculations: ['standard-atmosphere', 'humid-air', 'mixture-shift', 'jet-change'],
    passed: [
      { from: 'humid-air', output: 'density', to: 'mixture-shift', input: 'density now' },
      { from: 'humid-air', output: 'density', to: 'jet-change', input: 'density now' },
    ],
  },
  {
    id: 'gearing',
    title: 'Gearing and road speed',
    about: 'Ratio, speed at an engine speed, and what another sprocket or tyre makes the clock say.',
    calculations: ['overall-ratio', 'rolling-circumference', 'road-speed', 'clock-factor'],
    passed: [
      { from: 'overall-ratio', output: 'ratio', to: 'road-speed', input: 'ratio' },
      { from: 'rolling-circumference', output: 'circumference', to: 'road-speed', input: 'circumference' },
    ],
    choice: 'gear',
  },
  {
    id: 'chain-wear',
    title: 'Chain wear and adjustment',
    about: 'How far a chain has grown, at what length it is worn, and what its adjusters still hold.',
    calculations: ['chain-wear', 'chain-worn-length', 'chain-adjustment', 'chain-length'],
    passed: [],
    applies: { finalDrive: ['chain'] },
  },
  {
    id: 'threads',
    title: 'Threads and torques',
    about: 'The sizes of a thread and the strength of a bolt, and for a fastener of this machine what its book says.',
    calculations: ['thread-geometry', 'bolt-strength', 'torque-slip'],
    passed: [],
    choice: 'fastener',
  },
  {
    id: 'unit-slips',
    title: 'Units, and slips between them',
    about: 'One value in every unit of its kind, and what it would be if the number was meant in another one.',
    calculations: ['torque-slip'],
    passed: [],
    units: true,
  },
];

/** The workings of a machine, each with the calculations that it can ask; what nobody has looked at counts as every kind. */
export function workingsFor(features: Features): readonly BenchWorking[] {
  const asks = (applies: Applies | undefined): boolean => applies === undefined || appliesTo(applies, features);
  return benchWorkings
    .filter(({ applies }) => asks(applies))
    .map((working) => ({ ...working, calculations: working.calculations.filter((id) => asks(forSome[id])) }));
}

/** The page of a working. */
export function benchFile(id: string): string {
  return `bench/${id}.html`;
}
