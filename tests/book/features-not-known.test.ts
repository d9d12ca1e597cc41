// A feature written `?` decides nothing: everything for any of its kinds applies, and what needs the feature itself is not worked out.
import { describe, expect, it } from 'vitest';
import { appliesTo, whyNotFor } from '../../src/book/applies.ts';
import { notOnIt } from '../../src/book/due/topics.ts';
import { features } from '../../src/records/kinds/features.ts';
import { deskFor } from '../../src/records/shapes/desk.ts';
import { featureText } from '../../src/views/wording/feature.ts';

const known = {
  stroke: 'two',
  cylinders: '2',
  lubrication: 'pump',
  ignition: 'magneto',
  trigger: 'points',
  battery: 'no',
  lamps: 'no',
  'front brake': 'disc',
  'rear brake': 'drum',
  'final drive': 'chain',
  wheels: 'spoked',
};

function read(more: Readonly<Record<string, string>>) {
  const desk = deskFor('machine.yaml');
  const value = features.read({ ...known, ...more }, undefined, desk);
  if (value === undefined) throw new Error('not read');
  return { value, problems: desk.problems };
}

describe('features not known', () => {
  it('are read, named, and said to be not known', () => {
    const { value, problems } = read({ lubrication: '?', 'front brake': '?', cylinders: '?' });
    expect(problems).toEqual([]);
    expect(value.notKnown).toEqual(['cylinders', 'lubrication', 'frontBrake']);
    expect(featureText(value, 'lubrication')).toBe('not known');
    expect(featureText(value, 'rearBrake')).toBe('drum');
    expect(read({}).value.notKnown).toBeUndefined();
  });
  it('leave nothing out', () => {
    const { value } = read({ stroke: '?', battery: '?', cylinders: '?' });
    for (const stroke of ['two', 'four']) expect(appliesTo({ stroke: [stroke] }, value)).toBe(true);
    for (const cylinders of ['one', 'more']) expect(appliesTo({ cylinders: [cylinders] }, value)).toBe(true);
    expect(appliesTo({ battery: ['yes'] }, value)).toBe(true);
    expect(appliesTo({ battery: ['no'] }, value)).toBe(true);
    expect(whyNotFor({ wheels: ['cast'] }, value)).toBe('this machine: wheels spoked');
    expect(appliesTo({ stroke: ['four'] }, read({}).value)).toBe(false);
  });
  it('keep the lines of a schedule that may be for it', () => {
    expect([...notOnIt(read({ 'front brake': '?', lubrication: '?' }).value)]).toEqual(['battery']);
    expect([...notOnIt(read({ 'front brake': 'drum' }).value)]).toEqual(['battery', 'brake fluid', 'brake hose']);
  });
  it('a feature left out altogether is still asked for', () => {
    const desk = deskFor('machine.yaml');
    const { wheels: _, ...without } = known;
    features.read(without, undefined, desk);
    expect(desk.problems.map((one) => one.code)).toEqual(['key-missing']);
  });
  it('magneto and gearbox may be left out, and are then as unknown as when they are asked for', () => {
    const silent = read({}).value;
    expect([silent.magneto, silent.gearbox, silent.notKnown]).toEqual([undefined, undefined, undefined]);
    const asked = read({ magneto: '?', gearbox: '?' }).value;
    expect(asked.notKnown).toEqual(['magneto', 'gearbox']);
    for (const value of [silent, asked]) {
      expect(appliesTo({ magneto: ['flywheel'] }, value)).toBe(true);
      expect(appliesTo({ magneto: ['separate'], gearbox: ['separate'] }, value)).toBe(true);
      expect(featureText(value, 'magneto')).toBe('not known');
    }
  });
  it('a known magneto or gearbox keeps what is for another kind away', () => {
    const { value } = read({ magneto: 'separate', gearbox: 'unit' });
    expect(appliesTo({ magneto: ['separate'], gearbox: ['unit'] }, value)).toBe(true);
    expect(whyNotFor({ magneto: ['flywheel', 'none'] }, value)).toBe('this machine: magneto separate');
    expect(whyNotFor({ gearbox: ['separate'] }, value)).toBe('this machine: gearbox unit');
    const coil = read({ ignition: 'battery and coil' }).value;
    expect(appliesTo({ magneto: ['flywheel'] }, coil)).toBe(false);
    expect(appliesTo({ magneto: ['flywheel', 'none'] }, coil)).toBe(true);
  });
});
