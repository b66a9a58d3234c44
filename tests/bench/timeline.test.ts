/** The bench's clock: order, exactness of chained delays, and its guard against running in a circle. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RANKS, Timeline } from '../../src/bench/timeline.ts';

/** What was due, in the order in which it came. */
function takeAll<Due>(timeline: Timeline<Due>): readonly Due[] {
  const taken: Due[] = [];
  while (timeline.next() !== null) taken.push(timeline.take());
  return taken;
}

describe('order', () => {
  test('by time, then rank, then sequence', () => {
    const timeline = new Timeline<string>(0);
    timeline.enter(20, 'plant', '20 plant');
    timeline.enter(10, 'instruments', '10 instruments');
    timeline.enter(10, 'logic', '10 logic, first');
    timeline.enter(10, 'trips', '10 trips');
    timeline.enter(10, 'logic', '10 logic, second');
    timeline.enter(10, 'plant', '10 plant');
    timeline.enter(0, 'instruments', '0 instruments');
    expect(takeAll(timeline)).toEqual([
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
      const timeline = new Timeline<[number, number, number]>(0);
      for (const [sequence, [due, rank]] of entries.entries())
        timeline.enter(due, RANKS[rank] ?? 'plant', [due, rank, sequence]);
      const taken = takeAll(timeline);
      const sorted = [...taken].sort((x, y) => x[0] - y[0] || x[1] - y[1] || x[2] - y[2]);
      expect(taken).toEqual(sorted);
    });
    expect(() => fc.assert(property, { seed: 31, numRuns: 300 })).not.toThrow();
  });

  test('what falls due in the past falls due now', () => {
    const timeline = new Timeline(100);
    timeline.enter(5, 'plant', 'late');
    expect(timeline.take()).toBe('late');
    expect(timeline.now).toBe(100);
  });

  test('a cancelled entry never comes', () => {
    const timeline = new Timeline(0);
    timeline.enter(1, 'plant', 'first');
    timeline.enter(2, 'plant', 'second');
    timeline.cancel((due) => due === 'first');
    expect(takeAll(timeline)).toEqual(['second']);
  });
});

describe('time', () => {
  test('does not run backwards', () => {
    const timeline = new Timeline(10);
    timeline.moveTo(10);
    expect(() => timeline.moveTo(9)).toThrow(RangeError);
  });

  test('nothing due, nothing to take', () => {
    expect(() => new Timeline(10).take()).toThrow(RangeError);
  });
});

describe('a copy', () => {
  const bothWith = (...dues: readonly string[]) => {
    const timeline = new Timeline<string>(0);
    for (const [i, due] of dues.entries()) timeline.enter(10 + i, 'plant', due);
    return [timeline, timeline.copy()] as const;
  };

  test('has what is due, at the same times', () => {
    const [timeline, copy] = bothWith('a', 'b');
    expect(takeAll(copy)).toEqual(['a', 'b']);
    expect([timeline.now, copy.now]).toEqual([0, 11]);
    expect(takeAll(timeline)).toEqual(['a', 'b']);
  });

  test('feels nothing of what is entered, cancelled or taken in the other', () => {
    const [timeline, copy] = bothWith('a', 'b');
    timeline.enter(5, 'plant', 'only here');
    timeline.cancel((due) => due === 'a');
    copy.enter(12, 'plant', 'only there');
    expect(takeAll(timeline)).toEqual(['only here', 'b']);
    expect(takeAll(copy)).toEqual(['a', 'b', 'only there']);
  });

  test('puts what is entered at one instant behind what was there before', () => {
    const [, copy] = bothWith('a');
    copy.enter(10, 'plant', 'b');
    expect(takeAll(copy)).toEqual(['a', 'b']);
  });

  test('counts on where entries follow each other at one instant', () => {
    const timeline = new Timeline(0);
    const turn = (one: Timeline<unknown>, times: number) => {
      for (let i = 0; i < times; i++) {
        one.enter(0, 'plant', null);
        one.take();
      }
    };
    turn(timeline, 600);
    expect(() => turn(timeline.copy(), 600)).toThrow('more than 1000 events at 0 µs');
    expect(() => turn(timeline, 300)).not.toThrow();
  });
});

test('entries that keep entering each other at one instant are stopped', () => {
  const timeline = new Timeline(7);
  const again = (): void => {
    for (;;) {
      timeline.enter(7, 'plant', 'again');
      timeline.take();
    }
  };
  expect(again).toThrow('more than 1000 events at 7 µs');
});
