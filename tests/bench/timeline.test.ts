/** The bench's clock: order, exactness of chained delays, and its guard against running in a circle. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RANKS, Timeline } from '../../src/bench/timeline.ts';

const runAll = (timeline: Timeline): void => {
  while (timeline.next() !== null) timeline.fire();
};

describe('order', () => {
  test('by time, then rank, then sequence', () => {
    const timeline = new Timeline(0);
    const fired: string[] = [];
    const enter = (due: number, rank: (typeof RANKS)[number], name: string) =>
      timeline.at(due, rank, () => fired.push(name));
    enter(20, 'plant', '20 plant');
    enter(10, 'instruments', '10 instruments');
    enter(10, 'logic', '10 logic, first');
    enter(10, 'trips', '10 trips');
    enter(10, 'logic', '10 logic, second');
    enter(10, 'plant', '10 plant');
    enter(0, 'instruments', '0 instruments');
    runAll(timeline);
    expect(fired).toEqual([
      '0 instruments',
      '10 plant',
      '10 trips',
      '10 logic, first',
      '10 logic, second',
      '10 instruments',
      '20 plant',
    ]);
    expect(timeline.now).toBe(20);
  });

  test('whatever the order of entry, seed 31', () => {
    const entry = fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: RANKS.length - 1 }));
    const property = fc.property(fc.array(entry, { maxLength: 30 }), (entries) => {
      const timeline = new Timeline(0);
      const fired: [number, number, number][] = [];
      for (const [sequence, [due, rank]] of entries.entries())
        timeline.at(due, RANKS[rank] ?? 'plant', () => fired.push([due, rank, sequence]));
      runAll(timeline);
      const sorted = [...fired].sort((x, y) => x[0] - y[0] || x[1] - y[1] || x[2] - y[2]);
      expect(fired).toEqual(sorted);
    });
    expect(() => fc.assert(property, { seed: 31, numRuns: 300 })).not.toThrow();
  });

  test('what falls due in the past falls due now', () => {
    const timeline = new Timeline(100);
    timeline.at(5, 'plant', () => {});
    timeline.fire();
    expect(timeline.now).toBe(100);
  });

  test('a cancelled entry does not fire', () => {
    const timeline = new Timeline(0);
    const fired: number[] = [];
    const ticket = timeline.at(1, 'plant', () => fired.push(1));
    timeline.at(2, 'plant', () => fired.push(2));
    timeline.cancel(ticket);
    runAll(timeline);
    expect(fired).toEqual([2]);
  });
});

describe('time', () => {
  test('chained delays are exact: the second begins when the first fell due', () => {
    const timeline = new Timeline(0);
    const clock = timeline.asClock(() => {});
    const at: number[] = [];
    clock.setTimeout(() => {
      at.push(timeline.now);
      clock.setTimeout(() => at.push(timeline.now), 36.336);
    }, 100);
    runAll(timeline);
    expect(at).toEqual([100_000, 136_336]);
  });

  test('a delay of nothing is one tick, so that nothing chases its own tail at one instant', () => {
    const timeline = new Timeline(0);
    const clock = timeline.asClock(() => {});
    clock.setTimeout(() => {}, 0);
    expect(timeline.next()).toBe(1);
  });

  test('the chart’s timers are counted, and cleared ones are not', () => {
    const timeline = new Timeline(0);
    let counted = 0;
    const clock = timeline.asClock(() => {
      counted += 1;
    });
    clock.setTimeout(() => {}, 1);
    clock.clearTimeout(clock.setTimeout(() => {}, 2));
    runAll(timeline);
    expect(counted).toBe(1);
  });

  test('at one instant the chart’s timers come after plant and trips, and before instruments', () => {
    const timeline = new Timeline(0);
    const fired: string[] = [];
    timeline.asClock(() => {}).setTimeout(() => fired.push('chart'), 1);
    for (const rank of ['instruments', 'trips', 'plant'] as const)
      timeline.at(1000, rank, () => fired.push(rank));
    runAll(timeline);
    expect(fired).toEqual(['plant', 'trips', 'chart', 'instruments']);
  });

  test('does not run backwards', () => {
    const timeline = new Timeline(10);
    timeline.moveTo(10);
    expect(() => timeline.moveTo(9)).toThrow(RangeError);
  });
});

test('entries that keep entering each other at one instant are stopped', () => {
  const timeline = new Timeline(7);
  const again = (): void => {
    timeline.at(7, 'plant', again);
  };
  again();
  expect(() => runAll(timeline)).toThrow('more than 1000 events at 7 µs');
});
