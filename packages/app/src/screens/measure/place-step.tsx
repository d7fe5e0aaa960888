import type { Place } from '@undercroft/record';
import { Button } from '../../parts/button.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { useLength } from '../../plan/length.ts';
import { PlacePicker } from '../../plan/place-picker.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { measureTexts } from './measure-texts.ts';
import { placeTexts } from './place-texts.ts';
import { nearestThing, type PlacedThing, placedThings } from './things-of-plan.ts';

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
  const say = useTexts(measureTexts);
  const name = useTexts(placeTexts);
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
          label={say('placeOn')}
          value={on === undefined ? '' : `${on.kind} ${on.id}`}
          options={[
            ['', say('placeOnNothing')],
            ...things.map(
              (thing) => [`${thing.kind} ${thing.id}`, name(thing.kind, { number: thing.number })] as const,
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
        label={say('placeWords')}
        value={words ?? ''}
        hint={say('placeWordsHint')}
        onChange={(text) => onChange(changed({ words: text }))}
        onDone={onDone}
      />
      <div className="reading-foot">
        <Button look="main" wide onPress={onDone}>
          {say('placeDone')}
        </Button>
      </div>
    </div>
  );
}

/** A place in few words: what the surveyor wrote, the thing, or how far across and up the plan. */
export function usePlaceWords(): (place: Place) => string | null {
  const name = useTexts(placeTexts);
  const length = useLength();
  return ({ at, words }) => {
    if (words !== undefined) return words;
    return at === undefined ? null : name('at', { x: length(at.xM), y: length(at.yM) });
  };
}
