/** The chart's timers on the bench's clock: exactness of chained delays, order at one instant, and what stops one. */
import { expect, test } from 'vitest';
import type { Due } from '../../src/bench/due.ts';
import { Timeline } from '../../src/bench/timeline.ts';
import { follow } from '../../src/bench/timers.ts';
import { benchWith, doing } from './build.ts';

const starting = (start: string, time: number) =>
  ({ start, time, event: { type: `xstate.after.${start}` } }) as const;

const timerIn = (timeline: Timeline<Due>): string => {
  const due = timeline.take();
  return due.what === 'timer' ? due.id : due.what;
};

test('chained delays are exact: the second begins when the first fell due', () => {
  const timeline = new Timeline<Due>(0);
  follow(timeline, [starting('first', 0.1)]);
  expect(timerIn(timeline)).toBe('first');
  follow(timeline, [starting('second', 0.036336)]);
  expect(timerIn(timeline)).toBe('second');
  expect(timeline.now).toBe(136_336);
});

test('a delay of nothing is one tick, so that nothing chases its own tail at one instant', () => {
  const timeline = new Timeline<Due>(0);
  follow(timeline, [starting('at once', 0)]);
  expect(timeline.next()).toBe(1);
});

test('at one instant they come after plant and trips, and before instruments', () => {
  const timeline = new Timeline<Due>(0);
  follow(timeline, [starting('timer', 0.001)]);
  timeline.enter(1000, 'instruments', { what: 'hours' });
  timeline.enter(1000, 'trips', { what: 'trip', device: 'residual' });
  timeline.enter(1000, 'plant', { what: 'contactor', closed: true });
  expect([1, 2, 3, 4].map(() => timerIn(timeline))).toEqual(['contactor', 'trip', 'timer', 'hours']);
});

test('one that is stopped never ends, and the others do', () => {
  const timeline = new Timeline<Due>(0);
  follow(timeline, [starting('first', 1), starting('second', 2), { stop: 'first' }, { stop: 'not running' }]);
  expect(timerIn(timeline)).toBe('second');
  expect(timeline.next()).toBeNull();
});

test('one that ends is an event that the control takes, and is counted', () => {
  const world = benchWith({ sheet: { startUp: 8 } });
  doing(world, { op: 'isolate' }, { op: 'wait', seconds: 10 }, { op: 'energise' });
  const { chartEvents } = world.counts;
  doing(world, { op: 'wait', seconds: 7.9 });
  expect([world.counts.chartEvents - chartEvents, world.indicator]).toEqual([0, 'starting']);
  doing(world, { op: 'wait', seconds: 0.2 });
  expect(world.counts.chartEvents).toBeGreaterThan(chartEvents);
  expect(world.indicator).toBe('ready');
});
