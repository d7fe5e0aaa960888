import { type PointerEvent, useEffect, useRef, useState } from 'react';
import { Button } from '../parts/button.tsx';
import { useTexts } from '../text/texts.ts';
import { shellTexts } from './shell-texts.ts';
import './wipe-lock.css';

/** So long the button is held until touches count again [ms] (common practice, no source). */
const HOLD_MS = 1_000;

/** A cloth slides; a thumb that holds does not [px]. */
const SLIDE_PX = 24;

/** Lets a wet or muddy screen be wiped: no touch does anything until a large button has been held for a second. */
export function WipeLock() {
  const say = useTexts(shellTexts);
  const [isLocked, setLocked] = useState(false);
  return (
    <>
      <Button look="quiet" label={say('wipe')} onPress={() => setLocked(true)}>
        <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
          <path
            d="M3 17c4-5 14-5 18 0M5 12c3.5-4 10.5-4 14 0M9 6.5c2-1.5 4-1.500 6 0"
            fill="none"
            stroke="currentColor"
            strokeWidth="2"
          />
          <path d="M4 21L20 3" stroke="currentColor" strokeWidth="2" />
        </svg>
      </Button>
      {isLocked && <Lock onOpen={() => setLocked(false)} />}
    </>
  );
}

function Lock({ onOpen }: { readonly onOpen: () => void }) {
  const say = useTexts(shellTexts);
  const dialog = useRef<HTMLDialogElement>(null);
  const [isHeld, setHeld] = useState(false);
  const start = useRef<{ readonly id: number; readonly x: number; readonly y: number } | null>(null);

  // A modal dialog: what lies behind it takes neither touch nor key.
  useEffect(() => dialog.current?.showModal(), []);
  useEffect(() => {
    if (!isHeld) return;
    const timer = setTimeout(onOpen, HOLD_MS);
    return () => clearTimeout(timer);
  }, [isHeld, onOpen]);

  const letGo = () => {
    start.current = null;
    setHeld(false);
  };
  const down = (event: PointerEvent) => {
    // A second finger is a hand with a cloth.
    if (start.current !== null || !event.isPrimary) return letGo();
    start.current = { id: event.pointerId, x: event.clientX, y: event.clientY };
    setHeld(true);
  };
  const move = ({ pointerId, clientX, clientY }: PointerEvent) => {
    const from = start.current;
    if (from === null || from.id !== pointerId) return;
    if (Math.hypot(clientX - from.x, clientY - from.y) > SLIDE_PX) letGo();
  };
  return (
    <dialog ref={dialog} className="wipe-lock" aria-label={say('wipe')} onCancel={onOpen}>
      <p role="status">{say('wiping')}</p>
      <button
        type="button"
        className={isHeld ? 'held' : ''}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={letGo}
        onPointerCancel={letGo}
        onPointerLeave={letGo}
        onContextMenu={(event) => event.preventDefault()}
        onKeyDown={(event) => {
          if (event.key === 'Enter' || event.key === ' ') setHeld(true);
        }}
        onKeyUp={letGo}
        onBlur={letGo}
      >
        {say('holdToUnlock')}
      </button>
      <p className="soft">{say('unlockKeys')}</p>
    </dialog>
  );
}
