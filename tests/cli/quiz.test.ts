/** The verb `quiz`: the shape that others rely on, the same for the same seed, and what is said of a bad call. */
import { expect, test } from 'vitest';
import { BadInput } from '../../src/cli/files.ts';
import { quiz } from '../../src/cli/quiz.ts';

const asked = (count: string, seed: string, ...topics: readonly string[]) =>
  quiz({ '--count': [count], '--seed': [seed], ...(topics.length === 0 ? {} : { '--topic': topics }) });

test('items have an id, a topic, a way, words, an answer that is among what may be answered, and a source', () => {
  const items = asked('200', '1') as readonly Record<string, unknown>[];
  expect(items).toHaveLength(200);
  for (const item of items) {
    for (const field of ['id', 'topic', 'way', 'stem', 'explanation', 'source'])
      expect(item[field], `${item.id} ${field}`).toMatch(/\S/);
    const choices = item.choices as readonly { readonly id: string }[] | undefined;
    if (item.way === 'figure' || item.way === 'cursor') {
      expect(item).toMatchObject({ answer: expect.any(Number), tolerance: expect.any(Number) });
    } else {
      const ids = choices?.map(({ id }) => id);
      for (const right of [item.answer].flat()) expect(ids, String(item.id)).toContain(right);
    }
  }
  expect(new Set(items.map(({ way }) => way))).toEqual(
    new Set(['figure', 'choice', 'three-answers', 'order', 'touch', 'leads', 'cursor']),
  );
});

test('the same seed asks the same', () => {
  expect(JSON.stringify(asked('10', '1'))).toBe(JSON.stringify(asked('10', '1')));
  expect(JSON.stringify(asked('10', '1'))).not.toBe(JSON.stringify(asked('10', '2')));
});

test('topics are asked for by the ids of the aims', () => {
  const items = asked('6', '3', 'offer', 'clears') as readonly { readonly topic: string }[];
  expect(items.map(({ topic }) => topic).sort()).toEqual([
    ...Array.from({ length: 3 }, () => 'clears'),
    ...Array.from({ length: 3 }, () => 'offer'),
  ]);
});

test.each([
  [['0', '1'], 'quiz: --count "0" does not fit: a whole number from 1 to 10000 is expected'],
  [['10001', '1'], '--count "10001" does not fit: a whole number'],
  [['3', '-1'], '--seed "-1" does not fit: a whole number from 0 to 2147483647 is expected'],
  [['3', '1.5'], '--seed "1.5" does not fit: a whole number'],
  [['3', '1', 'offr'], '--topic: unknown topic "offr"; one of: design'],
] as const)('%j is refused and says what is expected', ([count, seed, ...topics], message) => {
  expect(() => asked(count, seed, ...topics)).toThrow(BadInput);
  try {
    asked(count, seed, ...topics);
  } catch (error) {
    expect((error as BadInput).lines.join('\n')).toContain(message);
  }
});
