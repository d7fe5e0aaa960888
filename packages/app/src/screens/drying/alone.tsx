import type { SeasonAssessment, SeasonCaseResult } from '@undercroft/assessment';
import { BarList } from '../../parts/chart/bar-list.tsx';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { midSentence, moneyText } from '../../parts/measure.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { caseTitle, energyText, percentText, waterText } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';

interface AloneProps {
  readonly cases: SeasonAssessment;
  readonly isOld: boolean;
}

/** The year with each repair by itself, between the space as found and all of them. */
export function Alone({ cases, isOld }: AloneProps) {
  const say = useTexts(dryingTexts);
  const show = useSettings();
  const shown = cases.cases.filter(({ kind }) => kind !== 'failure');
  const single = shown.filter(({ kind }) => kind === 'repair');
  const all = shown.find(({ kind }) => kind === 'all-repairs');
  if (all === undefined) return <p>{say('aloneNone')}</p>;
  const title = (one: SeasonCaseResult) => caseTitle(one, cases, say, show.language);
  const best = [...(single.length === 0 ? [all] : single)].sort((a, b) => a.daysAbove80 - b.daysAbove80)[0];
  return (
    <ChartFigure
      title={say('aloneTitle')}
      summary={say('aloneSummary', {
        found: shown[0].daysAbove80,
        best: midSentence(title(best)),
        days: best.daysAbove80,
        all: all.daysAbove80,
      })}
      columns={[
        { title: say('state') },
        ...(['days', 'mold', 'wood', 'water', 'energy', 'yearlyCost'] as const).map((key) => ({
          title: say(key),
          figure: true,
        })),
      ]}
      rows={() =>
        shown.map((one) => [
          title(one),
          one.daysAbove80,
          one.peakMoldIndex.toFixed(1),
          percentText(one.peakWoodMoisture, 1),
          waterText(one.waterRemovedKg, show),
          energyText(one.energyKWh),
          moneyText(one.costCents, show.language),
        ])
      }
    >
      {isOld && <p className="soft">{say('stale')}</p>}
      <BarList
        scale={[0, 365]}
        bars={shown.map((one) => ({
          key: `${one.kind} ${one.repairIds.join(' ')}`,
          title: title(one),
          shown: String(one.daysAbove80),
          value: one.daysAbove80,
          look: one.kind === 'as-found' ? 'wetting' : 'drying',
        }))}
      />
    </ChartFigure>
  );
}
