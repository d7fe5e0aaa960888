import { type CoverageAssessment, compassWord, type FromWall, type LineShown } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { noticeLines } from './notices.ts';
import { heading, wrap } from './wrap.ts';

/** A share in whole percent, and in tenths where that would make it seem whole. */
export function percent(share: number): string {
  const rounded = Math.round(100 * share);
  return rounded === 100 && share < 1 ? `${(Math.floor(1000 * share) / 10).toFixed(1)} %` : `${rounded} %`;
}

/** An area as people tell it: whole square feet, tenths of a square meter. */
export function areaText(m2: number): string {
  const us = units.formatQuantity(m2, 'area', 'us', 0);
  return `${us} (${units.formatQuantity(m2, 'area', 'si', 1)})`;
}

/** A length by tape, to a quarter of an inch, metric behind. */
export function taped(meters: number): string {
  const us = units.formatFeetInches(meters, { denominator: 4 });
  return `${us} (${units.formatQuantity(meters, 'length', 'si', 2)})`;
}

/** Where a place is by tape, e.g. `4' 9" (1.45 m) from the north wall and ...`. */
export function tapedFrom(walls: readonly FromWall[]): string {
  return walls.map(({ name, distanceM }) => `${taped(distanceM)} from the ${name}`).join(' and ');
}

/** A direction as a phone shows it: `northeast (43°)`. */
export const toward = (compassDeg: number): string =>
  `${compassWord(compassDeg)} (${Math.round(compassDeg)}°)`;

/** How many of some things are shown, those that are not by name. */
function lineText(what: string, list: readonly LineShown[]): string[] {
  const open = list.filter((l) => l.share !== undefined);
  if (open.length === 0) return [];
  const whole = open.filter((l) => (l.share ?? 0) >= 0.9);
  const rest = open
    .filter((l) => (l.share ?? 0) < 0.9)
    .map((l) => `${l.name} ${percent(l.share ?? 0)}`)
    .slice(0, 12);
  const names = rest.length === 0 ? '' : `; not wholly: ${rest.join(', ')}`;
  return [`${what}: ${whole.length} of ${open.length} shown${names}.`];
}

function shownLines({ floor, walls, piers, vents, bays, pictures }: CoverageAssessment, columns: number) {
  const whole = piers.filter((p) => p.facesShown === p.facesOpen).length;
  const rest = piers
    .filter((p) => p.facesShown < p.facesOpen)
    .map((p) => `${p.name} ${p.facesShown} of ${p.facesOpen} faces`);
  const bayCount = bays.filter((b) => (b.share ?? 0) >= 0.9).length;
  return [
    ...heading(`What ${pictures.length} pictures show`),
    ...[
      `Floor: ${areaText(floor.seenM2)} of ${areaText(floor.areaM2)}, ${percent(floor.share)}.`,
      ...lineText('Walls', walls),
      ...(piers.length === 0
        ? []
        : [
            `Piers: ${whole} of ${piers.length} shown on every face${rest.length === 0 ? '' : `; ${rest.join(', ')}`}.`,
          ]),
      ...lineText('Vents', vents),
      ...(bays.length === 0 ? [] : [`Joist bays: ${bayCount} of ${bays.length} shown to the subfloor.`]),
    ].flatMap((text) => wrap(text, columns, '  ')),
  ];
}

function unseenLines({ unseen, floor }: CoverageAssessment, columns: number): string[] {
  if (unseen.length === 0) return [];
  const small =
    floor.scatteredM2 < 0.05
      ? []
      : wrap(`${areaText(floor.scatteredM2)} in scattered small places.`, columns, '  - ');
  return [
    ...heading('In no picture'),
    ...unseen.flatMap(({ areaM2, fromWalls, standsIn, covers }) => {
      const things = standsIn.map((s) => s.name).join(', ');
      const ground = covers.map((c) => c.replaceAll('-', ' ')).join(' and ');
      return wrap(
        `${areaText(areaM2)}, ${tapedFrom(fromWalls)}. Drawn there: ${ground}; ${things === '' ? 'nothing else' : things}.`,
        columns,
        '  - ',
      );
    }),
    ...small,
  ];
}

const VERDICTS = { proved: 'shown', partly: 'partly', 'no-picture': 'none', unplaced: 'unclear' } as const;
const KINDS = { acceptance: 'Claim', 'build-step': 'Step', finding: 'Finding' } as const;

function proofLines({ proofs }: CoverageAssessment, columns: number): string[] {
  if (proofs.length === 0) return [];
  return [
    ...heading('Claims and findings in the pictures'),
    ...proofs.flatMap(({ of, title, verdict, says }) =>
      wrap(`${KINDS[of]}: ${title}. ${says}`, columns, `  ${VERDICTS[verdict].padEnd(8)}`),
    ),
  ];
}

function pictureLines({ pictures, unplaced }: CoverageAssessment, columns: number): string[] {
  if (pictures.length + unplaced.length === 0) return [];
  return [
    ...heading('Pictures'),
    ...pictures.flatMap(({ number, kind, caption, newM2, floorM2, shows }) => {
      const piers = shows.filter((s) => s.kind === 'pier').length;
      const more = piers === 0 ? '' : `, ${piers} ${piers === 1 ? 'pier' : 'piers'}`;
      const what = caption === undefined ? '' : `${caption}: `;
      const text = `${kind === 'clip' ? 'Clip. ' : ''}${what}${areaText(floorM2)} of floor, ${areaText(newM2)} of it new${more}`;
      return wrap(text, columns, `${String(number).padStart(5)}  `);
    }),
    ...unplaced.flatMap(({ id, why }) => wrap(`${id}: ${why}`, columns, '    -  ')),
  ];
}

/** What the pictures show and what not, for people at a terminal. */
export function coverageLines(coverage: CoverageAssessment, columns: number): string[] {
  return [
    ...noticeLines(coverage.notices, columns),
    ...shownLines(coverage, columns),
    ...unseenLines(coverage, columns),
    ...proofLines(coverage, columns),
    ...pictureLines(coverage, columns),
  ];
}
