/**
 * The control of one unit: its chart at work. Takes events, and lets the timers run on a clock. What follows from an
 * event in a state is worked out by the chart once, and kept for every unit with the same logic (asked.ts).
 */
import { createActor } from 'xstate';
import { type AskedDesign, askedOf } from './asked.ts';
import type { UnitDesign } from './design.ts';
import type { UnitEvent } from './sensed.ts';
import { TIMERS, type TimerName, timerOf } from './timers.ts';
import { type Commands, commandsOf, type UnitChart, type UnitSnapshot, unitChart } from './unitChart.ts';

/** What timers run on; in milliseconds. */
export interface Clock<Ticket> {
  readonly setTimeout: (run: () => void, ms: number) => Ticket;
  readonly clearTimeout: (ticket: Ticket) => void;
}

/** What is alike to the logic each time, and counted outside it, so that each time draws a delay of its own. */
type Counted = 'new session' | 'delay again';

/** What the chart asks of whoever runs it: to start a timer, to stop one, to count a session or a delay. */
type Order =
  | { readonly start: string; readonly timer: TimerName; readonly event: UnitEvent }
  | { readonly stop: string }
  | Counted;

interface Step {
  readonly to: Standing;
  readonly orders: readonly Order[];
}

/** One state of the whole chart with what it has in mind, and what is known of the ways out of it. */
interface Standing {
  readonly snapshot: UnitSnapshot;
  readonly commands: Commands;
  readonly logic: Logic;
  readonly steps: Map<string, Step>;
}

type Scope = Parameters<UnitChart['transition']>[2];

/** The chart on designs that it takes for one. */
interface Logic {
  readonly states: Map<string, Standing>;
  /** What the chart looks for round it: nobody is at work, so that it only says what is to be done. */
  readonly around: Scope;
}

const logics = new Map<string, Logic>();
const MOST_LOGICS = 200;
/** States of one logic that are kept, of some kilobytes each; a verification comes to some hundreds. */
const MOST_STATES = 5000;

export class Control<Ticket = unknown> {
  private readonly design: UnitDesign;
  private readonly clock: Clock<Ticket>;
  private readonly running = new Map<string, Ticket>();
  private session = 0;
  private again = 0;
  private at: Standing;

  /** Unpowered. */
  constructor(design: UnitDesign, clock: Clock<Ticket>) {
    this.design = design;
    this.clock = clock;
    const { to, orders } = beginning(design);
    this.at = to;
    this.follow(orders);
  }

  get snapshot(): UnitSnapshot {
    return this.at.snapshot;
  }

  /** What it drives as it stands. */
  get commands(): Commands {
    return this.at.commands;
  }

  /** Throws what the chart throws. */
  send(event: UnitEvent): void {
    const key = textOf(event);
    let step = this.at.steps.get(key);
    if (step === undefined) {
      const { logic, snapshot } = this.at;
      step = stepTo(logic, (around) => unitChart().transition(snapshot, event, around));
      this.at.steps.set(key, step);
    }
    this.at = step.to;
    this.follow(step.orders);
  }

  /** Nothing that was due comes any more. */
  stop(): void {
    for (const ticket of this.running.values()) this.clock.clearTimeout(ticket);
    this.running.clear();
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

  private start(id: string, timer: TimerName, event: UnitEvent): void {
    const due = () => {
      this.running.delete(id);
      this.send(event);
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

const beginnings = new WeakMap<UnitDesign, Step>();

function beginning(design: UnitDesign): Step {
  const before = beginnings.get(design);
  if (before !== undefined) return before;
  const asked = askedOf(design);
  const step = stepTo(logicOf(asked), (around) => unitChart().getInitialSnapshot(around, { design: asked }));
  beginnings.set(design, step);
  return step;
}

function logicOf(design: AskedDesign): Logic {
  const text = textOf(design);
  const before = logics.get(text);
  if (before !== undefined) return before;
  if (logics.size >= MOST_LOGICS) logics.clear();
  const logic = { states: new Map(), around: aroundChart(design) };
  logics.set(text, logic);
  return logic;
}

/** The library's own pure `transition` makes the same anew for every step, which takes as long as the step. */
function aroundChart(design: AskedDesign): Scope {
  const self = createActor(unitChart(), { input: { design } });
  const nothing = () => {};
  return {
    self,
    system: self.system,
    id: '',
    sessionId: '',
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: nothing,
  };
}

function stepTo(logic: Logic, next: (around: Scope) => UnitSnapshot): Step {
  const orders: Order[] = [];
  const snapshot = next({ ...logic.around, actionExecutor: (action) => orders.push(orderOf(action)) });
  return { to: standingAt(snapshot, logic), orders };
}

/** Where a state is the same in everything, it is the same one. */
function standingAt(snapshot: UnitSnapshot, logic: Logic): Standing {
  const { design: _, ...inMind } = snapshot.context;
  const key = textOf([snapshot.value, inMind]);
  const before = logic.states.get(key);
  if (before !== undefined) return before;
  if (logic.states.size >= MOST_STATES) logic.states.clear();
  const standing = { snapshot, commands: commandsOf(snapshot), logic, steps: new Map() };
  logic.states.set(key, standing);
  return standing;
}

function orderOf(action: { readonly type: string; readonly params?: unknown }): Order {
  const { type, params = {} } = action;
  const { id, sendId, delay, event } = params as {
    readonly id?: string;
    readonly sendId?: string;
    readonly delay?: number;
    readonly event?: UnitEvent;
  };
  if (type === 'new session' || type === 'delay again') return type;
  if (type === 'xstate.cancel' && sendId !== undefined) return { stop: sendId };
  if (type === 'xstate.raise' && id !== undefined && delay !== undefined && event !== undefined)
    return { start: id, timer: timerOf(delay), event };
  throw new Error(`nobody carries out the chart's action "${type}"`);
}

/** Plain data as a key: all of it, whatever it has. Throws TypeError for what is no plain data, which would be lost. */
const textOf = (data: unknown): string => JSON.stringify(data, plain);

function plain(_: string, part: unknown): unknown {
  if (typeof part === 'number' && !Number.isFinite(part)) return String(part);
  if (typeof part === 'function' || !isPlain(part))
    throw new TypeError('the control has something in mind that is no plain data');
  return part;
}

const isPlain = (part: unknown): boolean =>
  typeof part !== 'object' ||
  part === null ||
  Array.isArray(part) ||
  [Object.prototype, null].includes(Object.getPrototypeOf(part));
