import { geometry } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import type { JobView } from '../jobs/open-job.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { useTexts } from '../text/texts.ts';
import type { AssessmentState } from '../worker/use-assessment.ts';
import { arrowStep } from './arrow-step.ts';
import { useLength } from './length.ts';
import { planTexts } from './plan-texts.ts';
import { PlanView } from './plan-view.tsx';
import { At } from './projection.tsx';
import { spanOf } from './viewport.ts';
import { wallsOf } from './walls.ts';

/** A place on the plan and the direction in which somebody looks there [degrees clockwise from the plan's y axis]. */
export interface PickedPlace {
  readonly at?: Point;
  readonly bearingDeg?: number;
}

interface PlacePickerProps {
  readonly view: JobView;
  readonly result: AssessmentState;
  readonly value: PickedPlace;
  readonly wantsBearing?: boolean;
  /** As of `PlanView`. */
  readonly layers?: 'all' | 'built';
  readonly onChange: (value: PickedPlace) => void;
  /** Layers over the plan, e.g. places that were set before. */
  readonly children?: ReactNode;
}

/**
 * Sets a place by a tap on the plan, and by a second tap the direction in which somebody looks. Arrow keys move it. A job
 * without walls says that the place stays open.
 */
export function PlacePicker(props: PlacePickerProps) {
  const { view, result, value, wantsBearing = false, layers = 'all', onChange, children } = props;
  const say = useTexts(planTexts);
  const length = useLength();
  const [setting, setSetting] = useState<'place' | 'direction'>(
    wantsBearing && value.at !== undefined && value.bearingDeg === undefined ? 'direction' : 'place',
  );
  // The step before may have been scrolled to its end.
  const plan = useRef<HTMLDivElement>(null);
  useEffect(() => {
    plan.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const walls = wallsOf(view.job);
  if (walls === null) return <Notice kind="plain">{say('noPlanYet')}</Notice>;
  const { at, bearingDeg } = value;

  const look = (from: Point, to: Point) => {
    const deg = geometry.directionDeg(to.xM - from.xM, to.yM - from.yM);
    return deg === null ? {} : { bearingDeg: Math.round(deg) % 360 };
  };
  const onTap = (point: Point) => {
    if (setting === 'direction' && at !== undefined) {
      onChange({ at, ...look(at, point) });
      setSetting('place');
    } else {
      onChange({ ...value, at: point });
      if (wantsBearing && bearingDeg === undefined) setSetting('direction');
    }
  };
  const onKey = (event: KeyboardEvent) => {
    const step = arrowStep(event);
    if (step === null) return false;
    event.preventDefault();
    const span = spanOf(walls.corners);
    const from =
      at ??
      (span === null
        ? { xM: 0, yM: 0 }
        : { xM: (span.leftM + span.rightM) / 2, yM: (span.bottomM + span.topM) / 2 });
    onChange({ ...value, at: at === undefined ? from : { xM: at.xM + step.xM, yM: at.yM + step.yM } });
    return true;
  };
  const told =
    at === undefined
      ? say('pickPlace')
      : setting === 'direction'
        ? say('pickDirection')
        : wantsBearing && bearingDeg !== undefined
          ? say('pickedBoth')
          : say('picked');
  const where = at === undefined ? '' : say('placeAt', { x: length(at.xM), y: length(at.yM) });
  const whither = bearingDeg === undefined ? '' : `, ${say('looking', { deg: bearingDeg })}`;
  return (
    <div className="place-picker">
      <p role="status">
        <strong>{told}</strong>{' '}
        {at !== undefined && (
          <span className="soft">
            {where}
            {whither}
          </span>
        )}
      </p>
      <div className="place-plan" ref={plan}>
        <PlanView
          view={view}
          result={result}
          label={say('placeOf')}
          layers={layers}
          onTap={onTap}
          onKey={onKey}
          focus={at}
        >
          {children}
          {at !== undefined && (
            <At point={at}>
              <PlaceMark bearingDeg={bearingDeg} />
            </At>
          )}
        </PlanView>
      </div>
      <p className="soft">{say('pickKeys')}</p>
      {at !== undefined && (
        <div className="actions">
          {wantsBearing && (
            <Button onPress={() => setSetting(setting === 'place' ? 'direction' : 'place')}>
              {setting === 'place' ? say('otherDirection') : say('otherPlace')}
            </Button>
          )}
          <Button
            onPress={() => {
              onChange({});
              setSetting('place');
            }}
          >
            {say('noPlace')}
          </Button>
        </div>
      )}
    </div>
  );
}

/** A ring with a point, so that what lies under it still shows; a cone where somebody looks. */
function PlaceMark({ bearingDeg }: { readonly bearingDeg: number | undefined }) {
  return (
    <g className="place-mark">
      {bearingDeg !== undefined && (
        <path transform={`rotate(${bearingDeg})`} d="M0 0L-30 -60A67 67 0 0 1 30 -60Z" className="cone" />
      )}
      <circle r="16" className="halo" />
      <circle r="16" />
      <circle r="3" className="dot" />
    </g>
  );
}
