import type { SeasonAssessment } from '@undercroft/assessment';
import { useRef, useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import { dropWeather, giveWeather, useWeatherFile } from '../../jobs/weather-files.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { StorageError } from '../../storage/storage.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { computer } from '../../worker/computer.ts';
import { dryingTexts } from './drying-texts.ts';

interface WeatherPartProps {
  readonly jobId: string;
  readonly season: SeasonAssessment;
}

/** Which weather the year is run in, and a file of hours in place of the built-in station. */
export function WeatherPart({ jobId, season }: WeatherPartProps) {
  const say = useTexts(dryingTexts);
  const common = useTexts(commonTexts);
  const { storage } = useJobs();
  const file = useWeatherFile(jobId);
  const input = useRef<HTMLInputElement>(null);
  const [reading, setReading] = useState(false);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const take = async (given: File) => {
    setReading(true);
    try {
      const read = await computer().readWeather(given, given.name);
      setProblems(read.ok ? [] : read.problems);
      if (read.ok) await giveWeather(storage, jobId, given);
    } catch (error) {
      setProblems([error instanceof StorageError ? common(`${error.fault}Fault`) : String(error)]);
    }
    setReading(false);
  };
  const { weather } = season;
  return (
    <details className="fold">
      <summary>{say('weather')}</summary>
      <div className="results">
        <p>{say('weatherUsed', { name: weather.name })}</p>
        <p className="soft">{weather.source}</p>
        {weather.notices.map((notice) => (
          <p key={notice.code + notice.message} className="soft">
            {notice.message}
          </p>
        ))}
        {file !== null && file !== undefined && <p>{say('weatherFile', { name: file.name })}</p>}
        {problems.length > 0 && (
          <Notice kind="wrong" title={say('badFile')}>
            {problems.map((problem) => (
              <p key={problem}>{problem}</p>
            ))}
          </Notice>
        )}
        <input
          ref={input}
          type="file"
          hidden
          accept=".epw,.csv,.gz,text/csv"
          aria-label={say('giveFile')}
          onChange={(event) => {
            const [given] = event.target.files ?? [];
            if (given !== undefined) void take(given);
            event.target.value = '';
          }}
        />
        <Button isDisabled={reading} onPress={() => input.current?.click()}>
          {reading ? say('readingFile') : say('giveFile')}
        </Button>
        {file !== null && file !== undefined && (
          <Button onPress={() => void dropWeather(storage, jobId)}>{say('dropFile')}</Button>
        )}
      </div>
    </details>
  );
}
