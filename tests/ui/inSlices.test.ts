// Work in slices comes to the same as at once; ended before, it comes to nothing and goes no further.

import { expect, test } from 'vitest';
import { inSlices } from '../../src/ui/flow/inSlices.ts';

function* counting(to: number, counted: number[]): Generator<number, string> {
  for (let i = 0; i < to; i++) {
    counted.push(i);
    yield i;
  }
  return `to ${to}`;
}

test('it comes to what the work comes to', async () => {
  const counted: number[] = [];
  expect(await inSlices(counting(5000, counted), new AbortController().signal)).toBe('to 5000');
  expect(counted).toHaveLength(5000);
});

test('ended before, it comes to nothing, and no piece more is done', async () => {
  const counted: number[] = [];
  const over = new AbortController();
  const coming = inSlices(counting(Infinity, counted), over.signal);
  setTimeout(() => over.abort());
  expect(await coming).toBeNull();
  const atTheEnd = counted.length;
  await new Promise((passed) => setTimeout(passed, 20));
  expect(counted).toHaveLength(atTheEnd);
});

test('what the work throws is told', async () => {
  // biome-ignore lint/correctness/useYield: it never gets so far
  function* failing(): Generator<null, null> {
    throw new Error('no such node');
  }
  await expect(inSlices(failing(), new AbortController().signal)).rejects.toThrow('no such node');
});
