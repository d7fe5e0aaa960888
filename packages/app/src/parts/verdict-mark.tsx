import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';

/** What is known of a criterion. */
export type VerdictName = 'met' | 'not-met' | 'not-shown';

const WORDS = { met: 'met', 'not-met': 'notMet', 'not-shown': 'notShown' } as const;

const SHAPES = {
  met: (
    <>
      <rect x="2" y="2" width="20" height="20" fill="currentColor" />
      <path d="M6.5 12.5l4 4 7-9" fill="none" stroke="var(--ground)" strokeWidth="3" />
    </>
  ),
  'not-met': (
    <>
      <path d="M12 0L24 12 12 24 0 12z" fill="currentColor" />
      <path d="M8 8l8 8M16 8l-8 8" fill="none" stroke="var(--ground)" strokeWidth="3" />
    </>
  ),
  'not-shown': (
    <>
      <circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" strokeWidth="2.5" />
      <path
        d="M8.8 9.2a3.3 3.3 0 1 1 4.6 3c-.9.4-1.4 1-1.4 2.1M12 16.6v2.2"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.2"
      />
    </>
  ),
} as const;

/** Met, not met or not shown: by shape, word and color, so that none of them is needed alone. */
export function VerdictMark({
  verdict,
  wordless,
}: {
  readonly verdict: VerdictName;
  readonly wordless?: boolean;
}) {
  const say = useTexts(commonTexts);
  const word = say(WORDS[verdict]);
  return (
    <span className={`verdict ${verdict}`} style={{ color: `var(--${verdict})` }}>
      <svg viewBox="0 0 24 24" width="1.25em" height="1.25em" aria-hidden="true">
        {SHAPES[verdict]}
      </svg>
      <span className={wordless ? 'hidden-text' : ''}>{word}</span>
    </span>
  );
}
