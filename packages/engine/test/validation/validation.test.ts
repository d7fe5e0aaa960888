import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ClimateYear } from '../../src/climate/year.ts';
import { runSeason } from '../../src/season/run.ts';
import { CHECKED } from '../../validation/check-values.ts';
import { houseHeat } from '../../validation/house-heat.ts';
import { closed, floorInsulated, space, vented } from '../../validation/parameter-set.ts';
import { runStudy } from '../../validation/run-studies.ts';
import { NOT_RUN, STUDIES } from '../../validation/studies.ts';
import type { Finding, Study } from '../../validation/study.ts';
import { yearOf } from '../../validation/weather.ts';

const years = new Map<string, ClimateYear>();

/** Synthesized from the built-in monthly statistics, so that the tests need no files. */
function weatherOf(place: string): ClimateYear {
  const year = years.get(place) ?? yearOf(place, () => undefined);
  years.set(place, year);
  return year;
}

/** Studies whose signs are asserted here; they are run. */
const SIGNS = ['V5', 'V6', 'V9', 'V11', 'V13'];

/** For the others one year stands in for all: what a row is called and what it expects does not hang on results. */
const standIn = (() => {
  const weather = weatherOf('denver_co');
  return runSeason([vented(space(weather))], weather, { hourly: true })[0]!;
})();

const evaluated = STUDIES.map((study) =>
  SIGNS.includes(study.id) ? runStudy(study, weatherOf) : runStudy(study, weatherOf, () => standIn),
);
const all = evaluated.flatMap(({ study, findings }) => findings.map((finding) => ({ study, finding })));

function findingsOf(id: string): readonly Finding[] {
  return evaluated.find(({ study }) => study.id === id)!.findings;
}

/**
 * Signs that follow from the physics in any weather of the kind; bands and numbers of single studies are not asserted
 * here, their passes and misses stand in docs/validation.md.
 */
describe('signs that field studies found', () => {
  it.each([
    ['V5', 'joists get drier by sealing, and moister the more the sealed space leaks', 2],
    ['V6', 'floors get moister the colder the house and the tighter the finish', 6],
    ['V11', 'what comes up through the floor follows the pressure, not the number of holes', 3],
    ['V13', 'a space with closed vents leaks no less than the house', 5],
  ])('%s: %s', (id, _, gates) => {
    const gated = findingsOf(id).filter(({ pass }) => pass !== null);
    expect(gated).toHaveLength(gates);
    for (const { quantity, ours, pass } of gated) expect(pass, `${quantity}: ${ours}`).toBe(true);
  });

  it.each([
    'water from the ground over air change, vents of 1/1500 to 1/150',
    'relative humidity with a supply fan, mean of the year',
  ])('V9: %s', (quantity) => {
    const finding = findingsOf('V9').find((one) => one.quantity === quantity);
    expect(finding?.pass, finding?.ours).toBe(true);
  });
});

describe('what a comparison owes its reader', () => {
  it('every miss has a reason, and nothing else has one', () => {
    for (const { study, finding } of all) {
      const row = `${study.id} ${finding.quantity}`;
      if (finding.pass === false) expect(finding.why, row).toMatch(/\.$/);
      else expect(finding.why, row).toBeUndefined();
    }
  });

  it('nothing from memory is gated on, and every gate leans on a statement of its level', () => {
    for (const { study, finding } of all) {
      const levels = study.published.map((statement) => statement.level);
      if (finding.level === 'C') expect(finding.pass, finding.quantity).toBeNull();
      if (finding.pass !== null) expect(levels, `${study.id} ${finding.quantity}`).toContain(finding.level);
    }
    for (const { level, source } of STUDIES.flatMap(({ published }) => published)) {
      if (source.provenance === 'memory') expect(level, source.id).toBe('C');
    }
  });

  it('every study says what was given and what was assumed, in rows of their own', () => {
    for (const { id, given, assumed } of STUDIES) {
      expect(given.length, id).toBeGreaterThan(0);
      expect(assumed.length, id).toBeGreaterThan(0);
    }
    for (const { study, findings } of evaluated) {
      const quantities = findings.map(({ quantity }) => quantity);
      expect(new Set(quantities).size, study.id).toBe(quantities.length);
    }
  });

  it('refuses cases of one name and names that are none', () => {
    const study: Study = {
      ...STUDIES[0]!,
      cases: [],
      evaluate: (outcomes) => [outcomes('no such case') as never],
    };
    expect(() => runStudy(study, weatherOf)).toThrow('no case named no such case');
    const one = { name: 'twin', place: 'denver_co', space };
    expect(() => runStudy({ ...study, cases: [one, one] }, weatherOf)).toThrow('two cases named twin');
    expect(() => weatherOf('atlantis')).toThrow('atlantis');
  });
});

describe('the page', () => {
  const page = readFileSync(new URL('../../../../docs/validation.md', import.meta.url), 'utf8');

  it.each(evaluated)('holds $study.id as it is defined now', ({ study, findings }) => {
    const own = page.slice(page.indexOf(`### ${study.id}\n`)).split('\n### ', 2)[0]!;
    for (const text of [study.study, ...study.given, ...study.assumed]) expect(own).toContain(text);
    for (const { says, source } of study.published) {
      expect(own).toContain(says);
      expect(own).toContain(source.citation);
    }
    for (const { quantity, published, level } of findings) {
      expect(own).toContain(`| ${level} | ${quantity} | ${published} |`);
    }
  });

  it('names what was not run, and every file of check values', () => {
    for (const { id, study, why } of NOT_RUN) expect(page).toContain(`| ${id} | ${study} | ${why} |`);
    for (const { subject, files } of CHECKED) {
      expect(page).toContain(`| ${subject} |`);
      for (const file of files) {
        expect(page).toContain(`(../${file})`);
        expect(() => readFileSync(new URL(`../../../../${file}`, import.meta.url))).not.toThrow();
      }
    }
  });
});

describe('what the house pays for', () => {
  const weather = weatherOf('denver_co');
  const [open, shut] = [vented, closed].map((build) => {
    const built = build(floorInsulated(space(weather)));
    return { space: built, weather, result: runSeason([built], weather, { hourly: true })[0]! };
  });

  it('through the floor, over the year, is the heat that the season books there', () => {
    for (const outcome of [open!, shut!]) {
      const floor = houseHeat(outcome, 'heated').floor - houseHeat(outcome, 'cooled').floor;
      // The same means of the same hours, summed in another order.
      expect(floor).toBeCloseTo(outcome.result.floorHeatKWh, 6);
    }
  });

  it('in given months is no more than in all heated months', () => {
    const winter = houseHeat(open!, [10, 11, 0, 1, 2]);
    expect(winter.total).toBeLessThan(houseHeat(open!, 'heated').total);
    expect(winter.ducts).toBe(0);
    expect(winter.supplyAir).toBe(0);
    expect(houseHeat(open!, [10, 11, 0, 1, 2], true).ducts).toBeGreaterThan(0);
  });

  it('refuses a space without a pressure network', () => {
    const fixed = { ...open!, space: space(weather) };
    expect(() => houseHeat(fixed, 'heated')).toThrow('needs the network');
  });
});
