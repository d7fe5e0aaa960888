import { causes } from '@undercroft/engine';
import type { BudgetResult } from '../assessment.ts';
import type { Origin } from '../origin.ts';
import type { CauseEvidenceShown } from './causes-assessment.ts';
import type { CausesSubject } from './subject.ts';

/** Which explanation a path of the balance belongs to, by the beginning of its key; undefined for what explains nothing. */
function explanationOf(key: string, lined: boolean): causes.CauseKey | undefined {
  const [kind, name] = key.split(':');
  switch (kind) {
    case 'open-ground':
      return lined ? 'open-liner' : 'bare-ground';
    case 'liner-sheet':
    case 'liner-open':
    case 'seam':
    case 'edge':
    case 'pier':
      return 'open-liner';
    case 'standing-water':
      return 'free-water';
    case 'damp-masonry':
    case 'wicking-masonry':
      return 'damp-masonry';
    case 'outside-air':
      return 'outdoor-air';
    case 'entered':
      return name === 'dryer' ? 'dryer-exhaust' : undefined;
    default:
      return undefined;
  }
}

/** Evidence of one balance with what is shown of it. */
export interface BalanceEvidence {
  readonly item: causes.CauseEvidence;
  readonly shown: CauseEvidenceShown;
}

function ofBudget(budget: BudgetResult, id: string, lined: boolean): BalanceEvidence[] {
  const sums = new Map<causes.CauseKey, { kgPerDay: number; low: number; high: number }>();
  for (const path of budget.paths) {
    const explains = explanationOf(path.key, lined);
    if (explains === undefined) continue;
    const known = sums.get(explains) ?? { kgPerDay: 0, low: 0, high: 0 };
    sums.set(explains, {
      kgPerDay: known.kgPerDay + path.kgPerDay,
      low: known.low + path.low,
      high: known.high + path.high,
    });
  }
  const shares = [...sums].map(([explains, kg]) => ({ id: `${id}:${explains}`, explains, ...kg }));
  const origin: Origin = { kind: 'climate', note: `water balance, ${budget.title}` };
  return causes.budgetEvidence(shares, ['humid-air']).flatMap((item) => {
    if (item.logRatio === 0) return [];
    const kg = sums.get(item.explains)?.kgPerDay ?? 0;
    const shown: CauseEvidenceShown = {
      id: item.id,
      explains: item.explains,
      title: `Water balance, ${budget.title}`,
      value: kg,
      unit: 'kg/day',
      says: item.logRatio > 0 ? 'for' : 'against',
      times: Math.exp(Math.min(Math.abs(item.logRatio), causes.ITEM_CAP)),
      basis: 'balance',
      reason:
        kg > 0
          ? 'The more of the water a path brings, the likelier it is the main source; held against an even split.'
          : 'This path carries water away, so it is not what makes the air humid then.',
      origins: [origin],
      criteria: [],
    };
    return [{ item, shown }];
  });
}

/** Shares of the water balance of the survey day and of the most humid month as evidence on humid air. */
export function balanceEvidence({ job, budgets }: CausesSubject): BalanceEvidence[] {
  const lined = job.plan.ground.cover === 'liner';
  return [
    ...(budgets.surveyDay === undefined ? [] : ofBudget(budgets.surveyDay, 'balance-day', lined)),
    ...ofBudget(budgets.designMonth, 'balance-month', lined),
  ];
}
