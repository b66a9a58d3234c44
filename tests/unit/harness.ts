/*
 * Drives the unit's statechart alone: bands are said to it, time is a queue, and the plant follows as told or not at
 * all. Judges nothing.
 */
import type { Due } from '../../src/bench/due.ts';
import { Timeline } from '../../src/bench/timeline.ts';
import { follow } from '../../src/bench/timers.ts';
import type { ChartEvent } from '../../src/unit/chart/standing.ts';
import { after, type Control, type Turn, unpowered } from '../../src/unit/control.ts';
import type { UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import type { Button, Sensed } from '../../src/unit/sensed.ts';
import { UNPLUGGED } from '../../src/unit/sensed.ts';
import type { Commands } from '../../src/unit/unitChart.ts';
import { designOf } from '../bench/build.ts';

const us = (ms: number): number => Math.round(ms * 1000);

/** Times that are easy to reckon with, s. */
export const TIMING: UnitDesign['timing'] = {
  debounce: 0.02,
  beforeClosing: 0.5,
  closing: 0.02,
  opening: 0.015,
  lock: 0.4,
  openPen: 4.3,
  limit: 2,
  stop: 6.5,
  pause: 3,
};

/** A control with its timers on a clock of its own. */
export class Running {
  readonly timeline = new Timeline<Due>(0);
  control: Control;

  constructor(design: UnitDesign) {
    const turn = unpowered(design);
    this.control = turn.control;
    this.follow(turn);
  }

  send(event: ChartEvent): void {
    this.follow(after(this.control, event));
  }

  /** Moves to the next timer that ends. */
  end(): void {
    const due = this.timeline.take();
    if (due.what === 'timer') this.send(due.event);
  }

  private follow({ control, orders }: Turn): void {
    this.control = control;
    follow(this.timeline, orders);
  }
}

export interface Rig {
  /** As it stands at the moment. */
  readonly control: Control;
  readonly at: () => number;
  /** Changes what is sensed and tells it. */
  readonly sense: (change: Partial<Sensed>) => void;
  /** Lets milliseconds pass. */
  readonly pass: (ms: number) => void;
  readonly power: (on: boolean) => void;
  readonly press: (button: Button) => void;
  readonly trip: (which: 'residual' | 'direct') => void;
  readonly commands: () => Commands;
  /** The names of all states it is in, as `contactor.closed`. */
  readonly states: () => readonly string[];
  readonly is: (state: string) => boolean;
}

/** Every leaf of a state value by its path below `running`, or above it while not running. */
function leaves(value: unknown, path: string): readonly string[] {
  if (typeof value === 'string') return [path === '' ? value : `${path}.${value}`];
  const entries = Object.entries(value as object);
  return entries.length === 0
    ? [path]
    : entries.flatMap(([name, below]) => leaves(below, path === '' ? name : `${path}.${name}`));
}

export const leavesIn = (value: unknown): readonly string[] =>
  leaves(value, '').map((name) => name.replace('powered.running.', ''));

export const statesOf = ({ snapshot }: Control): readonly string[] => leavesIn(snapshot.value);

/** An unpowered unit; `follows`: the contactor's linked contact and the plug's lock do what they are told at once. */
export function rig(
  sheet: Partial<UnitSheet> = {},
  { design = {}, follows = true }: { design?: Partial<UnitDesign>; follows?: boolean } = {},
): Rig {
  const unit = new Running({ ...designOf(sheet), timing: TIMING, ...design });
  const { timeline } = unit;
  let sensed: Sensed = UNPLUGGED;
  const tell = (change: Partial<Sensed>) => {
    sensed = { ...sensed, ...change };
    unit.send({ type: 'sensed', sensed });
  };
  /** What the plant would have done, until it has nothing more to do. */
  const follow = () => {
    if (!follows) return;
    const { coil, lock } = unit.control.snapshot.commands;
    const linkedContact = coil ? 'closed' : 'open';
    const plug = sensed.plug === 'out' || lock === null ? sensed.plug : lock ? 'held' : 'in';
    if (linkedContact === sensed.linkedContact && plug === sensed.plug) return;
    tell({ linkedContact, plug });
    follow();
  };
  const done = (act: () => void) => () => {
    act();
    follow();
  };
  return {
    get control() {
      return unit.control;
    },
    at: () => timeline.now / 1000,
    commands: () => unit.control.snapshot.commands,
    sense: (change) => done(() => tell(change))(),
    power: (on) => done(() => unit.send({ type: 'power', on }))(),
    press: (button) => done(() => unit.send({ type: 'button', button }))(),
    trip: (which) => done(() => unit.send({ type: `${which} trip` }))(),
    pass: (ms) => {
      const until = timeline.now + us(ms);
      for (let due = timeline.next(); due !== null && due <= until; due = timeline.next()) {
        unit.end();
        follow();
      }
      timeline.moveTo(until);
    },
    states: () => statesOf(unit.control),
    is: (state) => statesOf(unit.control).includes(state),
  };
}

/** Powered, started, nothing plugged in. */
export function running(...how: Parameters<typeof rig>): Rig {
  const unit = rig(...how);
  unit.power(true);
  unit.pass(60_000);
  return unit;
}

/** The low half that a sound diode leaves while it oscillates. */
export const plugIn = (unit: Rig): void => {
  unit.sense({ pilot: 'B', lowHalf: 'sound', plug: 'in', proximity: 32 });
  unit.pass(1000);
};

export function charging(...how: Parameters<typeof rig>): Rig {
  const unit = running(...how);
  plugIn(unit);
  unit.sense({ pilot: 'C' });
  unit.pass(2000);
  return unit;
}
