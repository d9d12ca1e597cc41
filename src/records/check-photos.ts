// Photos named in records: inside the folder, through no link, and there.
import type { Place, Problem } from '../problem/problem.ts';
import type { Asset } from '../source/files.ts';
import type { Job, Records } from './model.ts';
import { nearest } from './nearest.ts';
import { below } from './reference.ts';
import { keptFlat } from './runs.ts';

/** Paths that leave the folder, lead through a symbolic link, or lead nowhere. */
export function checkPhotos({ machine, wiring, jobs }: Records, assets: readonly Asset[]): readonly Problem[] {
  const known = new Map(assets.map((asset) => [asset.file.normalize('NFC'), asset]));
  const named = [
    ...machine.numbers.flatMap(({ name, photo }) =>
      photo === undefined ? [] : [{ file: photo, at: { file: machine.file, path: ['numbers', name, 'photo'] } }],
    ),
    ...[...(wiring?.wires ?? []), ...(wiring?.runs ?? [])].flatMap(({ photo, at }) =>
      photo === undefined ? [] : [{ file: photo, at: below(at, 'photo') }],
    ),
    ...photosOf(jobs),
  ];
  return named.flatMap(({ file, at }) => ofPath(file, at, known));
}

const photosOf = keptFlat((job: Job) => job.photos.map(({ file, at }) => ({ file, at: below(at, 'file') })));

function ofPath(file: string, at: Place, known: ReadonlyMap<string, Asset>): readonly Problem[] {
  if (climbs(file)) {
    const message = `“${file}” leads out of the machine folder.`;
    const hint = 'Copy the picture into photos/ and write its path from the machine folder, with forward slashes.';
    return [{ code: 'path-climbs', severity: 'problem', at, message, hint }];
  }
  const clean = file.normalize('NFC').replace(/^(?:\.\/)+/u, '');
  const asset = known.get(clean);
  if (asset?.link === true || throughLink(clean, known)) {
    const message = `“${file}” is reached through a symbolic link; links are not followed.`;
    return [
      { code: 'path-through-link', severity: 'problem', at, message, hint: 'Put the picture itself into photos/.' },
    ];
  }
  if (asset !== undefined) return [];
  const near = nearest(clean, known.keys());
  const hint =
    near.length > 0
      ? `Did you mean ${near.map((name) => `“${name}”`).join(' or ')}?`
      : 'Put the picture there, or take the line away.';
  return [
    {
      code: 'photo-missing',
      severity: 'problem',
      at,
      message: `There is no file “${file}” in the machine folder.`,
      hint,
    },
  ];
}

/** Absolute, with a drive letter, a scheme or a backslash, or with `..` in it. */
export function climbs(path: string): boolean {
  return /^[/~]|^[\p{L}][\p{L}\d+.-]*:|\\/u.test(path) || path.split('/').includes('..');
}

function throughLink(path: string, known: ReadonlyMap<string, Asset>): boolean {
  const parts = path.split('/');
  return parts.some((_part, i) => known.get(parts.slice(0, i + 1).join('/'))?.link === true);
}
