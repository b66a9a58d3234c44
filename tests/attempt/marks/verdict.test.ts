/** The verdict is judged by what the allowed tests, and what was handed over, can show. */
import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../../src/attempt/marks/debrief.ts';
import { mark, markWhole } from '../../../src/attempt/marks/mark.ts';
import { rightConclusion } from '../../../src/attempt/marks/worked.ts';
import type { Verdict } from '../../../src/attempt/record/attempt.ts';
import type { Rung } from '../../../src/attempt/record/rung.ts';
import { operation } from '../../../src/bench/operation.ts';
import { readScenario } from '../../../src/scenario/readScenario.ts';
import { verdictWarnings } from '../../../src/scenario/tellable.ts';
import { attemptOf } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { attemptBy } from '../../helpers/trainee.ts';

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

describe('a pass', () => {
  const { scenario, file } = scenarioNamed('mill-race');
  /** Everything right but for the record, where nothing has its unit; but for the known resistors, after which who reads them so stops. */
  const untidy = attemptOf(scenario, file, {
    conclude: rightConclusion,
    type: (typed, { test }) =>
      test === 'instruments' ? typed : { ...typed, unit: typed.unit === 'V' ? 'A' : 'V', value: typed.value },
  });
  const markedBy = (marking: object) =>
    mark({ ...scenario, marking: { ...scenario.marking, ...marking } }, untidy);

  test('is at 70, or where the scenario puts it', () => {
    const { total, hurdles } = markedBy({});
    expect(hurdles.filter((one) => one !== 'observation')).toEqual([]);
    expect(total).toBeLessThan(100);
    const free = {
      weights: { prediction: 20, observation: 0, judgement: 30, record: 20, diagnosis: 20, reasons: 10 },
    };
    const weighed = markedBy(free);
    expect(weighed.hurdles).toEqual([]);
    expect(weighed).toMatchObject({ pass: 70, passed: true });
    expect(markedBy({ ...free, pass: Math.ceil(weighed.total) + 1 })).toMatchObject({ passed: false });
    expect(markedBy({ ...free, pass: Math.floor(weighed.total) })).toMatchObject({ passed: true });
  });

  test('is weighed as the scenario says', () => {
    const weights = { prediction: 100, observation: 0, judgement: 0, record: 0, diagnosis: 0, reasons: 0 };
    expect(markedBy({ weights })).toMatchObject({ total: 100, weights });
  });

  test('is not kept by an unsafe act that is not critical', () => {
    const attempt = attemptBy(scenario, file, {
      operations: ({ id }, steps) =>
        id === 'insulation-outlet'
          ? [
              ...steps,
              operation({
                op: 'measure',
                quantity: 'insulation',
                volts: 250,
                between: ['supply.L1', 'supply.N'],
              }),
            ]
          : steps,
    });
    const { run, marks } = markWhole(scenario, attempt);
    expect(run.unsafe.map(({ critical }) => critical)).toEqual([false]);
    expect(marks.gates.critical).toEqual([]);
    expect(marks.passed).toBe(true);
  });
});
