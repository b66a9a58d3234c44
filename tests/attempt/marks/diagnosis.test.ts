/** Diagnosis needs a test that speaks for it; what cannot be told apart counts in full, several faults by share. */
import { describe, expect, test } from 'vitest';
import { mark } from '../../../src/attempt/marks/mark.ts';
import { rightConclusion } from '../../../src/attempt/marks/worked.ts';
import type { NotedOf } from '../../../src/attempt/record/attempt.ts';
import { act, note, startRun } from '../../../src/attempt/record/run.ts';
import type { OperationInput } from '../../../src/bench/operation.ts';
import { operation } from '../../../src/bench/operation.ts';
import { readScenario } from '../../../src/scenario/readScenario.ts';
import { ACTIONS, actionNamed } from '../../../src/verification/actions.ts';
import type { TestAction } from '../../../src/verification/testAction.ts';
import { sumText } from '../../../src/words/sums.ts';
import { attemptOf, doTest } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';

type Said = Partial<NotedOf<'conclusion'>>;
interface Job {
  readonly scenario: ReturnType<typeof scenarioNamed>['scenario'];
  readonly file: unknown;
}

const saying = ({ scenario, file }: Job, said: Said, tests?: readonly string[]) =>
  mark(
    scenario,
    attemptOf(scenario, file, {
      leavesOut: ({ id }) => tests !== undefined && !tests.includes(id),
      conclude: (run) => ({ ...rightConclusion(run), ...said }),
    }),
  );

function jobWith(id: string, change: object): Job {
  const read = readScenario({ ...(scenarioNamed(id).file as object), ...change });
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read;
}

describe('mill-race, a poor joint in the protective conductor', () => {
  const mill = scenarioNamed('mill-race');
  const joint: Said = { cause: 'pe-joint', family: 'protective-conductor' };

  test('after papers alone no cause earns anything', () => {
    expect(saying(mill, joint, ['papers', 'inspect']).parts.diagnosis).toBe(0);
    expect(sumText(saying(mill, joint, ['papers', 'inspect']), 'diagnosis')).toMatch(
      /no test .* speaks for it$/,
    );
    expect(saying(mill, joint).parts.diagnosis).toBe(20);
  });

  test('the right block is worth half, another cause nothing', () => {
    expect(saying(mill, { cause: null, family: 'protective-conductor' }).parts.diagnosis).toBe(10);
    expect(saying(mill, { cause: 'diode-not-checked', family: 'pilot' }).parts.diagnosis).toBe(0);
    expect(saying(mill, { cause: 'nothing', family: null }).parts.diagnosis).toBe(0);
  });

  test('naming a second cause beside it, where there is none, takes half', () => {
    const others = [{ cause: 'diode-not-checked', family: 'pilot' as const }];
    expect(saying(mill, { ...joint, others }).parts.diagnosis).toBe(10);
  });
});

describe('sailmakers-yard, where the trainee’s tests tell less than all that are allowed', () => {
  const { unit } = scenarioNamed('sailmakers-yard').file as { readonly unit: object };
  const cable = { length: 6, area: 4, coding: 20 };
  const sail = jobWith('sailmakers-yard', {
    unit: { ...unit, customerCable: cable },
    handover: null,
  });

  test('what only the tests not done would tell from it is another cause', () => {
    // Both make every cable's coding come out wrong for one size; the sizes one by one tell them apart.
    const without = ACTIONS.map(({ id }) => id).filter((id) => id !== 'coding-sizes');
    const { parts } = saying(sail, { cause: 'coding-ignored', family: 'proximity-retention' }, without);
    expect(parts.diagnosis).toBe(10);
  });
});

describe('a cause that the tutor accepts in its place', () => {
  const accepting = jobWith('mill-race', { accept: ['outlet-pe-joint'] });
  const accepted: Said = { cause: 'outlet-pe-joint', family: 'protective-conductor' };

  test('counts in full, and without that half', () => {
    expect(saying(accepting, accepted).parts.diagnosis).toBe(20);
    expect(saying(scenarioNamed('mill-race'), accepted).parts.diagnosis).toBe(10);
  });

  test('is a guess all the same where no test speaks for it', () => {
    expect(saying(accepting, accepted, ['papers', 'inspect']).parts.diagnosis).toBe(0);
  });
});

describe('two faults that both show', () => {
  const two = jobWith('mill-race', {
    faults: [{ fault: 'labels-missing' }, { fault: 'pe-joint', ohms: 1.8 }],
  });
  const [labels, joint] = [
    { cause: 'labels-missing', family: 'mechanical' as const },
    { cause: 'pe-joint', family: 'protective-conductor' as const },
  ];

  test('each is a share', () => {
    const shown = saying(two, { ...labels, others: [joint] });
    const one = saying(two, { ...joint, others: [] });
    expect([shown.parts.diagnosis, one.parts.diagnosis]).toEqual([20, 10]);
  });

  test('one named twice is one', () => {
    expect(saying(two, { ...joint, others: [joint] }).parts.diagnosis).toBe(10);
  });

  test('and a faultless trainee names both', () => {
    expect(saying(two, {}).parts.diagnosis).toBe(20);
  });
});

test('that nothing is wrong is worth as much as was tested', () => {
  const sound = scenarioNamed('signal-cottage');
  const none = saying(sound, {}, []);
  expect(none.parts.diagnosis).toBe(0);
  const marks = saying(sound, {}, ['papers', 'inspect', 'loop', 'pe-circuit', 'state-c']);
  const [, done, of] = /with (\d+) of (\d+) tests done/.exec(sumText(marks, 'diagnosis')) ?? [];
  expect(Number(done)).toBeGreaterThan(0);
  expect(Number(done)).toBeLessThan(Number(of));
  expect(marks.parts.diagnosis).toBeCloseTo((20 * Number(done)) / Number(of), 1);
});

test('a fault that nobody can get to is not asked for', () => {
  // The joint ends the work before the pilot is looked at.
  const two = jobWith('mill-race', {
    faults: [{ fault: 'pe-joint', ohms: 1.8 }, { fault: 'diode-not-checked' }],
  });
  const joint: Said = { cause: 'pe-joint', family: 'protective-conductor', others: [] };
  expect(saying(two, joint).parts.diagnosis).toBe(20);
});

describe('what reads the same', () => {
  test('in one severity or another is as good', () => {
    const mill = jobWith('mill-race', { faults: [{ fault: 'pe-joint', ohms: 2.1 }] });
    expect(saying(mill, { cause: 'borrowed-earth', family: 'protective-conductor' }).parts.diagnosis).toBe(
      20,
    );
  });

  test('has to do so in all that was done, though nothing else is allowed', () => {
    const open = jobWith('harbour-mews', {
      faults: [{ fault: 'pilot-conductor-open' }],
      allowed: ['state-b'],
    });
    const blaming = (operations: readonly OperationInput[]) => {
      let run = doTest(startRun(open.scenario, open.file), actionNamed('state-b') as TestAction, {});
      for (const input of operations) run = act(run, null, operation(input), 0).run;
      const said = {
        ...rightConclusion(run),
        cause: 'outlet-pe-open',
        family: 'protective-conductor' as const,
      };
      return mark(open.scenario, note(run, said, 0).attempt).parts.diagnosis;
    };
    const path: OperationInput = { op: 'measure', quantity: 'continuity', between: ['met', 'outlet.PE'] };
    expect(blaming([])).toBe(20);
    expect(
      blaming([
        { op: 'vehicle', plugged: false, state: 'A' },
        { op: 'isolate' },
        { op: 'wait', seconds: 6 },
        path,
      ]),
    ).toBe(0);
  });

  test('and on the sheet that was handed over', () => {
    const change = { faults: [{ fault: 'pilot-conductor-open' }], allowed: ['state-b'] };
    const blamed: Said = { cause: 'outlet-pe-open', family: 'protective-conductor' };
    const handover = { by: 'the same firm, last Friday', done: ['pe-outlet'] };
    expect(saying(jobWith('harbour-mews', change), blamed).parts.diagnosis).toBe(20);
    expect(saying(jobWith('harbour-mews', { ...change, handover }), blamed).parts.diagnosis).toBe(0);
  });

  test('is never a wrong design: that stands in the papers', () => {
    const design = jobWith('harbour-mews', { faults: [{ fault: 'breaker-over-cable' }] });
    expect(saying(design, {}).parts.diagnosis).toBe(20);
    expect(saying(design, { cause: 'insulation-not-counted', family: 'design' }).parts.diagnosis).toBe(10);
  });
});
