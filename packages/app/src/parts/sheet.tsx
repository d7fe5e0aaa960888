import { type ReactNode, useEffect, useId, useRef } from 'react';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import { Button } from './button.tsx';
import './sheet.css';

interface SheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** For what brings a plan of its own: may cover the one above. */
  readonly tall?: boolean;
}

/**
 * A sheet that rises from below and leaves what lies above it in reach: the plan can be touched while it is open. The
 * focus goes in when it opens and back when it closes; Escape closes it.
 */
export function Sheet({ title, onClose, children, tall }: SheetProps) {
  const say = useTexts(commonTexts);
  const id = useId();
  const sheet = useRef<HTMLElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    sheet.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <section
      ref={sheet}
      className={tall ? 'sheet tall' : 'sheet'}
      tabIndex={-1}
      aria-labelledby={id}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <header>
        <h2 id={id}>{title}</h2>
        <Button look="quiet" onPress={onClose}>
          {say('close')}
        </Button>
      </header>
      <div className="sheet-body">{children}</div>
    </section>
  );
}
