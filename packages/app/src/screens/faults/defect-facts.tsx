import type { CriterionResult, DefectResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { useSettings } from '../../settings/settings.ts';
import { hrefOf } from '../../shell/route.ts';
import { useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { boardTexts } from './board-texts.ts';

const MARKS = {
  shown: 'not-met',
  claimed: 'not-shown',
  contradicted: 'met',
  absent: 'met',
  'not-shown': 'not-shown',
} as const;

/** So many criteria stand there; the list below has all. */
const FIRST = 3;

/** Less water than this prints as none [kg/day]. */
const HARDLY_ANY_KG = 0.03;

interface DefectFactsProps {
  readonly jobId: string;
  readonly defect: DefectResult;
  readonly criteria: readonly CriterionResult[];
  /** Id of the finding whose place the plan can show; absent where it has none. */
  readonly finding?: string | undefined;
}

/** What is known of a defect: how far it is proved, the criteria it breaks, and what mending it alone would do. */
export function DefectFacts({ jobId, defect, criteria, finding }: DefectFactsProps) {
  const say = useTexts(boardTexts);
  const { close } = useSheets();
  const broken = criteria.filter(({ id }) => defect.broken.includes(id));
  const { mended, mendedNot } = defect;
  const link = (place: string) => hrefOf({ screen: 'job', id: jobId, question: 'faults', place });
  return (
    <div className="defect-facts">
      <p className="proof-state">
        <VerdictMark verdict={MARKS[defect.state]} wordless />
        <strong>{say(defect.state)}</strong>
        {finding !== undefined && (
          // On a phone the answer lies over the plan.
          <a href={link(finding)} onClick={close}>
            {say('onPlan')}
          </a>
        )}
      </p>
      {broken.length > 0 && (
        <ul className="broken">
          {broken.slice(0, FIRST).map(({ id, title }) => (
            <li key={id}>
              <a href={link(id)}>{say('breaks', { title })}</a>
            </li>
          ))}
        </ul>
      )}
      {broken.length > FIRST && <p className="soft">{say('moreBroken', { count: broken.length - FIRST })}</p>}
      {mended !== undefined && <Mended mended={mended} />}
      {mendedNot !== undefined && <p className="soft">{mendedNot}</p>}
    </div>
  );
}

function Mended({ mended }: { readonly mended: NonNullable<DefectResult['mended']> }) {
  const say = useTexts(boardTexts);
  const { units: system } = useSettings();
  const { waterKgPerDay, waterShare, year } = mended;
  const water = units.formatQuantity(Math.abs(waterKgPerDay), 'massFlow', system);
  const share =
    waterShare === undefined ? undefined : units.formatQuantity(Math.abs(waterShare), 'share', system);
  return (
    <p>
      {say('onlyThis')}{' '}
      {Math.abs(waterKgPerDay) < HARDLY_ANY_KG
        ? say('sameWater')
        : waterKgPerDay < 0
          ? say('moreWater', { water })
          : share === undefined
            ? say('lessWater', { water })
            : say('lessWaterShare', { water, share })}
      {year !== undefined &&
        ` ${say(year.daysAbove80 > 0 ? 'moreDays' : 'fewerDays', { days: Math.round(Math.abs(year.daysAbove80)) })}`}
    </p>
  );
}
