import { describe, expect, test } from 'vitest';
import { planSvg } from '../../src/index.ts';
import { escapeText } from '../../src/svg/escape.ts';
import { assessed, bareJob, DEMO_NAMES, demo } from '../jobs.ts';
import { allOf, readTags, wordsOf } from '../tags.ts';

describe.each(DEMO_NAMES)('the plan of %s as SVG', (name) => {
  const { job, assessment } = demo(name);
  const svg = planSvg(job, assessment, { widthPx: 960, ground: 'daylight' });
  const root = readTags(svg, 'xml');
  const all = allOf(root);

  test('is well formed, sized and named for those who do not see it', () => {
    expect(root.name).toBe('svg');
    expect(root.attributes.xmlns).toBe('http://www.w3.org/2000/svg');
    expect(root.attributes.width).toBe('960');
    const [title, about] = root.attributes['aria-labelledby'].split(' ');
    const named = (id: string) => all.find((e) => e.attributes.id === id);
    expect(wordsOf(named(title) as never)).toBe('Plan of the space');
    expect(wordsOf(named(about) as never)).toContain(`${assessment.geometry.edges.length} walls`);
  });

  test('has finite coordinates only', () => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('cuts at outlines that are there', () => {
    const ids = new Set(all.map((e) => e.attributes.id));
    for (const e of all) {
      const cut = /^url\(#(.*)\)$/.exec(e.attributes['clip-path'] ?? '')?.[1];
      if (cut !== undefined) expect(ids.has(cut)).toBe(true);
    }
  });

  test('differs between the grounds in color alone', () => {
    const plain = (text: string) => text.replace(/#[0-9a-f]{6}/g, '#');
    const under = planSvg(job, assessment, { widthPx: 960, ground: 'under' });
    expect(under).not.toBe(svg);
    expect(plain(under)).toBe(plain(svg));
  });
});

test('hostile names stay text', () => {
  const name = `</text><script>alert("1" & '2')</script>`;
  const { job, assessment } = assessed({
    ...bareJob,
    plan: {
      ...bareJob.plan,
      zones: [
        {
          id: 'z',
          name,
          outline: [
            { xM: 1, yM: 0.5 },
            { xM: 6, yM: 0.5 },
            { xM: 3, yM: 4 },
          ],
          ground: { cover: 'gravel' },
        },
      ],
    },
  });
  const svg = planSvg(job, assessment, { widthPx: 900, ground: 'paper' });
  const all = allOf(readTags(svg, 'xml'));
  expect(all.some((e) => e.name === 'script')).toBe(false);
  const texts = all.filter((e) => e.name === 'text').map(wordsOf);
  expect(texts.join(' ')).toContain('<script>');
});

test('control characters and half surrogates do not get into XML', () => {
  expect(escapeText('a\u0000b\ud800c\tD')).toBe('a\ufffdb\ufffdc\tD');
});

test.each([239, 8001, Number.NaN])('a width of %d is refused with the range', (widthPx) => {
  const { job, assessment } = demo('sound-closed');
  expect(() => planSvg(job, assessment, { widthPx, ground: 'paper' })).toThrow('240 to 8000');
});
