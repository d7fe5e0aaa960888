import type { Assessment } from '../assessment.ts';
import { listOf, object, ref, text } from './build.ts';
import { CAUSES_DEFINITIONS } from './causes-definitions.ts';
import { COVERAGE_DEFINITIONS } from './coverage-definitions.ts';
import { DECISION_DEFINITIONS } from './decision-definitions.ts';
import { DEFECT_DEFINITIONS } from './defect-definitions.ts';
import { DISTRIBUTION_DEFINITIONS } from './distribution-definitions.ts';
import { SEASON_DEFINITIONS } from './season-definitions.ts';
import { SURVEY_DEFINITIONS } from './survey-definitions.ts';

const ROOT = object<Assessment>(
  {
    format: { const: 'undercroft-assessment' },
    version: { const: 1 },
    job: object<Assessment['job']>({ id: text, title: text }, { surveyedOn: text }),
    climate: ref('Climate'),
    headline: text,
    geometry: ref('Geometry'),
    readings: listOf(ref('Reading')),
    criteria: listOf(ref('Criterion')),
    openQuestions: listOf(ref('OpenQuestion')),
    criteriaCount: ref('CriteriaCount'),
    defects: listOf(ref('Defect')),
    defectsNotShown: listOf(ref('DefectNotShown')),
    defectsCount: ref('DefectsCount'),
    budgets: object<Assessment['budgets']>({ designMonth: ref('Budget') }, { surveyDay: ref('Budget') }),
    causes: ref('Causes'),
    assumptions: listOf(ref('Assumption')),
    cautions: listOf(ref('Caution')),
    sources: listOf(ref('Source')),
    notices: listOf(ref('Notice')),
  },
  { coverage: ref('Coverage'), distribution: ref('Distribution'), season: ref('Season') },
);

/**
 * JSON Schema (draft 2020-12) of an assessment as JSON. Closed: a property that it does not name is not allowed. Where
 * taped walls close exactly, `geometry.closure.precision` is infinite and absent in JSON.
 */
export function assessmentJsonSchema(): Record<string, unknown> {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Assessment of a crawl space',
    description:
      'Everything that follows from a job and a climate. SI units, the unit at the end of each name.',
    ...ROOT,
    $defs: {
      ...SURVEY_DEFINITIONS,
      ...SEASON_DEFINITIONS,
      ...DECISION_DEFINITIONS,
      ...CAUSES_DEFINITIONS,
      ...COVERAGE_DEFINITIONS,
      ...DEFECT_DEFINITIONS,
      ...DISTRIBUTION_DEFINITIONS,
    },
  };
}
