/** Diagnosis needs a test that speaks for it; what cannot be told apart counts in full, several faults by share. */
import { describe, expect, test } from 'vitest';
import type { NotedOf } from '../../../src/attempt/attempt.ts';
import { mark } from '../../../src/attempt/mark.ts';
import { rightConclusion } from '../../../src/attempt/worked.ts';
import { readScenario } from '../../../src/scenario/scenario.ts';
import { sumText } from '../../../src/words/sums.ts';
import { attemptOf } from '../../helpers/person.ts';
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
  const sail = scenarioNamed('sailmakers-yard');

  test('what only the tests not done would tell from it is another cause', () => {
    // Both make every cable's coding come out wrong for one size; the sizes one by one tell them apart.
    const { parts } = saying(sail, { cause: 'coding-ignored', family: 'proximity-retention' });
    expect(parts.diagnosis).toBe(10);
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
