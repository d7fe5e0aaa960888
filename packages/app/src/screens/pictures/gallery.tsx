import type { Job, Point } from '@undercroft/record';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Pick } from '../../parts/field.tsx';
import { PlanView } from '../../plan/plan-view.tsx';
import { At } from '../../plan/projection.tsx';
import { wallsOf } from '../../plan/walls.ts';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { ALL, keyOf, type Wanted, wantedMedia, wantedOf } from './gallery-filter.ts';
import { mediaOf } from './media-of-job.ts';
import { StationsOnPlan } from './picture-layer.tsx';
import { PictureTile } from './picture-tile.tsx';
import { picturesTexts } from './pictures-texts.ts';
import { namedThings, thingName } from './thing-names.ts';
import { usePictureViews } from './use-picture-views.ts';

interface GalleryProps {
  readonly props: QuestionProps;
  readonly job: Job;
  /** Id of the finding whose pictures are shown first. */
  readonly finding?: string | undefined;
  readonly onOpen: (id: string) => void;
}

/** All pictures and sounds of a job, newest first, beside the plan with where they were taken. */
export function Gallery({ props, job, finding, onOpen }: GalleryProps) {
  const say = useTexts(picturesTexts);
  const { language } = useSettings();
  const [wanted, setWanted] = useState<Wanted>(finding === undefined ? ALL : { by: 'finding', id: finding });
  const views = usePictureViews(props);
  const { view, result } = props;
  const coverage = result.assessment?.coverage;
  const all = mediaOf(job);
  if (all.length === 0) return <NoPictures />;
  const shown = wantedMedia(all, wanted, { job, coverage, views });
  const numbers = new Map((coverage?.pictures ?? []).map(({ id, number }) => [id, number]));
  const meant = new Set(wanted.by === 'all' ? [] : shown.map(({ value }) => value.id));
  const tap = (at: Point, reachM: number) => {
    const near = (coverage?.pictures ?? [])
      .map(({ id, at: place }) => ({ id, away: Math.hypot(place.xM - at.xM, place.yM - at.yM) }))
      .filter(({ away }) => away <= reachM)
      .sort((a, b) => a.away - b.away);
    const [first] = near;
    if (first === undefined) setWanted({ by: 'spot', at });
    else if (near.length === 1) onOpen(first.id);
    else setWanted({ by: 'stack', at, ids: near.map(({ id }) => id) });
  };
  return (
    <>
      {wallsOf(job) !== null && (
        <div className="gallery-plan">
          <PlanView view={view} result={result} label={say('galleryPlan')} layers="built" onTap={tap}>
            {coverage !== undefined && <StationsOnPlan pictures={coverage.pictures} meant={meant} />}
            {(wanted.by === 'spot' || wanted.by === 'stack') && (
              <At point={wanted.at}>
                <g className="spot">
                  <circle r="14" className="halo" />
                  <circle r="14" />
                </g>
              </At>
            )}
          </PlanView>
          <p className="soft">{say('galleryHelp')}</p>
        </div>
      )}
      <Pick
        label={say('filter')}
        value={keyOf(wanted)}
        options={[
          ['all', say('filterAll')],
          ...(wanted.by === 'spot' || wanted.by === 'stack'
            ? [[wanted.by, say(wanted.by === 'spot' ? 'filterSpot' : 'filterStack')] as const]
            : []),
          ...job.findings.map(
            ({ id, title }, index) =>
              [`finding ${id}`, say('filterFinding', { number: index + 1, title })] as const,
          ),
          ...(coverage === undefined ? [] : namedThings(coverage)).map(
            ({ kind, id, name }) =>
              [`thing ${kind} ${id}`, say('filterThing', { thing: thingName(name, language) })] as const,
          ),
        ]}
        onChange={(key) => key !== wanted.by && setWanted(wantedOf(key))}
      />
      <p className="soft" role="status">
        {shown.length === 0 ? say('spotNone') : say('galleryCount', { count: shown.length })}
      </p>
      {wanted.by !== 'all' && <Button onPress={() => setWanted(ALL)}>{say('showAll')}</Button>}
      <ul className="gallery">
        {shown.map((item) => (
          <li key={item.value.id}>
            <PictureTile
              item={item}
              number={numbers.get(item.value.id)}
              onOpen={() => onOpen(item.value.id)}
            />
          </li>
        ))}
      </ul>
    </>
  );
}

function NoPictures() {
  const say = useTexts(picturesTexts);
  return (
    <div className="empty">
      <svg viewBox="0 0 120 80" width="160" aria-hidden="true" className="example">
        <path d="M8 8h104v64H8z" fill="none" stroke="currentColor" strokeWidth="3" />
        <path d="M8 52h104M30 8v44M60 8v44M90 8v44" stroke="currentColor" strokeWidth="1.5" />
        <path d="M24 72L60 30l36 42z" fill="none" stroke="var(--lamp)" strokeWidth="2" />
      </svg>
      <p>{say('noPictures')}</p>
      <p className="soft">{say('example')}</p>
    </div>
  );
}
