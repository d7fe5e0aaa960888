import { Choice } from '../../parts/field.tsx';
import { Notice } from '../../parts/notice.tsx';
import { wallsOf } from '../../plan/walls.ts';
import { useTexts } from '../../text/texts.ts';
import type { KindFormProps } from './kind-form.ts';
import { LevelHeights } from './level-heights.tsx';
import { LevelReadingForm } from './level-reading.tsx';
import { LevelSetups } from './level-setups.tsx';
import { levelTexts } from './level-texts.ts';
import { useLevelSheet } from './use-level-sheet.ts';

/** Leveling with a rod or a laser plane: set-ups, readings at points, and what they give. */
export function LevelForm(given: KindFormProps) {
  const { job, draft } = given;
  const say = useTexts(levelTexts);
  const sheet = useLevelSheet(job);
  const { levelView, setup } = draft.form;
  if (wallsOf(job) === null) return <Notice kind="plain">{say('needsWalls')}</Notice>;
  const setups = job.readings.levelSetups;
  const chosen = setups.find(({ id }) => id === setup) ?? setups.at(-1);
  return (
    <div className="level-form">
      <Choice
        label={say('view')}
        value={levelView}
        options={[
          ['take', say('take')],
          ['heights', say('heights')],
        ]}
        onChange={(view) => draft.change({ levelView: view })}
      />
      {levelView === 'heights' ? (
        <LevelHeights {...given} sheet={sheet} />
      ) : chosen === undefined || setup === 'new' ? (
        <LevelSetups {...given} />
      ) : (
        <LevelReadingForm {...given} sheet={sheet} setup={chosen} />
      )}
    </div>
  );
}
