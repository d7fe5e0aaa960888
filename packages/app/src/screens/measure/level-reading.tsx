import type { LevelSheet } from '@undercroft/assessment';
import { geometry, units } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';
import { randomName } from '../../jobs/author.ts';
import { takenNow, useTaking } from '../../jobs/use-taking.ts';
import { Button } from '../../parts/button.tsx';
import { Pick } from '../../parts/field.tsx';
import { FigurePad } from '../../parts/figure-pad.tsx';
import { Notice } from '../../parts/notice.tsx';
import { PlacePicker } from '../../plan/place-picker.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import type { KindFormProps } from './kind-form.ts';
import { LevelMarks } from './level-marks.tsx';
import { levelTexts } from './level-texts.ts';
import { afterSaving } from './measure-form.ts';
import { measureTexts } from './measure-texts.ts';

const ON = ['floor', 'liner', 'drain-invert', 'pipe-top', 'sump-rim', 'joist', 'benchmark'] as const;

/** A tap this near to a known point means that point [m]. */
const NEAR_M = 0.3;

interface LevelReadingProps extends KindFormProps {
  readonly sheet: LevelSheet | null;
  readonly setup: Job['readings']['levelSetups'][number];
}

/** One reading: first its point on the plan, then the figure. */
export function LevelReadingForm({ props, job, draft, sheet, setup }: LevelReadingProps) {
  const say = useTexts(levelTexts);
  const measure = useTexts(measureTexts);
  const { units: system } = useSettings();
  const { taking, take } = useTaking(props.openJob, props.view);
  const { form, change } = draft;
  const { place, typed, last, on } = form;
  const spots = sheet?.spots ?? [];
  const { at } = place;
  const known = at === undefined ? -1 : spots.findIndex((s) => geometry.distanceM(s.at, at) === 0);
  const bareUnit = system === 'us' ? 'in' : 'mm';
  const text = typed.level ?? '';
  const read = units.parseLength(text, bareUnit);
  const readingM = read.ok ? units.metersFromNanometers(read.nanometers) : null;
  const length = (meters: number) => units.formatQuantity(meters, 'length', system);
  const plane = sheet?.setups.find(({ id }) => id === setup.id)?.instrumentHeightM;
  const number = job.readings.levelSetups.findIndex(({ id }) => id === setup.id) + 1;

  const pick = (point: Point | undefined) => {
    const near = point && spots.find((s) => geometry.distanceM(s.at, point) <= NEAR_M);
    change({
      place: point === undefined ? {} : { at: near?.at ?? point },
      ...(near === undefined ? {} : { on: near.on }),
    });
  };
  if (form.isPlacing || at === undefined) {
    return (
      <div className="place-step">
        <PlacePicker
          view={props.view}
          result={props.result}
          value={at === undefined ? {} : { at }}
          onChange={({ at: picked }) => pick(picked)}
        >
          <LevelMarks sheet={sheet} />
        </PlacePicker>
        {spots.length > 0 && (
          <Pick
            label={say('point')}
            value={known < 0 ? '' : spots[known].id}
            options={[
              ['', say('newPoint')],
              ...spots.map((s, i) => [s.id, say('pointNumber', { number: i + 1, on: say(s.on) })] as const),
            ]}
            onChange={(id) => pick(spots.find((s) => s.id === id)?.at)}
          />
        )}
        {known >= 0 && <p role="status">{say('sameAs', { number: known + 1 })}</p>}
        <div className="reading-foot">
          <Button look="main" wide isDisabled={at === undefined} onPress={() => change({ isPlacing: false })}>
            {say('toReading')}
          </Button>
        </div>
      </div>
    );
  }
  const save = () => {
    if (readingM === null || taking.is === 'saving' || taking.is === 'waiting') return;
    const item = randomName(16);
    const value = {
      setupId: setup.id,
      at,
      on,
      // Upward from the line of sight is below zero: the rod stood upside down.
      readingM: on === 'joist' ? -readingM : readingM,
      ...takenNow(form.instrument),
    };
    void take([{ do: 'create', kind: 'level', item, value }], () =>
      change({ ...afterSaving(form, item), place: {}, isPlacing: true }),
    );
  };
  return (
    <div className="reading-form">
      <details className="fold">
        <summary>{say('setupNumber', { number, method: say(setup.method) })}</summary>
        <div className="reading-details">
          <p>{plane === undefined ? say('lineUnknown') : say('lineOfSight', { height: length(plane) })}</p>
          <Button onPress={() => change({ setup: 'new' })}>{say('newSetup')}</Button>
        </div>
      </details>
      <Pick
        label={say('on')}
        value={on}
        options={ON.map((one) => [one, say(one)] as const)}
        onChange={(chosen) => change({ on: chosen })}
      />
      <FigurePad
        label={say(on === 'joist' ? 'readingUp' : 'reading')}
        typed={text}
        onType={(level) => change({ typed: { ...typed, level } })}
        onDone={save}
        last={last.level}
        bareUnit={bareUnit}
        embedded
      />
      <div className="reading-foot">
        {taking.is === 'refused' && (
          <Notice kind="wrong">{measure('notTaken', { expected: taking.expected })}</Notice>
        )}
        {taking.is === 'waiting' && <Notice kind="wrong">{measure('notSaved')}</Notice>}
        <p role="status" className="saved-line soft">
          {form.saved.length === 0 ? '' : measure('savedCount', { count: form.saved.length })}
        </p>
        <div className="reading-actions">
          <Button onPress={() => change({ isPlacing: true })}>
            <span className="place-button">
              {say('point')}
              <small>{known < 0 ? say('newPoint') : String(known + 1)}</small>
            </span>
          </Button>
          <Button look="main" isDisabled={readingM === null || taking.is === 'saving'} onPress={save}>
            {readingM === null ? say('save') : say('saveValue', { value: length(readingM) })}
          </Button>
        </div>
      </div>
    </div>
  );
}
