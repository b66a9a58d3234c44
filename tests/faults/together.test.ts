/** A share of what `npm run soak` does with 500 pairs and 500 triples of faults. */
import { expect, test } from 'vitest';
import { runTogether } from './together.ts';

test.each([2, 3])('%i faults at once: the bench settles, and every reading is a figure', (size) => {
  for (let index = 0; index < 12; index++) expect(runTogether(size, 1, index)).toBeNull();
});
