/** A part of the debrief below its first screen: its heading, folded or laid open. */
import type { ReactNode } from 'react';
import { useState } from 'react';

/** What takes two columns has room for more than the first screen. */
export const isRoomy = (): boolean => matchMedia('(min-width: 60rem)').matches;

interface Props {
  readonly id: string;
  readonly title: string;
  /** On the printed summary too; all others are in the full record alone. */
  readonly inSummary?: boolean;
  readonly children: ReactNode;
}

export function Fold(props: Props) {
  const [isOpen, setIsOpen] = useState(false);
  return <OpenedFold {...props} isOpen={isOpen} onToggle={setIsOpen} />;
}

interface OpenedProps extends Props {
  readonly isOpen: boolean;
  readonly onToggle: (isOpen: boolean) => void;
}

/** One that something else opens too. */
export function OpenedFold({ id, title, inSummary = false, isOpen, onToggle, children }: OpenedProps) {
  return (
    <details
      className={inSummary ? 'fold in-summary' : 'fold'}
      open={isOpen}
      onToggle={(event) => onToggle(event.currentTarget.open)}
    >
      <summary>
        <h2 id={id} tabIndex={-1}>
          {title}
        </h2>
      </summary>
      <div className="stack">{children}</div>
    </details>
  );
}
