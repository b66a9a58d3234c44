/** The verdict is judged by what the allowed tests, and what was handed over, can show. */
import { describe, expect, test } from 'vitest';
import type { Verdict } from '../../../src/attempt/attempt.ts';
import { debriefOf } from '../../../src/attempt/debrief.ts';
import { mark } from '../../../src/attempt/mark.ts';
import type { Rung } from '../../../src/attempt/rung.ts';
import { rightConclusion } from '../../../src/attempt/worked.ts';
import { readScenario } from '../../../src/scenario/scenario.ts';
import { verdictWarnings } from '../../../src/scenario/tellable.ts';
import { attemptOf } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';

function jobWith(id: string, change: object) {
  const read = readScenario({ ...(scenarioNamed(id).file as object), ...change });
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read;
}

type Job = ReturnType<typeof jobWith>;
const saying = ({ scenario, file }: Pick<Job, 'scenario' | 'file'>, verdict?: Verdict, rung: Rung = 2) =>
  attemptOf(scenario, file, {
    rung,
    conclude: (run) => {
      const right = rightConclusion(run);
      return verdict === undefined ? right : { ...right, verdict };
    },
  });

describe.each([
  ['a sound unit', []],
  ['one with a fault that these tests do not show', [{ fault: 'direct-detector-dead' }]],
])('%s, with tests that cannot tell', (_, faults) => {
  const job = jobWith('harbour-mews', { faults, allowed: ['papers', 'inspect', 'pe-outlet'] });

  test('could not finish is right, and earns everything', () => {
    const attempt = saying(job);
    expect(attempt.entries.at(-1)).toMatchObject({ verdict: 'could-not-finish', cause: 'nothing' });
    expect(mark(job.scenario, attempt)).toMatchObject({ total: 100, hurdles: [], passed: true });
    expect(debriefOf(job.scenario, attempt).verdict).toMatchObject({ right: true });
  });

  test('fit for service fails the gate, and not fit the hurdle', () => {
    expect(mark(job.scenario, saying(job, 'fit'))).toMatchObject({
      gates: { verdict: false },
      hurdles: ['verdict'],
      passed: false,
    });
    expect(mark(job.scenario, saying(job, 'not-fit'))).toMatchObject({
      gates: { verdict: true },
      hurdles: ['verdict'],
      passed: false,
    });
  });

  test('whoever checks the file is warned', () => {
    expect(verdictWarnings(job.scenario)).toEqual([
      {
        path: 'allowed',
        message: expect.stringContaining('cannot tell whether the unit may go into service'),
      },
    ]);
  });
});

test('what is handed over counts: a short job can be told, and is not warned of', () => {
  const job = scenarioNamed('signal-cottage');
  expect(saying(job).entries.at(-1)).toMatchObject({ verdict: 'fit' });
  expect(verdictWarnings(job.scenario)).toEqual([]);
});

test('a run with the lines filled in states no pass, right or wrong', () => {
  const job = scenarioNamed('signal-cottage');
  for (const verdict of ['fit', 'not-fit'] as const)
    expect(mark(job.scenario, saying(job, verdict, 1)).passed).toBeNull();
});
