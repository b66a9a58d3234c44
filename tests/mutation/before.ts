// What stands before each test file of a mutant run.
import { configureGlobal } from 'fast-check';
import { beforeEach } from 'vitest';

// Properties are tried with the same inputs in every run, so that a mutant's fate is the same too.
configureGlobal({ seed: 1 });

// The chart is made once and kept. Made here, it belongs to all tests that use it, not to the first of them alone. A
// mutant of which no chart can be made is met by those tests.
// So are its steps, by what is in them: forgotten before each test, they are worked out by every test that comes to them.
if (process.env.MUTATED_FLOOR === 'unit')
  try {
    const { compiledChart } = await import('../../src/unit/chart/compiled.ts');
    compiledChart();
    const { forgetSteps } = await import('../../src/unit/chart/known.ts');
    beforeEach(forgetSteps);
  } catch {}
