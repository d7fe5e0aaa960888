import type { Assessment, RankingResult, SeasonAssessment } from '@undercroft/assessment';
import { BarList } from '../../parts/chart/bar-list.tsx';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { moneyText, typeset } from '../../parts/measure.ts';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { useFullRun } from '../../worker/use-assessment.ts';
import { Alone } from './alone.tsx';
import { percentText, setTitle } from './case-words.ts';
import { Chances } from './chances.tsx';
import { dryingTexts } from './drying-texts.ts';
import { FullRunControl } from './full-run-control.tsx';
import type { DryingState } from './use-drying.ts';
import { YearWhy } from './year-why.tsx';

interface RankingViewProps {
  readonly view: QuestionProps['view'];
  readonly state: DryingState;
}

/** Which repairs buy dryness and how sure that is: each alone at once, the rest when it is asked for. */
export function RankingView({ view, state }: RankingViewProps) {
  const full = useFullRun(view);
  const { outcome } = full.run ?? {};
  const worked = outcome?.ok === true ? outcome.assessment : undefined;
  return (
    <>
      {state.cases !== undefined && <Alone cases={state.cases} isOld={state.isOld} />}
      <FullRunControl full={full} />
      {worked?.season !== undefined && <Worked assessment={worked} season={worked.season} />}
    </>
  );
}

interface WorkedProps {
  readonly assessment: Assessment;
  readonly season: SeasonAssessment;
}

function Worked({ assessment, season }: WorkedProps) {
  const { ranking, chances } = season;
  return (
    <>
      {ranking !== undefined && (
        <>
          <Effects assessment={assessment} season={season} ranking={ranking} />
          <Best season={season} ranking={ranking} />
          {ranking.notices.map((notice) => (
            <p key={notice.code} className="soft">
              {typeset(notice.message)}
            </p>
          ))}
        </>
      )}
      {chances !== undefined && <Chances assessment={assessment} chances={chances} />}
    </>
  );
}

interface RankedProps {
  readonly season: SeasonAssessment;
  readonly ranking: RankingResult;
}

const signed = (value: number, digits: number) => typeset(`${value > 0 ? '+' : ''}${value.toFixed(digits)}`);

function Effects({ assessment, season, ranking }: RankedProps & { readonly assessment: Assessment }) {
  const say = useTexts(dryingTexts);
  const { language } = useSettings();
  const title = (id: string) => setTitle([id], season, say, language);
  const [first] = ranking.effects;
  const found = season.cases[0];
  return (
    <ChartFigure
      title={say('effectsTitle')}
      summary={say('effectsSummary', {
        best: title(first.id),
        alone: String(-first.alone.daysAbove80),
        last: String(-first.last.daysAbove80),
        years: ranking.yearsRun,
      })}
      columns={[
        { title: say('repair') },
        { title: `${say('days')}, ${say('alone').toLowerCase()}`, figure: true },
        ...(['last', 'moldAlone', 'woodAlone', 'costAlone'] as const).map((key) => ({
          title: say(key),
          figure: true,
        })),
      ]}
      rows={() =>
        ranking.effects.map(({ id, alone, last }) => [
          title(id),
          signed(alone.daysAbove80, 0),
          signed(last.daysAbove80, 0),
          signed(alone.peakMoldIndex, 1),
          say('points', { value: signed(100 * alone.peakWoodMoisture, 1) }),
          moneyText(alone.yearlyCostCents, language),
        ])
      }
      why={
        <Why about={say('effectsTitle')}>
          <YearWhy assessment={assessment} figure="daysAbove80" of={found} />
        </Why>
      }
    >
      <BarList
        bars={ranking.effects.flatMap(({ id, alone, last }) => [
          {
            key: `${id} alone`,
            title: `${title(id)}: ${say('alone').toLowerCase()}`,
            shown: signed(alone.daysAbove80, 0),
            value: alone.daysAbove80,
            look: alone.daysAbove80 > 0 ? ('wetting' as const) : ('drying' as const),
          },
          {
            key: `${id} last`,
            title: say('last'),
            shown: signed(last.daysAbove80, 0),
            value: last.daysAbove80,
            look: 'open' as const,
          },
        ])}
      />
    </ChartFigure>
  );
}

function Best({ season, ranking }: RankedProps) {
  const say = useTexts(dryingTexts);
  const { language } = useSettings();
  const fewest = Math.min(...ranking.best.map((set) => set.daysAbove80));
  const enough = ranking.best.find((set) => set.daysAbove80 === fewest);
  if (enough === undefined) return null;
  const price = (cents: number) => moneyText(cents, language);
  const title = (ids: readonly string[]) => setTitle(ids, season, say, language);
  return (
    <ChartFigure
      title={say('bestTitle')}
      summary={say('bestSummary', { price: price(enough.priceCents), days: enough.daysAbove80 })}
      columns={[
        { title: say('set') },
        ...(['price', 'days', 'mold', 'wood', 'yearlyCost'] as const).map((key) => ({
          title: say(key),
          figure: true,
        })),
      ]}
      rows={() =>
        ranking.best.map((set) => [
          title(set.repairIds),
          price(set.priceCents),
          set.daysAbove80,
          set.peakMoldIndex.toFixed(1),
          percentText(set.peakWoodMoisture, 1),
          price(set.yearlyCostCents),
        ])
      }
    >
      <BarList
        scale={[0, 365]}
        bars={ranking.best.map((set) => ({
          key: set.repairIds.join(' '),
          title: `${price(set.priceCents)}: ${title(set.repairIds)}`,
          shown: String(set.daysAbove80),
          value: set.daysAbove80,
          look: 'wetting',
        }))}
      />
    </ChartFigure>
  );
}
