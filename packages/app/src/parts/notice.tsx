import type { ReactNode } from 'react';
import './notice.css';

interface NoticeProps {
  /** `plain`: worth knowing. `wrong`: something is lost or does not work. `caution`: somebody could be hurt. */
  readonly kind: 'plain' | 'wrong' | 'caution';
  readonly title?: string;
  readonly children: ReactNode;
  /** Buttons that settle it. */
  readonly actions?: ReactNode;
}

/** Something that a person should know, beside what it is about. Announced at once where data is at stake. */
export function Notice({ kind, title, children, actions }: NoticeProps) {
  return (
    <div className={`notice ${kind}`} role={kind === 'wrong' ? 'alert' : 'note'}>
      {title !== undefined && <strong>{title}</strong>}
      <div>{children}</div>
      {actions !== undefined && <div className="actions">{actions}</div>}
    </div>
  );
}
