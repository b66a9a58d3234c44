// How one floor's own tests are run against a mutant: the long files last, since the first test that fails ends the run,
// and the same order and draws every time.

import { join } from 'node:path';
import { defineConfig } from 'vitest/config';
import type { TestSpecification } from 'vitest/node';
import { LongFirst } from '../longFirst.ts';

class LongLast extends LongFirst {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).toReversed();
  }
}

/**
 * Walks every path through the chart, which takes as long as all the rest of its floor: every mutant that survives would
 * wait for it. What it holds beyond the others is not in the score.
 */
const TOO_LONG = ['tests/unit/paths.test.ts'];

export default defineConfig({
  test: {
    environment: 'node',
    exclude: TOO_LONG,
    include: [`tests/${process.env.MUTATED_FLOOR}/**/*.test.ts`, 'tests/mutation/loads.ts'],
    isolate: false,
    sequence: { seed: 1, sequencer: LongLast },
    setupFiles: join(import.meta.dirname, 'before.ts'),
    testTimeout: 60_000,
  },
});
