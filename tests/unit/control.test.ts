/**
 * The control, which works out once what follows from an event, against the statechart library's own actor on the same
 * chart, which works out everything anew: every state and every time alike, on whatever designs, in whatever order.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createActor } from 'xstate';
import { drawer } from '../../src/bench/draw.ts';
import { Timeline } from '../../src/bench/timeline.ts';
import type { UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import {
  CLEARINGS,
  DIODE_CHECKS,
  LATCH_REASONS,
  LOST_LINES,
  OPEN_PEN_KINDS,
  OUTLETS,
  PERMISSIONS,
  soundDesign,
} from '../../src/unit/design.ts';
import { BUTTONS, PILOT_BANDS, type Sensed, UNPLUGGED, type UnitEvent } from '../../src/unit/sensed.ts';
import { TIMERS, type TimerName } from '../../src/unit/timers.ts';
import { commandsOf, unitChart } from '../../src/unit/unitChart.ts';
import { SHEET } from '../bench/build.ts';
import { Running } from './harness.ts';

const sheets: fc.Arbitrary<UnitSheet> = fc
  .record({
    outlet: fc.constantFrom(...OUTLETS),
    setCurrent: fc.constantFrom(6, 16, 32),
    openPen: fc.constantFrom(...OPEN_PEN_KINDS),
    ventilation: fc.boolean(),
    startUp: fc.constantFrom(1, 3),
    startDelay: fc.constantFrom(0, 0, 20),
    permission: fc.constantFrom('open', ...PERMISSIONS),
    loadLimit: fc.constantFrom(null, 5, 16),
    schedule: fc.constantFrom(null, 'default-hours' as const),
    holdInB: fc.boolean(),
    diodeCheck: fc.constantFrom(...DIODE_CHECKS),
    lostLine: fc.constantFrom(...LOST_LINES),
    clearsBy: fc.record(
      Object.fromEntries(LATCH_REASONS.map((reason) => [reason, fc.constantFrom(...CLEARINGS)])) as {
        [K in keyof UnitSheet['clearsBy']]: fc.Arbitrary<UnitSheet['clearsBy'][K]>;
      },
    ),
  })
  .map((drawn) => ({ ...SHEET, ...drawn }));

const hidden = fc.record({
  weldCheck: fc.constantFrom('linked-contact' as const, 'none' as const),
  diodeRule: fc.constantFrom('checked' as const, 'ignored' as const),
  dutyError: fc.constantFrom(0, 0.1),
  openPen: fc.record({ senses: fc.boolean(), opensEarth: fc.boolean() }),
  tripOpens: fc.boolean(),
  closesAfterTrip: fc.constantFrom(null, 2),
});

/** A few kinds of unit, each many times: what one has made known serves the next. */
const KINDS = fc.sample(fc.tuple(sheets, hidden), { numRuns: 12, seed: 2290 });
const designs: fc.Arbitrary<UnitDesign> = fc
  .tuple(fc.constantFrom(...KINDS), fc.nat(1000))
  .map(([[sheet, rest], seed]) => ({ ...soundDesign(sheet, drawer(seed)), ...rest }));

const changes: fc.Arbitrary<Partial<Sensed>> = fc.oneof(
  fc.record({ pilot: fc.constantFrom('A', 'B', 'C', 'C', ...PILOT_BANDS) }),
  fc.record({ lowHalf: fc.constantFrom('sound', 'wrong', 'none') }),
  fc.record({ linkedContact: fc.constantFrom('open', 'closed') }),
  fc.record({ plug: fc.constantFrom('out', 'in', 'held'), proximity: fc.constantFrom(13, 32, 'none') }),
  fc.record({ supply: fc.constantFrom('within', 'within', 'low', 'high') }),
  fc.record({ missing: fc.constantFrom<Sensed['missing']>([], [], ['L1'], ['L2']) }),
  fc.record({ pen: fc.constantFrom('within', 'outside') }),
  fc.record({ peak: fc.boolean() }),
  fc.record({ limit: fc.constantFrom(null, 4, 10) }),
) as fc.Arbitrary<Partial<Sensed>>;

type Move = { readonly sense: Partial<Sensed> } | { readonly wait: number } | { readonly event: UnitEvent };
const moves: fc.Arbitrary<readonly Move[]> = fc.array(
  fc.oneof(
    { weight: 6, arbitrary: changes.map((sense) => ({ sense })) },
    { weight: 4, arbitrary: fc.constantFrom(1, 30, 700, 3000, 12_000).map((wait) => ({ wait })) },
    {
      weight: 2,
      arbitrary: fc
        .oneof(
          fc.constantFrom<UnitEvent>({ type: 'residual trip' }, { type: 'direct trip' }),
          fc.boolean().map((on): UnitEvent => ({ type: 'power', on })),
          fc.constantFrom(...BUTTONS).map((button): UnitEvent => ({ type: 'button', button })),
        )
        .map((event) => ({ event })),
    },
  ),
  { minLength: 40, maxLength: 60 },
);

/** What one of the two does, as somebody sees who watches it and its clock. */
interface Watched {
  readonly timeline: Pick<Timeline<unknown>, 'now' | 'next' | 'moveTo'>;
  /** Moves to the next timer that ends. */
  readonly end: () => void;
  readonly send: (event: UnitEvent) => void;
  readonly state: () => unknown;
}

function controlOn(design: UnitDesign): Watched {
  const unit = new Running(design);
  return {
    timeline: unit.timeline,
    end: () => unit.end(),
    send: (event) => unit.send(event),
    state: () => {
      const { value, context, commands } = unit.control.snapshot;
      return { value, context: { ...context, design: null }, commands };
    },
  };
}

/** The actor has the whole design: a guard that asks for more than the control gives it would tell the two apart. */
function actorOn(design: UnitDesign): Watched {
  const timeline = new Timeline<() => void>(0);
  let session = 0;
  let again = 0;
  const delays = Object.fromEntries(
    Object.entries(TIMERS).map(([name, time]) => [name, () => 1000 * time(design, session, again)]),
  ) as Record<TimerName, () => number>;
  const chart = unitChart().provide({
    delays,
    actions: {
      'new session': () => {
        session += 1;
        again = 0;
      },
      'delay again': () => {
        again += 1;
      },
    },
  });
  const clock = {
    setTimeout: (run: () => void, ms: number) => {
      timeline.enter(timeline.now + Math.max(1, Math.round(ms * 1000)), 'logic', run);
      return run;
    },
    clearTimeout: (run: () => void) => timeline.cancel((due) => due === run),
  };
  const actor = createActor(chart, { input: { design }, clock }).start();
  return {
    timeline,
    end: () => timeline.take()(),
    send: (event) => actor.send(event),
    state: () => {
      const snapshot = actor.getSnapshot();
      const { value, context } = snapshot;
      return { value, context: { ...context, design: null }, commands: commandsOf(snapshot) };
    },
  };
}

/** Everything that either comes to, with the time at which it does. */
function story(unit: Watched, done: readonly Move[]): readonly unknown[] {
  const { timeline, end, send, state } = unit;
  const seen: unknown[] = [];
  let sensed: Sensed = UNPLUGGED;
  const waitFor = (ms: number) => {
    const until = timeline.now + 1000 * ms;
    for (let due = timeline.next(); due !== null && due <= until; due = timeline.next()) {
      end();
      seen.push([timeline.now, state()]);
    }
    timeline.moveTo(until);
  };
  send({ type: 'power', on: true });
  waitFor(3000);
  for (const move of done) {
    if ('wait' in move) waitFor(move.wait);
    else if ('event' in move) send(move.event);
    else {
      sensed = { ...sensed, ...move.sense };
      send({ type: 'sensed', sensed });
    }
    seen.push([timeline.now, timeline.next(), state()]);
  }
  return seen;
}

const textsOf = (all: readonly unknown[]) => all.map((one) => JSON.stringify(one));

test('it does what the chart’s own actor does, at the same times', () => {
  const reached = new Set<string>();
  fc.assert(
    fc.property(designs, moves, (design, done) => {
      const here = story(controlOn(design), done);
      expect(textsOf(here)).toEqual(textsOf(story(actorOn(design), done)));
      for (const text of textsOf(here)) reached.add(text.slice(text.indexOf('{')));
    }),
    { numRuns: 120, seed: 5117 },
  );
  console.log(`${reached.size} states`);
  expect(reached.size).toBeGreaterThan(1000);
});

test('two units that the logic takes for one share what is known, and keep their own times', () => {
  const timesOf = (seed: number) => {
    const unit = controlOn(soundDesign({ ...SHEET, startUp: 1 }, drawer(seed)));
    return story(unit, [
      { sense: { pilot: 'B', lowHalf: 'sound' } },
      { wait: 700 },
      { sense: { pilot: 'C' } },
      { wait: 3000 },
    ]).map((at) => (at as readonly unknown[])[0]);
  };
  expect(timesOf(1)).not.toEqual(timesOf(2));
  expect(timesOf(1)).toEqual(timesOf(1));
});
