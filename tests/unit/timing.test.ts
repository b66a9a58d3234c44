/** What the control logic does over time with the pilot: debounce, start-up, supply, E, the diode. */
import { describe, expect, test } from 'vitest';
import {
  GREATEST_OFF_AFTER_NOT_READY,
  GREATEST_ON_AFTER_READY,
  LEAST_OSCILLATION_PAUSE,
} from '../../src/laws/timing.ts';
import { CLEARINGS, type Clearing, LATCH_REASONS } from '../../src/unit/design.ts';
import { SHEET } from '../bench/build.ts';
import { charging, plugIn, type Rig, rig, running, TIMING } from './harness.ts';

const DEBOUNCE = 1000 * TIMING.debounce;
const BEFORE_CLOSING = 1000 * TIMING.beforeClosing;
const clearedBy = (by: Clearing) => ({
  clearsBy: Object.fromEntries(LATCH_REASONS.map((reason) => [reason, by])) as typeof SHEET.clearsBy,
});

describe('debounce of the pilot', () => {
  test('a band is accepted after it has stood for the debounce, not a microsecond sooner', () => {
    const unit = running();
    unit.sense({ pilot: 'B' });
    unit.pass(DEBOUNCE - 0.001);
    expect(unit.is('level.A.leaving')).toBe(true);
    unit.pass(0.001);
    expect(unit.is('level.B.held')).toBe(true);
  });

  test('repeated equal readings do not start it afresh', () => {
    const unit = running();
    unit.sense({ pilot: 'B' });
    for (const lowHalf of ['sound', 'wrong', 'sound', 'none'] as const) {
      unit.pass(DEBOUNCE / 5);
      // The same band again, with something else changed: news to other regions, none to this one.
      unit.sense({ pilot: 'B', lowHalf });
    }
    unit.pass(DEBOUNCE / 5);
    expect(unit.is('level.B.held')).toBe(true);
  });

  test('a new candidate starts it afresh', () => {
    const unit = running();
    unit.sense({ pilot: 'B' });
    unit.pass(DEBOUNCE - 1);
    unit.sense({ pilot: 'C' });
    unit.pass(DEBOUNCE - 1);
    expect(unit.is('level.A.leaving')).toBe(true);
    unit.pass(1);
    expect(unit.is('level.C.held')).toBe(true);
  });

  test('a dip that is over before the debounce is nothing', () => {
    const unit = charging();
    unit.sense({ pilot: 'B' });
    unit.pass(DEBOUNCE - 1);
    unit.sense({ pilot: 'C' });
    unit.pass(100);
    expect(unit.commands()).toMatchObject({ coil: true, indicator: 'charging' });
    expect(unit.is('level.C.held')).toBe(true);
  });
});

describe('start-up', () => {
  test('closes nothing and offers nothing until it is over, whatever the vehicle asks', () => {
    const unit = rig();
    unit.power(true);
    unit.sense({ pilot: 'C', lowHalf: 'none' });
    for (let second = 0; second < SHEET.startUp; second++) {
      expect(unit.commands()).toEqual({
        coil: false,
        pilot: 'unpowered',
        earthPole: null,
        duty: 0,
        lock: null,
        indicator: 'starting',
      });
      unit.pass(second === SHEET.startUp - 1 ? 999.999 : 1000);
    }
    expect(unit.states()).toEqual(['powered.starting']);
    unit.pass(0.001);
    expect(unit.commands().pilot).toBe('positive');
    unit.pass(DEBOUNCE);
    expect(unit.commands().pilot).toBe('oscillating');
    expect(unit.commands().coil).toBe(false);
    unit.sense({ lowHalf: 'sound' });
    unit.pass(BEFORE_CLOSING + 1);
    expect(unit.commands().coil).toBe(true);
  });

  test('a supply that goes starts it from the beginning', () => {
    const unit = charging();
    unit.power(false);
    expect(unit.commands()).toMatchObject({ coil: false, pilot: 'unpowered', indicator: 'dark' });
    unit.power(true);
    unit.pass(1000 * SHEET.startUp - 1);
    expect(unit.commands().indicator).toBe('starting');
  });
});

describe('supply', () => {
  test('comes within 3 s of being asked for, and goes within 100 ms of not (IEC 61851-1:2017 Table A.6, 4 and 8.1)', () => {
    const unit = running();
    plugIn(unit);
    unit.sense({ pilot: 'C' });
    unit.pass(DEBOUNCE + BEFORE_CLOSING - 1);
    expect(unit.commands().coil).toBe(false);
    unit.pass(1);
    expect(unit.commands().coil).toBe(true);
    expect(DEBOUNCE + BEFORE_CLOSING).toBeLessThan(1000 * GREATEST_ON_AFTER_READY);
    unit.pass(5000);
    unit.sense({ pilot: 'B' });
    unit.pass(DEBOUNCE - 0.001);
    expect(unit.commands().coil).toBe(true);
    unit.pass(0.001);
    expect(unit.commands().coil).toBe(false);
    expect(DEBOUNCE + 1000 * TIMING.opening).toBeLessThan(1000 * GREATEST_OFF_AFTER_NOT_READY);
    expect(unit.commands()).toMatchObject({ pilot: 'oscillating', duty: 32 / 60 });
  });

  test('D is supplied only where the sheet declares ventilation', () => {
    const supplied = (ventilation: boolean): boolean => {
      const unit = running({ ventilation });
      plugIn(unit);
      unit.sense({ pilot: 'D' });
      unit.pass(3000);
      return unit.commands().coil;
    };
    expect([supplied(false), supplied(true)]).toEqual([false, true]);
  });

  test('a supply out of range pauses the offer and opens; 3 s after it is back there is an offer again', () => {
    const unit = charging();
    unit.sense({ supply: 'low' });
    expect(unit.commands()).toMatchObject({ coil: false, pilot: 'positive' });
    unit.sense({ supply: 'within' });
    unit.pass(1000 * LEAST_OSCILLATION_PAUSE - 1);
    expect(unit.commands().pilot).toBe('positive');
    unit.pass(1);
    expect(unit.commands().pilot).toBe('oscillating');
  });
});

describe('E latches', () => {
  const inE = (by: Clearing): Rig => {
    const unit = charging(clearedBy(by));
    unit.sense({ pilot: 'E', lowHalf: 'wrong' });
    unit.pass(DEBOUNCE);
    return unit;
  };
  const gone = (unit: Rig) => {
    unit.sense({ pilot: 'B', lowHalf: 'none' });
    unit.pass(5000);
  };

  test.each(CLEARINGS)(
    'cleared by %s: opens, shows a fault, and does not come back while the short lasts',
    (by) => {
      const unit = inE(by);
      expect(unit.commands()).toMatchObject({ coil: false, indicator: 'fault' });
      unit.pass(60_000);
      expect(unit.is('supervision.latched.E')).toBe(true);
    },
  );

  test.each([
    ['self', true],
    ['state-A', false],
    ['reset', false],
    ['supply', false],
  ] as const)('cleared by %s: the short gone, it is ready again: %s', (by, ready) => {
    const unit = inE(by);
    gone(unit);
    expect(unit.is('supervision.clear.quiet')).toBe(ready);
  });

  test('cleared by state A once the vehicle is gone', () => {
    const unit = inE('state-A');
    gone(unit);
    unit.sense({ pilot: 'A', plug: 'out' });
    unit.pass(DEBOUNCE);
    expect(unit.is('supervision.clear.quiet')).toBe(true);
  });

  test('cleared by its reset, and latched anew at once where the short is still there', () => {
    const unit = inE('reset');
    unit.press('reset');
    expect(unit.is('supervision.latched.E')).toBe(true);
    gone(unit);
    unit.press('reset');
    expect(unit.is('supervision.clear.quiet')).toBe(true);
  });

  test('cleared by a return of supply, start-up and all', () => {
    const unit = inE('supply');
    gone(unit);
    unit.press('reset');
    expect(unit.is('supervision.latched.E')).toBe(true);
    unit.power(false);
    unit.power(true);
    unit.pass(1000 * SHEET.startUp);
    expect(unit.is('supervision.clear.quiet')).toBe(true);
  });
});

describe('the diode', () => {
  test('is refused before closing (IEC 61851-1:2017 Table A.4 note c)', () => {
    const unit = running();
    plugIn(unit);
    unit.sense({ lowHalf: 'wrong' });
    unit.pass(10_000);
    expect(unit.commands()).toMatchObject({ pilot: 'oscillating', coil: false, indicator: 'connected' });
    unit.sense({ pilot: 'C' });
    for (let ms = 0; ms < 5000; ms += 5) {
      unit.pass(5);
      expect(unit.commands().coil).toBe(false);
    }
    expect(unit.is('supervision.latched.diode')).toBe(true);
  });

  test('is looked at in B by a unit that always does', () => {
    const unit = running({ diodeCheck: 'always' });
    plugIn(unit);
    unit.sense({ lowHalf: 'wrong' });
    unit.pass(99);
    expect(unit.commands().indicator).toBe('connected');
    unit.pass(1);
    expect(unit.commands().indicator).toBe('fault');
  });

  test('fails while charging: only a unit that always looks opens', () => {
    const left = (diodeCheck: 'always' | 'before-closing') => {
      const unit = charging({ diodeCheck });
      unit.sense({ lowHalf: 'wrong' });
      unit.pass(1000);
      return unit.commands().coil;
    };
    expect([left('before-closing'), left('always')]).toEqual([true, false]);
  });

  test('is not refused for a low half that is wrong for a moment', () => {
    const unit = running();
    plugIn(unit);
    unit.sense({ pilot: 'C', lowHalf: 'wrong' });
    unit.pass(90);
    unit.sense({ lowHalf: 'sound' });
    unit.pass(2000);
    expect(unit.commands().coil).toBe(true);
  });

  test('is never looked at where the rule is off', () => {
    const unit = running({}, { design: { diodeRule: 'ignored' } });
    plugIn(unit);
    unit.sense({ pilot: 'C', lowHalf: 'wrong' });
    unit.pass(2000);
    expect(unit.commands().coil).toBe(true);
  });
});
