/** The control of one unit: its chart at work. Takes events, and lets the timers run on a clock. */
import type { Order } from './chart/actions.ts';
import { type Known, type KnownStep, knownBeginning } from './chart/known.ts';
import type { ChartEvent } from './chart/standing.ts';
import type { UnitDesign } from './design.ts';
import type { UnitEvent } from './sensed.ts';
import { TIMERS, type TimerName } from './timers.ts';
import type { Commands } from './unitChart.ts';

/** What timers run on; in milliseconds. */
export interface Clock<Ticket> {
  readonly setTimeout: (run: () => void, ms: number) => Ticket;
  readonly clearTimeout: (ticket: Ticket) => void;
}

export class Control<Ticket = unknown> {
  private readonly design: UnitDesign;
  private readonly clock: Clock<Ticket>;
  private readonly running = new Map<string, Ticket>();
  private session = 0;
  private again = 0;
  private at: Known;

  /** Unpowered. */
  constructor(design: UnitDesign, clock: Clock<Ticket>) {
    this.design = design;
    this.clock = clock;
    const { to, orders } = knownBeginning(design);
    this.at = to;
    this.follow(orders);
  }

  get snapshot(): Known {
    return this.at;
  }

  /** What it drives as it stands. */
  get commands(): Commands {
    return this.at.commands;
  }

  /** Throws what the chart throws. */
  send(event: UnitEvent): void {
    this.take(event);
  }

  /** Nothing that was due comes any more. */
  stop(): void {
    for (const ticket of this.running.values()) this.clock.clearTimeout(ticket);
    this.running.clear();
  }

  private take(event: ChartEvent): void {
    const { to, orders }: KnownStep = this.at.after(event);
    this.at = to;
    this.follow(orders);
  }

  private follow(orders: readonly Order[]): void {
    for (const order of orders)
      if (order === 'new session') {
        this.session += 1;
        this.again = 0;
      } else if (order === 'delay again') this.again += 1;
      else if ('stop' in order) this.cancel(order.stop);
      else this.start(order.start, order.timer, order.event);
  }

  private start(id: string, timer: TimerName, event: ChartEvent): void {
    const due = () => {
      this.running.delete(id);
      this.take(event);
    };
    this.running.set(
      id,
      this.clock.setTimeout(due, 1000 * TIMERS[timer](this.design, this.session, this.again)),
    );
  }

  private cancel(id: string): void {
    const ticket = this.running.get(id);
    if (ticket === undefined) return;
    this.running.delete(id);
    this.clock.clearTimeout(ticket);
  }
}
