// Which readings a line's finding rests on: the one that decides it, or that would with another value, and no other.
import { expect, test } from 'vitest';
import { restsOn } from '../../src/attempt/record/restsOn.ts';
import type { Run } from '../../src/attempt/record/run.ts';
import { act, note, startRun } from '../../src/attempt/record/run.ts';
import { lastSitting } from '../../src/attempt/record/sitting.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const ACTION = (() => {
  const action = actionNamed('state-a');
  if (action === undefined) throw new Error('no such test');
  return action;
})();

/** Harbour Mews, nothing plugged in, after the lock. */
function locked(): Run {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const run = note(
    startRun(scenario, file),
    { kind: 'prediction', test: ACTION.id, lines: [], figures: [], sure: 'guessing' },
    0,
  );
  return act(run, ACTION.id, operation({ op: 'wait', seconds: 60 }), 0).run;
}
const after = (run: Run, ...inputs: readonly OperationInput[]): Run =>
  inputs.reduce((done, input) => act(done, ACTION.id, operation(input), 0).run, run);
const rests = (run: Run, line: string) => restsOn(run, ACTION, lastSitting(run, ACTION.id), line);
const volts = (a: string, b: string): OperationInput => ({
  op: 'measure',
  quantity: 'voltage',
  tool: 'two-pole',
  between: [a, b],
});

test('a voltage that says too little is what the voltage line rests on, the pilot what its own does', () => {
  const run = after(locked(), volts('outlet.L1', 'outlet.N'), { op: 'measure', quantity: 'pilot' });
  expect(rests(run, 'voltage')).toEqual([0]);
  expect(rests(run, 'high')).toEqual([1]);
});

test('of all the pairs that a dead outlet takes, each is needed', () => {
  const run = after(
    locked(),
    { op: 'measure', quantity: 'pilot' },
    volts('outlet.L1', 'outlet.N'),
    volts('outlet.L1', 'outlet.PE'),
  );
  expect(rests(run, 'voltage')).not.toContain(0);
  expect(rests(run, 'voltage')).toContain(2);
});

test('what is seen rests on no reading', () => {
  const run = after(locked(), volts('outlet.L1', 'outlet.N'));
  expect(rests(run, 'ready')).toEqual([]);
  expect(rests(run, 'no such line')).toEqual([]);
});
