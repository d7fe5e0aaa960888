import { units } from '@undercroft/engine';
import type { Place } from '@undercroft/record';
import { PlacePicker } from '../../plan/place-picker.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { Button } from '../button.tsx';
import { Field, Pick } from '../field.tsx';
import { placeTexts } from './place-texts.ts';
import { nearestThing, type PlacedThing, placedThings } from './placed-things.ts';

interface PlaceStepProps {
  readonly props: QuestionProps;
  readonly place: Place;
  /** Kinds of things that may be meant, e.g. piers. */
  readonly kinds?: readonly PlacedThing['kind'][] | undefined;
  readonly onChange: (place: Place) => void;
  readonly onDone: () => void;
}

/** Sets where something is: on the plan, in words, or by the thing that it belongs to. */
export function PlaceStep({ props: { view, result }, place, kinds, onChange, onDone }: PlaceStepProps) {
  const say = useTexts(placeTexts);
  const { at, on, words } = place;
  const things = view.job === null || kinds === undefined ? [] : placedThings(view.job, kinds);
  const changed = (part: { [K in keyof Place]?: Place[K] | undefined }): Place =>
    Object.fromEntries(
      Object.entries({ ...place, ...part }).filter(([, value]) => value !== undefined && value !== ''),
    ) as Place;
  const nearest = (point: Place['at']): Place['on'] => {
    const near = point === undefined ? null : nearestThing(things, point);
    return near === null ? undefined : { kind: near.kind, id: near.id };
  };
  return (
    <div className="place-step">
      <PlacePicker
        view={view}
        result={result}
        value={at === undefined ? {} : { at }}
        onChange={({ at: picked }) => onChange(changed({ at: picked, on: nearest(picked) }))}
      />
      {things.length > 0 && (
        <Pick
          label={say('on')}
          value={on === undefined ? '' : `${on.kind} ${on.id}`}
          options={[
            ['', say('onNothing')],
            ...things.map(
              (thing) => [`${thing.kind} ${thing.id}`, say(thing.kind, { number: thing.number })] as const,
            ),
          ]}
          onChange={(key) => {
            const thing = things.find((one) => `${one.kind} ${one.id}` === key);
            onChange(
              changed(
                thing === undefined
                  ? { on: undefined }
                  : { on: { kind: thing.kind, id: thing.id }, at: thing.at },
              ),
            );
          }}
        />
      )}
      <Field
        label={say('words')}
        value={words ?? ''}
        hint={say('wordsHint')}
        onChange={(text) => onChange(changed({ words: text }))}
        onDone={onDone}
      />
      <div className="reading-foot">
        <Button look="main" wide onPress={onDone}>
          {say('done')}
        </Button>
      </div>
    </div>
  );
}

/** A place in few words: what the surveyor wrote, or how far across and up the plan; a finger sets it to an inch. */
export function usePlaceWords(): (place: Place) => string | null {
  const say = useTexts(placeTexts);
  const { units: system } = useSettings();
  const length = (meters: number) =>
    system === 'us'
      ? units.formatFeetInches(meters, { denominator: 1 })
      : units.formatQuantity(meters, 'length', 'si', 2);
  return ({ at, words }) => {
    if (words !== undefined) return words;
    return at === undefined ? null : say('at', { x: length(at.xM), y: length(at.yM) });
  };
}
