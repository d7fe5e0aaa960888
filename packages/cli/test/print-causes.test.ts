import { assess } from '@undercroft/assessment';
import { describe, expect, test } from 'vitest';
import { causesLines } from '../src/print-causes.ts';
import { demoJob } from './written-jobs.ts';

const causesOf = (name: string) => assess(demoJob(name), undefined, { season: 'none' }).causes;

describe('the causes for people', () => {
  test.each(['neglected-vented', 'doubted-liner'])(
    '%s: each finding with its likeliest cause, in a few lines',
    (name) => {
      const causes = causesOf(name);
      const lines = causesLines(causes, 100);
      const text = lines.join('\n');
      for (const { title } of causes.observations) expect(text).toContain(`- ${title}: `);
      expect(text).toMatch(/^ {2}> Measure next: /m);
      expect(text).toMatch(/^ {2}- May follow: /m);
      expect(lines.length).toBeLessThan(causes.observations.length * 2 + 12);
      for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(100);
    },
  );

  test('a bare floor leads the humid air of a neglected space, a bad drain the water of a doubted liner', () => {
    expect(causesLines(causesOf('neglected-vented'), 200).join('\n')).toMatch(
      /The air is too humid: bare earth \d+%/,
    );
    expect(causesLines(causesOf('doubted-liner'), 200).join('\n')).toMatch(
      /Water lies in the space: drain or pump fails \d+%/,
    );
  });

  test('what speaks against an explanation is said', () => {
    expect(causesLines(causesOf('neglected-vented'), 200).join('\n')).toMatch(
      /\d+%, (disputed|spoken against)/,
    );
  });

  test('a sound space has nothing to explain', () => {
    expect(causesLines(causesOf('sound-closed'), 80)).toEqual([
      '',
      'Why it is so',
      '------------',
      'Nothing was found that wants an explanation.',
    ]);
  });
});
