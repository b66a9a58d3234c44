/** Which reasons for leaving a test out are true: by the papers, the job, and what the trainee found. */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Attempt, LeftOut } from '../../src/attempt/record/attempt.ts';
import { LEFT_OUT } from '../../src/attempt/record/attempt.ts';
import { isTrueReason, trueReasons } from '../../src/attempt/record/leftOut.ts';
import { note, replay } from '../../src/attempt/record/run.ts';
import { lastSitting } from '../../src/attempt/record/sitting.ts';
import { truthOf } from '../../src/attempt/record/truth.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { allowedActions, papersOf } from '../../src/scenario/scenario.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import { tryingAgain } from '../../src/verification/noSupply.ts';
import { CHARGE } from '../bench/build.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy, faultlessAttempt } from '../helpers/trainee.ts';

const doing = (id: string, tests: readonly string[], faults?: readonly object[]) => {
  const named = scenarioNamed(id);
  const file = faults === undefined ? named.file : { ...(named.file as object), faults };
  const read = readScenario(file);
  if (!read.ok) throw new Error('the scenario does not read');
  const attempt = attemptBy(read.scenario, file, {
    tests: () => ACTIONS.filter((action) => tests.includes(action.id)),
  });
  return replay(read.scenario, attempt);
};

describe('harbour-mews, sound, two tests done', () => {
  const run = doing('harbour-mews', ['papers', 'isolate']);

  test('what could have been done was wanting in time alone', () => {
    expect(trueReasons(run, 'loop')).toEqual(['no-time']);
  });

  test('what no document asks for', () => {
    expect(trueReasons(run, 'residual-five')).toEqual(['not-asked']);
  });

  test('what the papers give nothing to: a lost line on one phase, an electrode on TN-C-S, and what is no test', () => {
    for (const id of ['lost-line', 'electrode']) {
      expect(ACTIONS.some((action) => action.id === id)).toBe(true);
      expect(trueReasons(run, id)).toEqual(['not-applicable']);
    }
    expect(trueReasons(run, 'nonsense')).toEqual(['not-applicable']);
  });
});

test('a short job allows few of them, and what was handed over is not done again', () => {
  const { scenario } = scenarioNamed('bakery-lane');
  const run = doing('bakery-lane', []);
  const done = run.handedOver?.tests.map(({ action }) => action.id) ?? [];
  expect(done.length).toBeGreaterThan(0);
  for (const test_ of done) expect(trueReasons(run, test_)).toContain('handed-over');
  const allowed = allowedActions(scenario).map(({ id }) => id);
  const others = ACTIONS.filter(({ id, applies }) => applies(run.papers) && !allowed.includes(id));
  expect(others.length).toBeGreaterThan(0);
  for (const { id } of others) expect(trueReasons(run, id)).toContain('not-allowed');
});

test('handed over, and what it rests on was put right since: no reason any more', () => {
  const before = doing('bakery-lane', []);
  const after = { ...before, repairs: [{ entry: 0, what: 'pe-joint' }] };
  // The joint is in the circuit's protective conductor, on which the papers do not rest.
  expect(trueReasons(before, 'pe-circuit')).toContain('handed-over');
  expect(trueReasons(after, 'pe-circuit')).not.toContain('handed-over');
  expect(trueReasons(after, 'papers')).toContain('handed-over');
});

describe('a failed dead test', () => {
  // A joint of 1.8 Ω in the protective conductor: peCircuit says to go no further.
  const run = doing('mill-race', ['papers', 'instruments', 'isolate', 'prove-dead', 'inspect', 'pe-circuit']);

  test('forbids what needs power, not the other dead tests', () => {
    expect(trueReasons(run, 'state-c')).toEqual(['not-safe']);
    expect(trueReasons(run, 'insulation-circuit')).toEqual(['no-time']);
  });

  test('and one that forbids nothing is no reason to stop', () => {
    // A label that is missing is put right, and the tests go on (BS 7671 514.1.1).
    const labels = doing(
      'harbour-mews',
      ['papers', 'isolate', 'prove-dead', 'inspect'],
      [{ fault: 'labels-missing' }],
    );
    const inspect = ACTIONS.find(({ id }) => id === 'inspect');
    const broken = inspect && truthOf(labels, inspect, lastSitting(labels, 'inspect')).lines;
    expect(broken?.filter(({ finding }) => finding === 'broken')).toHaveLength(1);
    expect(trueReasons(labels, 'state-c')).toEqual(['no-time']);
  });

  test('that was not done forbids nothing: a reason is what was found', () => {
    const hasty = doing('mill-race', ['papers', 'isolate']);
    expect(trueReasons(hasty, 'state-c')).toEqual(['no-time']);
  });
});

describe('a unit that gives no supply', () => {
  /** The supply asked for in `state-c`, these operations after it, and what else is done. */
  const asking = (faults: readonly object[], after: 'as a faultless trainee' | readonly OperationInput[]) => {
    const file = { ...(scenarioNamed('harbour-mews').file as object), faults };
    const read = readScenario(file);
    if (!read.ok) throw new Error('the scenario does not read');
    const { scenario } = read;
    const attempt = attemptBy(scenario, file, {
      tests: () => ACTIONS.filter(({ id }) => id === 'state-c'),
      operations: (_, steps) => [
        ...steps,
        ...(after === 'as a faultless trainee' ? tryingAgain(papersOf(scenario)) : after).map(operation),
      ],
    });
    return replay(scenario, attempt);
  };
  const NEVER_CLOSES = [{ fault: 'misses-request' }];

  test('asked rightly, reset and asked again: what needs a supply tells nothing of it', () => {
    const run = asking(NEVER_CLOSES, 'as a faultless trainee');
    expect(trueReasons(run, 'loop')).toEqual(['no-supply']);
    expect(trueReasons(run, 'residual-five')).toEqual(['not-asked', 'no-supply']);
  });

  test('what tells of such a unit too was wanting in time alone', () => {
    const run = asking(NEVER_CLOSES, 'as a faultless trainee');
    const untouched = ACTIONS.filter(
      ({ needsSupply, optional, applies }) =>
        needsSupply !== true && optional !== true && applies(run.papers),
    );
    expect(untouched.length).toBeGreaterThan(10);
    for (const { id } of untouched) expect(trueReasons(run, id), id).toEqual(['no-time']);
  });

  test('not reset, it may have been a trip: no reason yet', () => {
    expect(trueReasons(asking(NEVER_CLOSES, []), 'loop')).toEqual(['no-time']);
  });

  test('reset, and not asked again: no reason either', () => {
    const reset: readonly OperationInput[] = [
      { op: 'reset', what: 'unit' },
      { op: 'wait', seconds: 20 },
    ];
    expect(trueReasons(asking(NEVER_CLOSES, reset), 'loop')).toEqual(['no-time']);
  });

  test('a sound unit gives it, and after a trip gives it again', () => {
    expect(trueReasons(asking([], 'as a faultless trainee'), 'loop')).toEqual(['no-time']);
    const tripped: readonly OperationInput[] = [
      { op: 'reset', what: 'unit' },
      { op: 'wait', seconds: 12 },
      ...CHARGE,
      { op: 'measure', quantity: 'residual', line: 'L1', waveform: 'sinusoidal', mode: 'fixed', amps: 0.15 },
      { op: 'wait', seconds: 10 },
      { op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.N'] },
    ];
    expect(trueReasons(asking([], tripped), 'loop')).toEqual(['no-time']);
  });
});

test('a trip that was not reset is no want of a supply, though no voltage was read before it', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const tripping: readonly OperationInput[] = [
    { op: 'reset', what: 'unit' },
    { op: 'wait', seconds: 12 },
    ...CHARGE,
    { op: 'measure', quantity: 'residual', line: 'L1', waveform: 'sinusoidal', mode: 'fixed', amps: 0.15 },
  ];
  const attempt = attemptBy(scenario, file, {
    tests: () => ['residual-rated', 'state-c'].flatMap((id) => ACTIONS.filter((action) => action.id === id)),
    operations: ({ id }, steps) => (id === 'residual-rated' ? tripping.map(operation) : steps),
  });
  const run = replay(scenario, attempt);
  const volts = run.readings.filter(({ reading }) => reading.quantity === 'voltage');
  expect(volts.length).toBeGreaterThan(0);
  for (const { reading } of volts) expect(reading.value).toBeLessThan(50);
  expect(trueReasons(run, 'loop')).toEqual(['no-time']);
});

describe('in the marks', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const short = attemptBy(scenario, file, { tests: (all) => all.filter(({ id }) => id !== 'loop') });
  const leaving = (leftOut: LeftOut): Attempt => {
    const run = replay(scenario, { ...short, entries: short.entries.slice(0, -1) });
    const said = note(run, { kind: 'record', test: 'loop', leftOut, words: 'any words' }, 0);
    const { hash: _, at: __, wall: ___, ...conclusion } = short.entries.at(-1) as Attempt['entries'][number];
    return note(said, conclusion as never, 0).attempt;
  };

  test.each(LEFT_OUT)('%s counts in the record only where it is true', (reason) => {
    const { leftOut } = mark(scenario, leaving(reason)).sums.record;
    expect(leftOut).toEqual({ right: reason === 'no-time' ? 1 : 0, of: 1 });
  });

  test('one that was given of a test that nobody asks for has to be true as well', () => {
    const run = replay(scenario, { ...short, entries: short.entries.slice(0, -1) });
    const { hash: _, at: __, wall: ___, ...conclusion } = short.entries.at(-1) as Attempt['entries'][number];
    const saying = (why: LeftOut) => {
      const said = note(run, { kind: 'record', test: 'electrode', leftOut: why }, 0);
      return mark(scenario, note(said, conclusion as never, 0).attempt).sums.record.leftOut;
    };
    expect(saying('no-time')).toEqual({ right: 0, of: 2 });
    expect(saying('not-applicable')).toEqual({ right: 1, of: 2 });
  });

  test('what was not read is missing in the record, whatever the reason', () => {
    const whole = mark(scenario, faultlessAttempt(scenario, file)).sums.record.written;
    const { written } = mark(scenario, leaving('no-time')).sums.record;
    expect(written.of).toBe(whole.of);
    expect(written.right).toBeLessThan(whole.right);
  });

  test('no reason is none that is true', () => {
    expect(mark(scenario, short).sums.record.leftOut).toEqual({ right: 0, of: 1 });
  });

  test('words, as format 1 had them, are none in a file of this format', () => {
    const attempt = leaving('in-words');
    const entry = attempt.entries.find((one) => one.kind === 'record');
    expect(entry?.kind === 'record' && isTrueReason(replay(scenario, attempt), entry)).toBe(false);
  });
});
