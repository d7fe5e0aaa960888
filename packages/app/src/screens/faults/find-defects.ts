import { criteria } from '@undercroft/engine';
import type { Settings } from '../../settings/settings.ts';
import { folded } from '../../text/folded.ts';
import { type Part, partOf } from './parts-of-space.ts';

/** Which defects to look among. */
export interface DefectFilter {
  readonly search: string;
  readonly subject: criteria.DefectSubject | '';
  readonly part: Part | '';
}

const texts = new Map(
  criteria.defects.map(({ key, name, seen }) => [
    key,
    folded(` ${name.en} ${name.es} ${seen.en} ${seen.es}`),
  ]),
);

/**
 * Defects of the catalogue in which every word that is searched stands, in either language, by name or by what is seen;
 * those that have it in the name come first, then the graver ones.
 */
export function findDefects(
  { search, subject, part }: DefectFilter,
  language: Settings['language'],
): criteria.Defect[] {
  const words = folded(search).split(/\s+/).filter(Boolean);
  const inName = ({ name }: criteria.Defect) => {
    const text = ` ${folded(name[language])}`;
    return words.every((word) => text.includes(` ${word}`));
  };
  return criteria.defects
    .filter(
      (defect) =>
        (subject === '' || defect.subject === subject) &&
        (part === '' || partOf(defect) === part) &&
        words.every((word) => texts.get(defect.key)?.includes(word) === true),
    )
    .map((defect) => ({ defect, isNamed: words.length > 0 && inName(defect) }))
    .sort((a, b) => Number(b.isNamed) - Number(a.isNamed) || b.defect.severity - a.defect.severity)
    .map(({ defect }) => defect);
}
