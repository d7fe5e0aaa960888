import type { Assumption } from '@undercroft/assessment';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { measureText } from '../measure.ts';
import { whyTexts } from './why-texts.ts';
import './why-sheets.css';

/** What nobody measured, each with its range and why this value. */
export function AssumptionList({ assumptions }: { readonly assumptions: readonly Assumption[] }) {
  const say = useTexts(whyTexts);
  const { units } = useSettings();
  if (assumptions.length === 0) return <p>{say('noAssumptions')}</p>;
  const text = (value: Assumption['value'], unit: string) =>
    typeof value === 'number' ? measureText(value, unit, units) : `${value} ${unit}`.trim();
  return (
    <ul className="why-list">
      {assumptions.map(({ key, title, value, unit, low, high, why }) => (
        <li key={key}>
          {title}: <span className="figure assumed">{text(value, unit)}</span>{' '}
          {low !== undefined && high !== undefined && (
            <span className="soft figure">
              ({say('range', { low: text(low, unit), high: text(high, unit) })}){' '}
            </span>
          )}
          <span className="soft">{why}</span>
        </li>
      ))}
    </ul>
  );
}
