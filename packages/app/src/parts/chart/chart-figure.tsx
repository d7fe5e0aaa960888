import { type ReactNode, useId, useState } from 'react';
import { useTexts } from '../../text/texts.ts';
import { chartTexts } from './chart-texts.ts';
import { type Column, DataTable } from './data-table.tsx';
import './chart.css';

interface ChartFigureProps {
  readonly title: string;
  /** What the chart shows, in one sentence: what, extremes, limit. */
  readonly summary: string;
  readonly children: ReactNode;
  readonly columns: readonly Column[];
  /** Made when the table is opened. */
  readonly rows: () => readonly (readonly ReactNode[])[];
  /** Under the table: where the figures come from. */
  readonly why?: ReactNode;
}

/** A chart with its title, its one sentence, and the same numbers as a table. */
export function ChartFigure({ title, summary, children, columns, rows, why }: ChartFigureProps) {
  const say = useTexts(chartTexts);
  const id = useId();
  const [open, setOpen] = useState(false);
  return (
    <figure className="chart-figure" aria-labelledby={id}>
      <figcaption>
        <h2 id={id}>{title}</h2>
        <p>{summary}</p>
      </figcaption>
      {children}
      <div className="chart-more">
        <details onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>
            {say('table')} <span className="hidden-text">{title}</span>
          </summary>
          {open && <DataTable caption={title} columns={columns} rows={rows()} />}
        </details>
        {why}
      </div>
    </figure>
  );
}
