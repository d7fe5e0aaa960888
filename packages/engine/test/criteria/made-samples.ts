import { type Criterion, type Evidence, quantities } from '../../src/criteria/index.ts';

/** A value on the wanted side of the limit, half of the way to the end of the range of the quantity at most. */
export function valueFor({ comparison, limit, quantity }: Criterion, pass: boolean): number | boolean {
  if (comparison === 'yes' || comparison === 'no') return (comparison === 'yes') === pass;
  const [low, high] = quantities[quantity].range ?? [0, 0];
  const value = limit?.value;
  if (typeof value !== 'number') {
    const [least, most] = value ?? [0, 0];
    return pass ? (least + most) / 2 : most + (high - most) / 3;
  }
  const above = value + (high - value) / 1000;
  const below = value - (value - low) / 7;
  if (comparison === '=') return pass ? value : above;
  const wantsAbove = (comparison === '>=' || comparison === '>') === pass;
  return wantsAbove ? above : below;
}

/** So many samples on the wanted side. */
export function samples(criterion: Criterion, pass: boolean, count: number, assumed = false): Evidence[] {
  return Array.from({ length: count }, (_, index) => ({
    id: `sample-${index + 1}`,
    quantity: criterion.quantity,
    value: valueFor(criterion, pass),
    assumed,
  }));
}
