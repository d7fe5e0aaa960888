import { createContext, type ReactNode, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { Sheet } from '../parts/sheet.tsx';

/** What a sheet is opened for, by name, e.g. the quantity to be measured. */
export type SheetWish = Readonly<Record<string, string>>;

interface Sheets {
  /** The sheet that is open; never two at a time. */
  readonly open: { readonly name: string; readonly wish: SheetWish } | null;
  readonly show: (name: string, wish?: SheetWish) => void;
  readonly close: () => void;
  /** Where the sheets of tools stand in this frame. */
  readonly place: HTMLElement | null;
  readonly setPlace: (place: HTMLElement | null) => void;
}

const SheetsContext = createContext<Sheets | null>(null);

/** Holds which sheet of a job is open, so that a tap in one part of the screen can open the sheet of another. */
export function SheetsOfJob({ children }: { readonly children: ReactNode }) {
  const [open, setOpen] = useState<Sheets['open']>(null);
  const [place, setPlace] = useState<HTMLElement | null>(null);
  const opener = useRef<Element | null>(null);
  // Whoever closed a sheet that held the focus stands again where it was opened.
  useEffect(() => {
    const { current } = opener;
    if (open !== null || document.activeElement !== document.body) return;
    if (current instanceof HTMLElement && current.isConnected) current.focus();
  }, [open]);
  const sheets = useMemo<Sheets>(
    () => ({
      open,
      show: (name, wish = {}) => {
        if (open === null) opener.current = document.activeElement;
        setOpen({ name, wish });
      },
      close: () => setOpen(null),
      place,
      setPlace,
    }),
    [open, place],
  );
  return <SheetsContext value={sheets}>{children}</SheetsContext>;
}

/** The sheets of the job that is open. */
export function useSheets(): Sheets {
  const sheets = useContext(SheetsContext);
  if (sheets === null) throw new Error('useSheets needs SheetsOfJob above it');
  return sheets;
}

/** Where the sheets of tools rise: above the row of tools on a phone, beside the plan on a desk. */
export function SheetPlace() {
  const { setPlace } = useSheets();
  return <div className="sheet-place" ref={setPlace} />;
}

interface ToolSheetProps {
  /** As `useSheets().show` names it. */
  readonly name: string;
  readonly title: string;
  readonly onBack?: (() => void) | undefined;
  readonly children: ReactNode;
}

/** The sheet of a tool, while it is the one that is open. */
export function ToolSheet({ name, title, onBack, children }: ToolSheetProps) {
  const { open, close, place } = useSheets();
  if (open?.name !== name || place === null) return null;
  return createPortal(
    <Sheet title={title} tall onClose={close} onBack={onBack}>
      {children}
    </Sheet>,
    place,
  );
}
