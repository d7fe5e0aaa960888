import { type Condition, type FactKey, facts, type JobFacts } from '../../src/criteria/index.ts';

function allowed(key: FactKey): readonly (string | boolean)[] {
  const { values } = facts[key];
  return values === 'yes-no' ? [true, false] : values;
}

/** Facts under which a condition comes out as wanted; enough for the shapes of condition in the catalogue. */
export function factsFor(condition: Condition, wanted = true): JobFacts {
  if ('fact' in condition) {
    const value = allowed(condition.fact).find((each) => condition.isOneOf.includes(each) === wanted);
    return { [condition.fact]: value };
  }
  if ('not' in condition) return factsFor(condition.not, !wanted);
  const parts = 'all' in condition ? condition.all : condition.any;
  const everyPart = 'all' in condition ? wanted : !wanted;
  const used = everyPart ? parts : parts.slice(0, 1);
  return Object.assign({}, ...used.map((part) => factsFor(part, wanted)));
}
