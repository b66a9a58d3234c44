// Jobs of one aim: every test in one aim, the same job for the same seed, half of them sound, a handover that could have
// been signed, nothing outside the faults that gives them away, and the table of faults worked out again in part.

import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { rightConclusion, workedAttempt } from '../../src/attempt/marks/worked.ts';
import type { NotedOf } from '../../src/attempt/record/attempt.ts';
import type { Run } from '../../src/attempt/record/run.ts';
import { readAimAddress } from '../../src/scenario/aimAddress.ts';
import { aimAddressProblems } from '../../src/scenario/aimAddressProblems.ts';
import { ALL_FAULTS, showsInAim } from '../../src/scenario/aimFaults.ts';
import { aimJob, faultsOf, jobWith } from '../../src/scenario/aimJobs.ts';
import type { AimId, SiteId } from '../../src/scenario/aims.ts';
import { AIMS, aimJobId, aimJobIn, aimNamed, aimOf, SITES } from '../../src/scenario/aims.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { verdictWarnings } from '../../src/scenario/tellable.ts';
import { verify } from '../../src/scenario/verify.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import { aimJobWords } from '../../src/words/aimJobs.ts';
import { problemText } from '../../src/words/problems.ts';
import { attemptOf } from '../helpers/person.ts';

const JOBS: readonly (readonly [AimId, SiteId])[] = SITES.flatMap((site) =>
  AIMS.map(({ id }) => [id, site] as const),
);
const SEEDS = Array.from({ length: 100 }, (_, i) => i + 1);

/** What a job's file holds. */
interface File {
  readonly title: string;
  readonly brief: string;
  readonly id: string;
  readonly faults: readonly { readonly fault: string }[];
}
const fileOf = (aim: AimId, site: SiteId, seed: number) =>
  aimJob({ aim, site, seed }, aimJobWords({ aim, site, seed })) as File;
const UNTOLD = { title: 'a job', brief: 'a brief', by: 'somebody' };

function scenarioOf(file: object): Scenario {
  const read = readScenario(file);
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path}: ${message}`).join('; '));
  return read.scenario;
}

test('every test belongs to exactly one aim, and every aim has tests that exist', () => {
  const ids = ACTIONS.map(({ id }) => id);
  expect(AIMS).toHaveLength(12);
  expect(AIMS.flatMap(({ tests }) => [...tests]).toSorted()).toEqual(ids.toSorted());
  for (const id of ids) expect(aimNamed(aimOf(id) ?? '')?.tests).toContain(id);
  expect(aimOf('no-such-test')).toBeNull();
});

test('an aim is told from the id of its job', () => {
  for (const [aim, site] of JOBS)
    expect(aimJobIn(aimJobId({ aim, site, seed: 4711 }))).toEqual({ aim, site, seed: 4711 });
  for (const id of ['harbour-mews', 'aim-dead', 'aim-outlet-dead-attic-3', 'my-aim-dead-single-tt-3'])
    expect(aimJobIn(id)).toBeNull();
});

test('the same seed gives the same job to the byte, and another seed another site', () => {
  for (const [aim, site] of JOBS)
    expect(JSON.stringify(fileOf(aim, site, 7))).toBe(JSON.stringify(fileOf(aim, site, 7)));
  expect(fileOf('earth', 'single-tt', 7).title).not.toBe(fileOf('earth', 'single-tt', 8).title);
});

test('about half of the jobs are sound, and every fault of the table is drawn', () => {
  for (const [aim, site] of JOBS) {
    const drawn = SEEDS.map((seed) => fileOf(aim, site, seed).faults.map(({ fault }) => fault));
    const sound = drawn.filter(({ length }) => length === 0).length;
    // Of 100 throws of a fair coin: 4 standard deviations of 5.
    expect(sound).toBeGreaterThanOrEqual(30);
    expect(sound).toBeLessThanOrEqual(70);
    expect(new Set(drawn.flat()).size).toBeGreaterThanOrEqual(Math.min(3, faultsOf({ aim, site }).length));
  }
});

test.each(JOBS)('%s on %s tells the same beforehand, sound or faulty', (aim, site) => {
  const told = (file: object) => {
    const { faults: _, ...rest } = file as File;
    return JSON.stringify(rest);
  };
  for (const seed of SEEDS.slice(0, 20)) {
    const drawn = fileOf(aim, site, seed);
    for (const faults of [[], ['pe-joint'], ['labels-missing']])
      expect(told(drawn)).toBe(told(jobWith({ aim, site, seed }, aimJobWords({ aim, site, seed }), faults)));
    // Nor do the words that it begins with name any of what is wrong.
    const words = `${drawn.title} ${drawn.brief} ${drawn.id}`.toLowerCase();
    for (const fault of faultsOf({ aim, site })) expect(words).not.toContain(fault);
  }
});

describe.each(JOBS)('%s on %s', (aim, site) => {
  test('sound: the tests before could be signed, nothing unsafe is found, and the verdict follows', () => {
    const scenario = scenarioOf(jobWith({ aim, site, seed: 3 }, UNTOLD, []));
    const { conclusion, actions } = verify(scenario);
    expect(actions.length).toBeGreaterThan(0);
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
    // What the aims after it will find is no part of its question.
    expect(conclusion).toBe('sound');
    expect(verdictWarnings(scenario)).toEqual([]);
  });

  test('faulty: what a faultless trainee does and says earns everything', () => {
    const fault = faultsOf({ aim, site }).at(-1);
    const file = jobWith({ aim, site, seed: 3 }, UNTOLD, fault === undefined ? [] : [fault]);
    const scenario = scenarioOf(file);
    const { marks, verdict } = debriefOf(scenario, workedAttempt(scenario, file));
    expect(verdict).toMatchObject({
      right: true,
      said: fault === undefined ? 'nothing-wrong' : 'something-wrong',
    });
    expect(marks.total).toBeCloseTo(100, 6);
    // However well it went: one aim is no verification.
    expect(marks.passed).toBeNull();
  });
});

describe('the conclusion of a job of one aim is about that alone', () => {
  const marked = (faults: readonly string[], said: Partial<NotedOf<'conclusion'>>) => {
    const file = jobWith({ aim: 'earth', site: 'single-pme', seed: 3 }, UNTOLD, faults);
    const scenario = scenarioOf(file);
    const conclude = (run: Run) => ({ ...rightConclusion(run), ...said });
    return mark(scenario, attemptOf(scenario, file, { conclude }));
  };

  test('nothing wrong where something is fails the gate', () => {
    expect(marked(['pe-joint'], {}).gates.verdict).toBe(true);
    const passedOver = marked(['pe-joint'], { verdict: 'nothing-wrong', cause: 'nothing', family: null });
    expect(passedOver).toMatchObject({
      gates: { verdict: false },
      hurdles: expect.arrayContaining(['verdict']),
    });
  });

  test('a verdict on the whole unit is no answer, found sound or not', () => {
    expect(marked([], { verdict: 'fit' }).hurdles).toContain('verdict');
    expect(marked([], { verdict: 'could-not-finish' }).hurdles).toContain('verdict');
    expect(marked(['pe-joint'], { verdict: 'not-fit' }).hurdles).toContain('verdict');
  });

  test('what next and whom to tell is marked where something is wrong, and else not asked', () => {
    const right = marked(['pe-joint'], {});
    expect(right.sums.reasons).toMatchObject({ next: true, tell: true });
    expect(marked(['pe-joint'], { next: undefined, tell: undefined }).parts.reasons).toBeLessThan(
      right.parts.reasons,
    );
    const sound = marked([], {});
    expect(sound.sums.reasons).toMatchObject({ next: null, tell: null });
    expect(sound.parts.reasons).toBe(15);
  });

  test.each([
    [{ aim: undefined }, 'aim', 'one of them is expected'],
    [{ aim: 'oven' }, 'aim', '"oven"'],
    // Another slip hides it not.
    [{ title: '', aim: undefined }, 'aim', 'one of them is expected'],
    [{ task: 'verify' }, 'aim', '"task": "aim" is expected with it'],
    [{ allowed: ['ze', 'loop'] }, 'allowed', '"loop" is not a test of the aim "earth"'],
    [{ allowed: 'all' }, 'allowed', '"all" is not a test'],
  ])('a file that contradicts itself says where: %o', (change, path, message) => {
    const file = { ...jobWith({ aim: 'earth', site: 'single-pme', seed: 3 }, UNTOLD, []), ...change };
    const read = readScenario(JSON.parse(JSON.stringify(file)));
    expect(read.ok ? [] : read.problems.filter((one) => one.path === path).map(problemText)).toEqual([
      expect.stringContaining(message),
    ]);
  });
});

/** Every so many of all rows of the table; no factor of the count of faults, so that every fault comes by. */
const SHARE = 17;

test('a share of the table of faults, worked out again, is as it is written', () => {
  const rows = JOBS.flatMap(([aim, site]) => ALL_FAULTS.map((fault) => ({ aim, site, fault })));
  const again = rows.filter((_, i) => i % SHARE === 0);
  expect(again.length).toBeGreaterThan(250);
  for (const { aim, site, fault } of again)
    expect([aim, site, fault, showsInAim(aim, site, fault)]).toEqual([
      aim,
      site,
      fault,
      faultsOf({ aim, site }).includes(fault),
    ]);
}, 240_000);

describe('an address', () => {
  test('gives the job, with a site that the seed falls on where none is named', () => {
    expect(readAimAddress({ aim: 'dead', site: 'single-tt', seed: '9' })).toEqual({
      aim: 'dead',
      site: 'single-tt',
      seed: 9,
      rung: 1,
    });
    const sites = SITES.map((_, i) => String(4 + i)).map((seed) => readAimAddress({ aim: 'dead', seed }));
    expect(new Set(sites.map((asked) => asked?.site)).size).toBe(SITES.length);
  });

  test.each([
    [{ aim: 'outletdead', site: 'single-tt', seed: '9' }, 'aim', 'did you mean "outlet-dead"?'],
    [{ aim: 'x', seed: '9' }, 'aim', 'one of: design, dead'],
    [{ aim: 'dead', site: 'single-tns-2', seed: '9' }, 'site', 'unknown site "single-tns-2"'],
    [{ aim: 'dead', seed: '-1' }, 'seed', 'a whole number from 0 to 2147483647'],
    [{ aim: 'dead', seed: '2147483648' }, 'seed', 'a whole number from 0 to 2147483647'],
    [{ aim: 'dead', seed: '1e3' }, 'seed', '"1e3" does not fit'],
    [{ aim: 'dead', rung: '5' }, 'rung', '1, 2, 3 or 4 is expected'],
  ] as const)('that is wrong says where and what: %o', (address, path, message) => {
    expect(readAimAddress(address)).toBeNull();
    const problems = aimAddressProblems(address);
    expect(problems).toEqual([{ path, message: expect.stringContaining(message) }]);
  });
});
