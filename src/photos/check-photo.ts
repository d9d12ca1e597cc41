// Is this a picture that may be opened? Asked by `check` without a decoder, and again before one is used.
import type { Problem } from '../problem/problem.ts';
import type { Asset } from '../source/files.ts';
import { heicDecoder } from './heic-decoder.ts';
import { pictureHead } from './picture-head.ts';

/** Sixty megapixels is more than any camera of a home workshop gives; beyond it a small file can unpack to fill a memory. */
export const mostPixels = 60_000_000;

/** The problem with a photo as far as its head shows it; undefined when it may be opened. `heic` says whether HEIC can be read here. */
export function checkPhoto(asset: Asset, heic: () => boolean = canReadHeic): Problem | undefined {
  const head = headOf(asset.absolute);
  if (head === undefined) return notAPicture(asset.file);
  if (head.width === 0 || head.height === 0) return brokenPhoto(asset.file);
  if (head.kind === 'AVIF')
    return kindNotRead(asset.file, 'This photo is an AVIF picture, a kind that is not read here');
  if (head.width * head.height > mostPixels) return tooManyPixels(asset.file);
  if (head.kind !== 'HEIC' || heic()) return undefined;
  return kindNotRead(
    asset.file,
    'This photo is a HEIC picture, and the package that reads those, heic-decode, is not installed',
  );
}

function canReadHeic(): boolean {
  return heicDecoder() !== undefined;
}

function headOf(path: string): ReturnType<typeof pictureHead> {
  try {
    return pictureHead(path);
  } catch {
    return undefined;
  }
}

/** The picture could not be decoded to its end. */
export function brokenPhoto(file: string): Problem {
  return {
    code: 'photo-broken',
    severity: 'problem',
    at: { file, path: [] },
    message: 'This photo is broken: it cannot be read to its end.',
    hint: 'Copy it again from the camera, or save it anew as JPEG.',
  };
}

function kindNotRead(file: string, what: string): Problem {
  return {
    code: 'photo-kind-not-read',
    severity: 'problem',
    at: { file, path: [] },
    message: `${what}; it was not opened.`,
    hint: 'Save the picture as JPEG; many phones can be set to do so.',
  };
}

function notAPicture(file: string): Problem {
  return {
    code: 'photo-not-a-picture',
    severity: 'problem',
    at: { file, path: [] },
    message: 'This file is not a JPEG, PNG, WebP or HEIC picture, whatever its name says; it was not opened.',
    hint: 'Save the picture as JPEG; many phones can be set to do so.',
  };
}

function tooManyPixels(file: string): Problem {
  return {
    code: 'photo-too-large',
    severity: 'problem',
    at: { file, path: [] },
    message: 'This photo has more than 60 megapixels; it was not opened.',
    hint: 'Save a smaller copy: the binder prints at most 1600 pixels a side.',
  };
}
