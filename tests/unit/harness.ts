/*
 * Drives the unit's statechart alone: bands are said to it, time is a queue, and the plant follows as told or not at
 * all. Judges nothing.
 */
import type { Actor } from 'xstate';
import { createActor } from 'xstate';
import { Timeline } from '../../src/bench/timeline.ts';
import type { UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import type { Button, Sensed } from '../../src/unit/sensed.ts';
import { UNPLUGGED } from '../../src/unit/sensed.ts';
import type { Commands, UnitChart } from '../../src/unit/unitChart.ts';
import { commandsOf, unitChart } from '../../src/unit/unitChart.ts';
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

export interface Rig {
  readonly actor: Actor<UnitChart>;
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

export const statesOf = (actor: Actor<UnitChart>): readonly string[] => leavesIn(actor.getSnapshot().value);

/** An unpowered unit; `follows`: the contactor's linked contact and the plug's lock do what they are told at once. */
export function rig(
  sheet: Partial<UnitSheet> = {},
  { design = {}, follows = true }: { design?: Partial<UnitDesign>; follows?: boolean } = {},
): Rig {
  const timeline = new Timeline(0);
  let sensed: Sensed = UNPLUGGED;
  const actor: Actor<UnitChart> = createActor(unitChart(), {
    input: { design: { ...designOf(sheet), timing: TIMING, ...design } },
    clock: timeline.asClock(() => {}),
  });
  actor.subscribe({ error: () => {} });
  actor.start();
  const tell = (change: Partial<Sensed>) => {
    sensed = { ...sensed, ...change };
    actor.send({ type: 'sensed', sensed });
  };
  const commands = () => commandsOf(actor.getSnapshot());
  /** What the plant would have done, until it has nothing more to do. */
  const follow = () => {
    const { status, error } = actor.getSnapshot();
    if (status === 'error') throw error;
    if (!follows) return;
    const { coil, lock } = commands();
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
    actor,
    at: () => timeline.now / 1000,
    commands,
    sense: (change) => done(() => tell(change))(),
    power: (on) => done(() => actor.send({ type: 'power', on }))(),
    press: (button) => done(() => actor.send({ type: 'button', button }))(),
    trip: (which) => done(() => actor.send({ type: `${which} trip` }))(),
    pass: (ms) => {
      const until = timeline.now + us(ms);
      for (let due = timeline.next(); due !== null && due <= until; due = timeline.next()) {
        timeline.fire();
        follow();
      }
      timeline.moveTo(until);
    },
    states: () => statesOf(actor),
    is: (state) => statesOf(actor).includes(state),
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
