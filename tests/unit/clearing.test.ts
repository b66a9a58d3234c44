/** What is latched ends by what the sheet names and by nothing else, not by a return of supply either; and what PE and offer do meanwhile. */
import { describe, expect, test } from 'vitest';
import type { Clearing, LatchReason, UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import { SHEET } from '../bench/build.ts';
import { charging, plugIn, type Rig, running, TIMING } from './harness.ts';

interface Latch {
  readonly reason: LatchReason;
  /** Brings it about on a unit that charges or could, and takes its cause away again. */
  readonly latch: (unit: Rig) => void;
  readonly shows: 'fault' | 'tripped';
  readonly endings: readonly Clearing[];
}

const LATCHES: readonly Latch[] = [
  {
    reason: 'residual',
    latch: (unit) => unit.trip('residual'),
    shows: 'tripped',
    endings: ['reset', 'state-A', 'supply'],
  },
  {
    reason: 'direct',
    latch: (unit) => unit.trip('direct'),
    shows: 'tripped',
    endings: ['reset', 'state-A', 'supply'],
  },
  {
    reason: 'E',
    latch: (unit) => {
      unit.sense({ pilot: 'E' });
      unit.pass(1000);
      unit.sense({ pilot: 'B' });
      unit.pass(1000);
    },
    shows: 'fault',
    endings: ['reset', 'state-A', 'supply', 'self'],
  },
  {
    reason: 'diode',
    latch: (unit) => {
      unit.sense({ lowHalf: 'wrong' });
      unit.pass(1000);
      unit.sense({ lowHalf: 'sound' });
      unit.pass(1000);
    },
    shows: 'fault',
    endings: ['reset', 'state-A', 'supply'],
  },
  {
    reason: 'openPen',
    latch: (unit) => {
      unit.sense({ pen: 'outside' });
      unit.pass(5000);
      unit.sense({ pen: 'within' });
      unit.pass(1000);
    },
    shows: 'fault',
    endings: ['reset', 'state-A', 'supply', 'self'],
  },
];

const latched = ({ reason, latch }: Latch, ending: Clearing, design: Partial<UnitDesign> = {}): Rig => {
  const sheet: Partial<UnitSheet> = {
    diodeCheck: 'always',
    clearsBy: { ...SHEET.clearsBy, [reason]: ending },
  };
  const unit = charging(sheet, { design });
  latch(unit);
  return unit;
};

const CASES = LATCHES.flatMap((latch) => latch.endings.map((ending) => ({ ...latch, ending })));

describe.each(CASES)('$reason, ended by $ending', ({ ending, shows, ...latch }) => {
  const standing = (unit: Rig): boolean => unit.commands().indicator === shows;

  test('a reset', () => {
    const unit = latched({ ...latch, shows }, ending);
    expect(standing(unit)).toBe(ending !== 'self');
    unit.press('reset');
    unit.pass(1000);
    expect(standing(unit)).toBe(ending === 'state-A' || ending === 'supply');
  });

  test('the vehicle unplugged', () => {
    const unit = latched({ ...latch, shows }, ending);
    unit.sense({ pilot: 'A', lowHalf: 'none' });
    unit.pass(1000);
    expect(standing(unit)).toBe(ending === 'reset' || ending === 'supply');
  });

  test('time alone', () => {
    const unit = latched({ ...latch, shows }, ending);
    unit.pass(3_600_000);
    expect(standing(unit)).toBe(ending !== 'self');
    // Nothing was supplied meanwhile, save where it may go on by itself.
    expect(unit.commands().coil && standing(unit)).toBe(false);
  });

  /** IEC 61851-1:2017 clause 14, UK note, and the sheet: a return of supply is a reset only where it says so. */
  test('a return of supply', () => {
    const unit = latched({ ...latch, shows }, ending);
    unit.power(false);
    unit.pass(1000);
    unit.power(true);
    unit.pass(60_000);
    const stays = ending === 'reset' || ending === 'state-A';
    expect(standing(unit)).toBe(stays);
    if (stays) expect(unit.commands().coil).toBe(false);
  });

  test('a reset while it starts again', () => {
    const unit = latched({ ...latch, shows }, ending);
    unit.power(false);
    unit.power(true);
    unit.press('reset');
    unit.pass(60_000);
    expect(standing(unit)).toBe(ending === 'state-A');
  });

  test('its own ending after a return of supply, and the next return finds nothing', () => {
    const unit = latched({ ...latch, shows }, ending);
    const again = () => {
      unit.power(false);
      unit.power(true);
      unit.pass(60_000);
    };
    again();
    unit.press('reset');
    unit.sense({ pilot: 'A', lowHalf: 'none' });
    unit.pass(1000);
    expect(standing(unit)).toBe(false);
    again();
    expect(standing(unit)).toBe(false);
  });

  test('a return of supply to a unit whose memory is lost, which no sound one’s is', () => {
    const unit = latched({ ...latch, shows }, ending, { latchMemory: 'lost' });
    unit.power(false);
    unit.power(true);
    unit.pass(60_000);
    expect(standing(unit)).toBe(false);
  });
});

describe('a trip that closes by itself, which no sound unit does', () => {
  test('closes after its time, not before', () => {
    const unit = charging({}, { design: { closesAfterTrip: 10 } });
    unit.trip('residual');
    unit.pass(9999);
    expect(unit.commands()).toMatchObject({ coil: false, indicator: 'tripped' });
    unit.pass(5000);
    expect(unit.commands().coil).toBe(true);
  });

  test('a sound one waits for ever', () => {
    const unit = charging();
    unit.trip('direct');
    unit.pass(1_100_000_000);
    expect(unit.commands()).toMatchObject({ coil: false, indicator: 'tripped' });
  });
});

/** BS 7671:2018+A2:2022 722.411.4.1: the protective conductor is opened with the live ones. */
describe('the PE pole', () => {
  const steps = (opensEarth: boolean) => {
    const unit = charging(
      { openPen: 'voltage-window' },
      { design: { openPen: { senses: true, opensEarth } } },
    );
    const seen = [unit.commands().earthPole];
    unit.sense({ pen: 'outside' });
    seen.push(unit.commands().earthPole);
    unit.pass(1000 * TIMING.openPen);
    seen.push(unit.commands().earthPole);
    unit.sense({ pen: 'within' });
    seen.push(unit.commands().earthPole);
    unit.press('reset');
    seen.push(unit.commands().earthPole);
    return seen;
  };

  test('is closed, left as it is while the measure waits, open while locked out, and closed by the reset', () => {
    expect(steps(true)).toEqual([true, null, false, false, true]);
  });

  test('stays closed where it is not opened', () => {
    expect(steps(false)).toEqual([true, null, true, true, true]);
  });

  test('is left as it is without power', () => {
    const unit = charging({ openPen: 'voltage-window' });
    unit.power(false);
    expect(unit.commands()).toEqual({
      coil: false,
      pilot: 'unpowered',
      duty: 0,
      lock: null,
      earthPole: null,
      indicator: 'dark',
    });
    unit.power(true);
    expect(unit.commands()).toMatchObject({
      coil: false,
      pilot: 'unpowered',
      earthPole: null,
      indicator: 'starting',
    });
  });
});

describe('what the indicator says, from plugging in to charging', () => {
  test('ready, connected, preparing, charging', () => {
    const unit = running({}, { follows: false });
    const said = [unit.commands().indicator];
    plugIn(unit);
    said.push(unit.commands().indicator);
    unit.sense({ pilot: 'C' });
    unit.pass(1000);
    said.push(unit.commands().indicator);
    unit.sense({ linkedContact: 'closed' });
    said.push(unit.commands().indicator);
    expect(said).toEqual(['ready', 'connected', 'preparing', 'charging']);
  });

  test('steady at 100 % while nothing is offered, 53.3 % for 32 A, 0 % in state F (Table A.7)', () => {
    const unit = running();
    expect(unit.commands()).toMatchObject({ pilot: 'positive', duty: 1 });
    plugIn(unit);
    expect(unit.commands()).toMatchObject({ pilot: 'oscillating', duty: expect.closeTo(0.5333, 4) });
    const stuck = running({}, { follows: false });
    stuck.sense({ linkedContact: 'closed' });
    expect(stuck.commands()).toMatchObject({ pilot: 'negative', duty: 0, indicator: 'fault' });
  });
});

/** IEC 61851-1:2017 Table A.6 sequence 6. */
describe('a changed limit', () => {
  test('is offered after the unit’s own time, and the next one not within the vehicle’s 5 s', () => {
    const unit = charging();
    const offered = () => Math.round(60 * unit.commands().duty);
    unit.sense({ limit: 10 });
    unit.pass(1000 * TIMING.limit - 1);
    expect(offered()).toBe(32);
    unit.pass(1);
    expect(offered()).toBe(10);
    unit.sense({ limit: 20 });
    unit.pass(1000 * (5 + TIMING.limit) - 1);
    expect(offered()).toBe(10);
    unit.pass(1);
    expect(offered()).toBe(20);
  });

  test('under 6 A withdraws the offer', () => {
    const unit = charging();
    unit.sense({ limit: 5.9 });
    unit.pass(1000 * TIMING.limit);
    expect(unit.commands()).toMatchObject({ pilot: 'positive', duty: 1 });
  });
});

describe('a stop by hand', () => {
  test('leaves the vehicle its time: supply goes on, steady, and opens under load not before 6 s (Table A.6, 10.2)', () => {
    const unit = charging();
    unit.press('stop');
    expect(unit.commands()).toMatchObject({ coil: true, pilot: 'positive', indicator: 'stopped' });
    unit.pass(1000 * TIMING.stop - 1);
    expect(unit.commands().coil).toBe(true);
    unit.pass(1);
    expect(unit.commands()).toMatchObject({ coil: false, indicator: 'stopped' });
    unit.pass(3_600_000);
    expect(unit.commands().coil).toBe(false);
  });

  test('in an emergency opens at once, and stays open until it is reset (BS 7671 537.3.3)', () => {
    const unit = charging();
    unit.press('emergency');
    expect(unit.commands()).toMatchObject({ coil: false, indicator: 'stopped' });
    unit.sense({ pilot: 'A', lowHalf: 'none' });
    unit.pass(1000);
    plugIn(unit);
    unit.sense({ pilot: 'C' });
    unit.pass(60_000);
    expect(unit.commands()).toMatchObject({ coil: false, indicator: 'stopped' });
    unit.press('reset');
    unit.pass(5000);
    expect(unit.commands()).toMatchObject({ coil: true, indicator: 'charging' });
  });
});

/** IEC 61851-1:2017 6.3.1.4. */
describe('a vehicle that asks for ventilation', () => {
  test.each([
    { ventilation: true, coil: true, indicator: 'charging' },
    { ventilation: false, coil: false, indicator: 'preparing' },
  ])('where there is $ventilation: supplied $coil', ({ ventilation, coil, indicator }) => {
    const unit = running({ ventilation });
    plugIn(unit);
    unit.sense({ pilot: 'D' });
    unit.pass(2000);
    expect(unit.commands()).toMatchObject({ coil, indicator });
  });
});
