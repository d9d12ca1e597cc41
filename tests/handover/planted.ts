// A machine with a word planted in every place of a record where words can stand.
import { small } from '../command/small-machine.ts';

/** A record with the word in all its running words. `word` must not upset YAML. */
export function plantedJob(word: string): string {
  return `---
title: Seat off, ${word} came by
date: 2024-05-04
kind: repair
state: done
for: rattle that ${word} heard
hands: [owner]
odometer: 1010 mi
# ${word} lent the puller
work:
  - {removed: seat, where: shelf behind ${word}, note: the bolt ${word} wanted}   # asked ${word}
readings:
  - {item: ring-gap, found: 0.25 mm, note: read by ${word}}
parts:
  - {part: seat cover of ${word}, from: "${word}, by post", note: ${word} sewed it}
findings:
  - {id: seat-torn, saw: ${word} tore it, became: left to ${word}}
releases:
  - {of: before-moving, by: owner, why: ${word} pushed it}
corrections:
  - {record: 2024-03-02-bought, item: odometer, was: 1000 mi, is: 1001 mi, why: ${word} misread it}
remarks:
  - {at: some/blank, says: ask ${word}}
ride: {where: private land, weather: fine at ${word}, what happened: met ${word}}
run log: [{minute: 0, saw: ${word} held the lamp}]
photos:
  - {file: photos/plain.jpg, caption: Seat of ${word}}
state left:
  - seat with ${word}
next: ring ${word}
---
Sewn by ${word}. **${word}** again, in \`${word}\`, and

> ${word}

| who | what |
|---|---|
| ${word} | seat |

![${word} at work](photos/plain.jpg)
`;
}

export function plantedFolder(word: string): Readonly<Record<string, string>> {
  return {
    ...small,
    'machine.yaml': `${small['machine.yaml'] ?? ''}# bought from ${word}\nprivate words: ["${word}"]\n`,
    'maker/book.yaml': `# lent by ${word}\n${small['maker/book.yaml'] ?? ''}`,
    'jobs/2024-05-04-seat.md': plantedJob(word),
    'story.md': `It stood with ${word} for years.\n`,
  };
}
