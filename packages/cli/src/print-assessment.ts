import type { Assessment } from '@undercroft/assessment';
import { noticeLines } from './notices.ts';
import { budgetLines } from './print-budget.ts';
import { causesLines } from './print-causes.ts';
import { criteriaLines } from './print-criteria.ts';
import { seasonLines } from './print-season.ts';
import { shownBoth, shownIn } from './quantities.ts';
import { heading, wrap } from './wrap.ts';

function closureText({ closure }: Assessment['geometry']): string[] {
  if (closure === undefined) return [];
  const off = shownBoth(closure.misclosureM, 'length');
  const precision = Number.isFinite(closure.precision)
    ? `, 1 in ${Math.round(closure.precision)}`
    : ', exactly';
  const hint = closure.hint === undefined ? '' : ` ${closure.hint}`;
  return [`Taped walls close within ${off}${precision}: ${closure.verdict}.${hint}`];
}

function spaceLines({ geometry }: Assessment, columns: number): string[] {
  const { clearHeightM: height } = geometry;
  const assumed = height.assumed ? '; assumed, nobody measured it' : '';
  const texts = [
    `Floor ${shownBoth(geometry.floorAreaM2, 'area')}, around it ${shownBoth(geometry.perimeterM, 'length')}.`,
    `Clear height ${shownBoth(height.mean, 'length')} on average, ${shownBoth(height.minimum, 'length')} at the lowest${assumed}.`,
    ...closureText(geometry),
  ];
  return [
    ...heading('The space'),
    ...texts.flatMap((text) => wrap(text, columns)),
    ...geometry.zones
      .filter((z) => z.areaM2 > 0)
      .flatMap((z) =>
        wrap(`${z.name}: ${z.cover.replaceAll('-', ' ')}, ${shownBoth(z.areaM2, 'area')}`, columns, '  - '),
      ),
    ...noticeLines(geometry.notices, columns),
  ];
}

function readingLines({ readings }: Assessment, columns: number): string[] {
  if (readings.length === 0) return [];
  return [
    ...heading('What the readings mean'),
    ...readings.flatMap((r) => [
      ...wrap(`${r.shown} (${r.place})`, columns, r.state.padEnd(7)),
      ...wrap(r.means, columns, ' '.repeat(7)),
    ]),
    ...noticeLines(
      readings.flatMap((r) => r.notices),
      columns,
    ),
  ];
}

function assumptionLines({ assumptions: own, season }: Assessment, columns: number): string[] {
  const assumptions = [...own, ...(season?.assumptions ?? [])];
  if (assumptions.length === 0) return [];
  return [
    ...heading('Taken for granted until measured'),
    ...assumptions.flatMap(({ title, value, unit, low, high, why }) => {
      const range =
        low === undefined || high === undefined
          ? ''
          : `, may be ${shownIn(low, unit)} to ${shownIn(high, unit)}`;
      return wrap(`${title}: ${shownIn(value, unit)}${range}. ${why}`, columns, '  - ');
    }),
  ];
}

function cautionLines({ cautions }: Assessment, columns: number): string[] {
  return [...heading('Cautions'), ...cautions.flatMap((c) => wrap(c.text, columns, '  - '))];
}

/** The assessment for people at a terminal. */
export function assessmentLines(a: Assessment, columns: number): string[] {
  const budgets = [a.budgets.surveyDay, a.budgets.designMonth].filter((b) => b !== undefined);
  const away = a.climate.distanceKm === undefined ? '' : `, ${Math.round(a.climate.distanceKm)} km away`;
  return [
    ...wrap(a.job.title, columns),
    ...wrap(a.headline, columns),
    ...wrap(`Climate: ${a.climate.name}${away} (${a.climate.kind})`, columns),
    ...noticeLines(a.climate.notices, columns),
    ...spaceLines(a, columns),
    ...readingLines(a, columns),
    ...criteriaLines(a, columns),
    ...budgets.flatMap((b) => budgetLines(b, columns)),
    ...causesLines(a.causes, columns),
    ...(a.season === undefined ? [] : seasonLines(a.season, columns)),
    ...assumptionLines(a, columns),
    ...cautionLines(a, columns),
    ...(a.notices.length > 0 ? ['', ...noticeLines(a.notices, columns)] : []),
  ];
}
