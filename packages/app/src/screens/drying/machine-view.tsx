import type { Assessment, MachineChoice, SizingResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { type Bar, BarList } from '../../parts/chart/bar-list.tsx';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { flowText, midSentence, moneyText, monthNames, typeset } from '../../parts/measure.ts';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { PathWhy } from '../../parts/why/path-why.tsx';
import { byFlow, isDrawn, pathTitle } from '../../parts/why/path-words.ts';
import { SourceList } from '../../parts/why/source-list.tsx';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { percentText, SOURCES_OF } from './case-words.ts';
import { CodeWays } from './code-ways.tsx';
import { dryingTexts } from './drying-texts.ts';

interface MachineViewProps {
  readonly assessment: Assessment;
  readonly sizing: SizingResult;
}

/** What has to be taken out on the most humid day, which machine does it, and what the code allows instead. */
export function MachineView({ assessment, sizing }: MachineViewProps) {
  return (
    <>
      <Load sizing={sizing} />
      <Machines assessment={assessment} sizing={sizing} />
      <Labels assessment={assessment} sizing={sizing} />
      <CodeWays assessment={assessment} sizing={sizing} />
      {sizing.notices.map((notice) => (
        <p key={notice.code + notice.message} className="soft">
          {typeset(notice.message)}
        </p>
      ))}
    </>
  );
}

/** Day of the load in a language; the assessment writes `most humid day, July 21`. */
function dayOf({ day }: SizingResult, language: 'en' | 'es'): string {
  const [month = '', date = ''] = (day.title.split(', ')[1] ?? '').split(' ');
  const number = monthNames('en', 'long').indexOf(month);
  if (number < 0) return day.title;
  const name = monthNames(language, 'long')[number];
  return language === 'en' ? `${name} ${date}` : `${date} de ${name}`;
}

function Load({ sizing }: { readonly sizing: SizingResult }) {
  const say = useTexts(dryingTexts);
  const { units: system, language } = useSettings();
  const flow = (kgPerDay: number) => flowText(kgPerDay, system);
  const paths = byFlow(sizing.paths);
  const small = paths.filter((path) => !isDrawn(path));
  const { pullDown } = sizing;
  const bars: Bar[] = [
    ...paths.map(
      (path): Bar => ({
        key: path.key,
        title: pathTitle(path, language),
        shown: flow(path.kgPerDay),
        value: path.kgPerDay,
        low: path.low,
        high: path.high,
        assumed: path.assumed,
        look: path.kgPerDay >= 0 ? 'wetting' : 'drying',
        why: <PathWhy path={path} />,
      }),
    ),
    {
      key: 'net',
      title: say('loadNet'),
      shown: flow(sizing.steadyKgPerDay),
      value: sizing.steadyKgPerDay,
      low: sizing.steadyLowKgPerDay,
      high: sizing.steadyHighKgPerDay,
      assumed: true,
      look: 'open',
    },
    {
      key: 'pull-down',
      title: say('pullDown'),
      shown: flow(pullDown.meanKgPerDay),
      value: pullDown.meanKgPerDay,
      assumed: true,
      look: 'open',
      why: (
        <p>
          {say('pullDownWhy', {
            water: units.formatQuantity(pullDown.waterKg, 'mass', system, 0),
            days: pullDown.days,
            firstWeek: flow(pullDown.firstWeekKgPerDay),
          })}
        </p>
      ),
    },
  ];
  return (
    <ChartFigure
      title={say('loadTitle', { day: dayOf(sizing, language) })}
      summary={say('loadSummary', {
        steady: flow(sizing.steadyKgPerDay),
        target: percentText(sizing.targetRelativeHumidity),
        low: flow(sizing.steadyLowKgPerDay),
        high: flow(sizing.steadyHighKgPerDay),
        pullDown: flow(sizing.withPullDownKgPerDay),
        days: pullDown.days,
      })}
      columns={[
        { title: say('path') },
        { title: say('perDay'), figure: true },
        { title: say('range'), figure: true },
      ]}
      rows={() =>
        bars.map(({ title, shown, low, high, assumed }) => [
          title,
          <span key="value" className={assumed ? 'assumed' : ''}>
            {shown}
          </span>,
          low === undefined || high === undefined ? '' : say('rangeOf', { low: flow(low), high: flow(high) }),
        ])
      }
    >
      <BarList bars={bars.filter(({ key }) => small.every((path) => path.key !== key))} />
      {small.length > 0 && (
        <p className="soft">
          {say('small', { paths: small.map((path) => pathTitle(path, language)).join('; ') })}
        </p>
      )}
    </ChartFigure>
  );
}

function Machines({ assessment, sizing }: MachineViewProps) {
  const say = useTexts(dryingTexts);
  const { units: system, language } = useSettings();
  const { machines } = sizing;
  if (machines.length === 0) return <p>{say('noMachines')}</p>;
  const flow = (kgPerDay: number) => flowText(kgPerDay, system);
  const name = (machine: MachineChoice) =>
    machine.from === 'found' ? say('found', { name: say('foundMachine') }) : machine.name;
  const bars: Bar[] = [
    {
      key: 'steady',
      title: say('loadSteady'),
      shown: flow(sizing.steadyKgPerDay),
      value: sizing.steadyKgPerDay,
      assumed: true,
      look: 'open',
    },
    {
      key: 'pull-down',
      title: say('loadPullDown'),
      shown: flow(sizing.withPullDownKgPerDay),
      value: sizing.withPullDownKgPerDay,
      assumed: true,
      look: 'open',
    },
    ...machines.map(
      (machine): Bar => ({
        key: machine.id,
        title: name(machine),
        shown: flow(machine.capacityHereKgPerDay),
        value: machine.capacityHereKgPerDay,
        look: 'drying',
      }),
    ),
  ];
  const holding = machines.filter((machine) => machine.holdsSteady).length;
  const optional = (value: number | undefined) => (value === undefined ? say('never') : value.toFixed(1));
  return (
    <ChartFigure
      title={say('machinesTitle')}
      summary={say('machinesSummary', {
        count: machines.length,
        holding,
        share: percentText(sizing.runMax),
      })}
      columns={[
        { title: say('machine') },
        { title: say('steady') },
        ...(['label', 'here', 'runs', 'runsPullDown', 'kwhPerDay', 'starts', 'price'] as const).map(
          (key) => ({ title: say(key), figure: true }),
        ),
      ]}
      rows={() =>
        machines.map((machine) => [
          name(machine),
          say(machine.holdsSteady ? 'holds' : 'holdsNot'),
          flow(machine.labelKgPerDay['80F-60']),
          flow(machine.capacityHereKgPerDay),
          percentText(machine.steadyRunFraction),
          percentText(machine.pullDownRunFraction),
          optional(machine.energyKWhPerDay),
          optional(machine.startsPerHour),
          machine.priceCents === undefined ? say('never') : moneyText(machine.priceCents, language),
        ])
      }
      why={
        <Why about={say('machinesTitle')}>
          <p>{say('machineWhy', { share: percentText(sizing.runMax) })}</p>
          <SourceList sources={assessment.sources.filter(({ id }) => SOURCES_OF.sizing.includes(id))} />
        </Why>
      }
    >
      <BarList bars={bars} />
      <ul className="machine-verdicts">
        {machines.map((machine) => (
          <li key={machine.id}>
            <VerdictMark verdict={machine.holdsSteady ? 'met' : 'not-met'} wordless />
            {name(machine)}: {say(machine.holdsSteady ? 'holds' : 'holdsNot')}; {midSentence(say('runs'))}{' '}
            <span className="figure">{percentText(machine.steadyRunFraction)}</span>
          </li>
        ))}
      </ul>
      {machines.flatMap((machine) =>
        machine.notices.map((notice) => (
          <p key={machine.id + notice.code} className="soft">
            {name(machine)}: {typeset(notice.message)}
          </p>
        )),
      )}
    </ChartFigure>
  );
}

function Labels({ assessment, sizing }: MachineViewProps) {
  const say = useTexts(dryingTexts);
  const { units: system } = useSettings();
  const { labels } = sizing;
  const usual = labels.find((label) => label.ratingPoint === '80F-60');
  if (usual === undefined) return null;
  const flow = (kgPerDay: number) => flowText(kgPerDay, system);
  return (
    <ChartFigure
      title={say('labelsTitle')}
      summary={`${say('80F-60')}: ${flow(usual.steadyKgPerDay)}.`}
      columns={[
        { title: say('test') },
        { title: say('steady'), figure: true },
        { title: say('loadPullDown'), figure: true },
      ]}
      rows={() =>
        labels.map((label) => [
          say(label.ratingPoint),
          flow(label.steadyKgPerDay),
          flow(label.pullDownKgPerDay),
        ])
      }
      why={
        <Why about={say('labelsTitle')}>
          <p>{say('machineWhy', { share: percentText(sizing.runMax) })}</p>
          <SourceList sources={assessment.sources.filter(({ id }) => SOURCES_OF.sizing.includes(id))} />
        </Why>
      }
    >
      <BarList
        bars={labels.map((label) => ({
          key: label.ratingPoint,
          title: say(label.ratingPoint),
          shown: flow(label.steadyKgPerDay),
          value: label.steadyKgPerDay,
          high: label.pullDownKgPerDay,
          low: label.steadyKgPerDay,
          assumed: true,
          look: 'drying',
        }))}
      />
    </ChartFigure>
  );
}
