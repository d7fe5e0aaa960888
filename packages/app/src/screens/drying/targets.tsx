import type { SeasonAssessment } from '@undercroft/assessment';
import type { SurveyedJob } from '@undercroft/record';
import type { OpenJob } from '../../jobs/open-job.ts';
import { useTexts } from '../../text/texts.ts';
import { DraftField } from './draft-field.tsx';
import { dryingTexts } from './drying-texts.ts';
import { typedHumidity, typedNumber } from './typed.ts';

interface TargetsProps {
  readonly openJob: OpenJob;
  readonly job: SurveyedJob;
  readonly season: SeasonAssessment;
}

/** What the machine is to hold, and what its electricity costs. */
export function Targets({ openJob, job, season }: TargetsProps) {
  const say = useTexts(dryingTexts);
  const { electricityCentsPerKWh: tariff } = job.house;
  return (
    <>
      <h3>{say('targets')}</h3>
      <DraftField
        openJob={openJob}
        label={say('target')}
        kind="design"
        item="design"
        field="targetRelativeHumidity"
        committed={String(Number((100 * job.design.targetRelativeHumidity).toFixed(2)))}
        read={typedHumidity}
        hint={say('targetHint')}
        problem={say('targetProblem')}
        keyboard="decimal"
      />
      <DraftField
        openJob={openJob}
        label={say('tariff')}
        kind="house"
        item="house"
        field="electricityCentsPerKWh"
        committed={tariff === undefined ? '' : String(tariff)}
        read={(text) => typedNumber(text, 0, 1000, true)}
        hint={
          tariff === undefined
            ? say('tariffAssumed', { tariff: `${season.tariffCentsPerKWh} ¢` })
            : say('tariffHint')
        }
        problem={say('tariffProblem')}
        keyboard="decimal"
      />
    </>
  );
}
