import { causes } from '@undercroft/engine';
import { percentWords } from '../readings/words.ts';
import { arrowsOf } from './arrows.ts';
import type {
  CauseArrow,
  CauseConsequence,
  CauseEvidenceShown,
  CauseMechanism,
  CauseObservation,
  CausesAssessment,
} from './causes-assessment.ts';
import { withSightings } from './defect-evidence.ts';
import { evidenceOfJob, evidenceOfState } from './evidence-of-job.ts';
import { nextMeasurements, shareOf } from './next.ts';
import { causesRuledOut, spaceHas } from './ruled-out.ts';
import { signValues } from './sign-values.ts';
import { type ConditionState, conditionStates } from './states.ts';
import type { CausesSubject } from './subject.ts';

function observation(
  effect: causes.EffectResult,
  states: ReadonlyMap<string, ConditionState>,
): CauseObservation {
  const { key, kind, title, meaning } = causes.causeNode(effect.node);
  const state = states.get(key) as ConditionState;
  return {
    key,
    kind,
    title,
    meaning,
    because: state.because,
    origins: state.origins,
    unlisted: effect.unlisted.weight,
    entropyBits: effect.entropyBits,
    roots: effect.roots.map(({ node, weight }) => shareOf(node, weight)),
  };
}

function standingOf(supports: readonly string[], contradicts: readonly string[]): causes.Standing {
  if (supports.length > 0 && contradicts.length > 0) return 'disputed';
  return supports.length > 0 ? 'supported' : contradicts.length > 0 ? 'contradicted' : 'not-shown';
}

/** Causes that explain something found, with all that speaks for and against them. */
function mechanismsOf(chain: causes.CauseChain, arrows: readonly CauseArrow[]): CauseMechanism[] {
  const seen = new Set(chain.effects.filter((e) => e.seen).map((e) => e.node));
  return chain.roots.flatMap(({ node, weight }) => {
    if (node === 'unlisted') return [];
    const { key, kind, title, meaning } = causes.causeNode(node);
    if (kind !== 'cause') return [];
    const own = arrows.filter((a) => a.from === key && seen.has(a.to));
    const supports = [...new Set(own.flatMap((a) => a.supports))];
    const contradicts = [...new Set(own.flatMap((a) => a.contradicts))];
    return [
      { key, title, meaning, weight, standing: standingOf(supports, contradicts), supports, contradicts },
    ];
  });
}

function consequencesOf(chain: causes.CauseChain, arrows: readonly CauseArrow[]): CauseConsequence[] {
  return chain.effects
    .filter((effect) => !effect.seen)
    .map((effect) => {
      const { key, title, meaning } = causes.causeNode(effect.node);
      const from = arrows.filter((a) => a.to === key && a.number !== undefined).map((a) => a.from);
      return { key, title, meaning, from };
    });
}

/** A first cause is named in the headline from this share on. */
const NAMED_FROM = 0.15;

function headlineOf(observations: readonly CauseObservation[], roots: readonly causes.RootShare[]): string {
  if (observations.length === 0) return 'Nothing was found that wants an explanation.';
  const found = `${observations.length} ${observations.length === 1 ? 'finding wants' : 'findings want'} an explanation.`;
  const named = roots.filter((r) => r.node !== 'unlisted' && r.weight >= NAMED_FROM).slice(0, 3);
  if (named.length === 0) return `${found} No cause stands out yet; measure more.`;
  const words = named.map((r) => {
    const { title } = shareOf(r.node, r.weight);
    return `${title[0].toLowerCase()}${title.slice(1)} (${percentWords(r.weight)})`;
  });
  return `${found} What was found leads back most to: ${words.join(', ')}.`;
}

/**
 * Why the space is as it was found: every finding with its rival explanations, their weights and all evidence for and
 * against, what follows if nothing is done, and what to measure to tell explanations apart.
 */
export function causesOf(subject: CausesSubject): CausesAssessment {
  const states = withSightings(subject, conditionStates(subject));
  const values = signValues(subject);
  const evidence = evidenceOfJob(subject, values);
  const ruledOut = causesRuledOut(subject);
  const keysIn = (state: ConditionState['state']) =>
    states.filter((s) => s.state === state).map((s) => s.key);
  const chain = causes.causeChain({
    seen: keysIn('seen'),
    absent: keysIn('absent'),
    ruledOut: ruledOut.map((r) => r.key),
    evidence: evidence.items,
  });
  const arrows = arrowsOf(chain);
  const byKey = new Map<string, ConditionState>(states.map((s) => [s.key, s]));
  const observations = chain.effects.filter((e) => e.seen).map((e) => observation(e, byKey));
  const used = new Set(arrows.flatMap((a) => [...a.supports, ...a.contradicts]));
  const shown = new Map<string, CauseEvidenceShown>([
    ...evidence.shown,
    ...states
      .filter((s) => s.state !== 'not-shown')
      .map((s): [string, CauseEvidenceShown] => [`seen:${s.key}`, evidenceOfState(s)]),
  ]);
  return {
    headline: headlineOf(observations, chain.roots),
    observations,
    mechanisms: mechanismsOf(chain, arrows),
    ruledOut: ruledOut.map(({ key, because }) => ({ key, title: causes.causeNode(key).title, because })),
    arrows,
    consequences: consequencesOf(chain, arrows),
    evidence: [...shown.values()].filter((e) => used.has(e.id)),
    notShown: states
      .filter((s) => s.state === 'not-shown')
      .map(({ key, because }) => ({ key, title: causes.causeNode(key).title, how: because })),
    next: nextMeasurements(chain, new Set(values.keys()), spaceHas(subject)),
  };
}
