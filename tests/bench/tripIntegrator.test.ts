/** A device that trips after a time that depends on what it carries: filling, emptying, changing, and staying tripped. */
import { describe, expect, test } from 'vitest';
import { EMPTY, exposed, reset, tripped, tripsAt } from '../../src/bench/tripIntegrator.ts';

/** One at work on a clock. */
function device() {
  const trips: number[] = [];
  let now = 0;
  let at = EMPTY;
  const pass = (us: number) => {
    now += us;
    for (let due = tripsAt(at); due !== null && due <= now; due = tripsAt(at)) {
      trips.push(due);
      at = tripped(at);
    }
  };
  return {
    trips,
    pass,
    expose: (time: number) => {
      at = exposed(at, time, now);
    },
    reset: () => {
      at = reset(at, now);
    },
    hasTripped: () => at.hasTripped,
  };
}

describe('filling', () => {
  test('trips after its time', () => {
    const { trips, pass, expose, hasTripped } = device();
    expose(0.3);
    pass(299_999);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([300_000]);
    expect(hasTripped()).toBe(true);
  });

  test('half filled at one current, the rest at another: 0.15 s of 0.3 s, then half of 0.04 s', () => {
    const { trips, pass, expose } = device();
    expose(0.3);
    pass(150_000);
    expose(0.04);
    pass(1_000_000);
    expect(trips).toEqual([170_000]);
  });

  test('said the same again, it goes on filling', () => {
    const { trips, pass, expose } = device();
    for (let i = 0; i < 10; i++) {
      expose(0.1);
      pass(9_000);
    }
    pass(10_000);
    expect(trips).toEqual([100_000]);
  });

  test('current gone, it is empty: the next time counts from nothing', () => {
    const { trips, pass, expose } = device();
    expose(0.1);
    pass(99_000);
    expose(Infinity);
    pass(1);
    expose(0.1);
    pass(99_999);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([199_001]);
  });

  test('however short its time, it acts a tick later, not at once', () => {
    const { trips, pass, expose } = device();
    expose(0);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([1]);
  });
});

describe('once tripped', () => {
  test('it stays so, and fires no second time, whatever flows', () => {
    const { trips, pass, expose } = device();
    expose(0.01);
    pass(20_000);
    for (const time of [0.02, 0.01, Infinity, 0.01]) {
      expose(time);
      pass(1_000_000);
    }
    expect(trips).toHaveLength(1);
  });

  test('reset, it fills anew with what flows then', () => {
    const { trips, pass, expose, reset: setBack, hasTripped } = device();
    expose(0.01);
    pass(10_000);
    expose(0.05);
    setBack();
    expect(hasTripped()).toBe(false);
    pass(49_999);
    expect(trips).toHaveLength(1);
    pass(1);
    expect(trips).toEqual([10_000, 60_000]);
  });

  test('reset with nothing flowing, it stays ready', () => {
    const { trips, pass, expose, reset: setBack } = device();
    expose(0.01);
    pass(10_000);
    expose(Infinity);
    setBack();
    pass(10_000_000);
    expect(trips).toHaveLength(1);
  });

  test('reset, it is empty: what it had taken of one current before another tripped it is forgotten', () => {
    const { trips, pass, expose, reset: setBack } = device();
    expose(0.3);
    pass(150_000);
    expose(0.04);
    pass(20_000);
    expose(0.3);
    setBack();
    pass(299_999);
    expect(trips).toEqual([170_000]);
    pass(1);
    expect(trips).toEqual([170_000, 470_000]);
  });

  test('reset before it has tripped, it begins anew, and what was due no longer is', () => {
    const { trips, pass, expose, reset: setBack } = device();
    expose(0.3);
    pass(200_000);
    setBack();
    pass(299_999);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([500_000]);
  });
});
