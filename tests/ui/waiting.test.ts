// Waits that last, in the flow without a screen or a clock: what was asked for is carried out when the wait is over, and
// the log is the same as where it passes at once.

import { expect, test } from 'vitest';
import { createActor } from 'xstate';
import type { OperationInput } from '../../src/bench/operation.ts';
import { attemptMachine, stepIn } from '../../src/ui/flow/attemptMachine.ts';
import { newBench } from '../../src/ui/flow/bench.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const { scenario, file } = scenarioNamed('harbour-mews');

/** As somebody locks whose waits last, or pass at once. */
function locked(pace: 1 | undefined, wait: number, cover: 'closed' | 'open' = 'closed') {
  const actor = createActor(attemptMachine, { input: { bench: newBench(scenario, file) } });
  actor.start();
  actor.send({ type: 'choose', test: 'state-a' });
  const { draft } = actor.getSnapshot().context;
  actor.send({ type: 'draft', draft: { position: { ...draft.position, cover }, wait } });
  actor.send({ type: 'predict' });
  actor.send({ type: 'answer', id: 'voltage', answer: 'should-not' });
  actor.send({ type: 'lock', sure: 'would-sign', wall: 10, ...(pace === undefined ? {} : { pace }) });
  return actor;
}
type Actor = ReturnType<typeof locked>;

const now = (actor: Actor) => actor.getSnapshot();
const isWaiting = (actor: Actor): boolean => now(actor).matches({ working: { observing: 'waiting' } });
const operationsOf = (actor: Actor) =>
  now(actor).context.bench.run.attempt.entries.flatMap((entry) =>
    entry.kind === 'operation' ? [entry.operation] : [],
  );
const inRow = (...operations: readonly OperationInput[]) =>
  ({ type: 'do in a row', operations, wall: 20, pace: 1 }) as const;

test('of a set-up it comes by itself, and nothing is done meanwhile', () => {
  const actor = locked(1, 5);
  expect(isWaiting(actor)).toBe(true);
  expect(now(actor).context).toMatchObject({ wait: { seconds: 5, pace: 1 }, left: 5 });
  const before = operationsOf(actor);
  actor.send({ type: 'do', operation: { op: 'wait', seconds: 1 }, wall: 11 });
  actor.send({ type: 'judge' });
  actor.send({ type: 'pass', left: 3 });
  expect(now(actor).context.left).toBe(3);
  expect(operationsOf(actor)).toEqual(before);
  actor.send({ type: 'waited', wall: 12 });
  expect(isWaiting(actor)).toBe(false);
  expect(stepIn(now(actor))).toBe('observing');
  expect(operationsOf(actor)).toEqual(operationsOf(locked(undefined, 5)));
});

test('in a row the acts before it are done, those after it when it is over', () => {
  const actor = locked(1, 0);
  const before = operationsOf(actor).length;
  actor.send(inRow({ op: 'vehicle', plugged: true }, { op: 'wait', seconds: 2 }, { op: 'pull-plug' }));
  expect(isWaiting(actor)).toBe(true);
  expect(operationsOf(actor).slice(before)).toMatchObject([{ op: 'vehicle' }]);
  actor.send({ type: 'waited', wall: 30, pace: 1 });
  expect(isWaiting(actor)).toBe(false);
  expect(operationsOf(actor).slice(before)).toMatchObject([
    { op: 'vehicle' },
    { op: 'wait', seconds: 2 },
    { op: 'pull-plug' },
  ]);
});

test('after a refusal, or harm, nobody waits', () => {
  const refused = locked(1, 0);
  refused.send(inRow({ op: 'disconnect', what: 'arrester' }, { op: 'wait', seconds: 2 }));
  expect(now(refused).context.bench.happened.at(-1)?.outcome.refused).not.toBeNull();
  expect(isWaiting(refused)).toBe(false);

  const harmed = locked(1, 5, 'open');
  expect(now(harmed).value).toBe('harmed');
  expect(now(harmed).context.wait).toBeNull();
});

test('a sheet over it takes nothing away; who stops there has waited as long as was told', () => {
  const actor = locked(1, 5);
  const before = operationsOf(actor).length;
  actor.send({ type: 'pass', left: 3 });
  actor.send({ type: 'stop' });
  expect(stepIn(now(actor))).toBe('observing');
  actor.send({ type: 'go on' });
  expect(isWaiting(actor)).toBe(true);
  expect(now(actor).context.left).toBe(3);
  actor.send({ type: 'stop' });
  actor.send({ type: 'stopped', why: 'enough', wall: 40 });
  expect(operationsOf(actor).slice(before)).toMatchObject([
    { op: 'wait', seconds: 2 },
    { op: 'stop', why: 'enough' },
  ]);
  expect(now(actor).value).toBe('concluding');
  expect(now(actor).context.wait).toBeNull();
});

test.each([
  ['choosing', []],
  ['setting up', [{ type: 'choose', test: 'state-a' }]],
  ['predicting', [{ type: 'choose', test: 'state-a' }, { type: 'predict' }]],
] as const)('beneath the sheet for stopping it stands at %s', (step, events) => {
  const actor = createActor(attemptMachine, { input: { bench: newBench(scenario, file) } });
  actor.start();
  for (const event of events) actor.send(event);
  actor.send({ type: 'stop' });
  expect(stepIn(now(actor))).toBe(step);
});
