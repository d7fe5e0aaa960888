import { Button } from '../../parts/button.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { ToolSheet, useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { AirForm } from './air-form.tsx';
import { Instruments } from './instruments.tsx';
import type { KindFormProps } from './kind-form.ts';
import { LevelForm } from './level-form.tsx';
import { type MeasureKind, useMeasureForm } from './measure-form.ts';
import { measureTexts } from './measure-texts.ts';
import { QuantityForm } from './quantity-form.tsx';
import { SurfaceForm } from './surface-form.tsx';
import { useWish } from './use-wish.ts';
import { WoodForm } from './wood-form.tsx';
import '../../parts/form.css';
import '../../parts/results.css';
import './measure.css';

const KINDS = ['air', 'surface', 'wood', 'level', 'quantity', 'instruments'] as const;

const FORMS: Readonly<Record<MeasureKind, (given: KindFormProps) => React.ReactNode>> = {
  air: (given) => <AirForm {...given} />,
  surface: (given) => <SurfaceForm {...given} />,
  wood: (given) => <WoodForm {...given} />,
  level: (given) => <LevelForm {...given} />,
  quantity: (given) => <QuantityForm {...given} />,
  instruments: (given) => <Instruments {...given} />,
};

/** The sheet of measurements: what is measured, then its form. */
export default function MeasureSheet(props: QuestionProps) {
  const say = useTexts(measureTexts);
  const { job } = props.view;
  const draft = useMeasureForm(props.view.id);
  const { form, change } = draft;
  const { open } = useSheets();
  useWish(open?.name === 'measure' ? open.wish : null, draft);
  const { kind } = form;
  const back = () => {
    if (kind === 'level' && form.levelView === 'take' && form.place.at !== undefined && !form.isPlacing) {
      change({ isPlacing: true });
    } else if (kind !== 'level' && form.isPlacing) change({ isPlacing: false });
    else if (kind === 'quantity' && form.quantity !== '') change({ quantity: '', typed: {} });
    else change({ kind: null, isPlacing: false, typed: {}, saved: [] });
  };
  return (
    <ToolSheet
      name="measure"
      title={kind === null ? say('measure') : say('measureThis', { what: say(kind).toLowerCase() })}
      onBack={kind === null ? undefined : back}
    >
      {job === null ? (
        <p>{say('noJob')}</p>
      ) : kind === null ? (
        <ul className="measure-kinds">
          {KINDS.map((one) => (
            <li key={one}>
              <Button wide onPress={() => change({ kind: one, saved: [], typed: {} })}>
                <span className="kind-button">
                  <strong>{say(one)}</strong>
                  <small>{say(`${one}Help`)}</small>
                </span>
              </Button>
            </li>
          ))}
        </ul>
      ) : (
        FORMS[kind]({ props, job, draft })
      )}
    </ToolSheet>
  );
}
