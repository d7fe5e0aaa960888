import type { Assessment, CauseArrow, CauseObservation, CausesAssessment } from '@undercroft/assessment';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Pick } from '../../parts/field.tsx';
import { midSentence } from '../../parts/measure.ts';
import { useSettings } from '../../settings/settings.ts';
import { useIsDesk } from '../../shell/use-is-desk.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { ArrowEvidence } from './chain-evidence.tsx';
import { chainTexts } from './chain-texts.ts';
import { type NodeKey, nodeTitle } from './chain-titles.ts';
import { ChainView } from './chain-view.tsx';
import { arrowTitle, measurementWords, outcomeText, shareText } from './chain-words.ts';
import './chain.css';

/** A first cause is named from this share on, the three heaviest at most. */
const NAMED_FROM = 0.15;
/** In place of a finding: all of the chain. */
const WHOLE = 'whole';
/** So many measurements are advised at once. */
const NEXT_SHOWN = 3;

/** Why the space is as it was found: the chain of causes, its evidence, and what to measure next. */
export function ChainPart({ assessment }: { readonly assessment: Assessment }) {
  const say = useTexts(chainTexts);
  const of = assessment.causes;
  const [open, setOpen] = useState<number | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const isDesk = useIsDesk();
  const { language } = useSettings();
  const arrow = of.arrows.find((a) => a.number !== undefined && a.number === open);
  const findings = of.observations.map((o): [string, string] => [o.key, nodeTitle(o.key, language)]);
  // A phone has room for one finding at a time: the first, until another is picked. What is picked may be gone later.
  const first = findings[0]?.[0] ?? WHOLE;
  const about = isDesk
    ? WHOLE
    : ([...findings.map(([key]) => key), WHOLE].find((key) => key === picked) ?? first);
  return (
    <section className="chain-part" aria-labelledby="chain-title">
      <h2 id="chain-title">{say('title')}</h2>
      <Headline of={of} />
      {of.observations.length > 0 && (
        <>
          {!isDesk && (
            <Pick
              label={say('pick')}
              value={about}
              options={[...findings, [WHOLE, say('whole')]]}
              onChange={setPicked}
            />
          )}
          <ChainView of={of} about={about === WHOLE ? undefined : about} open={open} onArrow={setOpen} />
          <p className="soft">{say('tap')}</p>
          <div role="status">
            {arrow !== undefined && <OpenArrow arrow={arrow} of={of} onClose={() => setOpen(null)} />}
          </div>
          <p className="soft">{say('how')}</p>
          <NextMeasurements of={of} />
          <Findings of={of} />
        </>
      )}
      <Open of={of} />
    </section>
  );
}

function Headline({ of }: { readonly of: CausesAssessment }) {
  const say = useTexts(chainTexts);
  const { language } = useSettings();
  const count = of.observations.length;
  if (count === 0) return <p className="headline">{say('nothing')}</p>;
  const named = of.mechanisms.filter((m) => m.weight >= NAMED_FROM).slice(0, 3);
  const words = named.map((m) =>
    say('named', { title: midSentence(nodeTitle(m.key, language)), share: shareText(m.weight) }),
  );
  return (
    <p className="headline">
      {words.length === 0 ? say('open', { count }) : say('leads', { count, named: words.join(', ') })}
    </p>
  );
}

function OpenArrow({
  arrow,
  of,
  onClose,
}: {
  readonly arrow: CauseArrow;
  readonly of: CausesAssessment;
  readonly onClose: () => void;
}) {
  const say = useTexts(chainTexts);
  const common = useTexts(commonTexts);
  const { language } = useSettings();
  return (
    <div className="open-arrow">
      <header>
        <h3>
          <span className="arrow-number">{arrow.number}</span> {arrowTitle(arrow, say, language)}
        </h3>
        <Button look="quiet" onPress={onClose}>
          {common('close')}
        </Button>
      </header>
      <p className="figure">{say('share', { share: shareText(arrow.weight) })}</p>
      <ArrowEvidence arrow={arrow} of={of} />
    </div>
  );
}

function NextMeasurements({ of }: { readonly of: CausesAssessment }) {
  const say = useTexts(chainTexts);
  const settings = useSettings();
  if (of.next.length === 0) return null;
  return (
    <>
      <h3>{say('next')}</h3>
      <p className="soft">{say('nextHow')}</p>
      <ol className="next-measurements">
        {of.next.slice(0, NEXT_SHOWN).map((n) => {
          const { title, how } = measurementWords(n, settings.language);
          return (
            <li key={n.key}>
              <strong>{title}</strong>
              <p>{how}</p>
              <p className="soft">
                {say('about', { title: midSentence(nodeTitle(n.about, settings.language)) })} ·{' '}
                {n.waitDays === undefined
                  ? say('minutes', { count: n.minutes })
                  : say('minutesThenDays', { count: n.minutes, days: n.waitDays })}
              </p>
              <ul>
                {n.outcomes.map((outcome) => (
                  <li key={`${outcome.answer} ${outcome.from} ${outcome.below}`}>
                    {outcomeText(n, outcome, say, settings)}
                  </li>
                ))}
              </ul>
            </li>
          );
        })}
      </ol>
    </>
  );
}

function Findings({ of }: { readonly of: CausesAssessment }) {
  const say = useTexts(chainTexts);
  const { language } = useSettings();
  const drawn = of.arrows.filter((a) => a.number !== undefined);
  return (
    <>
      <h3>{say('findings')}</h3>
      {of.observations.map((finding) => (
        <Finding key={finding.key} finding={finding} of={of} />
      ))}
      {of.consequences.length > 0 && (
        <>
          <h3>{say('follows')}</h3>
          <ul className="chain-follows">
            {of.consequences.map(({ key }) => (
              <li key={key}>
                <strong>{nodeTitle(key, language)}</strong>{' '}
                <span className="soft">
                  {say('from', {
                    list: drawn
                      .filter((a) => a.to === key)
                      .map((a) => `${midSentence(nodeTitle(a.from, language))} (${a.number})`)
                      .join(', '),
                  })}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function Finding({ finding, of }: { readonly finding: CauseObservation; readonly of: CausesAssessment }) {
  const say = useTexts(chainTexts);
  const { language } = useSettings();
  const arrows = of.arrows.filter((a) => a.to === finding.key);
  const [first] = arrows;
  const named = (key: NodeKey) => midSentence(nodeTitle(key, language));
  const small = arrows.filter((a) => a.number === undefined);
  return (
    <details className="fold">
      <summary>
        <span>
          {nodeTitle(finding.key, language)}{' '}
          <span className="soft">
            {first === undefined || first.weight <= finding.unlisted
              ? say('noneFits')
              : say('mostLikely', { title: named(first.from), share: shareText(first.weight) })}
          </span>
        </span>
      </summary>
      {arrows
        .filter((a) => a.number !== undefined)
        .map((arrow) => (
          <div key={arrow.from} className="chain-explanation">
            <p>
              <span className="arrow-number">{arrow.number}</span>{' '}
              <strong>{nodeTitle(arrow.from, language)}</strong>{' '}
              <span className="figure">{shareText(arrow.weight)}</span>
            </p>
            <ArrowEvidence arrow={arrow} of={of} />
          </div>
        ))}
      <p className="soft">
        {say('lighter', {
          list: [
            ...small.map((a) => say('lighterOne', { title: named(a.from), share: shareText(a.weight) })),
            say('lighterOne', { title: say('unlisted'), share: shareText(finding.unlisted) }),
          ].join('; '),
        })}
      </p>
    </details>
  );
}

function Open({ of }: { readonly of: CausesAssessment }) {
  const say = useTexts(chainTexts);
  const { language } = useSettings();
  const list = (entries: readonly { readonly key: NodeKey }[]) =>
    entries.map((entry) => midSentence(nodeTitle(entry.key, language))).join('; ');
  return (
    <>
      {of.ruledOut.length > 0 && <p className="soft">{say('ruledOut', { list: list(of.ruledOut) })}</p>}
      {of.notShown.length > 0 && <p className="soft">{say('notShown', { list: list(of.notShown) })}</p>}
    </>
  );
}
