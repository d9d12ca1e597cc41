// Names, addresses, telephone numbers, e-mail and key numbers in open text: what is found, what is not, and where it is said to be.
import { describe, expect, it, test } from 'vitest';
import { isAPersonsName, privateWords } from '../../src/book/private-words.ts';
import { evening, machineFile } from '../evenings/evening.ts';

const told = (text: string): readonly string[] => privateWords(text).map((one) => `${one.text}: ${one.gives}`);

describe('private words', () => {
  test.each([
    ['write to me at t.baker@mail.example.org', 't.baker@mail.example.org: an e-mail address'],
    ['ring +44 1632 960 123 after six', '+44 1632 960 123: a telephone number'],
    ['ring 01632 960123', '01632 960123: a telephone number'],
    ['(212) 555-0123 at noon', '(212) 555-0123: a telephone number'],
    ['(01632) 960123 at noon', '(01632) 960123: a telephone number'],
    ['TEL 96  01  23', '96  01  23: a telephone number'],
    ['sent to ZZ9A 9ZZ', 'ZZ9A 9ZZ: an address'],
    ['the phone is 960 1234', '960 1234: a telephone number'],
    ['stood at 12 Old Mill Road for years', '12 Old Mill Road: an address'],
    ['by the canal, QZ1 4QJ', 'QZ1 4QJ: an address'],
    ['in der Mühlenstraße 14', 'Mühlenstraße 14: an address'],
    ['bought from Mrs Fairweather', 'Mrs Fairweather: a name'],
    ['from Dr. Ada Finch', 'Dr. Ada Finch: a name'],
    ['my brother Tobin held the lamp', 'Tobin: a name'],
    ['It was the former owner Ada Finch who painted it', 'Ada Finch: a name'],
    ['insured with Harrow Mutual since May', 'Harrow Mutual: an insurance'],
    ['under policy number HM-2231/7', 'HM-2231/7: an insurance'],
  ])('%s', (text, word) => expect(told(text)).toEqual([word]));

  test.each([
    '12 480 miles on the clock, 8 106 before it',
    'frame LP175-04417, engine LE175-04390',
    '22 N·m, M6x25, 0.35 mm, 6.8 bar, 25:1',
    'part 12345-678-90 in the book, 013-2045 as bought',
    'SAE 10W-30, 650 ml, on 2026-05-02 at 15:30',
    'The Road to the lake was wet; Mill Lane was dry',
    'code 4219: week 42 of 2019',
    'the former owner had painted it; the seller said so.',
    'the insurer asks for a photograph; policy of the house: read first',
  ])('nothing in: %s', (text) => expect(told(text)).toEqual([]));

  it('takes a role and initials for a hand, and a name for a person', () => {
    expect(['owner', 'helper', 'TB', 'T.B.', '?'].filter(isAPersonsName)).toEqual([]);
    expect(['Tom', 'T. Baker', 'Ada Finch', "O'Neill"].filter(isAPersonsName)).toHaveLength(4);
  });
});

describe('the query', () => {
  const asked = (lines: string, numbers = ''): readonly string[] =>
    evening(
      '2026-06-01',
      { '2026-05-01-a': lines },
      { machine: machineFile({ numbers: `{frame: {stamped: LW125-01234, known by: headstock}${numbers}}` }) },
    )
      .problems.filter((one) => one.code === 'private-in-open-text')
      .map((one) => one.message);

  it('finds the number of a key wherever it is repeated, and asks for its mark', () => {
    const key = ', key: {stamped: K 4127, private: yes}';
    expect(asked('state left: [spare key k4127 under the seat]', key)).toEqual([
      'k4127: the key number in open text; whoever is given the records or the printed history reads it',
    ]);
    expect(asked('state left: [spare key under the seat]', key)).toEqual([]);
    expect(asked('kind: repair', ', key: {stamped: K4127}')).toEqual([
      'key number K4127 is not marked private: whoever reads it can have the key cut',
    ]);
  });

  it('tells a name once, with how often it stands elsewhere', () => {
    expect(asked('hands: [Ada Finch]\nsigned: {by: Ada Finch, date: 2026-05-01}')).toEqual([
      'Ada Finch: a name in open text (and in 1 more place); whoever is given the records or the printed history reads it',
    ]);
  });

  it('does not look at what is marked private', () => {
    expect(asked('for: {value: "ring 01632 960 123", private: yes}')).toEqual([]);
    expect(asked('work: [{removed: seat, note: {value: "Mrs Finch has it", private: yes}}]')).toEqual([]);
    expect(asked('work: [{removed: seat, note: "Mrs Finch has it"}]')).toHaveLength(1);
    expect(asked('hands: [{value: Ada Finch, private: yes}, owner]')).toEqual([]);
  });
});
