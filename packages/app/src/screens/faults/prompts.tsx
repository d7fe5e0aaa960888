import { criteria } from '@undercroft/engine';
import { Notice } from '../../parts/notice.tsx';
import { useTexts } from '../../text/texts.ts';
import { findingTexts } from './finding-texts.ts';

/** Subjects in which somebody may have built before. */
const BUILT: readonly criteria.DefectSubject[] = ['liner', 'sump-and-drain', 'dry-air', 'insulation'];

/** What to think of with a defect: the standing caution, whose work it is, and whose right to mend it comes first. */
export function Prompts({ defect }: { readonly defect: criteria.Defect }) {
  const say = useTexts(findingTexts);
  const { caution: id, licensedTrade, subject } = defect;
  const caution = id === undefined ? undefined : criteria.cautions.find((one) => one.id === id);
  return (
    <>
      {caution !== undefined && (
        <Notice kind="caution" title={caution.title}>
          <p lang="en">{caution.text}</p>
        </Notice>
      )}
      {licensedTrade !== undefined && <p>{say('licensedPrompt', { trade: say(licensedTrade) })}</p>}
      {BUILT.includes(subject) && (
        <details>
          <summary className="summary-link">{say('cureTitle')}</summary>
          <p>{say('curePrompt')}</p>
        </details>
      )}
    </>
  );
}
