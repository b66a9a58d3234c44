// What may be done again by one press: by the trainee's own log and by how things stand, whatever test is in hand.

import { describe, expect, test } from 'vitest';
import type { Measurement, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { actsAtHand, readingsAtHand, rowsAtHand } from '../../src/ui/flow/atHand.ts';
import { done, newBench } from '../../src/ui/flow/bench.ts';
import { draftOf, lastDraft, readingsOf } from '../../src/ui/flow/measurement.ts';
import { resetsAtHand } from '../../src/ui/flow/toReset.ts';
import { codingsAtHand, figuredIn } from '../../src/ui/screens/measure/acts.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const benchAfter = (...acts: readonly OperationInput[]) => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  return acts.reduce((bench, act) => done(bench, 'state-c', act, 0), newBench(scenario, file));
};
const plugIn = operation({ op: 'vehicle', plugged: true, state: 'B' });
const unplug = operation({ op: 'vehicle', plugged: false, state: 'A' });
const wait = operation({ op: 'wait', seconds: 10 });
const reset = operation({ op: 'reset', what: 'unit' });
const pilot: OperationInput = { op: 'measure', quantity: 'pilot' };
const rotation: OperationInput = { op: 'measure', quantity: 'phase-sequence', at: 'outlet' };

describe('rows at hand', () => {
  test('are those that come to something as things stand', () => {
    const out = benchAfter(plugIn, wait, pilot, unplug, wait);
    expect(rowsAtHand(out)).toEqual([[plugIn, wait]]);
    const back = benchAfter(plugIn, wait, pilot, unplug, wait, pilot, plugIn);
    expect(rowsAtHand(back)).toEqual([[unplug, wait]]);
  });

  test('what changes no position comes to something each time', () => {
    expect(rowsAtHand(benchAfter(reset, wait))).toEqual([[reset, wait]]);
  });
});

describe('rows at hand, as they were begun', () => {
  const [isolate, energise] = [operation({ op: 'isolate' }), operation({ op: 'energise' })];
  const press = operation({ op: 'press', button: 'stop' });

  test('one begun with the vehicle there is none without it', () => {
    expect(rowsAtHand(benchAfter(plugIn, pilot, press, wait, pilot))).toEqual([[press, wait]]);
    expect(rowsAtHand(benchAfter(plugIn, pilot, press, wait, pilot, unplug))).toEqual([]);
  });

  test('a proof is at hand with the cover on or off', () => {
    const proof = operation({ op: 'prove-dead', at: 'origin' });
    expect(rowsAtHand(benchAfter(isolate, proof, operation({ op: 'open-cover' })))).toContainEqual([proof]);
    expect(rowsAtHand(benchAfter(isolate, proof, energise))).not.toContainEqual([proof]);
  });

  test('dead work is none while the circuit is on', () => {
    const link = operation({ op: 'link', between: ['origin.L1', 'origin.PE'] });
    const nulled = operation({ op: 'null-leads' });
    const dead = [isolate, pilot, nulled, link, pilot, nulled] as const;
    expect(rowsAtHand(benchAfter(...dead))).toContainEqual([nulled, link]);
    expect(rowsAtHand(benchAfter(...dead, energise))).not.toContainEqual([nulled, link]);
  });
});

describe('reset and wait', () => {
  const tested = (site: string, ...after: readonly OperationInput[]) => {
    const { scenario, file } = scenarioNamed(site);
    const acts: readonly OperationInput[] = [
      plugIn,
      wait,
      { op: 'vehicle', state: 'C' },
      wait,
      { op: 'measure', quantity: 'residual', line: 'L1', waveform: 'sinusoidal', mode: 'fixed', amps: 0.03 },
      ...after,
    ];
    const bench = acts.reduce(
      (at, act) => done(at, 'residual-rated', act, 0),
      newBench(scenario, file, { rung: 2 }),
    );
    return resetsAtHand(bench).map((row) => row.map((act) => (act.op === 'reset' ? act.what : act.op)));
  };
  const off = operation({ op: 'isolate' });
  const upstream = operation({ op: 'reset', what: 'upstream' });

  test('nothing is to be reset where nothing was heard or seen to trip', () => {
    expect(resetsAtHand(benchAfter(plugIn, wait, { op: 'vehicle', state: 'C' }, wait))).toEqual([]);
  });

  // The island's unit has no residual device of its own; the other one says “tripped” itself.
  test('what was heard to trip is reset where it is, until it was', () => {
    expect(tested('curlew-house')).toEqual([['upstream', 'wait']]);
    expect(tested('curlew-house', wait, pilot)).toEqual([['upstream', 'wait']]);
    expect(tested('curlew-house', upstream)).toEqual([]);
    // Only what tripped.
    expect(tested('curlew-house', reset)).toEqual([['upstream', 'wait']]);
  });

  test('what the unit says of itself is reset at the unit, or by the supply: which is for the sheet to say', () => {
    expect(tested('harbour-mews')).toEqual([
      ['unit', 'wait'],
      ['supply', 'wait'],
    ]);
    expect(tested('harbour-mews', reset)).toEqual([]);
  });

  test('a device of the unit that was heard is reset at the unit alone', () => {
    expect(tested('foundry-yard')).toEqual([['unit', 'wait']]);
  });

  test('while the circuit is off by hand nothing is offered that closes something', () => {
    expect(tested('curlew-house', off)).toEqual([]);
    expect(tested('curlew-house', off, operation({ op: 'energise' }))).toEqual([['upstream', 'wait']]);
  });

  test('it waits for a start-up by the sheet, a pause and the closing', () => {
    const bench = benchAfter(plugIn, { op: 'vehicle', pilot: 'shorted-to-earth' }, wait);
    const [row] = resetsAtHand(bench);
    // IEC 61851-1:2017: a pause of 3 s at least, closed within 3 s of the request; the sheet's start-up, and a second more.
    expect(row?.at(-1)).toEqual({ op: 'wait', seconds: bench.run.papers.sheet.startUp + 7 });
  });
});

describe('single acts at hand', () => {
  test('first what takes back what stands, each as long as it does', () => {
    const bent = benchAfter({ op: 'flex-cable' }, { op: 'vehicle', pilot: 'open' }, reset);
    expect(actsAtHand(bent.happened, bent.position).slice(0, 2)).toEqual([
      operation({ op: 'flex-cable', on: false }),
      operation({ op: 'vehicle', pilot: 'sound' }),
    ]);
    const disturbed = benchAfter({ op: 'supply', siteLoad: 10 }, { op: 'supply', loadLimit: 8 });
    expect(actsAtHand(disturbed.happened, disturbed.position).slice(0, 2)).toEqual([
      operation({ op: 'supply', siteLoad: 0 }),
      operation({ op: 'supply', loadLimit: null }),
    ]);
  });

  test('none that was refused, and never to switch on again what is locked off', () => {
    // Nothing can be taken off behind a closed cover.
    const refused = benchAfter({ op: 'disconnect', what: 'unit' });
    expect(actsAtHand(refused.happened, refused.position)).toEqual([]);
    const locked = benchAfter({ op: 'isolate' }, { op: 'energise' }, { op: 'isolate' });
    expect(actsAtHand(locked.happened, locked.position)).toEqual([]);
  });

  test('before anything was done there is none', () => {
    const bench = benchAfter();
    expect([actsAtHand(bench.happened, bench.position), rowsAtHand(bench)]).toEqual([[], []]);
    expect(readingsAtHand(bench)).toEqual([]);
  });
});

describe('readings at hand', () => {
  const volts = (a: string, b: string): Measurement =>
    operation({
      op: 'measure',
      quantity: 'voltage',
      between: [`outlet.${a}`, `outlet.${b}`],
    }) as Measurement;
  const pairs = [volts('L1', 'N'), volts('L1', 'PE'), volts('N', 'PE')];

  test('are those of one press, the newest first, each once', () => {
    expect(readingsAtHand(benchAfter(...pairs, pilot, wait, ...pairs))).toEqual([pairs, [operation(pilot)]]);
  });

  test('those taken most often before those taken once, after the last', () => {
    const line = [volts('L1', 'N')];
    const acts = [...line, wait, ...pairs, wait, ...pairs, wait, pilot, wait, operation(rotation)];
    expect(readingsAtHand(benchAfter(...acts))).toEqual([
      [operation(rotation)],
      pairs,
      [operation(pilot)],
      line,
    ]);
  });

  test('before them those taken while the vehicle stood as it stands now', () => {
    const acts = [...pairs, wait, ...pairs, plugIn, pilot, unplug, operation(rotation)];
    expect(readingsAtHand(benchAfter(...acts, plugIn))).toEqual([
      [operation(rotation)],
      [operation(pilot)],
      pairs,
    ]);
  });

  test('with the circuit on none of those that were taken with it off', () => {
    const insulation = operation({
      op: 'measure',
      quantity: 'insulation',
      between: ['supply.L1', 'supply.PE'],
      volts: 500,
    });
    const dead = [...pairs, operation({ op: 'isolate' }), insulation] as const;
    expect(readingsAtHand(benchAfter(...dead))).toEqual([[insulation]]);
    expect(readingsAtHand(benchAfter(...dead, operation({ op: 'energise' })))).toEqual([pairs]);
  });

  test('set instrument, leads and pattern as they were for them', () => {
    const { happened, run } = benchAfter(...pairs, pilot);
    const draft = draftOf(pairs, lastDraft(happened), run.papers.site);
    expect(draft.spread).toBe('pairs');
    expect(readingsOf(draft, run.papers.site)).toEqual(pairs);
  });
});

test('codings are at hand where the cable is the customer’s own, and out', () => {
  const socket = papersOf(scenarioNamed('foundry-yard').scenario);
  const { position } = benchAfter();
  const amps = codingsAtHand(socket, { ...position, coding: 32 }).map(
    (act) => act.op === 'vehicle' && act.coding,
  );
  expect(amps).toEqual([13, 20, 63, null]);
  expect(codingsAtHand(socket, { ...position, plugged: true })).toEqual([]);
  expect(codingsAtHand(papersOf(scenarioNamed('harbour-mews').scenario), position)).toEqual([]);
});

test('acts that take a figure are at hand with another one, the newest first', () => {
  const papers = papersOf(scenarioNamed('harbour-mews').scenario);
  const done: readonly OperationInput[] = [
    { op: 'supply', loadLimit: 10 },
    wait,
    { op: 'vehicle', load: 16 },
    { op: 'supply', loadLimit: 4 },
    plugIn,
    // A disturbance that the open-PEN measure watches for is more than a voltage.
    { op: 'supply', pen: 'sound', voltage: null },
  ];
  expect(figuredIn(done.map(operation), papers).map(({ name }) => name)).toEqual(['limit', 'load']);
});
