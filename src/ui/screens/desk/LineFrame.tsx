/** One of the four lines: its name, the answer, and a touch on *change* that opens its panel in its place. */
import type { ReactNode } from 'react';
import { useId } from 'react';
import type { Scenario } from '../../../scenario/scenario.ts';
import type { JobFile } from './jobFile.ts';

/** What every line needs. */
export interface LineProps {
  readonly file: JobFile;
  readonly scenario: Scenario;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onClose: () => void;
  readonly onChange: (file: JobFile, what?: string) => void;
}

interface Props {
  readonly name: string;
  readonly answer: ReactNode;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onClose: () => void;
  /** Below the answer while it is folded. */
  readonly more?: ReactNode;
  /** The panel. */
  readonly children: ReactNode;
}

export function LineFrame({ name, answer, isOpen, onOpen, onClose, more, children }: Props) {
  const id = useId();
  return (
    <section className={isOpen ? 'desk-line open' : 'desk-line'} aria-labelledby={id}>
      <h2 className="desk-line-name" id={id}>
        {name}
      </h2>
      <div className="desk-line-body stack">
        <div className="desk-line-answer">
          <p className="answer">{answer}</p>
          <button
            type="button"
            className="plain"
            aria-expanded={isOpen}
            aria-label={`${isOpen ? 'done with' : 'change'}: ${name}`}
            onClick={isOpen ? onClose : onOpen}
          >
            {isOpen ? 'done' : 'change'}
          </button>
        </div>
        {isOpen ? children : more}
      </div>
    </section>
  );
}
