import type { Assessment } from '@undercroft/assessment';
import { useTexts } from '../../text/texts.ts';
import { whyTexts } from './why-texts.ts';

type Source = Assessment['sources'][number];

/** Publications behind a figure, each with how well it is known. */
export function SourceList({ sources }: { readonly sources: readonly Source[] }) {
  const say = useTexts(whyTexts);
  if (sources.length === 0) return null;
  return (
    <>
      <p className="why-head">{say(sources.length === 1 ? 'source' : 'sources')}</p>
      <ul className="why-list">
        {sources.map(({ id, citation, provenance }) => (
          <li key={id}>
            {citation} <span className="soft">({say(provenance)})</span>
          </li>
        ))}
      </ul>
    </>
  );
}
