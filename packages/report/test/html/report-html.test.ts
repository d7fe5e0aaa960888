import { describe, expect, test } from 'vitest';
import { base64 } from '../../src/html/base64.ts';
import { reportHtml } from '../../src/index.ts';
import { assessed, bareJob, DEMO_NAMES, demo, packageFonts } from '../jobs.ts';
import { allOf, type Element, readTags, wordsOf } from '../tags.ts';

const fonts = packageFonts();

describe.each(DEMO_NAMES)('the page of %s', (name) => {
  const { job, assessment } = demo(name);
  const html = reportHtml(job, assessment, { fonts });
  const root = readTags(html, 'html');
  const all = allOf(root);
  const named = (tag: string) => all.filter((e) => e.name === tag);

  test('is well formed, in English, with its title', () => {
    expect(root.name).toBe('html');
    expect(root.attributes.lang).toBe('en-US');
    expect(wordsOf(named('title')[0])).toBe(job.header.title);
  });

  test('needs nothing else: no script, no address on the net, fonts inside', () => {
    expect(named('script')).toEqual([]);
    expect(named('link')).toEqual([]);
    expect(named('img')).toEqual([]);
    const links = all.flatMap((e) => [e.attributes.href, e.attributes.src].filter((v) => v !== undefined));
    expect(links.every((l) => l.startsWith('#'))).toBe(true);
    // The name of the SVG language is written as an address, but nothing is asked of it.
    const rest = html
      .replaceAll('xmlns="http://www.w3.org/2000/svg"', '')
      .replace(/base64,[A-Za-z0-9+/=]+/g, '');
    expect(rest.match(/https?:|\/\/[a-z]|@import|javascript:| on[a-z]+="/gi)).toBeNull();
    expect(html.match(/url\(data:font\/ttf;base64,/g)?.length).toBe(3);
    expect(rest.match(/url\((?!data:|#)/g)).toBeNull();
  });

  test('has landmarks, one main heading, and headings in order', () => {
    for (const tag of ['header', 'nav', 'main', 'footer', 'h1']) expect(named(tag).length, tag).toBe(1);
    let before = 0;
    for (const e of all) {
      const level = Number(/^h([1-6])$/.exec(e.name)?.[1] ?? 0);
      if (level === 0) continue;
      expect(level - before, wordsOf(e)).toBeLessThanOrEqual(1);
      before = level;
    }
  });

  test('refers to ids that are there, each once', () => {
    const ids = all.flatMap((e) => (e.attributes.id === undefined ? [] : [e.attributes.id]));
    expect(new Set(ids).size).toBe(ids.length);
    for (const e of all) {
      const targets = [
        ...(e.attributes['aria-labelledby'] ?? '').split(' '),
        e.attributes.href?.slice(1) ?? '',
        /^url\(#(.*)\)$/.exec(e.attributes['clip-path'] ?? '')?.[1] ?? '',
      ];
      for (const target of targets) if (target !== '') expect(ids).toContain(target);
    }
  });

  test('has tables with a caption and heads that say their scope', () => {
    expect(named('table').length).toBeGreaterThan(5);
    for (const table of named('table')) {
      const parts = allOf(table);
      expect(parts.filter((e) => e.name === 'caption').length).toBe(1);
      for (const th of parts.filter((e) => e.name === 'th'))
        expect(['col', 'row']).toContain(th.attributes.scope);
      const body = parts.find((e) => e.name === 'tbody') as Element;
      for (const tr of body.children) {
        if (typeof tr === 'string') continue;
        expect((tr.children[0] as Element).name).toBe('th');
      }
    }
  });

  test('has drawings with title and description, and marks hidden from those who hear their words', () => {
    const drawings = named('svg').filter((e) => e.attributes.role === 'img');
    expect(drawings.length).toBeGreaterThanOrEqual(3);
    for (const svg of drawings) {
      const kinds = svg.children.flatMap((c) => (typeof c === 'string' ? [] : [c.name]));
      expect(kinds.slice(0, 2)).toEqual(['title', 'desc']);
    }
    for (const icon of named('svg').filter((e) => e.attributes.role !== 'img'))
      expect(icon.attributes['aria-hidden']).toBe('true');
  });

  test('lets the keyboard move the drawing that is wider than a phone', () => {
    const region = all.find((e) => e.attributes.class === 'sheet');
    expect(region?.attributes).toMatchObject({ role: 'region', tabindex: '0' });
    expect(region?.attributes['aria-label']).not.toBe('');
  });

  test('is the same for the same job', () => {
    expect(reportHtml(job, assessment, { fonts })).toBe(html);
  });
});

test('what people typed stays text, wherever it comes', () => {
  const hostile = `<script>alert(1)</script>"'&<img src=x onerror=1>\u0007`;
  const { job, assessment } = assessed({
    ...bareJob,
    header: {
      title: hostile,
      client: hostile,
      address: hostile,
      complaint: hostile,
      notes: hostile,
      surveyedBy: [hostile],
    },
    findings: [
      {
        id: 'f',
        defect: 'other',
        title: hostile,
        place: { words: hostile },
        note: hostile,
        when: '2031-05-14T09:20:00-04:00',
        who: hostile,
      },
    ],
    readings: {
      air: [
        {
          id: 'r',
          where: 'crawl',
          place: { words: hostile },
          temperatureC: 21,
          relativeHumidity: 0.7,
          when: '2031-05-14T09:20:00-04:00',
          who: hostile,
        },
      ],
    },
  });
  const html = reportHtml(job, assessment, { fonts });
  const all = allOf(readTags(html, 'html'));
  expect(all.filter((e) => e.name === 'script' || e.name === 'img')).toEqual([]);
  const h1 = all.find((e) => e.name === 'h1') as Element;
  expect(wordsOf(h1)).toBe(hostile.replace('\u0007', '\ufffd'));
});

test('a job of which hardly anything is known makes a page', () => {
  const { job, assessment } = assessed(bareJob);
  const all = allOf(readTags(reportHtml(job, assessment, { fonts }), 'html'));
  expect(all.filter((e) => e.name === 'section').length).toBe(16);
});

describe('base64', () => {
  // RFC 4648 section 10, test vectors.
  test.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('of "%s" is "%s"', (text, expected) => {
    expect(base64(new TextEncoder().encode(text))).toBe(expected);
  });
});
