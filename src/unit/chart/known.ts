/**
 * What the chart makes of an event in a state, worked out once for every unit with the same logic (asked.ts): benches of
 * one job, sound or with a cause outside the control, come to the same states again and again.
 */
import { type AskedDesign, askedOf } from '../asked.ts';
import type { UnitDesign } from '../design.ts';
import { type Commands, commandsOf, type UnitState } from '../unitChart.ts';
import type { Order } from './actions.ts';
import type { ChartEvent, Standing } from './standing.ts';
import { beginning, hasTag, type StateValue, type Step, stateValueOf, stepFrom } from './step.ts';

/** A state of the chart with what it drives. One state of one logic is one object, and stays as it is. */
export interface Known extends UnitState {
  readonly value: StateValue;
  readonly commands: Commands;
  /** Where an event leads, and what it asks of whoever runs the chart. Throws as `stepFrom` does. */
  readonly after: (event: ChartEvent) => KnownStep;
}

export interface KnownStep {
  readonly to: Known;
  readonly orders: readonly Order[];
}

/** Logics that are kept, and states of each, of some kilobytes; a verification comes to some hundreds. */
const MOST_LOGICS = 200;
const MOST_STATES = 5000;

type Logic = Map<string, Known>;
const logics = new Map<string, Logic>();
let beginnings = new WeakMap<UnitDesign, KnownStep>();

/** Each step is worked out anew from here on; no unit does anything else for it. Tells which code a step goes by (tests/mutation). */
export function forgetSteps(): void {
  logics.clear();
  beginnings = new WeakMap();
}

/** A unit of this design without power. */
export function knownBeginning(design: UnitDesign): KnownStep {
  const before = beginnings.get(design);
  if (before !== undefined) return before;
  const asked = askedOf(design);
  const step = known(beginning(asked), logicOf(asked));
  beginnings.set(design, step);
  return step;
}

function logicOf(design: AskedDesign): Logic {
  const text = JSON.stringify(design, plain);
  const before = logics.get(text);
  if (before !== undefined) return before;
  if (logics.size >= MOST_LOGICS) logics.clear();
  const logic: Logic = new Map();
  logics.set(text, logic);
  return logic;
}

const known = ({ to, orders }: Step, logic: Logic): KnownStep => ({ to: knownAs(to, logic), orders });

/** Where a state is the same in everything, it is the same one. */
function knownAs(standing: Standing, logic: Logic): Known {
  const { design: _, ...inMind } = standing.context;
  const key = `${standing.active.join('')} ${JSON.stringify(inMind, plain)}`;
  const before = logic.get(key);
  if (before !== undefined) return before;
  if (logic.size >= MOST_STATES) logic.clear();
  const made = madeKnown(standing, logic);
  logic.set(key, made);
  return made;
}

function madeKnown(standing: Standing, logic: Logic): Known {
  const state: UnitState = { context: standing.context, hasTag: (tag) => hasTag(standing, tag) };
  const steps = new Map<string, KnownStep>();
  return {
    ...state,
    get value() {
      return stateValueOf(standing);
    },
    commands: commandsOf(state),
    after: (event) => {
      const key = keyOf(event);
      const before = steps.get(key);
      if (before !== undefined) return before;
      const step = known(stepFrom(standing, event), logic);
      steps.set(key, step);
      return step;
    },
  };
}

/** All that an event says; what is sensed is numbers, words and lists of words. */
function keyOf(event: ChartEvent): string {
  switch (event.type) {
    case 'sensed': {
      let key = '';
      for (const name in event.sensed) key += `${event.sensed[name as keyof typeof event.sensed]};`;
      return key;
    }
    case 'power':
      return `power ${event.on}`;
    case 'button':
      return `button ${event.button}`;
    default:
      return event.type;
  }
}

/** All of it as text, whatever it has. Throws TypeError for what is no plain data, which would be lost. */
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
