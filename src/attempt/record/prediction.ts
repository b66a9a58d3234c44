/** Predictions that are right: what the page locks where the lines come filled in, and what a faultless trainee says. */
import type { TestAction } from '../../verification/testAction.ts';
import type { NotedOf } from './attempt.ts';
import { testFigures, testLines } from './lines.ts';
import type { Run } from './run.ts';

/** What the page locks where the lines come filled in. */
export const givenPrediction = (run: Run, action: TestAction): NotedOf<'prediction'> => ({
  ...rightPrediction(run, action),
  sure: null,
  given: true,
});

export const rightPrediction = ({ scenario }: Run, action: TestAction): NotedOf<'prediction'> => ({
  kind: 'prediction',
  test: action.id,
  lines: testLines(scenario, action).map(({ id, right }) => ({ id, answer: right })),
  figures: testFigures(scenario, action).map(({ id, value }) => ({ id, value })),
  sure: 'would-sign',
});
