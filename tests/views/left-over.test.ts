// A screw and a washer lie on the bench: the binder names the places they may belong to, and puts services together ahead of time.
import { describe, expect, it } from 'vitest';
import { makerFile, pageSays, record, sheetSays, smallBinder } from './small-folder.ts';

const fasteners = makerFile(`fasteners:
  - {id: points-cover-screw, name: Points cover screws, of: points cover, thread: M6x1.0, length: 25 mm, count: 3}
  - {id: clutch-cover-screw, name: Clutch cover screws, of: clutch cover, thread: M6x1.0, count: 9, lengths: {25 mm: 5, 45 mm: 4}}
  - {id: head-nut, name: Cylinder head nuts, of: cylinder head, thread: M8x1.25, count: 4, locking: plain washer}`);
const strip = record(`title: Covers off
date: 2026-05-01
kind: strip
state: done
photos: [{file: photos/covers.png, caption: Both covers}]
work:
  - {removed: points cover, bag: 4, fasteners: {points-cover-screw: 3}}
  - {removed: clutch cover, bag: 5, fasteners: {clutch-cover-screw: 9}}
  - {removed: cylinder head, bag: 6, fasteners: {head-nut: 4}}`);
const back = (last: string): string =>
  record(`title: Covers on
date: 2026-05-08
kind: assembly
state: done
work:
  - {refitted: points cover, fasteners: {points-cover-screw: 3}}
  - {refitted: clutch cover, fasteners: {clutch-cover-screw: 8}}
  - {refitted: cylinder head, fasteners: {head-nut: 4}}
${last}`);
const files = (last: string): Readonly<Record<string, string>> => ({
  'maker/book.yaml': fasteners,
  'jobs/2026-05-01-covers-off.md': strip,
  'jobs/2026-05-08-covers-on.md': back(last),
});

describe('left over', () => {
  it('names the cover that a screw is missing from first, with bag, date and photo', () => {
    const binder = smallBinder(files('left over: [{thread: M6, length: 25 mm, count: 1}, washer]'));
    const page = pageSays(binder, 'off.html');
    const [, told = ''] = page.split('Left over');
    expect(told).toMatch(
      /1 × M6 × 25 mm[\s\S]*Clutch cover screws[\s\S]*Points cover screws[\s\S]*washer[\s\S]*Cylinder head nuts/u,
    );
    expect(told).toMatch(/Clutch cover screws.*clutch cover, 1 May 2026.*5.*fewer went back than came off/u);
    expect(told).toContain('Both covers');
    expect(sheetSays(binder, 'state-left-in')).toContain('fewer went back than came off');
  });
  it('is over when a later record says so, and is no place where there is none', () => {
    const later = {
      'jobs/2026-05-09-found.md': record(
        'title: Found\ndate: 2026-05-09\nkind: assembly\nstate: done\nleft over: none',
      ),
    };
    const once = files('left over: [{thread: M5}]');
    expect(pageSays(smallBinder(once), 'off.html')).toContain('no place on record it would fit');
    expect(pageSays(smallBinder({ ...once, ...later }), 'off.html')).not.toContain('Left over');
  });
});

const services = makerFile(`services:
  - {id: filter, item: Air filter, do: clean, every: 8 months, grace: 20 %}
  - {id: fluid, item: Fluid of the damper, do: renew, every: 9 months}
  - {id: hose, item: Fuel hose, do: renew, every: 48 months}
  - {id: chain, item: Drive chain, do: adjust, every: 600 mi}`);
const done = record(`title: All done
date: 2026-04-01
kind: service
state: done
odometer: 1000 mi
services: [filter, fluid, hose, chain]`);
const serviced = smallBinder({ 'maker/book.yaml': services, 'jobs/2026-04-01-all.md': done }, '2026-10-01');

describe('services ahead', () => {
  it('are put together on a day within their grace', () => {
    const [, together = ''] = pageSays(serviced, 'service.html').split('is done together');
    expect(together).toMatch(/1 January 2027\nAir filter[^\n]*\nFluid of the damper/u);
    expect(sheetSays(serviced, 'service-due')).toContain('is done together');
  });
  it('stand on the sheet of the season where they fall due within it by time or by distance', () => {
    const sheet = sheetSays(serviced, 'service-ahead');
    expect(sheet).toContain('Air filter');
    expect(sheet).not.toContain('Fuel hose');
    const near = smallBinder(
      {
        'maker/book.yaml': services,
        'jobs/2026-04-01-all.md': done,
        'jobs/2026-09-30-ride.md': record('title: Out\ndate: 2026-09-30\nkind: ride\nstate: done\nodometer: 1200 mi'),
      },
      '2026-10-01',
    );
    expect(sheetSays(near, 'service-ahead')).toContain('Drive chain');
    expect(sheetSays(near, 'service-sheet')).not.toContain('Air filter');
  });
});
