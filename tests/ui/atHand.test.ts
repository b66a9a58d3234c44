// What may be done again by one press: by the trainee's own log and by how things stand, whatever test is in hand.

import { describe, expect, test } from 'vitest';
import type { Measurement, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { actsAtHand, readingsAtHand, rowsAtHand } from '../../src/ui/flow/atHand.ts';
import { done, newBench } from '../../src/ui/flow/bench.ts';
import { draftOf, lastDraft, readingsOf } from '../../src/ui/flow/measurement.ts';
import { codingsAtHand } from '../../src/ui/screens/measure/acts.ts';
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

describe('rows at hand', () => {
  test('are those that come to something as things stand', () => {
    const out = benchAfter(plugIn, wait, pilot, unplug, wait);
    expect(rowsAtHand(out.happened, out.position)).toEqual([[plugIn, wait]]);
    const back = benchAfter(plugIn, wait, pilot, unplug, wait, pilot, plugIn);
    expect(rowsAtHand(back.happened, back.position)).toEqual([[unplug, wait]]);
  });

  test('what changes no position comes to something each time', () => {
    const { happened, position } = benchAfter(reset, wait);
    expect(rowsAtHand(happened, position)).toEqual([[reset, wait]]);
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
    const { happened, position } = benchAfter();
    expect([actsAtHand(happened, position), rowsAtHand(happened, position)]).toEqual([[], []]);
    expect(readingsAtHand(happened)).toEqual([]);
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
    const { happened } = benchAfter(...pairs, pilot, wait, ...pairs);
    expect(readingsAtHand(happened)).toEqual([pairs, [operation(pilot)]]);
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
