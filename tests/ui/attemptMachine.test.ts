// The flow of an attempt without a screen: what each step allows, that nothing acts before the lock, and where an
// attempt that was left is taken up again.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { createActor } from 'xstate';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { attemptMachine } from '../../src/ui/flow/attemptMachine.ts';
import type { Bench } from '../../src/ui/flow/bench.ts';
import { newBench, takenUp } from '../../src/ui/flow/bench.ts';

const TEXT = readFileSync(join(import.meta.dirname, '../../scenarios/harbour-mews.json'), 'utf8');

function fresh(support: 'practice' | 'assessment' = 'practice'): Bench {
  const read = parseScenario(JSON.stringify({ ...JSON.parse(TEXT), support }));
  if (!read.ok) throw new Error('the scenario does not parse');
  return newBench(read.scenario, read.file);
}

function begun(bench: Bench = fresh()) {
  const actor = createActor(attemptMachine, { input: { bench } });
  actor.start();
  return actor;
}
type Actor = ReturnType<typeof begun>;

const entriesOf = (actor: Actor) => actor.getSnapshot().context.bench.run.attempt.entries;

/** Through set-up and lock, with the unit's cover to be opened if asked. */
function locked(actor: Actor, cover: 'closed' | 'open' = 'closed'): void {
  actor.send({ type: 'choose', test: 'state-a' });
  const { draft } = actor.getSnapshot().context;
  actor.send({ type: 'draft', draft: { position: { ...draft.position, cover }, wait: 2 } });
  actor.send({ type: 'predict' });
  actor.send({ type: 'answer', id: 'voltage', answer: 'should-not' });
  actor.send({ type: 'lock', sure: 'would-sign', wall: 10 });
}

test('nothing is done and nothing is logged before the lock; then the prediction comes first', () => {
  const actor = begun();
  actor.send({ type: 'choose', test: 'state-a' });
  actor.send({ type: 'do', operation: { op: 'energise' }, wall: 1 });
  expect(entriesOf(actor)).toEqual([]);
  actor.send({ type: 'leave' });
  locked(actor);
  expect(entriesOf(actor).map(({ kind }) => kind)).toEqual(['prediction', 'operation']);
  expect(actor.getSnapshot().matches({ working: 'observing' })).toBe(true);
});

test.each([
  ['guessing', 'fairly-sure', { sure: 'guessing' }],
  // No line can be surer than the whole, nor is one as sure as it written apart.
  ['fairly-sure', 'fairly-sure', {}],
  ['fairly-sure', 'guessing', {}],
] as const)('one line %s of a whole that is %s', (own, whole, logged) => {
  const actor = begun();
  actor.send({ type: 'choose', test: 'state-a' });
  actor.send({ type: 'predict' });
  actor.send({ type: 'answer', id: 'voltage', answer: 'should-not' });
  actor.send({ type: 'lock', sure: whole, lessSure: { voltage: own }, wall: 10 });
  const [prediction] = entriesOf(actor);
  expect(prediction).toMatchObject({ sure: whole });
  expect(prediction?.kind === 'prediction' && prediction.lines).toEqual([
    { id: 'voltage', answer: 'should-not', ...logged },
  ]);
});

test('a critical act stops the work in practice, and making safe goes on with the same test', () => {
  const actor = begun();
  locked(actor, 'open');
  expect(actor.getSnapshot().matches('harmed')).toBe(true);
  expect(actor.getSnapshot().context.harm?.acts.map(({ id }) => id)).toEqual(['cover-circuit-on']);
  actor.send({ type: 'make safe', wall: 20 });
  expect(actor.getSnapshot().matches({ working: 'observing' })).toBe(true);
  expect(actor.getSnapshot().context.bench.position.supply).toBe('off-locked');
});

test('with an earth off, making safe takes the whole installation off', () => {
  const actor = begun();
  locked(actor);
  actor.send({ type: 'do', operation: { op: 'disconnect', what: 'earthing-conductor' }, wall: 20 });
  expect(actor.getSnapshot().context.harm?.acts.map(({ id }) => id)).toContain('earth-off-supply-on');
  actor.send({ type: 'make safe', wall: 20 });
  expect(actor.getSnapshot().context.bench.position).toMatchObject({
    supply: 'off-locked',
    main: 'off-locked',
  });
});

/** Isolated, cover open, proved dead at both places: by hand, in a test that is then judged. */
function madeDead(actor: Actor): void {
  locked(actor);
  for (const operation of [
    { op: 'isolate' },
    { op: 'prove-dead', at: 'origin' },
    { op: 'open-cover' },
    { op: 'prove-dead', at: 'supply' },
  ] as const)
    actor.send({ type: 'do', operation, wall: 20 });
  const note = { kind: 'judgement' as const, test: 'state-a', lines: [], limits: [] };
  actor.send({ type: 'judge' });
  actor.send({ type: 'judged', note, wall: 30 });
  actor.send({ type: 'next' });
}

test('something is put right between tests, and belongs to none', () => {
  const actor = begun();
  madeDead(actor);
  actor.send({ type: 'put right' });
  expect(actor.getSnapshot().matches({ working: 'putting right' })).toBe(true);
  actor.send({ type: 'do', operation: { op: 'put-right', what: 'pe-joint' }, wall: 40 });
  const { bench, test: open } = actor.getSnapshot().context;
  expect(open).toBeNull();
  expect(bench.run.repairs.map(({ what }) => what)).toEqual(['pe-joint']);
  expect(entriesOf(actor).at(-1)).toMatchObject({ kind: 'operation', test: null });
  actor.send({ type: 'leave' });
  expect(actor.getSnapshot().matches({ working: 'choosing' })).toBe(true);
});

test('what was put right is taken up again with the attempt', () => {
  const actor = begun();
  madeDead(actor);
  actor.send({ type: 'put right' });
  actor.send({ type: 'do', operation: { op: 'put-right', what: 'pe-joint' }, wall: 40 });
  const { run, happened } = actor.getSnapshot().context.bench;
  const again = takenUp(run.scenario, run.attempt);
  expect(again.happened).toEqual(happened);
  expect(again.run.repairs).toEqual(run.repairs);
  expect(begun(again).getSnapshot().matches({ working: 'choosing' })).toBe(true);
});

test('put right on a live circuit: harm, and back to where it was once it is safe', () => {
  const actor = begun();
  actor.send({ type: 'put right' });
  actor.send({ type: 'do', operation: { op: 'put-right', what: 'pe-joint' }, wall: 40 });
  expect(actor.getSnapshot().matches('harmed')).toBe(true);
  expect(actor.getSnapshot().context.bench.run.repairs).toEqual([]);
  actor.send({ type: 'make safe', wall: 50 });
  expect(actor.getSnapshot().matches({ working: 'putting right' })).toBe(true);
});

test('in assessment the same act goes unremarked', () => {
  const actor = begun(fresh('assessment'));
  locked(actor, 'open');
  expect(actor.getSnapshot().matches({ working: 'observing' })).toBe(true);
  const { harm, bench } = actor.getSnapshot().context;
  expect(harm).toBeNull();
  expect(bench.run.unsafe.map(({ id }) => id)).toContain('cover-circuit-on');
});

test.each([
  ['practice', 'told'],
  ['assessment', 'choosing'],
] as const)('after judging in %s comes: %s', (support, state) => {
  const actor = begun(fresh(support));
  locked(actor);
  const note = { kind: 'judgement' as const, test: 'state-a', lines: [], limits: [] };
  actor.send({ type: 'judge' });
  actor.send({ type: 'judged', note, wall: 30 });
  expect(actor.getSnapshot().matches({ working: state })).toBe(true);
});

test('the wait stands in the next test as it was set last', () => {
  const actor = begun();
  locked(actor);
  const note = { kind: 'judgement' as const, test: 'state-a', lines: [], limits: [] };
  actor.send({ type: 'judge' });
  actor.send({ type: 'judged', note, wall: 30 });
  actor.send({ type: 'choose', test: 'state-b' });
  expect(actor.getSnapshot().context).toMatchObject({ test: 'state-b', draft: { wait: 2 } });
});

test('in assessment a test is judged once more as long as nothing else is done; in practice what was true is told', () => {
  const note = { kind: 'judgement' as const, test: 'state-a', lines: [], limits: [] };
  const actor = begun(fresh('assessment'));
  actor.send({ type: 'judge again' });
  expect(actor.getSnapshot().matches({ working: 'choosing' })).toBe(true);
  locked(actor);
  actor.send({ type: 'judge' });
  actor.send({ type: 'judged', note, wall: 30 });
  actor.send({ type: 'judge again' });
  expect(actor.getSnapshot().matches({ working: 'judging' })).toBe(true);
  expect(actor.getSnapshot().context).toMatchObject({ test: 'state-a', since: 0 });
  const lines = [{ id: 'voltage', judged: 'not-shown' as const }];
  actor.send({ type: 'judged', note: { ...note, lines }, wall: 40 });
  expect(actor.getSnapshot().matches({ working: 'choosing' })).toBe(true);
  expect(entriesOf(actor).filter(({ kind }) => kind === 'judgement')).toHaveLength(2);

  const practised = begun();
  locked(practised);
  practised.send({ type: 'judge' });
  practised.send({ type: 'judged', note, wall: 30 });
  practised.send({ type: 'next' });
  practised.send({ type: 'judge again' });
  expect(practised.getSnapshot().matches({ working: 'choosing' })).toBe(true);
});

test('stopping can be thought better of; once stopped there is no way back to the bench', () => {
  const actor = begun();
  locked(actor);
  actor.send({ type: 'stop' });
  actor.send({ type: 'go on' });
  expect(actor.getSnapshot().matches({ working: 'observing' })).toBe(true);
  actor.send({ type: 'stop' });
  actor.send({ type: 'stopped', why: 'enough', wall: 40 });
  expect(actor.getSnapshot().matches('concluding')).toBe(true);
  actor.send({ type: 'go on' });
  expect(actor.getSnapshot().matches('concluding')).toBe(true);
});

test('an attempt is taken up where it was left, with what came of every operation', () => {
  const actor = begun();
  locked(actor);
  const measured = { op: 'measure', quantity: 'pilot' } as const;
  actor.send({ type: 'do', operation: measured, wall: 50 });
  const left = actor.getSnapshot().context.bench;
  const read = parseAttempt(makeAttemptText(left.run.attempt));
  if (!read.ok) throw new Error('the attempt does not parse');
  const again = takenUp(read.value.scenario, read.value.attempt);
  expect(again.happened).toEqual(left.happened);
  expect(again.position).toEqual(left.position);
  expect(again.run.attempt).toEqual(left.run.attempt);
  expect(begun(again).getSnapshot().matches({ working: 'observing' })).toBe(true);
});

test('a log that somebody changed keeps its broken chain when it is taken up', () => {
  const actor = begun();
  locked(actor);
  const { scenario, attempt } = actor.getSnapshot().context.bench.run;
  const changed = {
    ...attempt,
    entries: attempt.entries.map((entry) =>
      entry.kind === 'prediction' ? { ...entry, sure: 'guessing' as const } : entry,
    ),
  };
  const hashes = takenUp(scenario, changed).run.attempt.entries.map(({ hash }) => hash);
  expect(hashes).toEqual(attempt.entries.map(({ hash }) => hash));
});
