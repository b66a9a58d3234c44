/** Which questions a session has: the drawing of its seed where nothing is due, else what comes back among new ones. */
import { expect, test } from 'vitest';
import { questions } from '../../src/quiz/draw.ts';
import type { Due } from '../../src/quiz/session.ts';
import { SESSION, sessionOf } from '../../src/quiz/session.ts';

const due = (topic: Due['topic'], kind: string | null = null, asked: Due['asked'] = {}): Due => ({
  topic,
  kind,
  asked,
});

test('without anything due it is what the command line draws', () => {
  expect(sessionOf({ count: SESSION, seed: 1 })).toEqual(questions({ count: SESSION, seed: 1 }));
});

test('what is due comes back, six of ten at most, each kind once, and no two alike', () => {
  const all = [
    due('offer', 'duty-of-current'),
    due('offer', 'duty-of-current'),
    due('clears', 'loop-limit'),
    due('dead'),
    due('leakage'),
    due('refuses'),
    due('supply'),
    due('earth'),
    due('wiring'),
  ];
  const drawn = sessionOf({ count: SESSION, seed: 4 }, all);
  expect(drawn).toHaveLength(SESSION);
  const kinds = drawn.map(({ topic, kind }) => `${topic} ${kind}`);
  expect(new Set(kinds).size).toBe(SESSION);
  expect(kinds).toEqual(expect.arrayContaining(['offer duty-of-current', 'clears loop-limit']));
  for (const topic of ['dead', 'leakage', 'refuses', 'supply'])
    expect(
      drawn.some((one) => one.topic === topic),
      topic,
    ).toBe(true);
  expect(sessionOf({ count: SESSION, seed: 4 }, all)).toEqual(drawn);
});

test('of a topic that comes back the kind is asked that was not asked for longest', () => {
  const asked = { 'insulation-volts': 5, 'correct-unit': 9 };
  for (let seed = 0; seed < 12; seed++) {
    const [first] = sessionOf({ count: 2, seed, topics: ['insulation'] }, [due('insulation', null, asked)]);
    expect(first?.kind).not.toBe('correct-unit');
  }
});

test('what is due elsewhere does not come into a session on other topics', () => {
  const drawn = sessionOf({ count: 3, seed: 2, topics: ['offer'] }, [due('dead')]);
  expect(drawn.map(({ topic }) => topic)).toEqual(['offer', 'offer', 'offer']);
});

test('a kind that there is no more is left out', () => {
  expect(sessionOf({ count: 3, seed: 2 }, [due('offer', 'gone')])).toHaveLength(3);
});
