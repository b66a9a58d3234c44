/** Jobs to find what is behind a symptom: what their files may hold, and what of them tells the answer beforehand. */
import { describe, expect, test } from 'vitest';
import { faultsAmong } from '../../src/faults/catalogue.ts';
import { FAMILIES } from '../../src/faults/families.ts';
import { givenAway } from '../../src/scenario/givenAway.ts';
import type { Problem } from '../../src/scenario/problem.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { verdictWarnings } from '../../src/scenario/tellable.ts';
import { problemText } from '../../src/words/problems.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

const JOB = scenarioNamed('find-malthouse').file as object;
const readWith = (change: object) => readScenario(JSON.parse(JSON.stringify({ ...JOB, ...change })));
const scenarioWith = (change: object) => {
  const read = readWith(change);
  if (!read.ok) throw new Error(read.problems.map(problemText).join('\n'));
  return read.scenario;
};
const texts = (problems: readonly Problem[]) => problems.map((one) => `${one.path}: ${problemText(one)}`);

describe('a file that contradicts itself says where', () => {
  const FEW = ['state-a', 'state-b', 'state-c'];
  const MANY = [...FEW, 'c-to-b', 'unplug', 'loop', 'pfc', 'supply-volts', 'volt-drop'];
  test.each([
    [
      'a symptom is wanting',
      { symptom: undefined },
      'symptom',
      'missing: what a customer or a colleague says',
    ],
    ['one is told of a whole job', { task: 'verify' }, 'symptom', '"task": "find" is expected with it'],
    [
      'one is told of one aim',
      { task: 'aim', aim: 'lets-go' },
      'symptom',
      '"task": "find" is expected with it',
    ],
    ['an aim stands beside it', { aim: 'lets-go' }, 'aim', '"task": "aim" is expected with it'],
    [
      'every test is allowed',
      { allowed: 'all', handover: null },
      'allowed',
      '"all" does not fit: a list of 4 to 8',
    ],
    ['too few are', { allowed: FEW }, 'allowed', '3 tests: a list of 4 to 8'],
    ['too many are', { allowed: MANY }, 'allowed', '9 tests: a list of 4 to 8'],
    [
      'too few of them apply here',
      { allowed: [...FEW, 'coding'] },
      'allowed',
      '"coding" does not apply here',
    ],
    // Another slip hides it not.
    ['two things are', { title: '', symptom: undefined }, 'symptom', 'missing'],
    [
      'its weights do not come to 100',
      { marking: { weights: { diagnosis: 30 } } },
      'marking.weights',
      'a sum of 90',
    ],
  ])('%s', (_, change, path, message) => {
    const read = readWith(change);
    expect(read.ok ? [] : texts(read.problems.filter((one) => one.path === path))).toEqual([
      expect.stringContaining(message),
    ]);
  });

  test('four and eight tests are right, and a whole job needs no symptom', () => {
    expect(readWith({ allowed: [...FEW, 'loop'] }).ok).toBe(true);
    expect(readWith({ allowed: MANY.slice(0, 8) }).ok).toBe(true);
    expect(readWith({ task: 'verify', symptom: undefined, allowed: 'all', handover: null }).ok).toBe(true);
  });
});

test('the diagnosis weighs twice as much as in a verification, unless the file says otherwise', () => {
  expect(scenarioWith({}).marking.weights).toMatchObject({ diagnosis: 40 });
  expect(scenarioWith({ task: 'verify', symptom: undefined }).marking.weights).toMatchObject({
    diagnosis: 20,
  });
  const own = { diagnosis: 30, judgement: 30 };
  expect(scenarioWith({ marking: { weights: own } }).marking.weights).toMatchObject(own);
  for (const change of [{}, { task: 'verify', symptom: undefined }]) {
    const points: readonly number[] = Object.values(scenarioWith(change).marking.weights);
    expect(points.reduce((sum, one) => sum + one, 0)).toBe(100);
  }
});

describe('what tells the answer is warned of, with its place', () => {
  const FAULT = { faults: [{ fault: 'lock-will-not-release' }] };
  const ANSWER = 'Since the frost the lock releases nothing.';
  test.each([
    ['title', { title: ANSWER }],
    ['brief', { brief: ANSWER }],
    ['symptom', { symptom: ANSWER }],
    ['id', { id: 'lock-that-never-releases' }],
  ])('in the %s', (path, change) => {
    expect(givenAway(scenarioWith(FAULT))).toEqual([]);
    expect(texts(givenAway(scenarioWith({ ...FAULT, ...change })))).toEqual([
      `${path}: it tells the answer: it has the words of "lock-will-not-release"`,
    ]);
  });

  test('in the name of the file', () => {
    const scenario = scenarioWith(FAULT);
    expect(texts(givenAway(scenario, 'release-the-lock'))).toEqual([
      expect.stringMatching(/^the name of the file: /),
    ]);
    expect(givenAway(scenario, 'yard')).toEqual([]);
  });

  test('half of the words of a cause tell nothing, nor does what every site has', () => {
    expect(givenAway(scenarioWith({ ...FAULT, brief: 'The lock of the gate is stiff.' }))).toEqual([]);
    const missing = { faults: [{ fault: 'line-pole-stuck-open', line: 3 }] };
    expect(
      givenAway(scenarioWith({ ...missing, brief: 'A line to the outlet of the unit, open to all.' })),
    ).toEqual([]);
    expect(givenAway(scenarioWith({ ...missing, brief: 'A pole is stuck.' }))).toHaveLength(1);
  });

  test('what is none all the same: a not-fault is an answer too', () => {
    const held = { faults: [{ fault: 'offer-cut-by-load-sharing', amps: 6 }] };
    expect(
      givenAway(scenarioWith({ ...held, symptom: 'Its offer is cut when they share the load.' })),
    ).toHaveLength(1);
  });

  test('in the list of tests, where all of them look at the same', () => {
    const board = scenarioNamed('find-mill-pond').scenario;
    const leakage = ['residual-rated', 'residual-ramp', 'half-wave', 'dc-ramp'];
    expect(texts(givenAway({ ...board, allowed: leakage }))).toEqual([
      expect.stringMatching(/^allowed: it tells where to look: of 4 tests 4 are of one aim; 2 of others/),
    ]);
    expect(givenAway({ ...board, allowed: ['state-c', ...leakage] })).toHaveLength(1);
    expect(givenAway({ ...board, allowed: ['state-c', 'loop', ...leakage] })).toEqual([]);
    expect(givenAway({ ...board, task: 'verify', allowed: leakage })).toEqual([]);
  });

  test('that no test shows it', () => {
    const hidden = scenarioWith({ faults: [{ fault: 'direct-one-way' }] });
    expect(texts(verdictWarnings(hidden))).toEqual([
      expect.stringContaining("the right verdict is 'nothing wrong'"),
    ]);
  });
});

describe('those that come with the program', () => {
  const jobs = scenarioIds.map((id) => scenarioNamed(id).scenario).filter(({ task }) => task === 'find');

  test('are twenty or more, on every kind of site, and none tells its answer', () => {
    expect(jobs.length).toBeGreaterThanOrEqual(20);
    const kinds = jobs.map(({ site, unit }) => `${site.phases} ${site.earthing} ${unit.outlet}`);
    expect(new Set(kinds)).toEqual(
      new Set(['1 TN-C-S tethered', '1 TN-S tethered', '1 TT tethered', '3 TN-S socket']),
    );
    for (const job of jobs) expect([job.id, givenAway(job)]).toEqual([job.id, []]);
  });

  test('have a fault of every family, and a third of them none', () => {
    const faulty = jobs.filter(({ faults }) => faultsAmong(faults).length > 0);
    expect(jobs.length - faulty.length).toBeGreaterThanOrEqual(jobs.length / 3 - 1e-9);
    const families = faulty.flatMap(({ faults }) => faultsAmong(faults).map(({ family }) => family));
    // Nobody calls because of what is wrong with a tester.
    expect(new Set(families)).toEqual(new Set(FAMILIES.filter((family) => family !== 'tester')));
  });
});
