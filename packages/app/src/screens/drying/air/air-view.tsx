import type { Assessment, DistributionWorkedOut } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { type AirQuantity, airScale } from '@undercroft/report';
import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { DataTable } from '../../../parts/chart/data-table.tsx';
import { Pick } from '../../../parts/field.tsx';
import { moneyText, typeset } from '../../../parts/measure.ts';
import { Notice } from '../../../parts/notice.tsx';
import type { Grabbed } from '../../../plan/grabbed.ts';
import { PlanView } from '../../../plan/plan-view.tsx';
import { useSettings } from '../../../settings/settings.ts';
import type { QuestionProps } from '../../../shell/question.ts';
import { go } from '../../../shell/route.ts';
import { useTexts } from '../../../text/texts.ts';
import { AIR_FIGURES, type AirShown } from '../../../worker/api.ts';
import { AirLayer } from './air-layer.tsx';
import { airTexts } from './air-texts.ts';
import {
  type Arranged,
  arrangedOf,
  blowerOf,
  MOST_FANS,
  middleOf,
  nearest,
  STEP_M,
  TURN_DEG,
  withBlower,
} from './arranged.ts';
import { SearchPart } from './search-part.tsx';
import { useAir } from './use-air.ts';
import './air.css';

const percent = (share: number) => `${Math.round(100 * share)}%`;

interface AirProps {
  readonly view: QuestionProps['view'];
  readonly result: QuestionProps['result'];
  readonly assessment: Assessment;
}

/** Where the dry air goes; machine and fans can be moved, and the air follows. */
export function AirView({ view, result, assessment }: AirProps) {
  const say = useTexts(airTexts);
  const { distribution } = assessment;
  if (distribution === undefined || distribution.outcome === 'missing') {
    return (
      <>
        {distribution !== undefined && <p lang="en">{typeset(distribution.why)}</p>}
        <p>{say('noMachine')}</p>
        <Button onPress={() => go({ screen: 'job', id: view.id, question: 'space' })}>{say('drawIt')}</Button>
      </>
    );
  }
  return (
    <Trial
      key={view.id}
      view={view}
      result={result}
      distribution={distribution}
      corners={assessment.geometry.corners}
    />
  );
}

interface TrialProps {
  readonly view: QuestionProps['view'];
  readonly result: QuestionProps['result'];
  readonly distribution: DistributionWorkedOut;
  readonly corners: readonly Point[];
}

function Trial({ view, result, distribution, corners }: TrialProps) {
  const say = useTexts(airTexts);
  const { language } = useSettings();
  const found = useMemo(() => arrangedOf(distribution.found), [distribution]);
  const [past, setPast] = useState<readonly Arranged[]>([]);
  const [now, setNow] = useState<Arranged>(found);
  const [chosen, setChosen] = useState(0);
  // What stands in the record is what a trial begins from: when it changes, the trial begins anew.
  const before = useRef(found);
  useEffect(() => {
    if (before.current === found) return;
    before.current = found;
    setNow(found);
    setPast([]);
    setChosen(0);
  }, [found]);
  const [quantity, setQuantity] = useState<AirQuantity>('relativeHumidity');
  const valueText = useValueText(quantity);
  const { outcome, busy } = useAir(view, now, quantity);
  const air = outcome?.ok === true ? outcome.air : null;

  const change = (next: Arranged) => {
    setPast((list) => [...list.slice(-49), now]);
    setNow(next);
  };
  const turn = (byDeg: number) => {
    const blower = blowerOf(now, chosen);
    if (blower !== undefined)
      change(withBlower(now, chosen, { bearingDeg: (blower.bearingDeg + byDeg + 360) % 360 }));
  };
  const addFan = () => {
    if (now.fans.length >= MOST_FANS) return;
    change({ ...now, fans: [...now.fans, { at: middleOf(corners), bearingDeg: 90 }] });
    setChosen(now.fans.length + 1);
  };
  const removeFan = () => {
    if (chosen === 0) return;
    change({ ...now, fans: now.fans.filter((_, i) => i !== chosen - 1) });
    setChosen(0);
  };
  const undo = () => {
    const last = past.at(-1);
    if (last === undefined) return;
    setPast(past.slice(0, -1));
    setNow(last);
    if (blowerOf(last, chosen) === undefined) setChosen(0);
  };

  const grab = (at: Point, reachM: number): Grabbed | null => {
    const index = nearest(now, at, 1.5 * reachM);
    if (index === null) return null;
    const start = now;
    setChosen(index);
    return {
      kind: 'trial',
      id: String(index),
      move: (to) => {
        setNow(withBlower(start, index, { at: to }));
        return { xM: 0, yM: 0 };
      },
      drop: async (to) => {
        setPast((list) => [...list.slice(-49), start]);
        setNow(withBlower(start, index, { at: to }));
        return false;
      },
    };
  };
  const onKey = (event: KeyboardEvent): boolean => {
    const blower = blowerOf(now, chosen);
    const by = MOVES[event.key];
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    if (blower !== undefined && by !== undefined) {
      const at = { xM: blower.at.xM + by[0] * STEP_M, yM: blower.at.yM + by[1] * STEP_M };
      change(withBlower(now, chosen, { at }));
    } else if (event.key.toLowerCase() === 'r') turn(event.shiftKey ? -TURN_DEG : TURN_DEG);
    else if (event.key.toLowerCase() === 'f') addFan();
    else if (event.key === 'Delete' && chosen > 0) removeFan();
    else return false;
    event.preventDefault();
    return true;
  };

  const names = [say('machine'), ...now.fans.map((_, i) => say('fan', { number: i + 1 }))];
  return (
    <div className="air-view">
      <p>{say('intro')}</p>
      <Pick
        label={say('drawn')}
        value={quantity}
        options={[
          ['relativeHumidity', say('scale')],
          ['dewPointC', say('dewPoint')],
          ['woodMoisture', say('wood')],
        ]}
        onChange={setQuantity}
      />
      <div className="air-plan">
        <PlanView
          view={view}
          result={result}
          label={say('plan')}
          help={say('keys')}
          layers="built"
          grab={grab}
          onKey={onKey}
          onTap={(at, reachM) => {
            const index = nearest(now, at, 1.5 * reachM);
            if (index !== null) setChosen(index);
          }}
        >
          <AirLayer
            corners={corners}
            air={air}
            arranged={now}
            chosen={chosen}
            valueText={valueText}
            dampest={
              air === null ? '' : `${say('dampest')} ${percent(air.figures.dampestRelativeHumidity.value)}`
            }
          />
        </PlanView>
      </div>
      {outcome?.ok === false && <Notice kind="wrong">{typeset(outcome.reason)}</Notice>}
      <Scale quantity={quantity} />
      <div className="air-tools">
        <Pick
          label={say('choose')}
          value={String(chosen)}
          options={names.map((name, i) => [String(i), name] as const)}
          onChange={(value) => setChosen(Number(value))}
        />
        <Button onPress={() => turn(-TURN_DEG)}>{say('turnLeft')}</Button>
        <Button onPress={() => turn(TURN_DEG)}>{say('turnRight')}</Button>
        <Button onPress={addFan} isDisabled={now.fans.length >= MOST_FANS}>
          {say('addFan')}
        </Button>
        {chosen > 0 && <Button onPress={removeFan}>{say('removeFan')}</Button>}
        {chosen === 0 && (
          <Button
            onPress={() =>
              change({
                ...now,
                machine: { ...now.machine, ductTo: now.machine.ductTo === null ? middleOf(corners) : null },
              })
            }
          >
            {say(now.machine.ductTo === null ? 'duct' : 'noDuct')}
          </Button>
        )}
        <Button onPress={undo} isDisabled={past.length === 0}>
          {say('undo')}
        </Button>
        <Button onPress={() => change(found)} isDisabled={now === found}>
          {say('asFound')}
        </Button>
      </div>
      <SearchPart
        view={view}
        onFound={(placed) => {
          change(arrangedOf(placed));
          setChosen(0);
        }}
        said={(found_) =>
          found_.suggested === null
            ? say('noBetter', { screened: found_.screened })
            : say('foundBetter', {
                screened: found_.screened,
                rank: found_.rank,
                cost: moneyText(found_.costCents, language),
              })
        }
      />
      <AirFigures distribution={distribution} air={air} busy={busy} />
      <details className="fold" open>
        <summary>{say('limits')}</summary>
        <ul lang="en">
          {[...distribution.limits, ...distribution.notices].map((notice) => (
            <li key={notice.code + notice.message}>{typeset(notice.message)}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}

const MOVES: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** Values of a map in words: percent, and degrees in the units that are set. */
function useValueText(quantity: AirQuantity): (value: number) => string {
  const { units: system } = useSettings();
  return quantity === 'dewPointC'
    ? (value) => units.formatQuantity(value, 'temperature', system, 0)
    : percent;
}

function Scale({ quantity }: { readonly quantity: AirQuantity }) {
  const say = useTexts(airTexts);
  const text = useValueText(quantity);
  const scale = airScale(quantity);
  const names = { relativeHumidity: say('scale'), dewPointC: say('dewPoint'), woodMoisture: say('wood') };
  const lines = {
    relativeHumidity: say('lines'),
    dewPointC: say('linesDew'),
    woodMoisture: say('linesWood'),
  };
  return (
    <div>
      <ul className="air-scale" aria-label={names[quantity]}>
        {scale.map(({ from, color }, i) => (
          <li key={color}>
            <svg width="22" height="16" aria-hidden="true">
              <rect width="22" height="16" fill={color} opacity="0.9" />
            </svg>
            {from === undefined
              ? say('below', { from: text(scale[1]?.from ?? 0) })
              : i === scale.length - 1
                ? say('above', { from: text(from) })
                : text(from)}
          </li>
        ))}
      </ul>
      <p className="soft">{lines[quantity]}</p>
    </div>
  );
}

interface AirFiguresProps {
  readonly distribution: DistributionWorkedOut;
  readonly air: AirShown | null;
  readonly busy: boolean;
}

/** Figures as found and as tried, with the range that mixing leaves open. */
function AirFigures({ distribution, air, busy }: AirFiguresProps) {
  const say = useTexts(airTexts);
  const { ranges } = distribution.found;
  const text = (figure: { readonly value: number; readonly low?: number; readonly high?: number }) => {
    const { value, low = value, high = value } = figure;
    if (percent(low) === percent(high)) return percent(value);
    return (
      <>
        {percent(value)}{' '}
        <span className="soft">{say('range', { low: percent(low), high: percent(high) })}</span>
      </>
    );
  };
  const outcome = air === null ? undefined : OUTCOMES.find((key) => key === air.outcome);
  return (
    <div aria-busy={busy}>
      <DataTable
        caption={say('plan')}
        columns={[
          { title: say('what') },
          { title: say('found'), figure: true },
          { title: say('tried'), figure: true },
        ]}
        rows={AIR_FIGURES.map((key) => [
          say(key),
          text(ranges[key]),
          air === null ? say('computing') : text(air.figures[key]),
        ])}
      />
      <p role="status">{outcome === undefined ? '' : say(outcome)}</p>
    </div>
  );
}

const OUTCOMES = ['holds', 'undersized', 'idle', 'too-cold'] as const;
