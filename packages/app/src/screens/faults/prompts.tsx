import { criteria } from '@undercroft/engine';
import { Notice } from '../../parts/notice.tsx';
import { useSettings } from '../../settings/settings.ts';
import { cautionWords } from '../../text/caution-words.ts';
import { useTexts } from '../../text/texts.ts';
import { findingTexts } from './finding-texts.ts';

/** Subjects in which somebody may have built before. */
const BUILT: readonly criteria.DefectSubject[] = ['liner', 'sump-and-drain', 'dry-air', 'insulation'];

/** What to think of with a defect: the standing caution, and whose work it is. */
export function Prompts({ defect }: { readonly defect: criteria.Defect }) {
  const say = useTexts(findingTexts);
  const { language } = useSettings();
  const { caution: id, licensedTrade } = defect;
  const caution = id === undefined ? undefined : criteria.cautions.find((one) => one.id === id);
  const words = caution === undefined ? undefined : cautionWords(caution, language);
  return (
    <>
      {words !== undefined && (
        <Notice kind="caution" title={words.title}>
          <p>{words.text}</p>
        </Notice>
      )}
      {licensedTrade !== undefined && <p>{say('licensedPrompt', { trade: say(licensedTrade) })}</p>}
    </>
  );
}

/** Whose right to mend comes first, where one of these defects lies in something that somebody built before. */
export function RightToCure({ defects }: { readonly defects: readonly criteria.Defect[] }) {
  const say = useTexts(findingTexts);
  if (!defects.some(({ subject }) => BUILT.includes(subject))) return null;
  return (
    <details>
      <summary className="summary-link">{say('cureTitle')}</summary>
      <p>{say('curePrompt')}</p>
    </details>
  );
}
