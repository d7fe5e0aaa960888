import type { CauseArrow, CauseEvidenceShown, CausesAssessment } from '@undercroft/assessment';
import { OriginWords } from '../../parts/why/origin-words.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { chainTexts } from './chain-texts.ts';
import { evidenceTitle, evidenceValue, timesText } from './chain-words.ts';

/** So many places of one item are told; more of the same say nothing new. */
const ORIGINS_SHOWN = 3;

function EvidenceItem({ evidence: e }: { readonly evidence: CauseEvidenceShown }) {
  const say = useTexts(chainTexts);
  const { units, language } = useSettings();
  return (
    <li className={e.says === 'for' ? 'speaks-for' : 'speaks-against'}>
      <strong>{say(e.says)}:</strong> {evidenceTitle(e, say, language)}{' '}
      <span className="figure">{evidenceValue(e, say, units)}</span>{' '}
      <span className="soft">
        {timesText(e, say)}
        {(e.basis === 'balance' || e.basis === 'year') && `, ${say('computed')}`}
      </span>
      {e.criteria.length > 0 && (
        <span className="soft"> · {say('criteria', { ids: e.criteria.join(', ') })}</span>
      )}
      <ul className="origins">
        {e.origins.slice(0, ORIGINS_SHOWN).map((origin, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: origins stand in a fixed order and hold no state
          <li key={i}>
            <OriginWords origin={origin} />
          </li>
        ))}
      </ul>
    </li>
  );
}

/** Everything that speaks for and against an arrow, what speaks against kept beside what speaks for. */
export function ArrowEvidence({ arrow, of }: { readonly arrow: CauseArrow; readonly of: CausesAssessment }) {
  const say = useTexts(chainTexts);
  const byId = new Map(of.evidence.map((e) => [e.id, e]));
  const items = [...arrow.supports, ...arrow.contradicts].flatMap((id) => byId.get(id) ?? []);
  if (items.length === 0) return <p className="soft">{say('nothingShown')}</p>;
  return (
    <ul className="arrow-evidence">
      {items.map((e) => (
        <EvidenceItem key={e.id} evidence={e} />
      ))}
    </ul>
  );
}
