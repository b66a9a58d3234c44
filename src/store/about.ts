/** What is kept of an attempt beside its log, so that a list of many shows without reading any of them. */

import type { Summary } from '../attempt/marks/summary.ts';
import type { Rung } from '../attempt/record/rung.ts';
import { rungOf } from '../attempt/record/rung.ts';
import type { Written } from '../attempt/record/written.ts';

export interface About {
  readonly id: string;
  /** Hash of the log's first entry: the same attempt on every device. Null while nothing is in the log. */
  readonly first: string | null;
  /** Hash of its last entry. */
  readonly head: string | null;
  readonly entries: number;
  /** Empty where the log has none. */
  readonly title: string;
  /** The scenario's id. Not in what an earlier version kept. */
  readonly scenario?: string;
  readonly support: 'guided' | 'practice' | 'assessment';
  /** Not in what an earlier version kept. */
  readonly rung?: Rung;
  readonly trainee: string | null;
  /** Which giving-out it is of, as its log has it; absent of what nobody gave out. */
  readonly given?: Written['given'];
  /** The word that opens its debrief was given here. */
  readonly opened?: boolean;
  readonly concluded: boolean;
  /** Where it stands, by step and test, while it is not concluded, or in the words of an earlier version; null where nothing was begun yet. */
  readonly stands: string | null;
  /** First and last kept, ms since 1970 by this device's clock; null: before that was kept. */
  readonly began: number | null;
  readonly changed: number;
  /** Not offered to go on with; still in the record. */
  readonly putAway: boolean;
  /** When its file was handed in, and whether its trainee chose to leave without. */
  readonly handedIn: number | null;
  readonly leftWithout: boolean;
  /** Opened from a file and not worked on here: it is not this trainee's practice. */
  readonly isGuest: boolean;
  /** The tab that may change it. */
  readonly holder: string | null;
  /** As worked out by replay on this device, never taken from a file. */
  readonly summary: Summary | null;
  /** Fields of a record file that this version does not know, kept as they came. */
  readonly further: Readonly<Record<string, unknown>>;
}

type FromLog = Pick<
  About,
  'first' | 'head' | 'entries' | 'title' | 'scenario' | 'support' | 'rung' | 'trainee' | 'given' | 'concluded'
>;

/** What the log itself says. */
export function factsOf(attempt: Written): FromLog {
  const { entries, scenario, trainee, given } = attempt;
  const { id, title, support } = (scenario ?? {}) as { id?: unknown; title?: unknown; support?: unknown };
  const supported = support === 'assessment' || support === 'guided' ? support : 'practice';
  return {
    first: entries[0]?.hash ?? null,
    head: entries.at(-1)?.hash ?? null,
    entries: entries.length,
    title: typeof title === 'string' ? title : '',
    ...(typeof id === 'string' ? { scenario: id } : {}),
    support: supported,
    rung: rungOf(supported, attempt),
    trainee: trainee ?? null,
    given,
    concluded: entries.some(({ kind }) => kind === 'conclusion'),
  };
}

/** Of an attempt that was not kept before. */
export const aboutOf = (id: string, attempt: Written, own: Partial<About> = {}): About => ({
  id,
  stands: null,
  began: null,
  changed: 0,
  putAway: false,
  handedIn: null,
  leftWithout: false,
  isGuest: false,
  holder: null,
  summary: null,
  further: {},
  ...own,
  ...factsOf(attempt),
});

/** An attempt in text that this device kept; null where it is none. */
export function attemptIn(text: string): Written | null {
  try {
    const value: unknown = JSON.parse(text);
    return Array.isArray((value as { entries?: unknown } | null)?.entries) ? (value as Written) : null;
  } catch {
    return null;
  }
}

/** Nothing of what came of it is told yet. */
export const isHeld = ({ given, opened }: Pick<About, 'given' | 'opened'>): boolean =>
  given?.held !== undefined && opened !== true;
