import type { Assessment } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { day } from '../../words/dates.ts';
import { capital, plain } from '../../words/names.ts';
import { type Cell, cell, heading, paragraph, type Section, type Table } from '../blocks.ts';

/** A road distance: whole miles with kilometers behind; the ratio is that of miles and kilometers per hour. */
function distanceWords(km: number): string {
  return `${Math.round(units.convert(km, 'km/h', 'mph'))} mi (${Math.round(km)} km)`;
}

function facts(job: Job, assessment: Assessment): Table {
  const { header, house } = job;
  const { climate } = assessment;
  const far = climate.distanceKm === undefined ? '' : `, ${distanceWords(climate.distanceKm)} away`;
  const rows: [name: string, value: string | undefined, from?: string][] = [
    ['Address', header.address],
    ['Owner or client', header.client],
    ['Why called', header.complaint],
    ['Surveyed on', header.surveyedOn === undefined ? undefined : day(header.surveyedOn)],
    ['Surveyed by', header.surveyedBy.length === 0 ? undefined : header.surveyedBy.join(', ')],
    ['The space is meant to be', house.spaceType, 'job/house'],
    ['House built', house.yearBuilt === undefined ? undefined : String(house.yearBuilt), 'job/house'],
    ['Climate zone', house.climateZone, 'job/house'],
    ['Weather', `${climate.name}${far} (${climate.kind})`, 'climate'],
    ['Notes', header.notes],
  ];
  const told = rows.filter(([, value]) => value !== undefined && value !== '');
  return {
    kind: 'table',
    caption: 'The job',
    headless: true,
    columns: [
      { title: 'What', weight: 26 },
      { title: 'Answer', weight: 74 },
    ],
    rows: told.map(([name, value]): readonly Cell[] => [
      cell({ text: name, look: 'soft' }),
      cell({ text: value ?? '' }),
    ]),
    rowsFrom: told.map(([, , from]) => from ?? 'job/header'),
  };
}

/** What was found, in a minute. */
export function summary(job: Job, assessment: Assessment): Section {
  const { met, notMet, notShown } = assessment.criteriaCount;
  const notices = assessment.notices.map((n) => paragraph(capital(plain(n.message)), 'note'));
  return {
    id: 'summary',
    title: 'In short',
    from: 'headline',
    blocks: [
      heading(2, 'In short', 'summary'),
      paragraph(plain(assessment.headline), 'lead'),
      {
        kind: 'tally',
        entries: [
          { mark: 'not-met', count: notMet, words: 'not met' },
          { mark: 'not-shown', count: notShown, words: 'not shown yet' },
          { mark: 'met', count: met, words: 'met' },
        ],
        from: 'criteria',
      },
      paragraph(
        'A criterion is met, not met, or not shown. What nobody measured, answered or photographed is never counted as met.',
        'note',
      ),
      facts(job, assessment),
      ...notices,
    ],
  };
}
