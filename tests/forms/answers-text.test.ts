// The text from a telephone: through messages that quote it, pad it or turn its line ends; refused whole when it was cut or changed.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answersText } from '../../src/bench/phone-answers.ts';
import { remarkOn } from '../../src/bench/phone-remark.ts';
import { answersBegin, readAnswersText } from '../../src/command/take/answers-text.ts';

const carried = { form: '1', machine: 'Larkmoor Pipit 175', job: '2026-11-21-top-end-again' };
const answers = [
  { blank: 'a/bore/left [top]/found', asks: 'Bore, left', value: '50,52', given: '' },
  { blank: 'a/100%/left', asks: 'Word', value: 'was [x] y # z', given: 'old words' },
];
const text = answersText(carried, answers);
const read = {
  carries: JSON.stringify(carried),
  answers: [
    { blank: 'a/bore/left [top]/found', value: '50,52', before: '' },
    { blank: 'a/100%/left', value: 'was [x] y # z', before: 'old words' },
  ],
};

describe('answers as text', () => {
  it('come back as they were', () => {
    expect(readAnswersText(text)).toEqual(read);
    expect(answersBegin.test(text)).toBe(true);
  });

  it.each([
    ['with other line ends', text.replaceAll('\n', '\r\n')],
    ['with a mark of byte order', `\uFEFF${text}`],
    ['quoted in an answer to a message', text.replaceAll(/^/gm, '> ')],
    ['quoted twice', text.replaceAll(/^/gm, '> > ')],
    ['padded', text.replaceAll(/$/gm, '  ')],
    ['inside a message', `Here it is:\n\n${text}\nSee you on Saturday.\n`],
    ['without its remarks', text.replaceAll(/^#.*\n/gm, '')],
  ])('come back %s', (_, changed) => {
    expect(readAnswersText(changed)).toEqual(read);
  });

  it('are refused when they were cut anywhere', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.trimEnd().length - 1 }), (at) => {
        expect(readAnswersText(text.slice(0, at))).toHaveProperty('why');
      }),
    );
  });

  it('are refused when a line is missing, wrapped or not of them, and the line is named', () => {
    const lines = text.split('\n');
    const answer = lines.findIndex((line) => line.startsWith('[a/bore'));
    expect(readAnswersText(lines.toSpliced(answer, 1).join('\n'))).toHaveProperty('why');
    const wrapped = lines.toSpliced(answer, 1, '[a/bore/left', '[top%5D/found] 50,52').join('\n');
    expect(readAnswersText(wrapped)).toMatchObject({ line: answer + 1 });
    expect(readAnswersText(lines.toSpliced(answer, 0, 'by the way').join('\n'))).toMatchObject({ line: answer + 1 });
    expect(readAnswersText('no answers here')).toHaveProperty('why');
  });
});

describe('what a telephone says at once of a value', () => {
  const beside = { unit: 'mm', limit: '50.60 mm max', last: '50.51 mm, 12 March 2025' };
  it.each([
    ['50,52', ''],
    ['50.52 mm', ''],
    ['1.989 in', ''],
    ['50.61', 'Past the limit'],
    ['5.05', 'Far from the last reading'],
    ['505.2', 'Past the limit'],
    ['?', ''],
    ['-', ''],
    ['', ''],
    ['worn', 'not read as a value in mm'],
  ])('%s', (value, says) => {
    const said = remarkOn(value, beside);
    if (says === '') expect(said).toBe('');
    else expect(said).toContain(says);
  });
  it('holds a lower limit, and says nothing without a unit', () => {
    expect(remarkOn('8', { unit: 'bar', limit: '9.0 bar min', last: '' })).toContain('Past the limit');
    expect(remarkOn('9.5', { unit: 'bar', limit: '9.0 bar min', last: '' })).toBe('');
    expect(remarkOn('seized', { unit: '', limit: '', last: '' })).toBe('');
  });
});
