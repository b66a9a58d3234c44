/**
 * Which tests are repeated after something was put right: by hand, from the wiring rules (BS 7671 643.1), and held
 * against the physics: whatever truly read otherwise on the faulty unit is among them.
 */
import { describe, expect, test } from 'vitest';
import type { AnyReading } from '../../src/bench/reading.ts';
import { CATALOGUE, entryNamed } from '../../src/faults/catalogue.ts';
import { COMPONENTS } from '../../src/faults/components.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import type { VerifiedAction } from '../../src/scenario/verify.ts';
import { verify } from '../../src/scenario/verify.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import type { DoneTest, Outcome } from '../../src/verification/testsToRepeat.ts';
import { testsToRepeat } from '../../src/verification/testsToRepeat.ts';
import type { InstallationName } from '../faults/installations.ts';
import { scenarioOn } from '../faults/installations.ts';
import { TELLS } from '../faults/tells.ts';

/** Every test up to this one as a person does them in order, of which these failed. */
function upTo(last: string, failed: readonly string[] = [last]): readonly DoneTest[] {
  const papers = papersOf(scenarioOn('home'));
  const done = ACTIONS.slice(0, ACTIONS.findIndex(({ id }) => id === last) + 1);
  return done
    .filter((action) => action.applies(papers))
    .map((action) => ({ action, outcome: failed.includes(action.id) ? 'failed' : 'as it should' }));
}

const repeatsOn = (on: InstallationName, done: readonly DoneTest[], ...causes: readonly string[]) =>
  testsToRepeat(
    papersOf(scenarioOn(on)),
    done,
    causes.map((cause) => entryNamed(cause)).filter((entry) => entry !== undefined),
  );

interface Row {
  readonly case: string;
  readonly cause: string;
  readonly done: readonly DoneTest[];
  readonly due: readonly string[];
  readonly free?: readonly string[];
  /** Done, and neither due nor free: to name it is needless. */
  readonly needless: readonly string[];
  readonly source: string;
}

const FAULT = 'BS 7671:2018+A2:2022 643.1: any preceding test that the fault may have influenced';
const HAND =
  'BS 7671:2018+A2:2022 643.1; what the hand has moved is tested again (common practice, no source)';

const rows: readonly Row[] = [
  {
    case: 'the first test of the circuit fails: that test alone',
    cause: 'pe-joint',
    done: upTo('pe-circuit'),
    due: ['pe-circuit'],
    free: ['papers', 'isolate', 'prove-dead', 'inspect'],
    needless: [],
    source: FAULT,
  },
  {
    case: 'a PE joint that shows in the loop: the dead tests of the circuit, its polarity with power, the loop',
    cause: 'pe-joint',
    done: upTo('loop'),
    due: ['pe-circuit', 'r1r2-polarity', 'insulation-circuit', 'insulation-unit', 'state-c', 'loop'],
    needless: ['insulation-outlet', 'poles-open', 'energise', 'state-a', 'unplug'],
    source: HAND,
  },
  {
    case: 'low insulation of the circuit: a conductor is moved, so continuity and polarity too',
    cause: 'line-pe-insulation-low',
    done: upTo('insulation-circuit'),
    due: ['pe-circuit', 'r1r2-polarity', 'insulation-circuit'],
    needless: ['pe-outlet'],
    source: HAND,
  },
  {
    case: 'the tether is replaced: continuity and insulation of the outlet',
    cause: 'tether-insulation-moves',
    done: upTo('insulation-outlet'),
    due: ['pe-outlet', 'insulation-outlet'],
    needless: ['pe-circuit'],
    source: HAND,
  },
  {
    case: 'a welded pole: what was measured through the open poles',
    cause: 'neutral-pole-welded',
    done: upTo('poles-open'),
    due: ['insulation-outlet', 'poles-open'],
    needless: ['pe-circuit', 'pe-outlet', 'r1r2-polarity', 'insulation-circuit'],
    source: FAULT,
  },
  {
    case: 'a contactor that opens late: all that it switches, and no dead test of the circuit',
    cause: 'opens-slowly',
    done: upTo('unplug', ['c-to-b', 'unplug']),
    due: ['insulation-outlet', 'poles-open', 'energise', 'state-a', 'state-b', 'state-c', 'c-to-b', 'unplug'],
    needless: ['pe-circuit', 'pe-outlet', 'r1r2-polarity', 'insulation-circuit', 'supply-volts'],
    source: FAULT,
  },
  {
    case: 'the d.c. detector: its own test, and none of the 30 mA device',
    cause: 'direct-detector-dead',
    done: upTo('dc-ramp'),
    due: ['dc-ramp'],
    free: ['residual-rated', 'loop', 'energise'],
    needless: ['state-c', 'pe-circuit', 'insulation-circuit'],
    source: FAULT,
  },
  {
    case: 'the pilot’s frequency: every test that reads or uses the pilot',
    cause: 'pilot-frequency',
    done: upTo('state-b'),
    due: ['energise', 'state-a', 'state-b'],
    needless: ['pe-circuit', 'poles-open', 'supply-volts'],
    source: FAULT,
  },
  {
    case: 'labels: looking again, and no measurement',
    cause: 'labels-missing',
    done: upTo('poles-open', ['inspect']),
    due: ['inspect'],
    needless: ['pe-circuit', 'pe-outlet', 'insulation-circuit', 'poles-open'],
    source: FAULT,
  },
  {
    case: 'a device of the wrong type seen after its tests: those tests again',
    cause: 'residual-type-ac',
    done: [...upTo('residual-again', ['inspect'])],
    due: [
      'inspect',
      'residual-half',
      'residual-rated',
      'residual-five',
      'residual-ramp',
      'half-wave',
      'residual-again',
    ],
    needless: ['pe-circuit', 'insulation-circuit', 'state-b', 'unplug'],
    source: HAND,
  },
];

describe('by hand', () => {
  test.each(rows)('$case ($source)', ({ cause, done, due, free = [], needless }) => {
    const told = repeatsOn('home', done, cause);
    expect(told.due).toEqual(due);
    expect(told.free).toEqual(expect.arrayContaining([...free]));
    const ids = done.map(({ action }) => action.id);
    expect(ids).toEqual(expect.arrayContaining([...needless]));
    for (const id of needless) expect([...told.due, ...told.free], id).not.toContain(id);
  });

  test('what could not be shown counts as not done', () => {
    const done = upTo('residual-rated').map(({ action, outcome }): DoneTest => {
      const unshown: Outcome = action.id === 'loop' ? 'not shown' : outcome;
      return { action, outcome: unshown };
    });
    expect(repeatsOn('home', done, 'residual-dead').due).toEqual(['loop', 'residual-half', 'residual-rated']);
  });

  test('of two causes, what either asks for', () => {
    const both = repeatsOn('home', upTo('state-b'), 'pe-joint', 'pilot-frequency').due;
    const each = ['pe-joint', 'pilot-frequency'].flatMap((x) => repeatsOn('home', upTo('state-b'), x).due);
    expect([...both].sort()).toEqual([...new Set(each)].sort());
  });

  test('where no one piece is put right, the failed test is due and the rest is left to whoever alters it', () => {
    const told = repeatsOn('home', upTo('loop'));
    expect(told.due).toEqual(['loop']);
    expect(told.free).toHaveLength(upTo('loop').length - 1);
  });
});

test('every piece that can be put right is tested by something', () => {
  for (const [component, reach] of Object.entries(COMPONENTS))
    expect(
      ACTIONS.some(({ restsOn }) => (restsOn as readonly string[]).includes(component)),
      component,
    ).toBe(reach !== 'no conductor');
});

const outcomeOf = ({ expectations, limits }: VerifiedAction): Outcome =>
  expectations.some(({ finding }) => finding === 'broken') || limits.some(({ pass }) => !pass)
    ? 'failed'
    : expectations.some(({ finding }) => finding === 'not shown')
      ? 'not shown'
      : 'as it should';

/** Alike to what the instruments can tell: twice their half-width, since both readings have one. */
function alike(x: AnyReading, y: AnyReading | undefined): boolean {
  if (x.qualifier !== y?.qualifier || x.trippedWhat !== y.trippedWhat) return false;
  const margin = (x.uncertainty ?? 0) + (y.uncertainty ?? 0);
  const near = (a: number | null | undefined, b: number | null | undefined, within: number) =>
    a == null || b == null ? (a ?? null) === (b ?? null) : Math.abs(a - b) <= within;
  return (
    near(x.value, y.value, margin) &&
    near(x.low, y.low, margin) &&
    near(x.duty, y.duty, 0.004) &&
    near(x.frequency, y.frequency, 10) &&
    near(x.tripMs, y.tripMs, 4)
  );
}

function differs(x: VerifiedAction, y: VerifiedAction | undefined): boolean {
  const readings = (done: VerifiedAction | undefined) =>
    done?.run.samples.flatMap((sample) => sample.readings) ?? [];
  const [mine, other] = [readings(x), readings(y)];
  const found = (done: VerifiedAction | undefined) => done?.run.samples.flatMap((sample) => sample.found);
  const findings = (done: VerifiedAction | undefined) => done?.expectations.map(({ finding }) => finding);
  return (
    mine.length !== other.length ||
    mine.some((reading, i) => !alike(reading, other[i])) ||
    JSON.stringify([found(x), findings(x)]) !== JSON.stringify([found(y), findings(y)])
  );
}

/** A faultless person’s tests of the sound unit, once an installation. */
const sound = new Map<InstallationName, readonly VerifiedAction[]>();
function soundTestsOn(on: InstallationName): readonly VerifiedAction[] {
  const tests = sound.get(on) ?? verify(scenarioOn(on), { everything: true }).actions;
  sound.set(on, tests);
  return tests;
}

const onSite = CATALOGUE.flatMap((entry) => {
  const on = TELLS[entry.id]?.[0] as InstallationName;
  return entry.kind === 'fault' && COMPONENTS[entry.component] !== 'not here' ? [{ entry, on }] : [];
});

describe('against the physics: what read or came out otherwise than on the sound unit is repeated', () => {
  test.each(onSite)('$entry.id on $on', ({ entry, on }) => {
    const values = Object.fromEntries(entry.parameters.map((p) => [p.name, p.default]));
    const scenario = scenarioOn(on, [{ fault: entry.id, values }]);
    const done = verify(scenario, { everything: true }).actions;
    const { due } = testsToRepeat(
      papersOf(scenario),
      done.map((each) => ({ action: each.action, outcome: outcomeOf(each) })),
      [entry],
    );
    const differing = done
      .filter((each) =>
        differs(
          each,
          soundTestsOn(on).find(({ action }) => action.id === each.action.id),
        ),
      )
      .map(({ action }) => action.id);
    expect(differing.length).toBeGreaterThan(0);
    expect(due).toEqual(expect.arrayContaining(differing));
    // And never simply everything: a repair asks for less than a verification.
    expect(due.length).toBeLessThan(ACTIONS.filter(({ restsOn }) => restsOn.length > 0).length);
  });
});
