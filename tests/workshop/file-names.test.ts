// Names of files: what Linux, Windows and macOS each refuse or take for the same, and copies that sharing leaves behind.
import { expect, test } from 'vitest';
import { namedCopy } from '../../src/source/conflict-copies.ts';
import { nameFault, nameKey, pathFault } from '../../src/source/file-names.ts';

test.each([
  '2026-05-01-plug.md',
  'it’s «done».md',
  'Größe 日本.md',
  'console.md',
  'com.md',
  'com10.md',
  'nullify.md',
  '.schema',
  'a'.repeat(255),
  '日'.repeat(85),
])('%s can be kept everywhere', (name) => expect(nameFault(name)).toBeUndefined());

test.each([
  ['what?.md', 'it has the character ? in it'],
  ['a:b.md', 'it has the character : in it'],
  ['a"b.md', 'it has the character " in it'],
  ['a|b', 'it has the character | in it'],
  ['a\\b', 'it has the character \\ in it'],
  ['a<b', 'it has the character < in it'],
  ['a*b', 'it has the character * in it'],
  ['a\tb', 'it has a control character (9) in it'],
  ['a\u0000b', 'it has a control character (0) in it'],
  ['trailing.', 'it ends with a space or a dot'],
  ['trailing ', 'it ends with a space or a dot'],
  [' leading', 'it begins with a space'],
  ['CON', '“CON” is the name of a device there'],
  ['nul.md', '“nul” is the name of a device there'],
  ['Aux.tar.gz', '“Aux” is the name of a device there'],
  ['COM1', '“COM1” is the name of a device there'],
  ['lpt³.md', '“lpt³” is the name of a device there'],
  ['a'.repeat(256), 'it is 256 bytes long, and 255 are allowed'],
  ['日'.repeat(86), 'it is 258 bytes long, and 255 are allowed'],
  ['..', 'it is no name of its own'],
  ['', 'it is no name of its own'],
])('%j cannot', (name, why) => expect(nameFault(name)).toBe(why));

test('every part of a path counts, and its whole length', () => {
  expect(pathFault('photos/a/b.jpg')).toBeUndefined();
  expect(pathFault('photos/con/b.jpg')).toContain('device');
  expect(pathFault(`photos/${'d/'.repeat(100)}b.jpg`)).toBe(
    'its way is 212 characters long, and no more than 180 always fit',
  );
});

test('letter case and the two ways to write an accent are one name; other letters are not', () => {
  expect(nameKey('photos/GRÖSSE.jpg')).toBe(nameKey('photos/gro\u0308sse.JPG'));
  expect(nameKey('ΟΔΟΣ')).toBe(nameKey('οδος'));
  expect(nameKey('photos/a.jpg')).not.toBe(nameKey('photos/ä.jpg'));
});

const folder = (name: string) => ['plug.md', 'gaskets.md'].includes(name);

test.each([
  ['plug (conflicted copy 2026-05-01).md', 'conflict', 'plug.md'],
  ['plug (desk’s conflicted copy 2026-05-01 3).md', 'conflict', 'plug.md'],
  ['plug [conflict].md', 'conflict', 'plug.md'],
  ['plug.sync-conflict-20260501-101500-ABCDEFG.md', 'conflict', 'plug.md'],
  ['plug_conflict-20260501-101500.md', 'conflict', 'plug.md'],
  ['plug (1).md', 'conflict', 'plug.md'],
  ['plug - Copy.md', 'conflict', 'plug.md'],
  ['plug copy 2.md', 'conflict', 'plug.md'],
  ['Copy of plug.md', 'conflict', 'plug.md'],
  ['plug.md~', 'left over', 'plug.md'],
  ['plug.md.orig', 'left over', 'plug.md'],
  ['plug.md.r12', 'left over', 'plug.md'],
  ['plug_LOCAL_4711.md', 'left over', 'plug.md'],
])('%s is a copy', (name, kind, of) => expect(namedCopy(name, folder)).toEqual({ kind, of }));

test.each([
  'plug.md',
  'brake (1).md',
  'carbon copy.md',
  '2026-05-01-conflict-of-gaskets.md',
  '2026-05-01-copy-of-the-papers.md',
  'plug (first try).md',
])('%s is none', (name) => expect(namedCopy(name, folder)).toBeUndefined());
