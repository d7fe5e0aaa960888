import type { AirExchangeSummary, Assessment } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { DataTable } from '../../parts/chart/data-table.tsx';
import { measureText, monthNames } from '../../parts/measure.ts';
import { AssumptionList } from '../../parts/why/assumption-list.tsx';
import { SourceList } from '../../parts/why/source-list.tsx';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { causesTexts } from './causes-texts.ts';

/** Publications behind the pressure network, by their ids in the assessment. */
const SOURCES: readonly string[] = [
  'zone-pressure-network',
  'ashrae-fundamentals-infiltration',
  'ashrae-fundamentals-leakage-areas',
  'lbnl-residential-diagnostics',
];

/** Guesses of the network: leaks, and what fans and ducts move. */
const GUESSES = /leak|Leak|AirChangesAt50Pa|ductImbalance|FanAir/;

/** Months of a quarter in a language; the assessment names them in English. */
function quarterName(months: string, language: 'en' | 'es'): string {
  const numbers = months.split(' to ').map((name) => monthNames('en', 'long').indexOf(name));
  if (language === 'en' || numbers.some((month) => month < 0)) return months;
  return numbers.map((month) => monthNames(language, 'long')[month]).join(' a ');
}

interface FloorAirProps {
  readonly assessment: Assessment;
}

/** How much air of the space comes up into the house, quarter by quarter, and what that rests on. */
export function FloorAir({ assessment }: FloorAirProps) {
  const say = useTexts(causesTexts);
  const { units: system, language } = useSettings();
  const { season } = assessment;
  if (season === undefined) return null;
  const [found, repaired] = season.airExchange;
  const percent = (share: number) => units.formatQuantity(share, 'share', system);
  const most = found.quarters.reduce((best, quarter) =>
    quarter.floorShare > best.floorShare ? quarter : best,
  );
  const guesses = assessment.assumptions.filter((a) => GUESSES.test(a.key));
  return (
    <>
      <h3>{say('upTitle')}</h3>
      <p>
        {most.floorDirection === 'up'
          ? say('upSentence', {
              months: quarterName(most.months, language),
              share: percent(most.floorShare),
            })
          : say('upNone')}
      </p>
      <QuarterTable air={found} title={say('asFound')} />
      {repaired !== undefined && <QuarterTable air={repaired} title={say('afterRepairs')} />}
      <Why about={say('upTitle')}>
        <p>{say('upWhy')}</p>
        <p>
          {say('leakage')}:{' '}
          <span className="figure assumed">{measureText(found.leakageM2, 'm²', system)}</span>
          <br />
          {say('floorLeakage')}:{' '}
          <span className="figure assumed">{measureText(found.floorLeakageM2, 'm²', system)}</span>
        </p>
        <AssumptionList assumptions={guesses} />
        <SourceList sources={assessment.sources.filter((s) => SOURCES.includes(s.id))} />
      </Why>
    </>
  );
}

function QuarterTable({ air, title }: { readonly air: AirExchangeSummary; readonly title: string }) {
  const say = useTexts(causesTexts);
  const { units: system, language } = useSettings();
  const assumed = (text: string) => <span className="assumed">{text}</span>;
  return (
    <>
      <p className="table-title">{title}</p>
      <DataTable
        caption={`${say('upTitle')}: ${title}`}
        columns={[
          { title: say('quarter') },
          { title: say('changes'), figure: true },
          { title: say('share'), figure: true },
          { title: say('flow'), figure: true },
        ]}
        rows={air.quarters.map((quarter) => {
          const flow = units.formatQuantity(Math.abs(quarter.floorFlowM3PerH) / 3600, 'flow', system, 0);
          return [
            quarterName(quarter.months, language),
            assumed(quarter.airChangesPerHour.toFixed(2)),
            assumed(units.formatQuantity(quarter.floorShare, 'share', system)),
            quarter.floorDirection === 'none' ? say('still') : assumed(say(quarter.floorDirection, { flow })),
          ];
        })}
      />
    </>
  );
}
