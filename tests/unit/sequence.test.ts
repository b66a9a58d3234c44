/** What has to come before what: pauses, the lock, trips, the contactor that does not follow, permission and delay. */
import { describe, expect, test } from 'vitest';
import { LEAST_OSCILLATION_PAUSE } from '../../src/laws/timing.ts';
import { commandsOf } from '../../src/unit/unitChart.ts';
import { charging, plugIn, type Rig, running, TIMING } from './harness.ts';

const DEBOUNCE = 1000 * TIMING.debounce;
const BEFORE_CLOSING = 1000 * TIMING.beforeClosing;
const FREE = { follows: false } as const;

describe('between two oscillations', () => {
  test('3 s pass (IEC 61851-1:2017 Table A.6, 9.2)', () => {
    const unit = charging();
    unit.trip('residual');
    expect(unit.commands().pilot).toBe('positive');
    unit.press('reset');
    unit.pass(1000 * LEAST_OSCILLATION_PAUSE - 0.001);
    expect(unit.commands().pilot).toBe('positive');
    unit.pass(0.001);
    expect(unit.commands().pilot).toBe('oscillating');
  });

  test('unplugging ends the pause: the next vehicle does not wait', () => {
    const unit = charging();
    unit.trip('residual');
    unit.sense({ pilot: 'A', lowHalf: 'none', plug: 'out' });
    unit.pass(DEBOUNCE);
    unit.press('reset');
    unit.sense({ pilot: 'B', plug: 'in' });
    unit.pass(DEBOUNCE);
    expect(unit.commands().pilot).toBe('oscillating');
  });
});

describe('the plug of a socket-outlet', () => {
  const socket = (holdInB: boolean): Rig => {
    const unit = running({ outlet: 'socket', holdInB }, FREE);
    plugIn(unit);
    return unit;
  };

  test('is held before the contactor closes (IEC 61851-1:2017 6.3.2)', () => {
    const unit = socket(false);
    expect(unit.commands().lock).toBe(false);
    unit.sense({ pilot: 'C' });
    unit.pass(1500);
    expect(unit.commands()).toMatchObject({ lock: true, coil: false });
    unit.sense({ plug: 'held' });
    unit.pass(BEFORE_CLOSING - 1);
    expect(unit.commands().coil).toBe(false);
    unit.pass(1);
    expect(unit.commands().coil).toBe(true);
  });

  test('is held in B where the sheet says so', () => {
    expect(socket(true).commands().lock).toBe(true);
  });

  test('never held: never supplied', () => {
    const unit = socket(true);
    unit.sense({ pilot: 'C' });
    unit.pass(60_000);
    expect(unit.commands()).toMatchObject({ coil: false, lock: false });
    expect(unit.is('retention.jammed')).toBe(true);
  });

  test('is not let go before the contactor is open', () => {
    const unit = socket(true);
    unit.sense({ plug: 'held', pilot: 'C' });
    unit.pass(1000);
    unit.sense({ linkedContact: 'closed' });
    expect(unit.commands().indicator).toBe('charging');
    unit.trip('residual');
    expect(unit.commands()).toMatchObject({ coil: false, lock: true });
    unit.sense({ linkedContact: 'open' });
    expect(unit.commands().lock).toBe(false);
  });

  test('no coding, no offer', () => {
    for (const proximity of ['none', 'invalid'] as const) {
      const unit = running({ outlet: 'socket' });
      unit.sense({ pilot: 'B', plug: 'in', proximity });
      unit.pass(10_000);
      expect(unit.commands(), proximity).toMatchObject({ pilot: 'positive', coil: false });
    }
  });
});

describe('a trip', () => {
  test.each(['residual', 'direct'] as const)('%s: nothing closes until it is reset', (which) => {
    const unit = charging();
    unit.trip(which);
    expect(unit.commands()).toMatchObject({ coil: false, indicator: 'tripped' });
    unit.pass(3_600_000);
    unit.sense({ pilot: 'A', lowHalf: 'none' });
    unit.pass(1000);
    unit.sense({ pilot: 'C' });
    unit.pass(10_000);
    expect(unit.commands()).toMatchObject({ coil: false, indicator: 'tripped' });
    unit.press('reset');
    unit.sense({ lowHalf: 'sound' });
    unit.pass(5000);
    expect(unit.commands().coil).toBe(true);
  });
});

describe('the contactor', () => {
  test('that does not open is noticed after half a second and shown as F', () => {
    const unit = running({}, FREE);
    plugIn(unit);
    unit.sense({ pilot: 'C' });
    unit.pass(DEBOUNCE + BEFORE_CLOSING);
    unit.sense({ linkedContact: 'closed' });
    unit.sense({ pilot: 'B' });
    unit.pass(DEBOUNCE + 499);
    expect(unit.is('contactor.opening')).toBe(true);
    unit.pass(1);
    expect(unit.is('contactor.failedToOpen')).toBe(true);
    expect(unit.commands()).toMatchObject({ pilot: 'negative', indicator: 'fault' });
    unit.pass(300);
    expect(unit.is('supervision.latched.F.over')).toBe(true);
    unit.press('reset');
    expect(unit.is('supervision.latched.F.shown')).toBe(true);
  });

  test('that does not close is noticed, and its coil let go', () => {
    const unit = running({}, FREE);
    plugIn(unit);
    unit.sense({ pilot: 'C' });
    unit.pass(DEBOUNCE + BEFORE_CLOSING + 499);
    expect(unit.commands().coil).toBe(true);
    unit.pass(1);
    expect(unit.commands()).toMatchObject({ coil: false, pilot: 'negative', indicator: 'fault' });
  });

  test('found closed at rest is noticed at once', () => {
    const unit = running();
    plugIn(unit);
    unit.sense({ linkedContact: 'open' });
    const stuck = running({}, FREE);
    stuck.sense({ linkedContact: 'closed' });
    expect([unit.commands().pilot, stuck.commands().pilot]).toEqual(['oscillating', 'negative']);
  });

  test('that nobody watches is taken to have moved', () => {
    const unit = running({}, { design: { weldCheck: 'none' }, follows: false });
    plugIn(unit);
    unit.sense({ pilot: 'C' });
    unit.pass(2000);
    expect(unit.is('contactor.closed')).toBe(true);
    unit.sense({ linkedContact: 'closed', pilot: 'B' });
    unit.pass(2000);
    expect(unit.is('contactor.open')).toBe(true);
    expect(unit.commands().indicator).toBe('connected');
  });
});

describe('permission and delay', () => {
  test('no offer until it is authorised, and once for the session', () => {
    const unit = running({ permission: 'authorise' });
    plugIn(unit);
    unit.pass(600_000);
    expect(unit.commands()).toMatchObject({ pilot: 'positive', indicator: 'waiting' });
    unit.press('authorise');
    expect(unit.commands().pilot).toBe('oscillating');
    unit.sense({ pilot: 'C' });
    unit.pass(3000);
    unit.sense({ pilot: 'B' });
    unit.pass(3000);
    unit.sense({ pilot: 'C' });
    unit.pass(3000);
    expect(unit.commands().coil).toBe(true);
    unit.sense({ pilot: 'A', plug: 'out', lowHalf: 'none' });
    unit.pass(1000);
    plugIn(unit);
    expect(unit.commands().indicator).toBe('waiting');
  });

  test('permission withheld is never given', () => {
    const unit = running({ permission: 'held' });
    plugIn(unit);
    unit.press('authorise');
    unit.press('override-delay');
    unit.pass(3_600_000);
    expect(unit.commands().pilot).toBe('positive');
  });

  test('a random delay in whole seconds, another for each session, and none when overridden', () => {
    const unit = running({ startDelay: 600 }, { design: { delayShare: (session) => session / 10 } });
    const waited = (): number => {
      unit.sense({ pilot: 'B', plug: 'in' });
      let s = 0;
      for (; unit.commands().pilot !== 'oscillating' && s < 700; s++) unit.pass(1000);
      unit.sense({ pilot: 'A', plug: 'out', lowHalf: 'none' });
      unit.pass(1000);
      return s;
    };
    expect([waited(), waited()]).toEqual([61, 121]);
    unit.sense({ pilot: 'B', plug: 'in' });
    unit.pass(1000);
    unit.press('override-delay');
    expect(unit.commands().pilot).toBe('oscillating');
  });
});

describe('commandsOf', () => {
  test('is a pure function of the states', () => {
    const unit = charging();
    const { snapshot } = unit.control;
    const before = JSON.stringify(snapshot.value);
    const first = commandsOf(snapshot);
    expect(commandsOf(snapshot)).toEqual(first);
    unit.trip('residual');
    expect(commandsOf(snapshot)).toEqual(first);
    expect(JSON.stringify(snapshot.value)).toBe(before);
    expect(unit.commands()).not.toEqual(first);
  });
});
