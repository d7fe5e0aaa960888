import type { Assessment } from '@undercroft/assessment';
import { criteria } from '@undercroft/engine';
import type { Finding, Job } from '@undercroft/record';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/field.tsx';
import { usePlaceWords } from '../../parts/place/place-step.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { quantityText } from '../measure/quantity-unit.ts';
import { Thumbnail } from '../pictures/picture-tile.tsx';
import { keepOrder, keptOrder, type Order } from './board-order.ts';
import { boardTexts } from './board-texts.ts';
import { DefectFacts } from './defect-facts.tsx';
import { findingTexts } from './finding-texts.ts';
import { PARTS, partOf } from './parts-of-space.ts';
import { Prompts, RightToCure } from './prompts.tsx';
import { SeverityMark } from './severity-mark.tsx';

/** A finding with the number by which plan and report name it. */
interface Numbered {
  readonly finding: Finding;
  readonly number: number;
  readonly defect: criteria.Defect | undefined;
  readonly severity: number;
  /** Its first photo. */
  readonly sha256: string | undefined;
}

/** Grade of a finding in own words that nobody graded. */
const UNGRADED = 1;

const GROUPS: Readonly<Record<Order, readonly string[]>> = {
  severity: ['4', '3', '2', '1', '0'],
  part: [...PARTS, 'other'],
  subject: [...new Set(criteria.defects.map((defect) => defect.subject as string)), 'other'],
};

function groupOf({ defect, severity }: Numbered, order: Order): string {
  if (order === 'severity') return String(severity);
  if (defect === undefined) return 'other';
  return order === 'part' ? partOf(defect) : defect.subject;
}

interface BoardProps {
  readonly job: Job;
  /** Absent before a job is surveyed: the findings then stand without what follows from them. */
  readonly assessment?: Assessment;
}

/** All findings, by severity, by part of the space or by subject; a tap opens one to change it. */
export function Board({ job, assessment }: BoardProps) {
  const say = useTexts(findingTexts);
  const [order, setOrder] = useState<Order>(keptOrder);
  if (job.findings.length === 0) {
    return (
      <>
        <NoFindings />
        <MeasuredOnly job={job} assessment={assessment} />
      </>
    );
  }
  const findings = job.findings.map((finding, index): Numbered => {
    const defect = criteria.defectOf(finding.defect);
    return {
      finding,
      number: index + 1,
      defect,
      severity: finding.severity ?? defect?.severity ?? UNGRADED,
      sha256: job.media.photos.find(({ id }) => finding.photoIds.includes(id))?.sha256,
    };
  });
  const heading = (key: string) =>
    say((order === 'severity' ? `severity${key}` : key) as 'severity0' | (typeof PARTS)[number]);
  const groups = GROUPS[order].flatMap((key) => {
    const own = findings.filter((one) => groupOf(one, order) === key);
    return own.length === 0 ? [] : [{ key, own: own.sort((a, b) => b.severity - a.severity) }];
  });
  return (
    <div className="board">
      <Choice
        label={say('sort')}
        value={order}
        options={[
          ['severity', say('bySeverity')],
          ['part', say('byPart')],
          ['subject', say('bySubject')],
        ]}
        onChange={(next) => {
          keepOrder(next);
          setOrder(next);
        }}
      />
      <RightToCure defects={findings.flatMap(({ defect }) => defect ?? [])} />
      {groups.map(({ key, own }) => (
        <section key={key} aria-label={heading(key)}>
          <h4>{heading(key)}</h4>
          <ul>
            {own.map((one) => (
              <BoardRow key={one.finding.id} one={one} job={job} assessment={assessment} />
            ))}
          </ul>
        </section>
      ))}
      <MeasuredOnly job={job} assessment={assessment} />
    </div>
  );
}

/** Defects that what was measured shows and that nobody wrote down. */
function MeasuredOnly({ job, assessment }: BoardProps) {
  const say = useTexts(boardTexts);
  const own = (assessment?.defects ?? [])
    .filter(({ state, findings }) => findings.length === 0 && (state === 'shown' || state === 'claimed'))
    .sort((a, b) => b.severity - a.severity);
  if (assessment === undefined || own.length === 0) return null;
  return (
    <section aria-label={say('measuredOnly')}>
      <h4>{say('measuredOnly')}</h4>
      <ul>
        {own.map((defect) => (
          <MeasuredRow key={defect.key} job={job} assessment={assessment} defect={defect} />
        ))}
      </ul>
    </section>
  );
}

interface MeasuredRowProps {
  readonly job: Job;
  readonly assessment: Assessment;
  readonly defect: Assessment['defects'][number];
}

function MeasuredRow({ job, assessment, defect }: MeasuredRowProps) {
  const { language } = useSettings();
  const known = criteria.defectOf(defect.key);
  return (
    <li>
      <div className="board-row">
        <span className="board-words">
          <strong>{known?.name[language] ?? defect.name}</strong>
          <span className="soft">{defect.places.map(({ words }) => words).join(' · ')}</span>
        </span>
        <SeverityMark severity={defect.severity} />
      </div>
      <DefectFacts jobId={job.id} defect={defect} criteria={assessment.criteria} />
      {known !== undefined && <Prompts defect={known} />}
    </li>
  );
}

function NoFindings() {
  const say = useTexts(findingTexts);
  return (
    <div className="no-findings">
      <svg viewBox="0 0 60 60" width="64" aria-hidden="true" className="example">
        <path d="M18 54V8" stroke="currentColor" strokeWidth="2.5" />
        <path d="M18 8h28v18H18z" fill="var(--lamp)" />
        <text x="32" y="22" textAnchor="middle" fontSize="14" fontWeight="700" fill="var(--on-lamp)">
          3
        </text>
        <circle cx="18" cy="54" r="3" fill="currentColor" />
      </svg>
      <div>
        <p>{say('noFindings')}</p>
        <p className="soft">{say('example')}</p>
      </div>
    </div>
  );
}

interface BoardRowProps extends BoardProps {
  readonly one: Numbered;
}

function BoardRow({ one: { finding, number, defect, severity, sha256 }, job, assessment }: BoardRowProps) {
  const say = useTexts(findingTexts);
  const { language, units: system } = useSettings();
  const placeWords = usePlaceWords();
  const { show } = useSheets();
  const { measured, photoIds, place, note } = finding;
  const title = defect?.name[language] ?? finding.title;
  const result = assessment?.defects.find((one) => one.findings.some(({ id }) => id === finding.id));
  const quantity = measured === undefined ? undefined : criteria.findQuantity(measured.quantity);
  const facts = [
    placeWords(place) ?? say('placeNone'),
    ...(measured === undefined || quantity === undefined || typeof measured.value === 'boolean'
      ? []
      : [quantityText(quantity, measured.value, system)]),
    ...(photoIds.length === 0 ? [] : [say('proofs', { count: photoIds.length })]),
  ];
  return (
    <li>
      <Button look="quiet" onPress={() => show('finding', { finding: finding.id })}>
        <span className="board-row">
          <span className="flag figure">{number}</span>
          <span className="board-words">
            <strong>{title}</strong>
            <span className="soft">{facts.join(' · ')}</span>
            {note !== undefined && <span>{note}</span>}
          </span>
          <SeverityMark severity={severity} />
          {sha256 !== undefined && <Thumbnail sha256={sha256} />}
        </span>
      </Button>
      {photoIds.length > 0 && (
        <Button look="quiet" onPress={() => show('picture', { finding: finding.id })}>
          {say('itsPictures', { number })}
        </Button>
      )}
      {assessment !== undefined && result !== undefined && (
        <DefectFacts
          jobId={job.id}
          defect={result}
          criteria={assessment.criteria}
          finding={place.at === undefined ? undefined : finding.id}
        />
      )}
      {defect !== undefined && <Prompts defect={defect} />}
    </li>
  );
}
