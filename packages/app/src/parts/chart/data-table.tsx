import type { ReactNode } from 'react';
import './data-table.css';

/** A column of a table; `figure` lines up numbers at their end. */
export interface Column {
  readonly title: string;
  readonly figure?: boolean;
}

interface DataTableProps {
  readonly caption: string;
  readonly columns: readonly Column[];
  /** The first cell of each row names it. */
  readonly rows: readonly (readonly ReactNode[])[];
}

/** Numbers in rows and columns. Where it is wider than its place it scrolls by itself, also with the keyboard. */
export function DataTable({ caption, columns, rows }: DataTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached with the keyboard
    <section className="table-scroll" tabIndex={0} aria-label={caption}>
      <table className="data-table">
        <caption className="hidden-text">{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ title, figure }) => (
              <th key={title} scope="col" className={figure ? 'end' : ''}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells], row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows stand in a fixed order and hold no state
            <tr key={row}>
              <th scope="row">{name}</th>
              {cells.map((cell, i) => (
                <td
                  // biome-ignore lint/suspicious/noArrayIndexKey: cells stand under their column
                  key={i}
                  className={columns[i + 1]?.figure ? 'end figure' : ''}
                >
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
