import type { FallOfSpots, LevelSheet } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Pick } from '../../parts/field.tsx';
import { Notice } from '../../parts/notice.tsx';
import { PlanView } from '../../plan/plan-view.tsx';
import { useSettings } from '../../settings/settings.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import type { KindFormProps } from './kind-form.ts';
import { LevelMarks, signedLength } from './level-marks.tsx';
import { levelTexts } from './level-texts.ts';
import { MeaningBox } from './meaning.tsx';
import { useFall } from './use-level-sheet.ts';

/** Relative heights as a list and on the plan, and the fall between any two points. */
export function LevelHeights({ props, sheet }: KindFormProps & { readonly sheet: LevelSheet | null }) {
  const say = useTexts(levelTexts);
  const common = useTexts(commonTexts);
  const { units: system } = useSettings();
  if (sheet === null) return <p className="soft">{common('computing')}</p>;
  const { spots, looseSetupIds } = sheet;
  if (spots.length === 0) return <p>{say('noPoints')}</p>;
  const remove = (readingIds: readonly string[]) =>
    void props.openJob.commit(...readingIds.map((item) => ({ do: 'remove', kind: 'level', item }) as const));
  return (
    <>
      {spots.length > 1 && <Falls key={spots.map((s) => s.id).join()} sheet={sheet} />}
      {looseSetupIds.length > 0 && (
        <Notice kind="plain">{say('loose', { count: looseSetupIds.length })}</Notice>
      )}
      {sheet.setupsDisagree && <Notice kind="plain">{say('disagree')}</Notice>}
      <div className="level-plan">
        <PlanView view={props.view} result={props.result} label={say('list')}>
          <LevelMarks sheet={sheet} />
        </PlanView>
      </div>
      <h3>{say('list')}</h3>
      <p className="soft">{say(sheet.datum === 'floor' ? 'datumFloor' : 'datumFirst')}</p>
      <ul className="plain-list">
        {spots.map((spot, index) => (
          <li key={spot.id}>
            <span>{say('pointNumber', { number: index + 1, on: say(spot.on) })}</span>
            <strong className="figure">{signedLength(spot.heightM, system)}</strong>
            <Button
              look="quiet"
              label={say('remove', { number: index + 1 })}
              onPress={() => remove(spot.readingIds)}
            >
              ✕
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** The fall between two points that a person picks. */
function Falls({ sheet }: { readonly sheet: LevelSheet }) {
  const say = useTexts(levelTexts);
  const { spots } = sheet;
  const [from, setFrom] = useState(spots[0].id);
  const [to, setTo] = useState(spots.at(-1)?.id ?? '');
  const fall = useFall(sheet, from, to);
  const options = spots.map(
    (spot, index) => [spot.id, say('pointNumber', { number: index + 1, on: say(spot.on) })] as const,
  );
  return (
    <div className="falls">
      <div className="fall-ends">
        <Pick label={say('fallFrom')} value={from} options={options} onChange={setFrom} />
        <Pick label={say('fallTo')} value={to} options={options} onChange={setTo} />
      </div>
      {fall === null ? (
        <MeaningBox>{say('samePlace')}</MeaningBox>
      ) : (
        fall !== undefined && <FallLine fall={fall} sigmaM={sheet.sigmaM} />
      )}
    </div>
  );
}

function FallLine({ fall, sigmaM }: { readonly fall: FallOfSpots; readonly sigmaM: number }) {
  const say = useTexts(levelTexts);
  const { units: system } = useSettings();
  const length = (meters: number) => units.formatQuantity(Math.abs(meters), 'length', system);
  // Two taps on the plan are no tape: an inch, or a centimeter.
  const run = (meters: number) =>
    system === 'us'
      ? units.formatFeetInches(meters, { denominator: 1 })
      : units.formatQuantity(meters, 'length', 'si', 2);
  const isDrain = fall.requiredFallM > 0;
  const verdict =
    fall.verdict === 'ok'
      ? say(isDrain ? 'verdictOk' : 'verdictDown')
      : fall.verdict === 'flat'
        ? say('verdictFlat', { required: length(fall.requiredFallM) })
        : say(fall.verdict === 'back-fall' ? 'verdictBack' : 'verdictUndecided');
  const states = { ok: 'fine', flat: 'watch', undecided: 'watch', 'back-fall': 'alarm' } as const;
  return (
    <MeaningBox
      state={states[fall.verdict]}
      head={say(fall.fallM < 0 ? 'rises' : 'falls', {
        fall: length(fall.fallM),
        length: run(fall.lengthM),
      })}
    >
      {verdict}{' '}
      {say('slope', {
        slope: units.formatQuantity(Math.abs(fall.slope), 'slope', system),
        doubt: length(sigmaM),
      })}
    </MeaningBox>
  );
}
