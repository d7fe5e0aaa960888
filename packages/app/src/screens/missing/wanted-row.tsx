import type { Wanted } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { ReactNode } from 'react';
import { Button } from '../../parts/button.tsx';
import { useSettings } from '../../settings/settings.ts';
import { type SheetWish, useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { quantityTitle } from '../measure/find-quantity.ts';
import { missingTexts } from './missing-texts.ts';
import { answerText, questionText } from './question-words.ts';

/** The reading that stands for a guess of the year, where one does. */
const READINGS_OF_GUESSES: Readonly<Record<string, SheetWish>> = {
  crawlTemperature: { kind: 'air', where: 'crawl' },
  houseHumidity: { kind: 'air', where: 'house' },
  groundTemperature: { kind: 'surface' },
};

const READINGS = {
  air: ['readingAir', { kind: 'air', where: 'crawl' }],
  'outdoor-air': ['readingOutdoorAir', { kind: 'air', where: 'outdoor' }],
  wood: ['readingWood', { kind: 'wood' }],
  surface: ['readingSurface', { kind: 'surface' }],
} as const;

interface WantedRowProps {
  readonly wanted: Wanted;
  readonly onAnswer: (question: string, answer: string) => void;
}

/** One thing that is missing: what, why it matters, and the tap that settles it or opens its form. */
export function WantedRow({ wanted, onAnswer }: WantedRowProps) {
  const say = useTexts(missingTexts);
  const { language } = useSettings();
  const { show, close } = useSheets();
  const why = useWhy(wanted);
  switch (wanted.kind) {
    case 'walls':
    case 'ground':
      return (
        <Row title={say(wanted.kind)} why={say('drawHow')}>
          <Button onPress={close}>{say('draw')}</Button>
        </Row>
      );
    case 'reading': {
      const [title, wish] = READINGS[wanted.of];
      return (
        <Row title={say(title)} why={say('readingWhy')}>
          <Measure what={say(title)} wish={wish} />
        </Row>
      );
    }
    case 'quantity': {
      const { quantity, unseen, how } = wanted;
      const title = quantityTitle(quantity, language);
      const notSeen = unseen.length === 0 ? '' : ` ${say('unseen', { count: unseen.length })}.`;
      return (
        <Row title={title} why={`${why}${notSeen}`} how={how}>
          <Measure what={title} wish={{ kind: 'quantity', quantity }} />
        </Row>
      );
    }
    case 'answer': {
      const text = questionText(wanted.question, language, wanted.text);
      return (
        <Row title={text} why={why}>
          {wanted.answers.map((answer) => {
            const said = answerText(answer, language);
            return (
              <Button
                key={answer}
                label={say('answerThis', { answer: said, question: text })}
                onPress={() => onAnswer(wanted.question, answer)}
              >
                {said}
              </Button>
            );
          })}
        </Row>
      );
    }
    case 'trial':
      return (
        <Row title={wanted.title} isEnglish why={why} how={`${wanted.how} ${wanted.reason}`}>
          <Button label={`${say('photo')}: ${wanted.title}`} onPress={() => show('picture')}>
            {say('photo')}
          </Button>
        </Row>
      );
    case 'guess': {
      const wish = READINGS_OF_GUESSES[wanted.assumption];
      return (
        <Row title={wanted.title} isEnglish why={`${why} ${say('assumedNow')}`}>
          {wish !== undefined && <Measure what={wanted.title} wish={wish} />}
        </Row>
      );
    }
  }
}

function Measure({ what, wish }: { readonly what: string; readonly wish: SheetWish }) {
  const say = useTexts(missingTexts);
  const { show } = useSheets();
  return (
    <Button label={say('measureThis', { what })} onPress={() => show('measure', wish)}>
      {say('measure')}
    </Button>
  );
}

/** Why something is wanted, in a line. */
function useWhy({ for: reason }: Wanted): string {
  const say = useTexts(missingTexts);
  const { units: system } = useSettings();
  const { criteria: count, codes, gainBits, share } = reason;
  return [
    ...(gainBits === undefined ? [] : [say('tellsApart')]),
    ...(share === undefined ? [] : [say('ofYear', { share: units.formatQuantity(share, 'share', system) })]),
    ...(count === 0 ? [] : [codes > 0 ? say('criteriaCode', { count, codes }) : say('criteria', { count })]),
  ].join(' ');
}

interface RowProps {
  readonly title: string;
  readonly why: string;
  readonly how?: string;
  /** True for words that stand in English only. */
  readonly isEnglish?: boolean;
  readonly children: ReactNode;
}

function Row({ title, why, how, isEnglish = false, children }: RowProps) {
  const say = useTexts(missingTexts);
  return (
    <li>
      <strong {...(isEnglish ? { lang: 'en' } : {})}>{title}</strong>
      <p className="soft">{why}</p>
      {how !== undefined && (
        <details>
          <summary>
            {say('how')} <span className="hidden-text">{title}</span>
          </summary>
          <p lang="en">{how}</p>
        </details>
      )}
      <div className="actions">{children}</div>
    </li>
  );
}
