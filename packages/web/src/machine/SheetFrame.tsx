import { type ReactNode, useEffect, useId, useRef } from 'react';
import '../fields/key.css';
import { sheetKeys } from '../words/machine.ts';

interface SheetFrameProps {
  readonly title: string;
  readonly note?: string;
  /** Null where the sheet is always there. */
  readonly onClose: (() => void) | null;
  readonly children: ReactNode;
}

/** A sheet with its title and the key that closes it. Opened, it has the focus; Escape closes it; what opened it has the focus again. */
export function SheetFrame({ title, note, onClose, children }: SheetFrameProps) {
  const id = useId();
  const frame = useRef<HTMLElement>(null);
  const takesFocus = useRef(onClose !== null);
  useEffect(() => {
    if (!takesFocus.current) return;
    const before = document.activeElement;
    frame.current?.focus({ preventScroll: true });
    return () => {
      const isLost = document.activeElement === document.body;
      if (isLost && (before instanceof HTMLElement || before instanceof SVGElement))
        before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <section
      ref={frame}
      className="sheet-frame"
      aria-labelledby={id}
      tabIndex={-1}
      onKeyDown={(event) => event.key === 'Escape' && !event.defaultPrevented && onClose?.()}
    >
      <div className="sheet-frame-head">
        <div>
          <h2 id={id}>{title}</h2>
          {note !== undefined && <p>{note}</p>}
        </div>
        {onClose !== null && (
          <button type="button" className="key" onClick={onClose}>
            {sheetKeys.close}
          </button>
        )}
      </div>
      {children}
    </section>
  );
}
