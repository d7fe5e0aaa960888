import { units } from '@undercroft/engine';
import type { Plan } from '@undercroft/record';
import { useState } from 'react';
import { randomName } from '../../../jobs/author.ts';
import type { CommitResult } from '../../../jobs/open-job.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/field.tsx';
import { FigurePad } from '../../../parts/figure-pad.tsx';
import { useLength } from '../../../plan/length.ts';
import { useTexts } from '../../../text/texts.ts';
import { drawTexts } from './draw-texts.ts';
import { lastLength, rememberLength } from './last-length.ts';

interface ListEditorProps {
  readonly value: unknown;
  readonly onSet: (to: unknown) => Promise<CommitResult>;
}

type Openings = Plan['interiorWalls'][number]['openings'];

const STEPS = [
  ['offsetM', 'openingOffset'],
  ['widthM', 'openingWidth'],
  ['heightM', 'openingHeight'],
] as const;

/** Openings of an inside wall: three lengths each. */
export function OpeningsEditor({ value, onSet }: ListEditorProps) {
  const say = useTexts(drawTexts);
  const length = useLength();
  const openings = (value ?? []) as Openings;
  const [sizes, setSizes] = useState<readonly number[] | null>(null);
  const [typed, setTyped] = useState('');
  const step = sizes === null ? undefined : STEPS[sizes.length];
  if (sizes !== null && step !== undefined) {
    return (
      <FigurePad
        label={say(step[1])}
        typed={typed}
        onType={setTyped}
        last={lastLength(step[1])}
        onDone={({ nm, typed: text }) => {
          rememberLength(step[1], text);
          setTyped('');
          const next = [...sizes, units.metersFromNanometers(nm)];
          if (next.length < STEPS.length) return setSizes(next);
          setSizes(null);
          const made = Object.fromEntries(STEPS.map(([field], i) => [field, next[i]]));
          void onSet([...openings, { id: randomName(16), ...made }]);
        }}
      />
    );
  }
  return (
    <>
      <ul className="facts">
        {openings.map(({ id, offsetM, widthM, heightM }) => (
          <li key={id}>
            <p>
              {say('opening', { width: length(widthM), height: length(heightM), offset: length(offsetM) })}
            </p>
            <Button look="quiet" onPress={() => void onSet(openings.filter((one) => one.id !== id))}>
              {say('removeOpening')}
            </Button>
          </li>
        ))}
      </ul>
      <Button wide onPress={() => setSizes([])}>
        {say('addOpening')}
      </Button>
    </>
  );
}

type DrainPath = Plan['drains'][number]['path'];

/** The inverts of a drain at its points, over or under the floor datum. */
export function InvertsEditor({ value, onSet }: ListEditorProps) {
  const say = useTexts(drawTexts);
  const length = useLength();
  const path = (value ?? []) as DrainPath;
  const [open, setOpen] = useState<number | null>(null);
  const [typed, setTyped] = useState('');
  const [below, setBelow] = useState(false);
  if (open !== null) {
    return (
      <>
        <Choice
          label={say('point', { number: open + 1 })}
          value={below ? 'below' : 'above'}
          options={[
            ['above', say('overDatum')],
            ['below', say('underDatum')],
          ]}
          onChange={(side) => setBelow(side === 'below')}
        />
        <FigurePad
          label={say('point', { number: open + 1 })}
          typed={typed}
          onType={setTyped}
          onDone={({ nm }) => {
            const meters = units.metersFromNanometers(nm);
            const invertM = below && meters > 0 ? -meters : meters;
            setTyped('');
            setOpen(null);
            void onSet(path.map((point, i) => (i === open ? { ...point, invertM } : point)));
          }}
        />
      </>
    );
  }
  return (
    <ul className="facts">
      {path.map(({ invertM }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two corners may lie at one place; they are told apart by their number
        <li key={i}>
          <Button
            wide
            onPress={() => {
              setBelow(invertM !== undefined && invertM < 0);
              setOpen(i);
            }}
          >
            <span>{say('point', { number: i + 1 })}</span>
            <span className={invertM === undefined ? 'soft' : 'figure'}>
              {invertM === undefined
                ? say('notKnown')
                : `${length(Math.abs(invertM))} ${say(invertM < 0 ? 'underDatum' : 'overDatum')}`}
            </span>
          </Button>
        </li>
      ))}
    </ul>
  );
}
