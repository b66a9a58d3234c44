/**
 * Attempts in which something is put right: what is then judged, by which unit, and what naming and repeating tests
 * is worth in the reasons. An attempt of an older engine, which knew none of it, is marked by what it holds.
 */
import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { mattered } from '../../src/attempt/marks/mattered.ts';
import type { Attempt, Noted, NotedOf } from '../../src/attempt/record/attempt.ts';
import { appended } from '../../src/attempt/record/attempt.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { doubtText } from '../../src/words/doubts.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import type { Habits } from '../helpers/trainee.ts';
import { attemptBy, attemptWithRepair, faultlessAttempt } from '../helpers/trainee.ts';

const FULL = { prediction: 15, observation: 10, judgement: 30, record: 10, diagnosis: 20, reasons: 15 };
const mill = scenarioNamed('mill-race');
const orchard = scenarioNamed('orchard-lane');

/** Everything done and concluded rightly but for what is named to be repeated. */
const naming = (repeat: (due: readonly string[]) => readonly string[]): Habits => ({
  conclude: (right) => ({ ...right, repeat: [...repeat(right.repeat ?? [])] }),
});
const reasonsOf = (habits: Habits): number =>
  mark(mill.scenario, attemptBy(mill.scenario, mill.file, habits)).parts.reasons;

describe('naming what is repeated, where nothing was put right', () => {
  test('the failed test and what the hand will disturb', () => {
    const { parts, repeats } = mark(mill.scenario, faultlessAttempt(mill.scenario, mill.file));
    expect(parts).toEqual(FULL);
    expect(repeats).toMatchObject({
      due: ['pe-circuit', 'r1r2-polarity', 'insulation-circuit', 'insulation-unit'],
      named: ['pe-circuit', 'r1r2-polarity', 'insulation-circuit', 'insulation-unit'],
      done: [],
    });
  });

  test.each<[string, (due: readonly string[]) => readonly string[], number]>([
    ['one missing of four', (due) => due.slice(1), 14.3],
    ['one needless beside four', (due) => [...due, 'poles-open'], 14.3],
    ['one named twice is named once', (due) => [...due, ...due], 15],
    ['free ones', (due) => [...due, 'inspect', 'prove-dead', 'pe-outlet'], 15],
    ['none', () => [], 12],
    ['every test there is', (due) => [...due, 'insulation-outlet', 'poles-open', 'coding', 'a', 'b'], 12],
  ])('%s', (_, repeat, reasons) => {
    expect(reasonsOf(naming(repeat))).toBe(reasons);
  });

  test('a sound unit that is rejected has nothing to be repeated', () => {
    const sound = scenarioNamed('harbour-mews');
    const rejected = (repeat: readonly string[]) =>
      mark(
        sound.scenario,
        attemptBy(sound.scenario, sound.file, {
          conclude: (right) => ({
            ...right,
            verdict: 'not-fit',
            cause: null,
            repeat: [...repeat],
          }),
        }),
      );
    expect(rejected([]).parts.reasons - rejected(['loop']).parts.reasons).toBe(3);
  });
});

describe('a fault that is put right', () => {
  const { scenario, file } = orchard;
  const whole = attemptWithRepair(scenario, file, 'direct-detector-dead');

  test('diagnosed, put right, repeated, finished: everything', () => {
    const marks = mark(scenario, whole);
    expect(marks).toMatchObject({ total: 100, parts: FULL, passed: true, differs: [] });
    expect(marks.gates).toEqual({ critical: [], verdict: true });
    expect(marks.repeats).toMatchObject({ due: ['dc-ramp'], named: ['dc-ramp'], done: ['dc-ramp'] });
    expect(whole.entries.findLast(({ kind }) => kind === 'conclusion')).toMatchObject({
      verdict: 'fit',
      cause: 'direct-detector-dead',
      next: 'hand-over',
    });
  });

  test('the file gives the same marks and the same text again', () => {
    const text = makeAttemptText(whole);
    const read = parseAttempt(text);
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    expect(makeAttemptText(read.value.attempt)).toBe(text);
    expect(mark(read.value.scenario, read.value.attempt)).toEqual(mark(scenario, whole));
  });

  test('the debrief says what was put right, and that the unit is fit as it now is', () => {
    const told = debriefOf(scenario, whole);
    expect(told.repaired).toEqual([{ what: 'direct-detector-dead', wasWrong: true }]);
    expect(told.verdict).toMatchObject({ right: true, truth: 'fit' });
    expect(told.causes.map(({ id }) => id)).toEqual(['direct-detector-dead']);
    expect(told.stopped?.action).toBe('dc-ramp');
  });

  test('fit without the due test repeated costs the reasons, and no gate since the unit is sound', () => {
    const hasty = attemptWithRepair(scenario, file, 'direct-detector-dead', { repeated: () => [] });
    const marks = mark(scenario, hasty);
    expect(marks.repeats).toMatchObject({ due: ['dc-ramp'], named: ['dc-ramp'], done: [] });
    expect(marks.gates).toEqual({ critical: [], verdict: true });
    expect(marks.parts.reasons).toBe(9);
    expect(mattered(debriefOf(scenario, hasty))[0]?.what).toBe('repeats');
  });

  test('nothing was wrong, says who has put it right: the diagnosis is about the unit as it was met', () => {
    const shy = attemptWithRepair(scenario, file, 'direct-detector-dead', {
      conclude: (right) => ({ ...right, cause: 'nothing', family: null }),
    });
    expect(mark(scenario, shy).parts).toEqual({ ...FULL, diagnosis: 0 });
  });

  test('the last judgement is held against the unit as it then was', () => {
    const judged = whole.entries.filter(
      (entry) => entry.kind === 'judgement' && entry.test === 'dc-ramp',
    ) as NotedOf<'judgement'>[];
    const [before, after] = judged;
    expect(judged).toHaveLength(2);
    const trips = (judgement: typeof before) =>
      judgement?.lines.filter(({ id }) => id.startsWith('trips')).map(({ judged: did }) => did);
    expect(trips(before)).toContain('did-not');
    expect(trips(after)).not.toContain('did-not');
    // Judged on the mended unit as on the faulty one: wrong.
    const stubborn = {
      ...whole,
      entries: whole.entries.map((entry) =>
        (entry as unknown) === after ? { ...entry, lines: before?.lines ?? [] } : entry,
      ) as Attempt['entries'],
    };
    expect(mark(scenario, stubborn).parts.judgement).toBeLessThan(30);
  });
});

describe('another cause put right', () => {
  const { scenario, file } = mill;

  test('leaves the unit not sound: to reject it is right', () => {
    const marks = mark(scenario, attemptWithRepair(scenario, file, 'neutral-joint'));
    expect(marks).toMatchObject({ total: 100, passed: true });
    expect(debriefOf(scenario, attemptWithRepair(scenario, file, 'neutral-joint')).repaired).toEqual([
      { what: 'neutral-joint', wasWrong: false },
    ]);
  });

  test('to accept it fails the gate', () => {
    const accepted = attemptWithRepair(scenario, file, 'neutral-joint', {
      conclude: (right) => ({ ...right, verdict: 'fit' }),
    });
    expect(mark(scenario, accepted)).toMatchObject({ passed: false, gates: { verdict: false } });
  });

  test('a dead test that fails, is not repeated after the repair, and then power: a critical act', () => {
    const hasty = attemptWithRepair(scenario, file, 'pe-joint', { repeated: () => [] });
    expect(mark(scenario, hasty).gates.critical.map(({ id }) => id)).toContain('energised-failed-test');
  });
});

test('what read the same until the repair is as good a diagnosis', () => {
  const { file } = scenarioNamed('harbour-mews');
  const read = readScenario({
    ...(file as object),
    faults: [{ fault: 'pilot-conductor-open' }],
    allowed: ['state-b'],
  });
  if (!read.ok) throw new Error('the scenario does not parse');
  const scenario: Scenario = read.scenario;
  const blamed = attemptWithRepair(scenario, read.file, 'pilot-conductor-open', {
    // Neither conductor carries the pilot when it is open: no vehicle is found.
    conclude: (right) => ({ ...right, cause: 'outlet-pe-open', family: 'protective-conductor' }),
  });
  expect(mark(scenario, blamed).parts.diagnosis).toBe(20);
});

describe('a test that is done twice', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  /** The first time nothing is measured in it. */
  const idleFirst = (): Habits => {
    let times = 0;
    return {
      tests: (all) => all.flatMap((action) => (action.id === 'pe-outlet' ? [action, action] : [action])),
      operations: (action, steps) => (action.id === 'pe-outlet' && times++ === 0 ? [] : steps),
    };
  };

  test.each([2, 4] as const)(
    'and judged once with nothing done is judged by its last sitting, rung %d',
    (rung) => {
      const marks = mark(scenario, attemptBy(scenario, file, { ...idleFirst(), rung }));
      expect(marks).toMatchObject({ total: 100, parts: FULL, passed: true });
    },
  );

  test('and the first prediction counts', () => {
    const whole = attemptBy(scenario, file, idleFirst());
    const [first, second] = whole.entries.filter(
      (entry) => entry.kind === 'prediction' && entry.test === 'pe-outlet',
    );
    const blank = (which: unknown) =>
      mark(scenario, {
        ...whole,
        entries: whole.entries.map((entry) =>
          entry === which ? { ...entry, lines: [] } : entry,
        ) as Attempt['entries'],
      }).parts.prediction;
    expect(second).toBeDefined();
    expect(blank(second)).toBe(15);
    expect(blank(first)).toBeLessThan(15);
  });
});

describe('an attempt made before any of this', () => {
  const { scenario, file } = mill;
  const whole = attemptBy(scenario, file, {
    conclude: ({ repeat: _, ...right }) => right,
  });

  test('is marked by what it holds: the reasons it gave share the part', () => {
    expect(mark(scenario, whole)).toMatchObject({ total: 100, parts: FULL, passed: true });
    expect(mark(scenario, whole).repeats.named).toBeNull();
  });

  test('loads, and is said to be of another engine', () => {
    const before: Attempt = { ...whole, engine: '1.0.0', entries: [] };
    const chained = whole.entries.reduce(
      (log, { hash: _, at, wall, ...noted }) => appended(log, noted as Noted, at, wall),
      before,
    );
    const read = parseAttempt(makeAttemptText(chained));
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    const marks = mark(read.value.scenario, read.value.attempt);
    expect(marks.parts).toEqual(FULL);
    expect(marks.differs.map(doubtText)).toEqual([
      expect.stringMatching(/^engine: the file was made by 1\.0\.0, this is \d/),
    ]);
  });
});
