import {
  assess,
  compareSurveys,
  fallOfSpots,
  JobError,
  levelSheet,
  meaningOf,
  missingOf,
  pictureViews,
  shotAdds,
  valueAgainstCriteria,
} from '@undercroft/assessment';
import { EngineError, wood } from '@undercroft/engine';
import type { Compute } from './api.ts';

/** What a survey asks while somebody measures. */
export const survey: Pick<
  Compute,
  | 'meaningOf'
  | 'againstCriteria'
  | 'levelSheet'
  | 'fall'
  | 'missing'
  | 'compare'
  | 'pictureViews'
  | 'shotAdds'
> = {
  async meaningOf(job, draft) {
    try {
      const meaning = meaningOf(job, draft);
      const { moistureContent } = meaning.figures;
      return draft.kind === 'wood'
        ? { ok: true, meaning, band: wood.woodBand(moistureContent).key }
        : { ok: true, meaning };
    } catch (error) {
      if (error instanceof EngineError) return { ok: false, reason: error.message };
      throw error;
    }
  },
  async againstCriteria(job, quantity, value) {
    return valueAgainstCriteria(job, quantity, value);
  },
  async levelSheet(job) {
    return levelSheet(job);
  },
  async fall(sheet, fromId, toId) {
    return fallOfSpots(sheet, fromId, toId);
  },
  async compare(before, after) {
    const surveyOf = (job: typeof before) => ({
      job,
      assessment: assess(job, undefined, { season: 'none' }),
    });
    try {
      return { ok: true, comparison: compareSurveys(surveyOf(before), surveyOf(after)) };
    } catch (error) {
      if (error instanceof JobError || error instanceof EngineError)
        return { ok: false, reason: error.message };
      throw error;
    }
  },
  async pictureViews(job, geometry) {
    return pictureViews(job, geometry);
  },
  async shotAdds(job, geometry, shot) {
    try {
      return shotAdds(job, geometry, shot) ?? null;
    } catch (error) {
      // Sizes of the plan that make no sense are told where the plan is drawn.
      if (error instanceof EngineError) return null;
      throw error;
    }
  },
  async missing(job, shown) {
    return missingOf(job, shown);
  },
};
