/**
 * What tests ought to show, and their words, which come to the page by aims: a bench is not shown before those of every
 * test that it may name lines of are there, so that nothing on it has to wait. The words of causes come before one is
 * named.
 */
import { linesToChooseFrom } from '../../attempt/record/lines.ts';
import { rungOf } from '../../attempt/record/rung.ts';
import type { AimId } from '../../scenario/aims.ts';
import { AIMS, aimOf } from '../../scenario/aims.ts';
import { allowedActions } from '../../scenario/scenario.ts';
import { ACTIONS } from '../../verification/actions.ts';
import { addLines } from '../../verification/lines.ts';
import type { TestAction } from '../../verification/testAction.ts';
import { addTests } from '../../words/actions.ts';
import { addCauses } from '../../words/puttingRight.ts';
import type { Bench } from './bench.ts';
import { loaded } from './loading.ts';

type OfAim = readonly [lines: Parameters<typeof addLines>[0], words: Parameters<typeof addTests>[0]];

/** Lines and words of an aim are one piece of the page (vite.config.ts). */
const TESTS: Readonly<Record<AimId, () => Promise<OfAim>>> = {
  design: async () => [
    (await import('../../verification/linesByAim/design.ts')).design,
    (await import('../../words/tests/design.ts')).design,
  ],
  dead: async () => [
    (await import('../../verification/linesByAim/dead.ts')).dead,
    (await import('../../words/tests/dead.ts')).dead,
  ],
  earth: async () => [
    (await import('../../verification/linesByAim/earth.ts')).earth,
    (await import('../../words/tests/earth.ts')).earth,
  ],
  insulation: async () => [
    (await import('../../verification/linesByAim/insulation.ts')).insulation,
    (await import('../../words/tests/insulation.ts')).insulation,
  ],
  wiring: async () => [
    (await import('../../verification/linesByAim/wiring.ts')).wiring,
    (await import('../../words/tests/wiring.ts')).wiring,
  ],
  supply: async () => [
    (await import('../../verification/linesByAim/supply.ts')).supply,
    (await import('../../words/tests/supply.ts')).supply,
  ],
  'outlet-dead': async () => [
    (await import('../../verification/linesByAim/outletDead.ts')).outletDead,
    (await import('../../words/tests/outletDead.ts')).outletDead,
  ],
  offer: async () => [
    (await import('../../verification/linesByAim/offer.ts')).offer,
    (await import('../../words/tests/offer.ts')).offer,
  ],
  'lets-go': async () => [
    (await import('../../verification/linesByAim/letsGo.ts')).letsGo,
    (await import('../../words/tests/letsGo.ts')).letsGo,
  ],
  clears: async () => [
    (await import('../../verification/linesByAim/clears.ts')).clears,
    (await import('../../words/tests/clears.ts')).clears,
  ],
  leakage: async () => [
    (await import('../../verification/linesByAim/leakage.ts')).leakage,
    (await import('../../words/tests/leakage.ts')).leakage,
  ],
  refuses: async () => [
    (await import('../../verification/linesByAim/refuses.ts')).refuses,
    (await import('../../words/tests/refuses.ts')).refuses,
  ],
};

async function load(aim: AimId): Promise<void> {
  const [lines, words] = await loaded(TESTS[aim]);
  addLines(lines);
  addTests(words);
}

/** Before something is put right, or what was is told. Rejects with `NotLoaded`. */
export async function wordsOfCauses(): Promise<void> {
  addCauses((await loaded(() => import('../../words/namedCauses.ts'))).NAMED_CAUSES);
}

/** Of these aims; without any of all, and of causes. Rejects with `NotLoaded`. */
export async function testsOf(aims?: readonly AimId[]): Promise<void> {
  await Promise.all(aims?.map(load) ?? [...AIMS.map(({ id }) => load(id)), wordsOfCauses()]);
}

/** All that are judged or worded at this bench, and worded in its debrief. Rejects with `NotLoaded`. */
export async function testsAt(bench: Bench): Promise<void> {
  const tests = testsOn(bench);
  await Promise.all([
    testsOf([...aimsOf(tests.map(({ id }) => id))]),
    ...(bench.happened.some(({ operation }) => operation.op === 'put-right') ? [wordsOfCauses()] : []),
  ]);
  const { scenario, attempt } = bench.run;
  if (rungOf(scenario.support, attempt) !== 3) return;
  // Where lines are to be chosen, those of the tests that lend theirs, which the tests' own lines tell.
  const lines = tests.flatMap((action) => linesToChooseFrom(scenario, action));
  await testsOf([...aimsOf(lines.map(({ id }) => lenderIn(id)))]);
}

/** The tests that are allowed or begun. */
function testsOn({ run: { scenario, attempt } }: Bench): readonly TestAction[] {
  const begun = new Set(attempt.entries.flatMap((entry) => ('test' in entry ? [entry.test] : [])));
  return [...new Set([...allowedActions(scenario), ...ACTIONS.filter(({ id }) => begun.has(id))])];
}

const aimsOf = (tests: readonly string[]): ReadonlySet<AimId> =>
  new Set(tests.flatMap((test) => aimOf(test) ?? []));

/** The other test whose line this is, by the line's id; of the test's own line nothing. */
const lenderIn = (id: string): string => id.slice(0, Math.max(0, id.indexOf('/')));
