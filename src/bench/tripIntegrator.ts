/**
 * A device that trips after a time that depends on what it carries: it fills at 1 / t(I) and trips when full. Once
 * it has tripped it stays so until reset, whatever flows.
 */
import type { Microseconds, Seconds } from '../laws/quantities.ts';
import { microseconds, seconds } from '../laws/quantities.ts';
import type { Ticket, Timeline } from './timeline.ts';

export class TripIntegrator {
  private readonly timeline: Timeline;
  private readonly onTrip: () => void;
  private filled = 0;
  private time: Seconds = Infinity;
  private since: Microseconds = 0;
  private ticket: Ticket | null = null;
  private tripped = false;
  /** What it carries, also while tripped: it fills again from this once reset. */
  private carried: Seconds = Infinity;

  constructor(timeline: Timeline, onTrip: () => void) {
    this.timeline = timeline;
    this.onTrip = onTrip;
  }

  /** From now on it carries what would trip it from rest in this time; Infinity clears it. */
  expose(time: Seconds): void {
    this.carried = time;
    if (this.tripped || time === this.time) return;
    this.filled = Number.isFinite(time)
      ? this.filled + (Number.isFinite(this.time) ? seconds(this.timeline.now - this.since) / this.time : 0)
      : 0;
    this.time = time;
    this.since = this.timeline.now;
    if (this.ticket !== null) this.timeline.cancel(this.ticket);
    this.ticket = Number.isFinite(time)
      ? this.timeline.at(
          this.timeline.now + Math.max(1, microseconds(time * (1 - this.filled))),
          'trips',
          () => this.trip(),
        )
      : null;
  }

  get hasTripped(): boolean {
    return this.tripped;
  }

  /** Ready again, empty, and exposed to whatever flows now. */
  reset(): void {
    if (this.ticket !== null) this.timeline.cancel(this.ticket);
    this.ticket = null;
    this.tripped = false;
    this.filled = 0;
    this.time = Infinity;
    this.expose(this.carried);
  }

  private trip(): void {
    this.ticket = null;
    this.tripped = true;
    this.onTrip();
  }
}
