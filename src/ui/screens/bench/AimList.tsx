/**
 * The aims of a job, each worded as a question, with what was found out so far. One stands open; what stands in it is the
 * business of whoever shows the list. No order, and none is ticked off.
 */
import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import type { AimId } from '../../../scenario/aims.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import type { AskedAim } from './askedAims.ts';

interface Props {
  readonly aims: readonly AskedAim[];
  readonly open: AimId | null;
  /** Without it they stand as they are: a locked test is not left for another. */
  readonly onOpen: ((aim: AimId | null) => void) | null;
  readonly children?: (aim: AskedAim) => ReactNode;
}

export function AimList({ aims, open, onOpen, children }: Props) {
  const opened = useRef<HTMLLIElement>(null);
  // A list longer than its place shows the open one.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another one open is the very occasion
  useEffect(() => {
    opened.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  return (
    <ul className="aim-list">
      {aims.map((aim) => {
        const isOpen = aim.id === open;
        const words = (
          <>
            <span className="aim-question">{AIM_WORDS[aim.id].question}</span>{' '}
            <span className="aim-found">{aim.found}</span>
          </>
        );
        return (
          <li key={aim.id} ref={isOpen ? opened : undefined} className={isOpen ? 'open' : undefined}>
            {onOpen === null ? (
              <p className="aim-head" aria-current={isOpen ? 'true' : undefined}>
                {words}
              </p>
            ) : (
              <button
                type="button"
                className="aim-head"
                aria-expanded={children === undefined ? undefined : isOpen}
                aria-current={children === undefined && isOpen ? 'true' : undefined}
                onClick={() => onOpen(isOpen && children !== undefined ? null : aim.id)}
              >
                {words}
              </button>
            )}
            {isOpen ? children?.(aim) : null}
          </li>
        );
      })}
    </ul>
  );
}
