import { Choice, Field } from '../../parts/field.tsx';
import { changeSettings, useSettings } from '../../settings/settings.ts';
import { shellTexts } from '../../shell/shell-texts.ts';
import { useTexts } from '../../text/texts.ts';
import { StorageLine } from '../jobs/storage-line.tsx';
import { settingsTexts } from './settings-texts.ts';

/** What a person sets on this device. Each choice holds at once. */
export default function SettingsScreen() {
  const say = useTexts(settingsTexts);
  const shell = useTexts(shellTexts);
  const { name, language, ground, hand, units, textSize } = useSettings();
  return (
    <>
      <h1>{shell('settings')}</h1>
      <Field
        label={say('name')}
        hint={say('nameHint')}
        value={name}
        onChange={(text) => changeSettings({ name: text.slice(0, 200) })}
      />
      <Choice
        label={say('language')}
        value={language}
        onChange={(value) => changeSettings({ language: value })}
        options={[
          ['en', 'English'],
          ['es', 'Español'],
        ]}
      />
      <Choice
        label={say('ground')}
        value={ground}
        onChange={(value) => changeSettings({ ground: value })}
        options={[
          ['under', say('under')],
          ['daylight', say('daylight')],
          ['sun', say('sun')],
        ]}
      />
      <p className="soft">{say('brightness')}</p>
      <Choice
        label={say('textSize')}
        value={textSize}
        onChange={(value) => changeSettings({ textSize: value })}
        options={[
          ['usual', say('usual')],
          ['larger', say('larger')],
          ['largest', say('largest')],
        ]}
      />
      <Choice
        label={say('units')}
        value={units}
        onChange={(value) => changeSettings({ units: value })}
        options={[
          ['us', say('us')],
          ['si', say('si')],
        ]}
      />
      <Choice
        label={say('hand')}
        value={hand}
        onChange={(value) => changeSettings({ hand: value })}
        options={[
          ['left', say('left')],
          ['right', say('right')],
        ]}
      />
      <StorageLine />
    </>
  );
}
