import { units } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { useState } from 'react';
import { randomName } from '../../jobs/author.ts';
import type { OpenJob } from '../../jobs/open-job.ts';
import { Button } from '../../parts/button.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { flowText, moneyText } from '../../parts/measure.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { DraftField } from './draft-field.tsx';
import { dryingTexts } from './drying-texts.ts';
import { typedCapacity, typedName, typedNumber, typedPrice } from './typed.ts';

type Machine = SurveyedJob['design']['machines'][number];
const POINTS = ['80F-60', '73F-60', '65F-60'] as const;

interface MachineListProps {
  readonly openJob: OpenJob;
  readonly machines: readonly Machine[];
}

/** The user's own list of machines, each with what its label says. */
export function MachineList({ openJob, machines }: MachineListProps) {
  const say = useTexts(dryingTexts);
  const { units: system } = useSettings();
  return (
    <details className="fold">
      <summary>{say('ownMachines', { count: machines.length })}</summary>
      <ul className="machines">
        {machines.map((machine) => (
          <li key={machine.id}>
            <details className="repair-details">
              <summary>
                {machine.name}, {flowText(machine.ratedKgPerDay, system)}
              </summary>
              <MachineForm openJob={openJob} machine={machine} />
            </details>
          </li>
        ))}
      </ul>
      <AddMachine openJob={openJob} />
    </details>
  );
}

function MachineForm({ openJob, machine }: { readonly openJob: OpenJob; readonly machine: Machine }) {
  const say = useTexts(dryingTexts);
  const { units: system, language } = useSettings();
  const common = { openJob, kind: 'machine', item: machine.id } as const;
  return (
    <div>
      <DraftField
        {...common}
        label={say('machineName')}
        field="name"
        committed={machine.name}
        read={typedName}
        problem={say('nameProblem')}
      />
      <DraftField
        {...common}
        label={say('capacity')}
        field="ratedKgPerDay"
        committed={units.formatQuantity(machine.ratedKgPerDay, 'massFlow', system)}
        read={(text) => typedCapacity(text, system)}
        hint={say('capacityHint')}
        problem={say('capacityProblem')}
      />
      <Pick
        label={say('ratingPoint')}
        value={machine.ratingPoint}
        options={POINTS.map((point) => [point, say(point)] as const)}
        onChange={(value) => void openJob.commit({ ...common, do: 'set', field: 'ratingPoint', value })}
      />
      <DraftField
        {...common}
        label={say('efficiency')}
        field="litersPerKWh"
        committed={machine.litersPerKWh === undefined ? '' : String(machine.litersPerKWh)}
        read={(text) => typedNumber(text, 0.01, 20, true)}
        hint={say('efficiencyHint')}
        problem={say('efficiencyProblem')}
        keyboard="decimal"
      />
      <DraftField
        {...common}
        label={say('price')}
        field="priceCents"
        committed={machine.priceCents === undefined ? '' : moneyText(machine.priceCents, language)}
        read={typedPrice}
        hint={say('priceHint')}
        problem={say('priceProblem')}
        keyboard="decimal"
      />
      <Button
        look="quiet"
        label={`${say('removeMachine')}: ${machine.name}`}
        onPress={() => void openJob.commit({ ...common, do: 'remove' })}
      >
        {say('removeMachine')}
      </Button>
    </div>
  );
}

/** A machine is on the list once it has a name and a capacity; the rest can follow. */
function AddMachine({ openJob }: { readonly openJob: OpenJob }) {
  const say = useTexts(dryingTexts);
  const { units: system } = useSettings();
  const [name, setName] = useState('');
  const [capacity, setCapacity] = useState('');
  const [tried, setTried] = useState(false);
  const named = typedName(name.trim());
  const rated = typedCapacity(capacity.trim(), system);
  const add = async () => {
    setTried(true);
    if (!named.ok || !rated.ok) return;
    const result = await openJob.commit({
      do: 'create',
      kind: 'machine',
      item: randomName(16),
      value: { name: named.value, ratedKgPerDay: rated.value, ratingPoint: '80F-60' },
    });
    if (!result.ok) return;
    setName('');
    setCapacity('');
    setTried(false);
  };
  return (
    <div className="add-machine">
      <Field
        label={`${say('addMachine')}: ${say('machineName').toLowerCase()}`}
        value={name}
        onChange={setName}
        onDone={() => void add()}
        problem={tried && !named.ok ? say('nameProblem') : undefined}
      />
      <Field
        label={say('capacity')}
        value={capacity}
        onChange={setCapacity}
        onDone={() => void add()}
        hint={say('capacityHint')}
        problem={tried && !rated.ok ? say('capacityProblem') : undefined}
      />
      <Button label={`${say('add')}: ${say('addMachine').toLowerCase()}`} onPress={() => void add()}>
        {say('add')}
      </Button>
    </div>
  );
}
