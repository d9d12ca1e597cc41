// The contact sheet as one grey PNG, composed of the pages and their labels.
import sharp from 'sharp';
import { element, letters } from '../drawing/pen.ts';
import type { PagePicture } from './pages.ts';
import { cell, contactPlan, type ContactPlan } from './places.ts';

const ground = '#b8b8b8';
const gap = 4;
const lettering = 15;

/** Writes the contact sheet. A page larger than its cell is made to fit. Rejects when there is no page. */
export async function contactPicture(pages: readonly PagePicture[], file: string): Promise<void> {
  if (pages.length === 0) throw new Error('there is no page to show');
  const plan = contactPlan(pages);
  const size = { width: plan.width, height: plan.height };
  const fitted = await Promise.all(plan.places.map(({ page }) => fit(page.png)));
  const drawn = plan.places.flatMap(({ left, top }, at) => {
    const input = fitted[at];
    return input === undefined ? [] : [{ input, left: left + gap, top: top + cell.label }];
  });
  await sharp({ create: { ...size, channels: 3, background: ground }, limitInputPixels: false })
    .composite([...drawn, { input: Buffer.from(labels(plan)), left: 0, top: 0 }])
    .greyscale()
    .png({ palette: true, colours: 16, dither: 0 })
    .toFile(file);
}

function fit(png: Uint8Array): Promise<Buffer> {
  const room = { width: cell.width - 2 * gap, height: cell.height - cell.label - gap };
  return sharp(png)
    .resize({ ...room, fit: 'inside', withoutEnlargement: true })
    .png()
    .toBuffer();
}

function labels({ width, height, places }: ContactPlan): string {
  const words = places.map(({ left, top, label }) =>
    label === undefined ? '' : letters(label, [left + gap, top + lettering], lettering),
  );
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', width, height }, words.join(''));
}
