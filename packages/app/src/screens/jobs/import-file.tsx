import type { RecordIssue } from '@undercroft/record';
import { useRef, useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
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
  const [issues, setIssues] = useState<readonly RecordIssue[]>([]);
  const [missing, setMissing] = useState(0);
  const take = (file: File) =>
    attempt(async () => {
      const read = await jobs.list.importArchive(new Uint8Array(await file.arrayBuffer()));
      setIssues(read.ok ? [] : read.issues);
      setMissing(read.ok ? read.missingBlobs : 0);
      if (!read.ok) return;
      // The job may be open here already.
      await jobs.refresh();
      if (read.missingBlobs === 0) go({ screen: 'job', id: read.id, question: 'space' });
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
      {missing > 0 && <Notice kind="plain">{say('importMissing', { count: missing })}</Notice>}
      {issues.length > 0 && (
        <Notice kind="wrong" title={say('importWrong')}>
          <ul>
            {issues.slice(0, SHOWN_FAULTS).map(({ path, found, expected }) => (
              <li key={`${path} ${found}`}>{say('importFault', { path, found, expected })}</li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}
