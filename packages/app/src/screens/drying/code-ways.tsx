import type { Assessment, SizingResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { BarList } from '../../parts/chart/bar-list.tsx';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { flowText, typeset } from '../../parts/measure.ts';
import { SourceList } from '../../parts/why/source-list.tsx';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { SOURCES_OF } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';

interface CodeWaysProps {
  readonly assessment: Assessment;
  readonly sizing: SizingResult;
}

/** The ways in which the residential code allows a closed space to be kept dry, against the same load. */
export function CodeWays({ assessment, sizing }: CodeWaysProps) {
  const say = useTexts(dryingTexts);
  const { units: system, language } = useSettings();
  const { codeOptions, steadyKgPerDay } = sizing;
  const flow = (kgPerDay: number | undefined) =>
    kgPerDay === undefined ? say('notKnown') : flowText(kgPerDay, system);
  const name = (option: (typeof codeOptions)[number]) =>
    language === 'en' ? option.title : say(option.key === 'dehumidifier' ? 'foundMachine' : option.key);
  const covering = codeOptions.filter((option) => option.coversLoad === true);
  return (
    <ChartFigure
      title={say('codeTitle')}
      summary={
        covering.length === 0 ? say('codeNone') : say('codeSummary', { names: covering.map(name).join(', ') })
      }
      columns={[
        { title: say('way') },
        { title: say('moves'), figure: true },
        { title: say('takesOut'), figure: true },
        { title: say('covers') },
      ]}
      rows={() =>
        codeOptions.map((option) => [
          name(option),
          option.flowM3PerS !== undefined
            ? units.formatQuantity(option.flowM3PerS, 'flow', system)
            : flow(option.capacityKgPerDay),
          flow(option.removesKgPerDay),
          say(option.coversLoad === undefined ? 'notKnown' : option.coversLoad ? 'yes' : 'no'),
        ])
      }
      why={
        <Why about={say('codeTitle')}>
          {codeOptions.map((option) => (
            <div key={option.key}>
              <p className="why-head">{name(option)}</p>
              <ul className="why-list">
                {option.warnings.map((warning) => (
                  <li key={warning.code}>{typeset(warning.message)}</li>
                ))}
              </ul>
            </div>
          ))}
          <SourceList sources={assessment.sources.filter(({ id }) => SOURCES_OF.code.includes(id))} />
        </Why>
      }
    >
      <BarList
        bars={[
          {
            key: 'load',
            title: say('loadSteady'),
            shown: flow(steadyKgPerDay),
            value: steadyKgPerDay,
            assumed: true,
            look: 'open',
          },
          ...codeOptions.map((option) => ({
            key: option.key,
            title: name(option),
            shown: flow(option.removesKgPerDay),
            value: option.removesKgPerDay ?? 0,
            look: 'drying' as const,
          })),
        ]}
      />
    </ChartFigure>
  );
}
