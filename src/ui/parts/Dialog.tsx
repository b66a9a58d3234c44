/** A sheet over the page, shown at once; Escape and its own button close it. What stands on it is the caller's. */
import type { ReactNode } from 'react';
import { useId } from 'react';
import { OnSheet } from './onSheet.ts';
import { useSheet } from './useSheet.ts';

interface Props {
  readonly title: string;
  readonly closeWith: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function Dialog({ title, closeWith, onClose, children }: Props) {
  const dialog = useSheet();
  const heading = useId();
  return (
    <dialog ref={dialog} aria-labelledby={heading} onClose={onClose}>
      <div className="dialog-head">
        <h2 id={heading}>{title}</h2>
        <button type="button" onClick={onClose}>
          {closeWith}
        </button>
      </div>
      <OnSheet value={true}>
        <div className="dialog-body stack">{children}</div>
      </OnSheet>
    </dialog>
  );
}
