import type { Origin } from '@undercroft/assessment';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { shownDay } from '../measure.ts';
import { whyTexts } from './why-texts.ts';

/** Where a figure came from: what kind of record, whose, and when. */
export function OriginWords({ origin }: { readonly origin: Origin }) {
  const say = useTexts(whyTexts);
  const { language } = useSettings();
  const { kind, note, who, when } = origin;
  const whose =
    who === undefined
      ? undefined
      : when === undefined
        ? who
        : say('takenBy', { who, when: shownDay(when, language) });
  return (
    <span className="soft">
      {[note === undefined ? say(kind) : `${say(kind)}: ${note}`, whose]
        .filter((part) => part !== undefined)
        .join(' · ')}
    </span>
  );
}
