import type { BudgetPath, BudgetResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { type Bar, BarList } from '../../parts/chart/bar-list.tsx';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { flowText, midSentence, typeset } from '../../parts/measure.ts';
import { PathWhy } from '../../parts/why/path-why.tsx';
import { byFlow, isDrawn, pathTitle } from '../../parts/why/path-words.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { mainPath } from './budget-words.ts';
import { causesTexts } from './causes-texts.ts';

interface BalanceProps {
  readonly title: string;
  readonly budget: BudgetResult;
}

/** The water of one state of the space, path by path: as bars that can be asked why, and as a table. */
export function Balance({ title, budget }: BalanceProps) {
  const say = useTexts(causesTexts);
  const { units: system, language } = useSettings();
  const flow = (kgPerDay: number) => flowText(kgPerDay, system);
  const paths = byFlow(budget.paths);
  const main = mainPath(budget);
  const left = budget.unexplainedKgPerDay;
  const total = flow(budget.totalInKgPerDay);
  const summary =
    main === undefined
      ? say('balanceNone')
      : say('balance', {
          total: flowText(budget.totalInKgPerDay, system, 'bare'),
          path: midSentence(pathTitle(main, language)),
          most: flowText(main.kgPerDay, system, 'bare'),
          share: units.formatQuantity(main.kgPerDay / budget.totalInKgPerDay, 'share', system),
        });
  const range = (path: BudgetPath) => say('rangeOf', { low: flow(path.low), high: flow(path.high) });
  const small = paths.filter((path) => !isDrawn(path));
  const bars: Bar[] = paths.filter(isDrawn).map((path) => ({
    key: path.key,
    title: pathTitle(path, language),
    shown: flow(path.kgPerDay),
    value: path.kgPerDay,
    low: path.low,
    high: path.high,
    assumed: path.assumed,
    look: path.kgPerDay >= 0 ? 'wetting' : 'drying',
    why: <PathWhy path={path} />,
  }));
  const rest: Bar[] =
    left === 0
      ? []
      : [
          {
            key: 'rest',
            title: say('unexplained'),
            shown: flow(left),
            value: left,
            assumed: true,
            look: 'open',
          },
        ];
  return (
    <ChartFigure
      title={title}
      summary={summary}
      columns={[
        { title: say('path') },
        { title: say('perDay'), figure: true },
        { title: say('range'), figure: true },
      ]}
      rows={() => [
        ...paths.map((path) => [
          pathTitle(path, language),
          <span key="value" className={path.assumed ? 'assumed' : ''}>
            {flow(path.kgPerDay)}
          </span>,
          range(path),
        ]),
        [say('bringing'), total, ''],
        ...(left === 0 ? [] : [[say('unexplained'), flow(left), '']]),
      ]}
    >
      <BarList bars={[...bars, ...rest]} />
      {small.length > 0 && (
        <p className="soft">
          {say('small', { paths: small.map((path) => pathTitle(path, language)).join('; ') })}
        </p>
      )}
      {left !== 0 && (
        <p>
          {say(left > 0 ? 'unexplainedLess' : 'unexplainedMore', {
            amount: flow(Math.abs(left)),
          })}
        </p>
      )}
      {budget.notices.map((notice) => (
        <p key={notice.code + notice.message} className="soft">
          {typeset(notice.message)}
        </p>
      ))}
    </ChartFigure>
  );
}
