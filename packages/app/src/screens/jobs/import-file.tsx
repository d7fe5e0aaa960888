import type { RecordIssue } from '@undercroft/record';
import { useRef, useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import type { Imported } from '../../jobs/job-list.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { go } from '../../shell/route.ts';
import { useTexts } from '../../text/texts.ts';
import type { Attempt } from './attempt.ts';
import { jobsTexts } from './jobs-texts.ts';

/** More faults than these say nothing new. */
const SHOWN_FAULTS = 5;

/** Takes in an archive file, or says what is wrong with it. */
export function ImportFile({ attempt }: { readonly attempt: Attempt }) {
  const say = useTexts(jobsTexts);
  const jobs = useJobs();
  const input = useRef<HTMLInputElement>(null);
  const [read, setRead] = useState<Imported | null>(null);
  const take = (file: File) =>
    attempt(async () => {
      const imported = await jobs.list.importArchive(new Uint8Array(await file.arrayBuffer()));
      setRead(imported);
      if (!imported.ok) return;
      // The job may be open here already.
      await jobs.refresh();
      const { id, missingBlobs, warnings } = imported;
      if (missingBlobs === 0 && warnings.length === 0) go({ screen: 'job', id, question: 'space' });
    });
  return (
    <>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={say('import')}
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file !== undefined) void take(file);
          event.target.value = '';
        }}
      />
      <Button onPress={() => input.current?.click()}>{say('import')}</Button>
      {read?.ok === true && read.missingBlobs > 0 && (
        <Notice kind="plain">{say('importMissing', { count: read.missingBlobs })}</Notice>
      )}
      {read?.ok === true && read.warnings.length > 0 && (
        <Notice kind="plain" title={say('importNoted')}>
          <Faults issues={read.warnings} />
        </Notice>
      )}
      {read?.ok === false && (
        <Notice kind="wrong" title={say('importWrong')}>
          <Faults issues={read.issues} />
        </Notice>
      )}
    </>
  );
}

function Faults({ issues }: { readonly issues: readonly RecordIssue[] }) {
  const say = useTexts(jobsTexts);
  return (
    <ul>
      {issues.slice(0, SHOWN_FAULTS).map(({ path, found, expected }) => (
        <li key={`${path} ${found}`}>{say('importFault', { path, found, expected })}</li>
      ))}
    </ul>
  );
}
