/**
 * The bench's one clock: an exact queue of what is due when, in integer microseconds, ordered by time, then rank, then
 * sequence. Between entries everything is constant. What an entry means is told by whoever enters and takes it
 * (due.ts, settle.ts): here it is only kept.
 */
import type { Microseconds } from '../laws/quantities.ts';

/** At one instant the plant moves first, then trips act, then the logic, then instruments look. */
export const RANKS = ['plant', 'trips', 'logic', 'instruments'] as const;
export type Rank = (typeof RANKS)[number];

interface Entry<Due> {
  readonly at: Microseconds;
  readonly rank: number;
  readonly sequence: number;
  readonly due: Due;
}

/** Entries that may fall due at one instant before the queue is taken to be running in a circle. */
const MOST_AT_ONE_INSTANT = 1000;

export class Timeline<Due> {
  now: Microseconds;
  /** Replaced, never changed: a copy has the same list until one of the two goes on. */
  private queue: readonly Entry<Due>[] = [];
  private sequence = 0;
  private atThisInstant = 0;

  constructor(start: Microseconds) {
    this.now = start;
  }

  /** The same clock a second time: from here on each runs by itself. */
  copy(): Timeline<Due> {
    const copy = new Timeline<Due>(this.now);
    copy.queue = this.queue;
    copy.sequence = this.sequence;
    copy.atThisInstant = this.atThisInstant;
    return copy;
  }

  /** Enters what is due at a time, not before now. */
  enter(at: Microseconds, rank: Rank, due: Due): void {
    const entry = { at: Math.max(at, this.now), rank: RANKS.indexOf(rank), sequence: this.sequence++, due };
    const place = this.queue.findIndex((other) => comesBefore(entry, other));
    this.queue = this.queue.toSpliced(place < 0 ? this.queue.length : place, 0, entry);
  }

  /** Takes out whatever is meant. */
  cancel(isMeant: (due: Due) => boolean): void {
    this.queue = this.queue.filter(({ due }) => !isMeant(due));
  }

  /** When the next entry is due, or null. */
  next(): Microseconds | null {
    return this.queue[0]?.at ?? null;
  }

  /** Moves the clock to the next entry and takes it out. Throws RangeError where there is none. */
  take(): Due {
    const [entry, ...others] = this.queue;
    if (entry === undefined) throw new RangeError('nothing is due');
    this.queue = others;
    this.atThisInstant = entry.at === this.now ? this.atThisInstant + 1 : 1;
    if (this.atThisInstant > MOST_AT_ONE_INSTANT)
      throw new Error(`more than ${MOST_AT_ONE_INSTANT} events at ${this.now} µs`);
    this.now = entry.at;
    return entry.due;
  }

  /** Lets time pass to a moment at which nothing is due any more. */
  moveTo(time: Microseconds): void {
    if (time < this.now) throw new RangeError('bench time does not run backwards');
    this.now = time;
  }
}

const comesBefore = <Due>(x: Entry<Due>, y: Entry<Due>): boolean =>
  x.at !== y.at ? x.at < y.at : x.rank !== y.rank ? x.rank < y.rank : x.sequence < y.sequence;
