import { useTexts } from '../../text/texts.ts';
import { findingTexts } from './finding-texts.ts';

const WORDS = ['severity0', 'severity1', 'severity2', 'severity3', 'severity4'] as const;

/** How bad a finding is: a number in a box that grows heavier with it, and the word for those who do not see it. */
export function SeverityMark({ severity }: { readonly severity: number }) {
  const say = useTexts(findingTexts);
  return (
    <span className={`severity severity-${severity} figure`}>
      <span aria-hidden="true">{severity}</span>
      <span className="hidden-text">{say(WORDS[severity] ?? 'severity0')}</span>
    </span>
  );
}
