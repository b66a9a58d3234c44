// The place of an attempt: kept as text at every step and taken up again, it is the same; one that does not fit the
// log, or is no place at all, is not gone to.

import { expect, test } from 'vitest';
import { createActor } from 'xstate';
import { attemptMachine, stepIn } from '../../src/ui/flow/attemptMachine.ts';
import { newBench, takenUp } from '../../src/ui/flow/bench.ts';
import { placeIn } from '../../src/ui/flow/keptPlace.ts';
import { lastDraft, MEASURING_FIELD } from '../../src/ui/flow/measurement.ts';
import { draftOf, placeByLog } from '../../src/ui/flow/place.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const { scenario, file } = scenarioNamed('harbour-mews');

function begun() {
  const actor = createActor(attemptMachine, { input: { bench: newBench(scenario, file) } });
  actor.start();
  return actor;
}
type Actor = ReturnType<typeof begun>;
type Sent = Parameters<Actor['send']>[0];

const CHOOSE: Sent = { type: 'choose', test: 'state-a' };
const PREDICT: Sent = { type: 'predict' };
const JUDGE: Sent = { type: 'judge' };
const ANSWER: Sent = { type: 'answer', id: 'voltage', answer: 'should-not' };
const LOCK: Sent = { type: 'lock', sure: 'would-sign', wall: 10 };
const FIGURE: Sent = { type: 'figure', id: 'volts', value: 12.5 };
const JUDGED: Sent = {
  type: 'judged',
  note: { kind: 'judgement', test: 'state-a', lines: [], limits: [] },
  wall: 30,
};
const draft = (actor: Actor, cover: 'open' | 'closed'): Sent => ({
  type: 'draft',
  draft: { position: { ...actor.getSnapshot().context.draft.position, cover }, wait: 2 },
});

/** As the screens keep it. */
function keptPlace(actor: Actor): string {
  const { test: open, draft: own, answers, figures, bench } = actor.getSnapshot().context;
  const step = stepIn(actor.getSnapshot());
  const place = {
    step,
    stopping: false,
    test: open,
    draft: own,
    answers,
    figures,
    since: 0,
    fields: {},
    wall: 5,
  };
  return JSON.stringify(draftOf(place, bench.run.attempt));
}

/** Another actor, from the log and the kept place alone. */
function again(actor: Actor): Actor {
  const { attempt } = actor.getSnapshot().context.bench.run;
  const bench = takenUp(scenario, JSON.parse(JSON.stringify(attempt)));
  const place = placeIn(bench, JSON.parse(keptPlace(actor)));
  const other = createActor(attemptMachine, { input: { bench, place } });
  other.start();
  return other;
}

test.each([
  ['choosing', []],
  ['setting up', [CHOOSE]],
  ['predicting', [CHOOSE, PREDICT, ANSWER, FIGURE]],
  ['observing', [CHOOSE, PREDICT, ANSWER, LOCK]],
  ['judging', [CHOOSE, PREDICT, ANSWER, LOCK, JUDGE]],
  ['told', [CHOOSE, PREDICT, ANSWER, LOCK, JUDGE, JUDGED]],
  ['concluding', [{ type: 'conclude' }]],
] as const)('%s is taken up as it was', (step, events) => {
  const actor = begun();
  for (const event of events) {
    actor.send(event);
    if (event === CHOOSE) actor.send(draft(actor, 'closed'));
  }
  const { context, value } = actor.getSnapshot();
  expect(stepIn(actor.getSnapshot())).toBe(step);
  const other = again(actor).getSnapshot();
  expect(other.value).toEqual(value);
  const { draft: own, answers, figures, test: open, since } = other.context;
  const { draft: first, answers: said, figures: typed, test: opened, since: locked } = context;
  expect({ own, answers, figures, open, since }).toEqual({
    own: first,
    answers: said,
    figures: typed,
    open: opened,
    since: locked,
  });
});

test('the sheet over a critical act is taken up, and making safe goes on with the test', () => {
  const actor = begun();
  actor.send(CHOOSE);
  actor.send(draft(actor, 'open'));
  for (const event of [PREDICT, ANSWER, LOCK]) actor.send(event);
  const other = again(actor);
  expect(other.getSnapshot().value).toBe('harmed');
  expect(other.getSnapshot().context.harm?.acts).toEqual(actor.getSnapshot().context.harm?.acts);
  other.send({ type: 'make safe', wall: 20 });
  expect(other.getSnapshot().context).toMatchObject({ test: 'state-a' });
  expect(stepIn(other.getSnapshot())).toBe('observing');
});

test.each([
  ['nothing', null],
  ['no place', { step: 'flying' }],
  ['of another log', { head: 'beef' }],
  ['beyond the log', { step: 'judging' }],
  ['told of a test never locked', { step: 'told' }],
  ['harm that was not done', { step: 'harmed' }],
  ['a test that is none', { test: 'dinner' }],
  ['an answer that is none', { answers: { voltage: 'perhaps' } }],
  ['a wait without end', { draft: { wait: 1e9 } }],
])('%s is not gone to', (_, change) => {
  const actor = begun();
  actor.send(CHOOSE);
  const { bench } = actor.getSnapshot().context;
  const kept = change === null ? null : { ...JSON.parse(keptPlace(actor)), ...change };
  expect(placeIn(bench, kept)).toEqual(placeByLog(bench));
  expect(placeIn(bench, JSON.parse(keptPlace(actor))).step).toBe('setting up');
});

test.each([
  ['as it was set', {}, true],
  ['a waveform that no tester has', { waveform: 'square' }, false],
  ['a lead on what is no terminal', { second: 'outlet.X' }, false],
  ['a test voltage that is none', { volts: '3' }, false],
])('how the instruments were set: %s', (_, change, isTakenUp) => {
  const actor = begun();
  const { bench } = actor.getSnapshot().context;
  const fields = { [MEASURING_FIELD]: { ...lastDraft([]), ...change }, note: 'half a word' };
  const place = placeIn(bench, { ...JSON.parse(keptPlace(actor)), fields });
  expect(place.fields).toEqual(isTakenUp ? fields : { note: 'half a word' });
});
