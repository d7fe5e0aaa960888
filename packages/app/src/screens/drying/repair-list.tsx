import type { RepairKey, SeasonAssessment } from '@undercroft/assessment';
import type { SurveyedJob } from '@undercroft/record';
import { useState } from 'react';
import { randomName } from '../../jobs/author.ts';
import type { OpenJob } from '../../jobs/open-job.ts';
import { Button } from '../../parts/button.tsx';
import { Pick } from '../../parts/field.tsx';
import { moneyText } from '../../parts/measure.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { beforeAndAfter, percentText } from './case-words.ts';
import { DraftField } from './draft-field.tsx';
import { dryingTexts } from './drying-texts.ts';
import { REPAIR_KEYS, repairDoes, repairTitle } from './repair-words.ts';
import { typedPrice, typedWords } from './typed.ts';

type Repair = SurveyedJob['design']['repairs'][number];

interface RepairListProps {
  readonly openJob: OpenJob;
  readonly repairs: readonly Repair[];
  /** The year with each repair alone, once it is there. */
  readonly cases: SeasonAssessment | undefined;
  /** The year with the repairs that are chosen. */
  readonly season: SeasonAssessment;
}

/** The repairs of the job: which are done, for how much, and what each does to the year by itself. */
export function RepairList({ openJob, repairs, cases, season }: RepairListProps) {
  const say = useTexts(dryingTexts);
  const { language } = useSettings();
  const chosen = repairs.filter((repair) => repair.chosen);
  const last = beforeAndAfter(season).at(-1) ?? season.cases[0];
  const total = chosen.reduce((sum, { priceCents = 0 }) => sum + priceCents, 0);
  return (
    <section className="repair-part">
      <div className="repair-head">
        <h3>{say('repairs')}</h3>
        <p className="figure">
          {say('now', {
            days: last.daysAbove80,
            mold: last.peakMoldIndex.toFixed(1),
            wood: percentText(last.peakWoodMoisture, 1),
          })}
        </p>
      </div>
      {repairs.length === 0 && <p>{say('noRepairs')}</p>}
      <ul className="repairs">
        {repairs.map((repair) => (
          <RepairRow key={repair.id} openJob={openJob} repair={repair} cases={cases} />
        ))}
      </ul>
      {chosen.length > 0 && (
        <p className="repairs-total">
          {say('total')} <strong className="figure">{moneyText(total, language)}</strong>
        </p>
      )}
      <AddRepair openJob={openJob} repairs={repairs} />
    </section>
  );
}

/** What a repair does to the year when it is done alone. */
function effectOf(repair: Repair, cases: SeasonAssessment | undefined) {
  return cases?.cases.find(
    ({ kind, repairIds }) => kind === 'repair' && repairIds.length === 1 && repairIds[0] === repair.id,
  );
}

interface RepairRowProps {
  readonly openJob: OpenJob;
  readonly repair: Repair;
  readonly cases: SeasonAssessment | undefined;
}

function RepairRow({ openJob, repair, cases }: RepairRowProps) {
  const say = useTexts(dryingTexts);
  const { language } = useSettings();
  const title = repairTitle(repair.repair, language);
  const { id, chosen, priceCents, note } = repair;
  const alone = effectOf(repair, cases);
  const meaning = cases?.repairs.find((one) => one.id === id);
  const set = (value: boolean) =>
    void openJob.commit({ do: 'set', kind: 'repair', item: id, field: 'chosen', value });
  const price = priceCents === undefined ? '' : moneyText(priceCents, language);
  return (
    <li className={chosen ? 'is-chosen' : ''}>
      <label className="repair-choice">
        <input
          type="checkbox"
          checked={chosen}
          aria-label={say('chosen', { repair: title })}
          onChange={(event) => set(event.target.checked)}
        />
        <span>{title}</span>
        <span className="figure">
          {price === '' ? <span className="soft">{say('noPrice')}</span> : price}
        </span>
      </label>
      {alone !== undefined && (
        <p className="soft repair-effect">
          {say('effectAlone', { days: alone.daysAbove80, mold: alone.peakMoldIndex.toFixed(1) })}
        </p>
      )}
      {meaning?.changesTheYear === false && <p className="soft repair-effect">{say('noEffect')}</p>}
      <details className="repair-details">
        <summary>
          {say('details')} <span className="hidden-text">{title}</span>
        </summary>
        <div>
          <p>{repairDoes(repair.repair, language)}</p>
          <DraftField
            openJob={openJob}
            label={say('price')}
            kind="repair"
            item={id}
            field="priceCents"
            committed={price}
            read={typedPrice}
            hint={say('priceHint')}
            problem={say('priceProblem')}
            keyboard="decimal"
          />
          <DraftField
            openJob={openJob}
            label={say('note')}
            kind="repair"
            item={id}
            field="note"
            committed={note ?? ''}
            read={typedWords}
            problem=""
          />
          <Button
            look="quiet"
            label={`${say('removeRepair')}: ${title}`}
            onPress={() => void openJob.commit({ do: 'remove', kind: 'repair', item: id })}
          >
            {say('removeRepair')}
          </Button>
        </div>
      </details>
    </li>
  );
}

function AddRepair({ openJob, repairs }: Omit<RepairListProps, 'cases' | 'season'>) {
  const say = useTexts(dryingTexts);
  const { language } = useSettings();
  const left = REPAIR_KEYS.filter((key) => repairs.every((repair) => repair.repair !== key));
  const [wanted, setWanted] = useState<RepairKey | undefined>();
  const repair = wanted !== undefined && left.includes(wanted) ? wanted : left[0];
  if (repair === undefined) return null;
  const add = () =>
    void openJob.commit({
      do: 'create',
      kind: 'repair',
      item: randomName(16),
      value: { repair, chosen: true },
    });
  return (
    <div className="add-one">
      <Pick
        label={say('addRepair')}
        value={repair}
        options={left.map((key) => [key, repairTitle(key, language)] as const)}
        onChange={setWanted}
      />
      <Button label={`${say('add')}: ${repairTitle(repair, language)}`} onPress={add}>
        {say('add')}
      </Button>
    </div>
  );
}
