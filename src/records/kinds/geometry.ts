// Bore, stroke, gearing, tyres: what the calculations start from.
import type { Read } from '../../quantity/quantity.ts';
import { readNumber } from '../../quantity/read-number.ts';
import type { Geometry, ToothPair } from '../model.ts';
import { group, may, or } from '../shapes/fields.ts';
import { quantity, taken } from '../shapes/measured.ts';
import { list, number, scalar, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';

/** `14:38`: teeth of the driving and of the driven wheel. */
const teeth: Shape<ToothPair> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    return words === undefined ? undefined : taken(readTeeth(words), spot, desk);
  },
  told: { kind: 'text', written: 'teeth driving and driven', example: '14:38' },
};

function readTeeth(words: string): Read<ToothPair> {
  const found = /^(\d{1,3})\s*[:/]\s*(\d{1,3})$/u.exec(words.trim());
  const [driving, driven] = [Number(found?.[1] ?? 0), Number(found?.[2] ?? 0)];
  if (driving > 0 && driven > 0) return { ok: true, value: { driving, driven } };
  const message = `“${words}” is not a pair of tooth counts`;
  return { ok: false, why: { code: 'number-unreadable', message, hint: 'write driving:driven, for example 14:38' } };
}

type CompressionRatio = NonNullable<Geometry['compressionRatio']>;

/** `7.0:1`, `7.0:1 from port closing`. */
const compressionRatio: Shape<CompressionRatio> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    return words === undefined ? undefined : taken(readCompressionRatio(words), spot, desk);
  },
  told: {
    kind: 'text',
    written: 'a ratio, over the full stroke or from port closing',
    example: '7.0:1 from port closing',
  },
};

function readCompressionRatio(words: string): Read<CompressionRatio> {
  const found = /^([\d.,]+)\s*(?::\s*1)?(?:\s+(?:from|over)\s+(?:the\s+)?(full stroke|port closing))?$/u.exec(
    words.trim(),
  );
  if (found === null) {
    const message = `“${words}” is not a compression ratio`;
    const hint = 'write 7.0:1, or 7.0:1 from port closing';
    return { ok: false, why: { code: 'number-unreadable', message, hint } };
  }
  const ratio = readNumber(found[1] ?? '');
  if (!ratio.ok) return ratio;
  const from = found[2] === 'port closing' ? 'port closing' : 'full stroke';
  return { ok: true, value: { ratio: ratio.value.value, decimals: ratio.value.decimals, from } };
}

const chain = group({
  pitch: may(quantity('length', '12.7 mm'), 'pitch of the chain'),
  links: may(number(20, 300, 'whole'), 'links of the chain', { example: '108' }),
});

export const geometry: Shape<Geometry> = andThen(
  group({
    bore: may(quantity('length', '50 mm'), 'bore'),
    stroke: may(quantity('length', '44.5 mm'), 'stroke'),
    rod: may(quantity('length', '95 mm'), 'connecting rod, between centres'),
    compressionRatio: may(compressionRatio, 'compression ratio and what it counts from'),
    primary: may(teeth, 'primary drive, crankshaft first', { example: '22:68' }),
    gears: or(list(teeth), [], 'gearbox pairs, first gear first', { example: '[13:36, 18:31]' }),
    final: may(teeth, 'gearbox sprocket and rear sprocket', { example: '14:38' }),
    frontTyre: may(text, 'front tyre as marked', { example: '2.75-17' }),
    rearTyre: may(text, 'rear tyre as marked', { example: '3.00-17' }),
    flywheel: may(quantity('length', '92 mm'), 'outside diameter of the flywheel or rotor rim, as you measured it'),
    chain: may(chain, 'the final chain', { example: '{pitch: 12.7 mm, links: 108}' }),
  }),
  ({ chain: links, ...rest }) => ({
    ...rest,
    ...(links?.pitch === undefined ? {} : { chainPitch: links.pitch }),
    ...(links?.links === undefined ? {} : { chainLinks: links.links }),
  }),
);
