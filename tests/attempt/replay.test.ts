/** A run that was broken off and resumed from its log is the run that was not, to the last digit. */
import { expect, test } from 'vitest';
import { act, replay, startRun } from '../../src/attempt/run.ts';
import type { Operation } from '../../src/bench/operation.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy } from '../helpers/trainee.ts';

const operationsOf = (id: string): readonly (readonly [string | null, Operation])[] => {
  const { scenario, file } = scenarioNamed(id);
  return attemptBy(scenario, file).entries.flatMap((entry) =>
    entry.kind === 'operation' ? [[entry.test, entry.operation] as const] : [],
  );
};

test.each(scenarioIds)('%s, broken off at every fifth operation', (id) => {
  const { scenario, file } = scenarioNamed(id);
  const operations = operationsOf(id);
  const unbroken = operations.reduce(
    (run, [about, operation]) => act(run, about, operation, 0).run,
    startRun(scenario, file),
  );
  const resumed = operations.reduce(
    (run, [about, operation], i) => {
      const again = i % 5 === 4 ? replay(scenario, structuredClone(run.attempt)) : run;
      return act(again, about, operation, 0).run;
    },
    startRun(scenario, file),
  );
  expect(resumed.attempt).toEqual(unbroken.attempt);
  expect(resumed.readings.map(({ reading }) => reading)).toEqual(
    unbroken.readings.map(({ reading }) => reading),
  );
  expect(resumed.times).toEqual([...resumed.times].sort((x, y) => x - y));
});
