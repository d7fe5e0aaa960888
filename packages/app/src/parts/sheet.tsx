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
  /** One step back within the sheet. */
  readonly onBack?: (() => void) | undefined;
  /** Leaves the focus where it is: for what opens beside the work on the plan. */
  readonly keepsFocus?: boolean;
}

/**
 * A sheet that rises from below and leaves what lies above it in reach: the plan can be touched while it is open. The
 * focus goes in when it opens and back when it closes; Escape closes it.
 */
export function Sheet({ title, onClose, children, tall, onBack, keepsFocus = false }: SheetProps) {
  const say = useTexts(commonTexts);
  const id = useId();
  const sheet = useRef<HTMLElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    if (keepsFocus) return;
    sheet.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, [keepsFocus]);
  // A step of the sheet takes away or bars what had the focus: then it stands where the next one goes on, and is not lost.
  useEffect(() => {
    const element = sheet.current;
    if (element === null) return;
    let last: Element | null = null;
    const onFocus = ({ target }: FocusEvent) => {
      last = target as Element;
    };
    const seen = new MutationObserver(() => {
      const now = document.activeElement;
      if (last === null || (now !== document.body && now !== last)) return;
      if (last.isConnected && !last.matches(':disabled')) return;
      last = null;
      const pad = matchMedia('(pointer: coarse)').matches ? null : element.querySelector('.pad input');
      (pad instanceof HTMLElement ? pad : element).focus();
    });
    element.addEventListener('focusin', onFocus);
    seen.observe(element, { childList: true, subtree: true, attributeFilter: ['disabled'] });
    return () => {
      element.removeEventListener('focusin', onFocus);
      seen.disconnect();
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
        {onBack !== undefined && (
          <Button look="quiet" label={say('back')} onPress={onBack}>
            ←
          </Button>
        )}
        <h2 id={id}>{title}</h2>
        <Button look="quiet" onPress={onClose}>
          {say('close')}
        </Button>
      </header>
      <div className="sheet-body">{children}</div>
    </section>
  );
}
