// The files that every site carries besides its pages: the stylesheet, the script and the typefaces.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ownFolder } from './own-folder.ts';

/** A file of the project that is copied into a site as it is; `file` lies below the output folder. */
export interface SiteAsset {
  readonly file: string;
  readonly absolute: string;
}

/** Scripts that only some pages ask for. */
const scripts = ['next-test', 'workings', 'search', 'photo-view', 'log'];
const faces = ['splitpin-sans-regular', 'splitpin-sans-italic', 'splitpin-sans-semibold', 'splitpin-signs'];

/** Every asset with where it lies in the installation. */
export function siteAssets(): readonly SiteAsset[] {
  const templates = ownFolder('templates');
  const fonts = ownFolder('src/pdf/fonts');
  return [
    { file: 'assets/splitpin.css', absolute: join(templates, 'splitpin.css') },
    { file: 'assets/splitpin.js', absolute: join(templates, 'splitpin.js') },
    ...scripts.map((name) => ({ file: `assets/${name}.js`, absolute: join(templates, `${name}.js`) })),
    { file: 'assets/LICENCE-OFL.txt', absolute: join(fonts, 'LICENCE-OFL.txt') },
    { file: 'assets/LICENCE-DejaVu.txt', absolute: join(fonts, 'LICENCE-DejaVu.txt') },
    ...faces.map((face) => ({ file: `assets/${face}.woff2`, absolute: join(fonts, `${face}.woff2`) })),
  ];
}

/** The bytes of an asset. */
export function readAsset(asset: SiteAsset): Uint8Array {
  return readFileSync(asset.absolute);
}
