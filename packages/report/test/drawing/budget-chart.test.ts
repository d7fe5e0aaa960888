import { describe, expect, test } from 'vitest';
import { budgetChart } from '../../src/drawing/chart/budget-chart.ts';
import { type AreaItem, flatten } from '../../src/drawing/display-list.ts';
import { demo } from '../jobs.ts';

const { assessment } = demo('neglected-vented');
const budget = assessment.budgets.designMonth;

const bars = (width: number) => {
  const chart = budgetChart(budget, 'July', { width, textSize: 7.6 });
  const items = flatten(chart.items);
  return {
    chart,
    items,
    outlines: items.filter((i): i is AreaItem => i.kind === 'area' && i.stroke?.color === 'ink'),
    texts: items.flatMap((i) => (i.kind === 'text' ? [i.text] : [])),
  };
};

describe.each([510, 300])('the bars of a balance, %d wide', (width) => {
  const { chart, outlines, texts, items } = bars(width);
  const largest = Math.max(...budget.paths.map((p) => Math.abs(p.kgPerDay)));
  const drawn = budget.paths.filter(
    (p) => Math.abs(p.kgPerDay) >= 0.05 || Math.max(Math.abs(p.low), Math.abs(p.high)) >= largest / 10,
  );

  test('are as long as the flows', () => {
    const lengths = outlines.map(({ outlines: [[a, b]] }) => b.x - a.x);
    const flows = [...drawn].sort((a, b) => b.kgPerDay - a.kgPerDay).map((p) => p.kgPerDay);
    expect(lengths.length).toBe(flows.length);
    const scale = lengths[0] / flows[0];
    expect(scale).toBeGreaterThan(0);
    for (const [i, flow] of flows.entries()) expect(lengths[i]).toBeCloseTo(flow * scale, 6);
  });

  test('have a dashed outline exactly where a guess went in', () => {
    const sorted = [...drawn].sort((a, b) => b.kgPerDay - a.kgPerDay);
    for (const [i, path] of sorted.entries())
      expect(outlines[i].stroke?.dash !== undefined, path.title).toBe(path.assumed);
  });

  test('print every value, and name what is too small to draw', () => {
    const all = texts.join(' ');
    for (const path of budget.paths) {
      const words = path.title.split(' ').slice(0, 2).join(' ');
      expect(all).toContain(words);
    }
    expect(texts.filter((t) => t.includes('pint') && t.includes('kg')).length).toBe(drawn.length);
  });

  test('stay on the sheet', () => {
    for (const item of items) {
      if (item.kind !== 'text') continue;
      expect(item.at.x).toBeLessThanOrEqual(width + 0.01);
      expect(item.at.y).toBeLessThanOrEqual(chart.height);
    }
  });
});
