// How one floor's own tests are run against a mutant: the long files last, since the first test that fails ends the run,
// and the same order and draws every time.

import { join } from 'node:path';
import { defineConfig } from 'vitest/config';
import type { TestSpecification } from 'vitest/node';
import { BaseSequencer } from 'vitest/node';

/** Files that take longest, the longest last: most mutants fail a test of another file before. */
const LONG = [
  'bench/reading',
  'bench/balance',
  'bench/checkValues',
  'bench/deviceTimes',
  'bench/loads',
  'bench/tradeFacts',
  'bench/pilotTiming',
  'bench/residualDevices',
  'bench/putRight',
  'bench/perform',
];

class LongLast extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const placeOf = ({ moduleId }: TestSpecification) => LONG.findIndex((long) => moduleId.includes(long));
    return files.toSorted((x, y) => placeOf(x) - placeOf(y) || (x.moduleId < y.moduleId ? -1 : 1));
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
    // Each mutant meets all loaded anew: what is kept by its content would be that of the one before.
    isolate: true,
    sequence: { sequencer: LongLast },
    // As in vite.config.ts, nothing waits for words or lines.
    setupFiles: ['before.ts', '../../src/words/allTests.ts', '../../src/verification/allLines.ts'].map(
      (file) => join(import.meta.dirname, file),
    ),
    testTimeout: 60_000,
  },
});
