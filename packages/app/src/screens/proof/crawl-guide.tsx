import type { GeometryResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { forgetCrawl, goToStop, planCrawl, useCrawl } from './crawl-state.ts';
import { proofTexts } from './proof-texts.ts';
import { useRoughLength } from './rough-length.ts';

const COMPASS = {
  en: ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'],
  es: ['N', 'NE', 'E', 'SE', 'S', 'SO', 'O', 'NO'],
} as const;

function compassOf(deg: number, language: 'en' | 'es'): string {
  return `${COMPASS[language][Math.round(deg / 45) % 8]} (${Math.round(deg)}°)`;
}

/** Stand here, point there: the crawl that shows what is missing, one stop after the other. */
export function CrawlGuide({ job, geometry }: { readonly job: Job; readonly geometry: GeometryResult }) {
  const say = useTexts(proofTexts);
  const { language, units: system } = useSettings();
  const length = useRoughLength();
  const { busy, plan, reason, at } = useCrawl(job.id);
  const stop = plan?.stops[at];
  const wallNumber = (id: string) => geometry.edges.findIndex((edge) => edge.id === id) + 1;
  return (
    <section className="crawl-guide">
      <h3>{say('route')}</h3>
      <p className="soft">{say('routeHelp')}</p>
      {busy ? (
        <div className="actions">
          <p role="status">{say('planning')}</p>
          <Button onPress={forgetCrawl}>{say('stop')}</Button>
        </div>
      ) : (
        <div className="actions">
          <Button look="main" onPress={() => void planCrawl(job, geometry, 'rest')}>
            {say('planRest')}
          </Button>
          <Button onPress={() => void planCrawl(job, geometry, 'all')}>{say('planAll')}</Button>
        </div>
      )}
      {reason !== undefined && <Notice kind="wrong">{reason}</Notice>}
      {plan !== undefined && (
        <p>
          {plan.stops.length === 0
            ? say('nothingToShow')
            : `${say('routeSum', { count: plan.stops.length, length: length(plan.lengthM) })}. ${
                plan.stationsProven ? say('proven') : say('notProven', { bound: plan.stationsLowerBound })
              } ${say('willShow', { share: units.formatQuantity(plan.floorShare, 'share', system) })}`}
        </p>
      )}
      {plan !== undefined && stop !== undefined && (
        <div className="crawl-stop">
          <p role="status">
            <strong>{say('stopOf', { number: stop.number, count: plan.stops.length })}</strong>{' '}
            {say('stand', {
              walls: stop.fromWalls
                .map(({ wallId, distanceM }) =>
                  say('fromWall', { distance: length(distanceM), wall: wallNumber(wallId) }),
                )
                .join(', '),
            })}{' '}
            <span className="soft">{say('leg', { length: length(stop.legM) })}</span>
          </p>
          <ul>
            {stop.shots.map((shot) => (
              <li key={shot.id}>
                {shot.id} · {say('point', { compass: compassOf(shot.compassDeg, language) })}
              </li>
            ))}
          </ul>
          <div className="actions">
            <Button isDisabled={at === 0} onPress={() => goToStop(at - 1)}>
              {say('before')}
            </Button>
            <Button isDisabled={at + 1 >= plan.stops.length} onPress={() => goToStop(at + 1)}>
              {say('next')}
            </Button>
          </div>
        </div>
      )}
    </section>
  );
}
