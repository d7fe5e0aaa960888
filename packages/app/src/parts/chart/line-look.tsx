/** How a line is drawn: told apart by its dashes and its marks, not by its color alone. */
export interface LineLook {
  /** Token of the color. */
  readonly color: 'wetting' | 'drying';
  readonly widthPx: number;
  readonly dash: readonly number[];
  /** Mark at each value; none where there are too many. */
  readonly mark: 'filled' | 'open' | 'none';
}

/** The space as found, and with all repairs; and of each a second quantity, drawn finer. */
export const LOOKS = {
  found: { color: 'wetting', widthPx: 3, dash: [], mark: 'filled' },
  repaired: { color: 'drying', widthPx: 3, dash: [10, 5], mark: 'open' },
  foundSecond: { color: 'wetting', widthPx: 2, dash: [2, 4], mark: 'none' },
  repairedSecond: { color: 'drying', widthPx: 2, dash: [10, 4, 2, 4], mark: 'none' },
} as const satisfies Record<string, LineLook>;

/** A piece of the line, for a key. */
function LineSample({ look }: { readonly look: LineLook }) {
  const color = `var(--${look.color})`;
  return (
    <svg viewBox="0 0 48 14" width="3em" height="0.875em" aria-hidden="true">
      <path
        d="M0 7h48"
        fill="none"
        stroke={color}
        strokeWidth={look.widthPx}
        strokeDasharray={look.dash.join(' ')}
      />
      {look.mark !== 'none' && (
        <circle
          cx="24"
          cy="7"
          r="5"
          fill={look.mark === 'filled' ? color : 'var(--ground)'}
          stroke={color}
          strokeWidth="2"
        />
      )}
    </svg>
  );
}

/** What each line of a chart is. */
export function LineKey({
  lines,
}: {
  readonly lines: readonly { readonly label: string; readonly look: LineLook }[];
}) {
  return (
    <ul className="chart-key">
      {lines.map(({ label, look }) => (
        <li key={label}>
          <LineSample look={look} />
          {label}
        </li>
      ))}
    </ul>
  );
}
