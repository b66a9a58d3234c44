// Acts and readings as one press: what a pattern of leads takes, which rows a trainee has done, and what comes next on the
// first rung. The log is the same as of single acts.

import { describe, expect, test } from 'vitest';
import type { Measurement, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { done, newBench } from '../../src/ui/flow/bench.ts';
import { offeredNext, rowsDone } from '../../src/ui/flow/rows.ts';
import { spreadOver, spreadsOn } from '../../src/ui/flow/spread.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const single = papersOf(scenarioNamed('harbour-mews').scenario);
const three = papersOf(scenarioNamed('foundry-yard').scenario);

const voltage = (a: string, b: string): Measurement => ({
  op: 'measure',
  quantity: 'voltage',
  between: [a, b],
  tool: 'two-pole',
});
const pairsOf = (list: readonly Measurement[]) =>
  list.map((m) => ('between' in m ? m.between.map((t) => String(t).split('.')[1]).join('–') : ''));

describe('a pattern of leads', () => {
  test('every pair, every live conductor, every line', () => {
    const [one] = [voltage('outlet.L1', 'outlet.N')];
    expect(pairsOf(spreadOver(one as Measurement, 'pairs', single.site))).toEqual(['L1–N', 'L1–PE', 'N–PE']);
    expect(spreadOver(one as Measurement, 'pairs', three.site)).toHaveLength(10);
    expect(pairsOf(spreadOver(one as Measurement, 'lines', three.site))).toEqual(['L1–N', 'L2–N', 'L3–N']);
    const toEarth = voltage('supply.L1', 'supply.PE');
    expect(pairsOf(spreadOver(toEarth, 'lives', single.site))).toEqual(['L1–PE', 'N–PE']);
    // From one side of a pole to the other both ends move.
    const pole = voltage('supply.L1', 'outlet.L1');
    expect(pairsOf(spreadOver(pole, 'lives', three.site))).toEqual(['L1–L1', 'L2–L2', 'L3–L3', 'N–N']);
  });

  test('where there is no other of its kind it is the one reading', () => {
    const one = voltage('met', 'earth');
    for (const spread of spreadsOn(three.site)) expect(spreadOver(one, spread, three.site)).toEqual([one]);
    expect(spreadsOn(single.site)).not.toContain('lines');
  });
});

describe('rows of acts', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const rowsAfter = (...acts: readonly (OperationInput | null)[]) => {
    let bench = newBench(scenario, file);
    for (const act of acts)
      bench = done(bench, act === null ? 'state-b' : 'state-c', act ?? { op: 'wait', seconds: 1 }, 0);
    return rowsDone(bench.happened).map(({ row }) => row);
  };
  const plugIn = operation({ op: 'vehicle', plugged: true, state: 'B' });
  const wait = operation({ op: 'wait', seconds: 3 });
  const ask = operation({ op: 'vehicle', state: 'C' });

  test('are what was done between readings, each once, the most often done and then the newest first', () => {
    const pilot: OperationInput = { op: 'measure', quantity: 'pilot' };
    expect(rowsAfter(wait, plugIn, wait, pilot, ask, wait, pilot, ask, wait)).toEqual([
      [ask, wait],
      [plugIn, wait],
    ]);
    expect(rowsAfter(plugIn, wait, pilot, plugIn, wait, pilot, ask, wait)).toEqual([
      [plugIn, wait],
      [ask, wait],
    ]);
  });

  test('end with the test, and none has what was refused', () => {
    expect(rowsAfter(plugIn, null, ask)).toEqual([[ask], [plugIn]]);
    // Nothing can be taken off behind a closed cover.
    expect(rowsAfter({ op: 'disconnect', what: 'unit' })).toEqual([]);
  });

  test('on the first rung the next is what the test’s steps say, by the papers alone', () => {
    const action = actionNamed('c-to-b');
    if (action === undefined) throw new Error('no such test');
    const steps = action.steps(single).map(operation);
    const first = offeredNext(action, single, []);
    expect(first).toEqual({
      kind: 'acts',
      row: steps.slice(
        0,
        steps.findIndex(({ op }) => op === 'measure'),
      ),
    });
    const reading = offeredNext(action, single, first?.kind === 'acts' ? first.row : []);
    expect(reading).toMatchObject({ kind: 'readings', measurements: [{ quantity: 'opening-time' }] });
    expect(offeredNext(action, single, steps)).toBeNull();
  });
});
