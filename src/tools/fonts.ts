// Makes the shipped fonts from the originals, once: subset, renamed, as TTF for paper and WOFF2 for the screen.
// Needs fonttools with brotli (Debian: fonttools, python3-brotli). Run: npx tsx src/tools/fonts.ts
import { execFileSync } from 'node:child_process';
import { copyFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { renamed, type FontName } from './name-table.ts';

interface Cut {
  readonly from: string;
  readonly to: string;
  readonly characters: string;
  readonly name: FontName;
}

const root = fileURLToPath(new URL('../../', import.meta.url));
const fonts = root + 'src/pdf/fonts/';
const plex = root + 'node_modules/@expo-google-fonts/ibm-plex-sans/';
const dejavu = root + 'node_modules/dejavu-fonts-ttf/';

/** Latin with its extensions, Greek, Cyrillic, punctuation, currency, fractions, arrows and the operators Plex has. */
const latinGreekCyrillic =
  '0020-007E,00A0-024F,0259,02BB-02DD,0370-03FF,0400-052F,1E00-1EFF,2000-206F,2070-209F,20A0-20CF,2100-218F,2190-21FF,2200-22FF,25CA,2713';

/** Signs the text face lacks; scripts that are set without joining or turning (Armenian, Georgian). Right-to-left scripts are not set. */
const signs =
  '00A0,0180-024F,0250-02FF,0370-03FF,0400-052F,0531-058F,10A0-10FF,1E00-1EFF,2010-2064,2070-209F,20A0-20CF,2100-218F,2190-21FF,2200-22FF,2300-2328,2460-24FF,2500-25FF,2600-26FF,2701-27BF,2900-297F,2A00-2AFF,FFFD';

const ofl = {
  copyright:
    'Copyright 2017 IBM Corp. Subset and renamed for Splitpin; the original is IBM Plex Sans with Reserved Font Name "Plex".',
  licence: 'This Font Software is licensed under the SIL Open Font License, Version 1.1.',
  licenceAddress: 'https://openfontlicense.org',
};
const vera = {
  copyright:
    'Copyright (c) 2003 by Bitstream, Inc.; glyphs from Arev fonts copyright (c) 2006 by Tavmjong Bah; DejaVu changes are in public domain. Subset and renamed for Splitpin.',
  licence: 'Fonts are (c) Bitstream. See LICENCE-DejaVu.txt beside this file.',
  licenceAddress: 'https://dejavu-fonts.github.io/License.html',
};

const cuts: readonly Cut[] = [
  plexCut('400Regular/IBMPlexSans_400Regular', 'Regular'),
  plexCut('600SemiBold/IBMPlexSans_600SemiBold', 'SemiBold'),
  plexCut('400Regular_Italic/IBMPlexSans_400Regular_Italic', 'Italic'),
  {
    from: dejavu + 'ttf/DejaVuSans.ttf',
    to: 'splitpin-signs',
    characters: signs,
    name: { family: 'Splitpin Signs', style: 'Regular', ...vera },
  },
];

function plexCut(file: string, style: string): Cut {
  return {
    from: plex + file + '.ttf',
    to: 'splitpin-sans-' + style.toLowerCase(),
    characters: latinGreekCyrillic,
    name: { family: 'Splitpin Sans', style, ...ofl },
  };
}

function makeFont(cut: Cut): void {
  const ttf = fonts + cut.to + '.ttf';
  execFileSync('pyftsubset', [
    cut.from,
    '--unicodes=' + cut.characters,
    '--layout-features=kern',
    '--no-hinting',
    '--notdef-outline',
    '--drop-tables+=DSIG,STAT,FFTM,GSUB,MATH',
    '--output-file=' + ttf,
  ]);
  writeFileSync(ttf, renamed(readFileSync(ttf), cut.name));
  const woff = fonts + cut.to + '.woff2';
  rmSync(woff, { force: true });
  execFileSync('fonttools', ['ttLib.woff2', 'compress', '-o', woff, ttf]);
}

for (const cut of cuts) makeFont(cut);
copyFileSync(plex + 'LICENSE_FONT', fonts + 'LICENCE-OFL.txt');
copyFileSync(dejavu + 'LICENSE', fonts + 'LICENCE-DejaVu.txt');
