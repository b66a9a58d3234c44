/**
 * The bench's one clock: an exact queue of due times in integer microseconds, ordered by time, then rank, then
 * sequence. Between entries everything is constant. It also serves as the statechart's clock.
 */
import type { Microseconds } from '../laws/quantities.ts';

/** At one instant the plant moves first, then trips act, then the logic, then instruments look. */
export const RANKS = ['plant', 'trips', 'logic', 'instruments'] as const;
export type Rank = (typeof RANKS)[number];

export interface Ticket {
  readonly due: Microseconds;
  readonly rank: number;
  readonly sequence: number;
  readonly run: () => void;
}

/** Entries that may fire at one instant before the queue is taken to be running in a circle. */
const MOST_AT_ONE_INSTANT = 1000;

export class Timeline {
  now: Microseconds;
  private queue: Ticket[] = [];
  private sequence = 0;
  private atThisInstant = 0;

  constructor(start: Microseconds) {
    this.now = start;
  }

  /** Enters something due at a time, not before now. */
  at(due: Microseconds, rank: Rank, run: () => void): Ticket {
    const ticket = {
      due: Math.max(due, this.now),
      rank: RANKS.indexOf(rank),
      sequence: this.sequence++,
      run,
    };
    const place = this.queue.findIndex((other) => comesBefore(ticket, other));
    this.queue.splice(place < 0 ? this.queue.length : place, 0, ticket);
    return ticket;
  }

  cancel(ticket: Ticket): void {
    this.queue = this.queue.filter((other) => other !== ticket);
  }

  /** When the next entry is due, or null. */
  next(): Microseconds | null {
    return this.queue[0]?.due ?? null;
  }

  /** Moves the clock to the next entry and runs it. */
  fire(): void {
    const ticket = this.queue.shift();
    if (ticket === undefined) return;
    this.atThisInstant = ticket.due === this.now ? this.atThisInstant + 1 : 1;
    if (this.atThisInstant > MOST_AT_ONE_INSTANT)
      throw new Error(`more than ${MOST_AT_ONE_INSTANT} events at ${this.now} µs`);
    this.now = ticket.due;
    ticket.run();
  }

  /** Lets time pass to a moment at which nothing is due any more. */
  moveTo(time: Microseconds): void {
    if (time < this.now) throw new RangeError('bench time does not run backwards');
    this.now = time;
  }

  /** The same queue in the form that the statechart's timers use; `onTimer` is told of each that fires. */
  asClock(onTimer: () => void): {
    setTimeout: (run: () => void, ms: number) => Ticket;
    clearTimeout: (ticket: Ticket) => void;
  } {
    return {
      setTimeout: (run, ms) =>
        this.at(this.now + Math.max(1, Math.round(ms * 1000)), 'logic', () => {
          onTimer();
          run();
        }),
      clearTimeout: (ticket) => this.cancel(ticket),
    };
  }
}

const comesBefore = (x: Ticket, y: Ticket): boolean =>
  x.due !== y.due ? x.due < y.due : x.rank !== y.rank ? x.rank < y.rank : x.sequence < y.sequence;
