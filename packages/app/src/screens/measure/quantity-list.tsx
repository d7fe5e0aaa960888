import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { findQuantities, quantityTitle } from './find-quantity.ts';
import { measureTexts } from './measure-texts.ts';

/** So many stand there at once. */
const FIRST = 12;

interface QuantityListProps {
  /** Keys of what is wanted most, which stand first while nothing is searched. */
  readonly wanted: readonly string[];
  readonly onChosen: (key: string) => void;
}

/** Everything that can be measured or answered, searched in both languages. */
export function QuantityList({ wanted, onChosen }: QuantityListProps) {
  const say = useTexts(measureTexts);
  const { language } = useSettings();
  const [search, setSearch] = useState('');
  const [all, setAll] = useState(false);
  const found = findQuantities(search, language, wanted);
  const shown = all ? found : found.slice(0, FIRST);
  return (
    <div className="quantity-list">
      <Field
        type="search"
        label={say('search')}
        value={search}
        onChange={(text) => {
          setSearch(text);
          setAll(false);
        }}
        onDone={() => found.length > 0 && onChosen(found[0].key)}
      />
      <p role="status" className="soft">
        {found.length === 0 ? say('nothingFound') : say('found', { count: found.length })}
      </p>
      <ul>
        {shown.map(({ key }) => (
          <li key={key}>
            <Button wide onPress={() => onChosen(key)}>
              {quantityTitle(key, language)}
            </Button>
          </li>
        ))}
      </ul>
      {shown.length < found.length && (
        <Button wide onPress={() => setAll(true)}>
          {say('found', { count: found.length })}
        </Button>
      )}
    </div>
  );
}
