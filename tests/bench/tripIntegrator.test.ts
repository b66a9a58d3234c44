/** A device that trips after a time that depends on what it carries: filling, emptying, changing, and staying tripped. */
import { describe, expect, test } from 'vitest';
import { Timeline } from '../../src/bench/timeline.ts';
import { TripIntegrator } from '../../src/bench/tripIntegrator.ts';

function device() {
  const timeline = new Timeline(0);
  const trips: number[] = [];
  const integrator = new TripIntegrator(timeline, () => trips.push(timeline.now));
  const pass = (us: number) => {
    const until = timeline.now + us;
    for (let due = timeline.next(); due !== null && due <= until; due = timeline.next()) timeline.fire();
    timeline.moveTo(until);
  };
  return { timeline, trips, integrator, pass };
}

describe('filling', () => {
  test('trips after its time', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.3);
    pass(299_999);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([300_000]);
    expect(integrator.hasTripped).toBe(true);
  });

  test('half filled at one current, the rest at another: 0.15 s of 0.3 s, then half of 0.04 s', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.3);
    pass(150_000);
    integrator.expose(0.04);
    pass(1_000_000);
    expect(trips).toEqual([170_000]);
  });

  test('said the same again, it goes on filling', () => {
    const { trips, integrator, pass } = device();
    for (let i = 0; i < 10; i++) {
      integrator.expose(0.1);
      pass(9_000);
    }
    pass(10_000);
    expect(trips).toEqual([100_000]);
  });

  test('current gone, it is empty: the next time counts from nothing', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.1);
    pass(99_000);
    integrator.expose(Infinity);
    pass(1);
    integrator.expose(0.1);
    pass(99_999);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([199_001]);
  });

  test('however short its time, it acts a tick later, not at once', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([1]);
  });
});

describe('once tripped', () => {
  test('it stays so, and fires no second time, whatever flows', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.01);
    pass(20_000);
    for (const time of [0.02, 0.01, Infinity, 0.01]) {
      integrator.expose(time);
      pass(1_000_000);
    }
    expect(trips).toHaveLength(1);
  });

  test('reset, it fills anew with what flows then', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.01);
    pass(10_000);
    integrator.expose(0.05);
    integrator.reset();
    expect(integrator.hasTripped).toBe(false);
    pass(49_999);
    expect(trips).toHaveLength(1);
    pass(1);
    expect(trips).toEqual([10_000, 60_000]);
  });

  test('reset with nothing flowing, it stays ready', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.01);
    pass(10_000);
    integrator.expose(Infinity);
    integrator.reset();
    pass(10_000_000);
    expect(trips).toHaveLength(1);
  });

  test('reset, it is empty: what it had taken of one current before another tripped it is forgotten', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.3);
    pass(150_000);
    integrator.expose(0.04);
    pass(20_000);
    integrator.expose(0.3);
    integrator.reset();
    pass(299_999);
    expect(trips).toEqual([170_000]);
    pass(1);
    expect(trips).toEqual([170_000, 470_000]);
  });

  test('reset before it has tripped, it begins anew, and what was due no longer is', () => {
    const { trips, integrator, pass } = device();
    integrator.expose(0.3);
    pass(200_000);
    integrator.reset();
    pass(299_999);
    expect(trips).toEqual([]);
    pass(1);
    expect(trips).toEqual([500_000]);
  });
});
