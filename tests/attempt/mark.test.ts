/** Marks: what each habit of a trainee costs, what is a gate, and that the same file always marks the same. */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import { headOf } from '../../src/attempt/record/attempt.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { operation } from '../../src/bench/operation.ts';
import { TYPED_UNITS } from '../../src/bench/readings/display.ts';
import { doubtText } from '../../src/words/doubts.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy, faultlessAttempt } from '../helpers/trainee.ts';

const FULL = { prediction: 15, observation: 10, judgement: 30, record: 10, diagnosis: 20, reasons: 15 };
/** Of what is behind a symptom. */
const FULL_FIND = { prediction: 10, observation: 10, judgement: 20, record: 5, diagnosis: 40, reasons: 15 };

describe.each(scenarioIds)('%s', (id) => {
  const { scenario, file } = scenarioNamed(id);
  const whole = faultlessAttempt(scenario, file);
  const full = scenario.task === 'find' ? FULL_FIND : FULL;

  test('a faultless trainee earns everything', () => {
    const { repeats, ...marks } = mark(scenario, whole);
    expect(marks).toEqual({
      total: 100,
      parts: full,
      weights: full,
      sums: expect.any(Object),
      pass: 70,
      hurdles: [],
      thinking: 0,
      untimely: [],
      gates: { critical: [], verdict: true },
      passed: true,
      differs: [],
    });
    // Behind a symptom there may be something to repeat, but nobody asks for it.
    if (scenario.task === 'verify') expect(repeats.named ?? []).toEqual(repeats.due);
  });

  test('the file gives the same marks and the same text again', () => {
    const text = makeAttemptText(whole);
    const read = parseAttempt(text);
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    expect(makeAttemptText(read.value.attempt)).toBe(text);
    expect(JSON.stringify(mark(read.value.scenario, read.value.attempt))).toBe(
      JSON.stringify(mark(scenario, whole)),
    );
  });

  test('an attempt that holds nothing passes nothing', () => {
    const empty = { ...whole, entries: [] };
    const marks = mark(scenario, empty);
    expect(marks.passed).toBe(false);
    expect(marks.total).toBeLessThan(10);
  });

  test('predicting wrongly costs the prediction and nothing else', () => {
    const wrong = attemptBy(scenario, file, {
      answer: (right) => (right === 'should' ? 'should-not' : 'should'),
    });
    const { parts } = mark(scenario, wrong);
    expect(parts).toEqual({ ...full, prediction: expect.any(Number) });
    expect(parts.prediction).toBeLessThan(full.prediction / 3);
  });
});

describe('a unit that is not sound', () => {
  const { scenario, file } = scenarioNamed('mill-race');

  test('"everything is fine" earns half the judgement', () => {
    const fine = attemptBy(scenario, file, { judge: (_, sound) => sound, judgeLimit: () => 'within' });
    expect(mark(scenario, fine).parts.judgement).toBe(15);
  });

  test('"everything is wrong" earns half the judgement', () => {
    const bad = attemptBy(scenario, file, {
      judge: (_, sound) => (sound === 'did' ? 'did-not' : 'did'),
      judgeLimit: () => 'outside',
    });
    expect(mark(scenario, bad).parts.judgement).toBe(15);
  });

  test('accepting it fails the verdict gate, whatever the total', () => {
    const accepted = attemptBy(scenario, file, {
      conclude: (right) => ({ ...right, verdict: 'fit' }),
    });
    const marks = mark(scenario, accepted);
    expect(marks.total).toBeGreaterThan(90);
    expect(marks.gates.verdict).toBe(false);
    expect(marks.passed).toBe(false);
  });

  test('the right block without the cause earns half the diagnosis', () => {
    const block = attemptBy(scenario, file, { conclude: (right) => ({ ...right, cause: null }) });
    expect(mark(scenario, block).parts.diagnosis).toBe(10);
  });

  test('another cause that reads quite differently earns nothing', () => {
    const other = attemptBy(scenario, file, {
      conclude: (right) => ({ ...right, cause: 'diode-not-checked', family: 'pilot' }),
    });
    expect(mark(scenario, other).parts.diagnosis).toBe(0);
  });

  test('energising with the failed dead test standing is a critical act', () => {
    const energised = attemptBy(scenario, file, {
      operations: (action, steps) =>
        action.id === 'insulation-outlet'
          ? [...steps, operation({ op: 'close-cover' }), operation({ op: 'energise' })]
          : steps,
    });
    const marks = mark(scenario, energised);
    expect(marks.gates.critical.map(({ id }) => id)).toEqual(['energised-failed-test']);
    expect(marks.passed).toBe(false);
  });

  test('a gate set aside is shown with its reason and no longer fails', () => {
    const marking = {
      ...scenario.marking,
      setAside: [{ gate: 'energised-failed-test', reason: 'shown in class' }],
    };
    const energised = attemptBy(scenario, file, {
      operations: (action, steps) =>
        action.id === 'insulation-outlet'
          ? [...steps, operation({ op: 'close-cover' }), operation({ op: 'energise' })]
          : steps,
    });
    const marks = mark({ ...scenario, marking }, energised);
    expect(marks.gates.critical.map(({ setAside }) => setAside)).toEqual(['shown in class']);
    expect(marks.passed).toBe(true);
  });
});

describe('reading and recording', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');

  test('a misread figure costs observation once: the judgement is held against what was typed', () => {
    const misread = attemptBy(scenario, file, {
      type: (typed, { reading }) => (reading.quantity === 'loop' ? { ...typed, value: 9.9 } : typed),
    });
    const { parts } = mark(scenario, misread);
    expect(parts).toEqual({ ...FULL, observation: expect.any(Number) });
    expect(parts.observation).toBeLessThan(10);
  });

  test('a missing > sign costs the record', () => {
    const bare = attemptBy(scenario, file, {
      type: (typed) => (typed.qualifier === '>' ? { ...typed, qualifier: null } : typed),
    });
    expect(mark(scenario, bare).parts.record).toBeLessThan(10);
  });

  test('a value in milliohms, kilohms or megohms is the same value', () => {
    const kilohms = attemptBy(scenario, file, {
      type: (typed, { reading }) =>
        reading.quantity === 'insulation' && typed.value !== null
          ? { ...typed, value: (typed.value * TYPED_UNITS[typed.unit]) / 1e3, unit: 'kΩ' }
          : typed,
    });
    expect(mark(scenario, kilohms).total).toBe(100);
  });

  test('tests left out count as nothing, and a reason for them counts in the record', () => {
    const short = attemptBy(scenario, file, { tests: (all) => all.slice(0, 10) });
    const { parts } = mark(scenario, short);
    // Ten of the forty-odd tests, each of them right.
    for (const part of ['prediction', 'observation', 'judgement'] as const)
      expect(parts[part]).toBeLessThan(FULL[part] / 2);
    expect(parts.record).toBeLessThan(10);
  });

  test('rejecting a sound unit costs no gate', () => {
    const rejected = attemptBy(scenario, file, {
      conclude: (right) => ({
        ...right,
        verdict: 'not-fit',
        cause: null,
        next: 'lock-off-and-label',
      }),
    });
    const marks = mark(scenario, rejected);
    expect(marks.gates).toEqual({ critical: [], verdict: true });
    expect(marks.parts.diagnosis).toBe(0);
  });
});

describe('a file that was edited', () => {
  const { scenario, file } = scenarioNamed('mill-race');
  const whole = faultlessAttempt(scenario, file);

  test('a claimed total is compared, never believed', () => {
    const marks = mark(scenario, { ...whole, marks: { total: 12 } });
    expect(marks.total).toBe(100);
    expect(marks.differs.map(doubtText)).toEqual(['marks.total: the file says 12, the replay 100']);
  });

  test('a changed entry breaks the chain at its place', () => {
    const entries = whole.entries.map((entry, i) => (i === 0 ? { ...entry, wall: 999 } : entry));
    expect(mark(scenario, { ...whole, entries }).differs.map(doubtText)).toContain(
      'entries[0].hash: does not follow from the entries before it',
    );
  });

  test('a moved bench time is noticed', () => {
    const entries = whole.entries.map((entry, i) => (i === 5 ? { ...entry, at: entry.at + 1 } : entry));
    expect(
      mark(scenario, { ...whole, entries }).differs.some((d) => doubtText(d).startsWith('entries[5].at')),
    ).toBe(true);
  });

  test('the head is eight characters of the last hash', () => {
    expect(headOf(whole)).toBe(whole.entries.at(-1)?.hash.slice(0, 8));
    expect(headOf(whole)).toMatch(/^[0-9a-f]{8}$/);
  });
});

test('an optional test left out costs nothing, and counts where it is done', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const without = attemptBy(scenario, file, {
    tests: (expected) => expected.filter(({ optional }) => optional !== true),
  });
  expect(without.entries.length).toBeLessThan(faultlessAttempt(scenario, file).entries.length);
  expect(mark(scenario, without)).toMatchObject({ total: 100, parts: FULL, passed: true });
  const askew = attemptBy(scenario, file, {
    type: (typed) =>
      typed.test === 'residual-five' && typed.tripMs !== undefined ? { ...typed, tripMs: 999 } : typed,
  });
  expect(mark(scenario, askew).parts.observation).toBeLessThan(10);
});
