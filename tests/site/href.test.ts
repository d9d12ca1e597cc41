// Relative addresses: a browser must find from any page exactly the file that was meant.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { relativeHref } from '../../src/render/href.ts';

it.each([
  ['index.html', 'log.html', 'log.html'],
  ['jobs/a.html', 'log.html', '../log.html'],
  ['jobs/a.html', 'jobs/b.html', 'b.html'],
  ['index.html', 'jobs/top end #2.html'.replace('#', '№'), 'jobs/top%20end%20%E2%84%962.html'],
  ['workings.html', 'workings.html#bore', '#bore'],
  ['jobs/a.html', 'workings.html#bore', '../workings.html#bore'],
  ['a/b/c.html', 'a/d/e.html', '../d/e.html'],
])('from %s to %s it is %s', (from, to, href) => {
  expect(relativeHref(from, to)).toBe(href);
});

it('leads a browser to the file from wherever the page lies', () => {
  const name = fc
    .string({ minLength: 1, unit: 'grapheme' })
    .filter((text) => !/[#/\\]/.test(text) && !/^\.{1,2}$/.test(text));
  const file = fc.array(name, { minLength: 1, maxLength: 4 }).map((names) => names.join('/'));
  fc.assert(
    fc.property(file, file, (from, to) => {
      const absolute = (path: string) => `file:///binder/${path.split('/').map(encodeURIComponent).join('/')}`;
      expect(new URL(relativeHref(from, to), absolute(from)).href).toBe(absolute(to));
    }),
  );
});
