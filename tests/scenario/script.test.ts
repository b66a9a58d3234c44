/** Scripts of operations: names that do not exist are named with the nearest valid ones. */

import { describe, expect, test } from 'vitest';
import { pairOf } from '../../src/bench/reading.ts';
import { playOutput } from '../../src/cli/playOutput.ts';
import { benchOf, papersOf } from '../../src/scenario/scenario.ts';
import { parseScript, playScript } from '../../src/scenario/script.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import { problemText } from '../../src/words/problems.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const scenario = scenarioNamed('harbour-mews').scenario;

function problemsIn(script: unknown): readonly string[] {
  const read = parseScript(JSON.stringify(script), scenario);
  return read.ok ? [] : read.problems.map((one) => `${one.path}: ${problemText(one)}`);
}

const insulation = (a: unknown, b: unknown) => ({
  op: 'measure',
  quantity: 'insulation',
  volts: 500,
  between: [a, b],
});

describe('a problem names the place and what would be right', () => {
  test.each([
    [
      'unknown operation',
      { op: 'isolat' },
      /^\[0\]\.op: "isolat" is not known here; did you mean "isolate"\?$/,
    ],
    [
      'unknown action',
      { op: 'action', id: 'state-bb' },
      /^\[0\]\.id: unknown test action "state-bb"; near it are state-a, /,
    ],
    [
      'a terminal that this site lacks',
      insulation('supply.L2', 'supply.PE'),
      /^\[0\]\.between\[0\]: this site has no terminal "supply\.L2"; one of: .*supply\.L1/,
    ],
    [
      'one among joined terminals',
      insulation(['supply.L1', 'supply.L3'], 'supply.PE'),
      /^\[0\]\.between\[0\]: this site has no terminal "supply\.L3"/,
    ],
    [
      'a cause that the catalogue does not have',
      { op: 'put-right', what: 'pe-jiont' },
      /^\[0\]\.what: "pe-jiont" is not known here; did you mean "pe-joint"\?$/,
    ],
    [
      'one terminal joined to itself',
      insulation(['supply.L1', 'supply.N', 'supply.L1'], 'supply.PE'),
      /^\[0\]\.between\[0\]: "supply\.L1" is joined to itself: each terminal once is expected$/,
    ],
    ['no terminal anywhere', insulation('suply.L1', 'supply.PE'), /^\[0\]\.between\[0\]: .*supply\.L1/],
    [
      'a line that this site lacks',
      { op: 'vehicle', leakage: { ac: 0.01, dc: 0, line: 'L2' } },
      /^\[0\]\.(leakage\.)?line: this site has no L2/,
    ],
    [
      'no such test voltage',
      { ...insulation('supply.L1', 'supply.PE'), volts: 230 },
      /^\[0\]\.volts: 230 does not fit: 50 or 100 or 250 or 500 or 1000 is expected$/,
    ],
    ['waiting backwards', { op: 'wait', seconds: -1 }, /^\[0\]\.seconds: -1 is too small: at least 0$/],
    ['a field too many', { op: 'energise', now: true }, /^\[0\]\.now: unknown field "now"/],
    [
      'one terminal is not a pair',
      { op: 'measure', quantity: 'voltage', between: ['supply.L1'] },
      /^\[0\]\.between/,
    ],
  ])('%s', (_, step, problem) => {
    const problems = problemsIn([step]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(problem);
  });
});

test('every problem in one pass, by its place in the script', () => {
  const script = [{ op: 'wait', seconds: 1 }, { op: 'nap' }, { op: 'wait' }, { op: 'action', id: 'zzz' }];
  expect(problemsIn(script).map((line) => line.split(/[:.]/)[0])).toContain('[1]');
  expect(problemsIn(script.slice(2)).map((line) => line.split(/[:.]/)[0])).toContain('[0]');
});

test('a script puts something right, and tests again', () => {
  const path = { op: 'measure', quantity: 'continuity', between: ['met', 'supply.PE'] };
  const faulty = scenarioNamed('mill-race').scenario;
  const script = parseScript(
    JSON.stringify([
      { op: 'isolate' },
      { op: 'prove-dead', at: 'origin' },
      { op: 'open-cover' },
      { op: 'prove-dead', at: 'supply' },
      path,
      { op: 'put-right', what: 'pe-joint' },
      path,
    ]),
    faulty,
  );
  if (!script.ok) throw new Error('the script does not parse');
  const { readings, refused, unsafe } = playOutput(
    playScript(benchOf(faulty), script.value, faulty).steps,
    null,
  );
  const [before, after] = readings.filter(({ quantity }) => quantity === 'continuity');
  expect(before?.value).toBeGreaterThan(1.8);
  expect(after?.value).toBeLessThan(0.3);
  expect({ refused, unsafe }).toEqual({ refused: [], unsafe: [] });
});

test('a script, or a list in it, that is far too long is refused as that', () => {
  expect(problemsIn(Array(5001).fill({}))).toEqual([': too long: at most 5000 is expected']);
  expect(problemsIn([{ op: 'guard' }, insulation(Array(101).fill('supply.L9'), 'met')])).toEqual([
    '[1].between[0]: too long: at most 100 is expected',
  ]);
});

test('a script is a list', () => {
  expect(problemsIn({ op: 'wait', seconds: 1 })).toEqual([': an array of operations is expected']);
});

describe('a whole test action', () => {
  const doing = (id: string, faults: typeof scenario.faults, before: readonly object[] = []) => {
    const faulty = { ...scenario, faults };
    const script = parseScript(JSON.stringify([...before, { op: 'action', id }]), faulty);
    if (!script.ok) throw new Error('the script does not read');
    const played = playScript(benchOf(faulty), script.value, faulty).steps.filter(
      ({ action }) => action === id,
    );
    return { faulty, outcomes: played.map(({ outcome }) => outcome) };
  };

  test.each(['misses-request', 'all-poles-welded', 'line-pole-stuck-open'])(
    'is done as a faultless trainee does it, %s: where there is no supply it is tried once more',
    (fault) => {
      const { faulty, outcomes } = doing('state-c', [{ fault, values: {} }]);
      const action = actionNamed('state-c');
      if (action === undefined) throw new Error('no such test');
      expect(outcomes).toEqual(carryOut(benchOf(faulty), action, papersOf(faulty)).outcomes);
    },
  );

  test('a trip that was left standing before it is reset, and the supply found', () => {
    const tripped = [
      { op: 'vehicle', plugged: true, state: 'B' },
      { op: 'wait', seconds: 3 },
      { op: 'vehicle', state: 'C' },
      { op: 'wait', seconds: 4 },
      { op: 'measure', quantity: 'residual', line: 'L1', waveform: 'sinusoidal', mode: 'fixed', amps: 0.15 },
    ];
    const { outcomes } = doing('state-c', [], tripped);
    const volts = outcomes
      .flatMap(({ readings }) => readings)
      .filter((reading) => pairOf(reading)?.join() === 'outlet.L1,outlet.N')
      .map(({ value }) => value ?? 0);
    expect(volts[0]).toBeLessThan(50);
    expect(volts.at(-1)).toBeGreaterThan(200);
  });
});
