import { criteria } from '@undercroft/engine';
import { useState } from 'react';
import type { FormDraft } from '../../jobs/use-form-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { findDefects } from './find-defects.ts';
import type { FindingForm } from './finding-form.ts';
import { findingTexts } from './finding-texts.ts';
import { PARTS, type Part } from './parts-of-space.ts';
import { SeverityMark } from './severity-mark.tsx';

/** So many stand there at once. */
const FIRST = 10;

const SUBJECTS = [...new Set(criteria.defects.map((defect) => defect.subject))];

interface DefectListProps {
  readonly draft: FormDraft<FindingForm>;
  readonly onChosen: (key: string) => void;
}

/** The catalogue of defects: searched in both languages, by subject and by part of the space. */
export function DefectList({ draft: { form, change }, onChosen }: DefectListProps) {
  const say = useTexts(findingTexts);
  const { language } = useSettings();
  const [all, setAll] = useState(false);
  const found = findDefects(
    {
      search: form.search,
      subject: form.subject as criteria.DefectSubject | '',
      part: form.part as Part | '',
    },
    language,
  );
  const shown = all ? found : found.slice(0, FIRST);
  const set = (part: Partial<FindingForm>) => {
    setAll(false);
    change(part);
  };
  return (
    <div className="defect-list">
      <Field
        type="search"
        label={say('search')}
        value={form.search}
        onChange={(search) => set({ search })}
        onDone={() => found.length > 0 && onChosen(found[0].key)}
      />
      <div className="defect-filters">
        <Pick
          label={say('part')}
          value={form.part}
          options={[['', say('all')], ...PARTS.map((part) => [part as string, say(part)] as const)]}
          onChange={(part) => set({ part })}
        />
        <Pick
          label={say('subject')}
          value={form.subject}
          options={[['', say('all')], ...SUBJECTS.map((one) => [one as string, say(one)] as const)]}
          onChange={(subject) => set({ subject })}
        />
      </div>
      <p role="status" className="soft">
        {found.length === 0 ? say('nothingFound') : say('found', { count: found.length })}
      </p>
      <ul>
        {shown.map(({ key, name, seen, severity }) => (
          <li key={key}>
            <Button wide onPress={() => onChosen(key)}>
              <span className="kind-button">
                <span className="defect-name">
                  <SeverityMark severity={severity} />
                  {name[language]}
                </span>
                <small>{seen[language]}</small>
              </span>
            </Button>
          </li>
        ))}
      </ul>
      {shown.length < found.length && (
        <Button wide onPress={() => setAll(true)}>
          {say('found', { count: found.length })}
        </Button>
      )}
      <Button wide onPress={() => onChosen('other')}>
        {say('own')}
      </Button>
    </div>
  );
}
