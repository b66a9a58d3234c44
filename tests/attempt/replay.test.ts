/** A run that was broken off and resumed from its log is the run that was not, to the last digit. */
import { expect, test } from 'vitest';
import { act, replay, startRun } from '../../src/attempt/record/run.ts';
import type { Operation } from '../../src/bench/operation.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';

const operationsOf = (id: string): readonly (readonly [string | null, Operation])[] => {
  const { scenario, file } = scenarioNamed(id);
  return faultlessAttempt(scenario, file).entries.flatMap((entry) =>
    entry.kind === 'operation' ? [[entry.test, entry.operation] as const] : [],
  );
};

/** Every resumption replays all that went before: often enough to fall into every stage of the work. */
const TIMES = 10;

test.each(scenarioIds)('%s, broken off ten times', { timeout: 60_000 }, (id) => {
  const { scenario, file } = scenarioNamed(id);
  const operations = operationsOf(id);
  const every = Math.ceil(operations.length / TIMES);
  const unbroken = operations.reduce(
    (run, [about, operation]) => act(run, about, operation, 0).run,
    startRun(scenario, file),
  );
  const resumed = operations.reduce(
    (run, [about, operation], i) => {
      const again = i % every === every - 1 ? replay(scenario, structuredClone(run.attempt)) : run;
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
