// The page for a telephone as a text: one file, allowed only what stands inside it, and no record's text becomes markup.
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { renderPhonePage, type PhonePage } from '../../src/render/phone-page.ts';

const hostile = `"><script>alert('x')</script></style><img src=x onerror=alert(1)>`;
const page: PhonePage = {
  title: hostile,
  machine: hostile,
  about: hostile,
  language: 'en-GB',
  carried: JSON.stringify({ job: hostile }),
  parts: [
    {
      title: hostile,
      lots: [
        {
          step: hostile,
          asks: hostile,
          about: hostile,
          caution: { grade: 'WARNING', text: hostile },
          fields: (['value', 'tick', 'text'] as const).map((kind, index) => ({
            id: hostile,
            place: `b${String(index)}`,
            kind,
            asks: hostile,
            label: hostile,
            unit: hostile,
            limit: hostile,
            last: hostile,
            given: hostile,
          })),
        },
      ],
    },
  ],
};
const html = renderPhonePage(page);

function inside(tag: string): readonly string[] {
  return [...html.matchAll(new RegExp(`<${tag}>([\\s\\S]*?)</${tag}>`, 'g'))].map((found) => found[1] ?? '');
}

describe('the page for a telephone', () => {
  it('allows its own style and script by their hash, and nothing else', () => {
    const [policy = ''] = /default-src [^"]*/.exec(html) ?? [];
    for (const tag of ['style', 'script']) {
      const [text = '', ...more] = inside(tag);
      expect(more).toEqual([]);
      const hash = createHash('sha256').update(text).digest('base64');
      expect(policy.replaceAll('&#39;', "'")).toContain(`${tag}-src 'sha256-${hash}'`);
    }
    expect(policy.replaceAll('&#39;', "'")).toMatch(/^default-src 'none'; .*base-uri 'none'; form-action 'none'$/);
    const markup = html.replace(inside('script')[0] ?? '', '');
    expect(/<(?:link|img|iframe|object|a)\b|\burl\(|@import/.exec(markup)?.[0]).toBeUndefined();
    expect(/https?:|\bfetch\(|XMLHttpRequest|sendBeacon/.exec(html)?.[0]).toBeUndefined();
  });

  it('shows what records say and runs none of it', () => {
    expect(html).not.toContain('<img');
    expect(html.match(/<script/g)).toHaveLength(1);
    expect(html).toContain('&lt;script&gt;');
  });

  it('is the same each time', () => {
    expect(renderPhonePage(page)).toBe(html);
  });
});
