/** What the screens of an attempt tell of it beside its log, for the parts on them that keep or show it. */
import { createContext } from 'react';
import type { Marks } from '../../attempt/marks/mark.ts';
import type { Summary } from '../../attempt/marks/summary.ts';
import type { KeepProblem } from '../../store/keepProblem.ts';

export interface AttemptContext {
  readonly isGuest: boolean;
  /** Its debrief waits for a word that the tutor gives. */
  readonly isHeld: boolean;
  readonly onOpened: () => void;
  readonly handedIn: number | null;
  /** Once the debrief has worked it out. */
  readonly onTold: (marks: Marks, summary: Summary) => void;
  readonly onHandedIn: () => void;
  /** Of a shared computer: takes it off the device; null where it stays. */
  readonly onClear: (() => void) | null;
}

/** Null outside an open attempt: then there is nothing to keep. */
export const BesideAttempt = createContext<AttemptContext | null>(null);

/** Why the last change was not kept; null where it was. */
export const KeepProblemOfAttempt = createContext<KeepProblem | null>(null);
