import { units } from '@undercroft/engine';
import type { ReactNode } from 'react';
import { useSettings } from '../settings/settings.ts';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import './figures.css';

interface FigureProps {
  /** In the canonical unit of the dimension. */
  readonly value: number;
  readonly dimension: units.Dimension;
  readonly digits?: number;
  /** True for what nobody measured. */
  readonly assumed?: boolean;
}

/** A figure in the units that the person set; an assumption is marked by a dashed line and a word. */
export function Figure({ value, dimension, digits, assumed }: FigureProps) {
  const common = useTexts(commonTexts);
  const { units: system } = useSettings();
  const shown = units.formatQuantity(value, dimension, system, digits);
  return (
    <span className={`figure${assumed ? ' assumed' : ''}`}>
      {shown}
      {assumed && <span className="soft"> {common('assumed')}</span>}
    </span>
  );
}

/** Figures with their names, one a line. */
export function Figures({
  rows,
}: {
  readonly rows: readonly (readonly [name: string, figure: ReactNode])[];
}) {
  return (
    <dl className="figures">
      {rows.map(([name, figure]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd className="figure">{figure}</dd>
        </div>
      ))}
    </dl>
  );
}
