import type { Shot, ShotAdds } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { useSettings } from '../../settings/settings.ts';
import { LOCALES, useTexts } from '../../text/texts.ts';
import type { PictureForm } from './picture-form.ts';
import { picturesTexts } from './pictures-texts.ts';
import { thingName } from './thing-names.ts';

/** Less floor than this is no reason to take a picture [m²]. */
const HARDLY_M2 = 0.05;

/** The picture that the form would take; null while place or direction is open. */
export function shotOf({ place, bearingDeg, fieldOfView, range }: PictureForm): Shot | null {
  const { at, heightM } = place;
  const allRound = fieldOfView === '360';
  if (at === undefined || (bearingDeg === null && !allRound)) return null;
  return {
    at,
    bearingDeg: bearingDeg ?? 0,
    ...(fieldOfView === '' ? {} : { fieldOfViewDeg: Number(fieldOfView) }),
    ...(range === '' ? {} : { rangeM: Number(range) }),
    ...(heightM === undefined ? {} : { heightM }),
  };
}

/** What a picture from here would add, and what it would leave. */
export function ShotWords({ adds }: { readonly adds: ShotAdds | null }) {
  const say = useTexts(picturesTexts);
  const { language, units: system } = useSettings();
  if (adds === null) return null;
  const area = (squareMeters: number) => units.formatQuantity(squareMeters, 'area', system, 0);
  const names = adds.newThings.map((name) => thingName(name, language));
  const list = new Intl.ListFormat(LOCALES[language]).format(names);
  return (
    <p role="status" className="shot-adds">
      <strong>
        {adds.floorM2 < HARDLY_M2
          ? say('shotNone')
          : adds.newM2 < HARDLY_M2
            ? say('shotNothingNew')
            : say('shotAdds', { area: area(adds.newM2) })}
      </strong>{' '}
      {names.length > 0 && `${say('shotThings', { things: list })} `}
      <span className="soft">
        {adds.leftM2 < HARDLY_M2 ? say('shotAllSeen') : say('shotLeaves', { area: area(adds.leftM2) })}
      </span>
    </p>
  );
}
