// Collecting believes nothing: the tutor's own copy of the job decides, whatever a file carries or claims, every file that
// came has its row, and what is wrong with it is named there.

import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { drawer } from '../../src/bench/draw.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { classOf } from '../../src/desk/class.ts';
import type { Marked, Row } from '../../src/desk/collect.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
import { csvOf } from '../../src/desk/csv.ts';
import { givingText, quizGiving } from '../../src/desk/giving.ts';
import type { Came } from '../../src/desk/zip.ts';
import type { Question } from '../../src/quiz/question.ts';
import type { SetQuiz } from '../../src/quiz/setQuiz.ts';
import { beginQuiz, questionsOf, withAnswer } from '../../src/quiz/setQuiz.ts';
import { csvRows, lookText, quizLooks, whyNotMarked } from '../../src/words/collect.ts';
import { rightGiven } from '../helpers/answers.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { handedIn, labelled } from './handedIn.ts';
import { givingOf, readGiving, SHIPPED } from './helpers.ts';
import { sweepTampered } from './sweep.ts';

const dyers = scenarioNamed('find-dyers-row').file as object;
const giving = givingOf([dyers]);
const read = readGiving(giving);
const rowsOf = (came: readonly Came[], givings = [read]): readonly Row[] => {
  const copies = new Copies(givings, SHIPPED);
  return came.map((one) => toItsEnd(collecting(one, copies)));
};
const fileOf = (name: string, attempt: Attempt): Came => ({ name, text: makeAttemptText(attempt) });
const looksOf = (row: Row | undefined) => (row?.kind === 'marked' ? row.looks.map(({ id }) => id) : []);
const why = (row: Row | undefined) => (row?.kind === 'refused' ? whyNotMarked(row) : 'marked');

const class6 = handedIn(read, 6);

describe('an attempt that was given out', () => {
  test('is marked as by the command line, and an honest one needs no look for its file', () => {
    const rows = rowsOf(class6.map((attempt) => fileOf(`${attempt.trainee}.json`, attempt)));
    for (const [i, row] of rows.entries()) {
      const attempt = class6[i] as Attempt;
      expect(row).toMatchObject({ kind: 'marked', label: attempt.trainee, giving: giving.giving });
      const { total, parts } = mark(read.jobs[0]?.scenario as never, attempt);
      expect((row as Marked).marks).toMatchObject({ total, parts, differs: [] });
      expect(looksOf(row)).not.toContain('chain');
      expect(looksOf(row)).not.toContain('job-differs');
    }
    expect(new Set(rows.map((row) => (row as Marked).marks.total)).size).toBeGreaterThan(2);
  });

  test('of a job that is not here is refused by name; one that ships, and was not given out, says so', () => {
    const [honest] = class6 as [Attempt];
    const { given: _, ...plain } = honest;
    const foreign = { ...plain, scenario: { ...dyers, id: 'our-own-job' } } as Attempt;
    const [own, other, nowhere] = rowsOf(
      [fileOf('a.json', plain as Attempt), fileOf('b.json', foreign), fileOf('c.json', honest)],
      [],
    );
    expect(looksOf(own)).toContain('not-given-out');
    expect(why(other)).toMatch(/^its job is none of yours/);
    // The giving-out itself is not on this computer; its job ships.
    expect(looksOf(nowhere)).toContain('not-given-out');
  });

  test('with its job doctored under the same id, without its giving-out, is refused', () => {
    const [honest] = class6 as [Attempt];
    const doctored = { ...honest, scenario: { ...dyers, faults: [] } } as Attempt;
    expect(why(rowsOf([fileOf('a.json', doctored)], [])[0])).toMatch(/^its job is none of yours/);
    expect(looksOf(rowsOf([fileOf('a.json', doctored)])[0])).toContain('job-differs');
  });
});

test('a text that is none of ours is told as what a tutor can do about it, with the place where it ends', () => {
  const [honest] = class6 as [Attempt];
  const [cut, other] = rowsOf([
    { name: 'a.json', text: makeAttemptText(honest).slice(0, 400) },
    { name: 'b.json', text: 'see the other file, please' },
  ]);
  for (const row of [cut, other])
    expect(why(row)).toMatch(
      /^cut short, or none that the trainer saved \(not JSON at line \d+, .*\): ask for it once more, as it was saved$/,
    );
});

test('an easier rung is none: it is marked as it was given out, and said', () => {
  const honest = class6[0] as Attempt;
  const easier = labelled({ ...honest, rung: 1 }, honest.trainee ?? '');
  const [row] = rowsOf([fileOf('a.json', easier)]) as [Marked];
  expect(row).toMatchObject({ rung: 2, marks: { passed: false } });
  expect(looksOf(row)).toContain('rung-differs');
  expect(looksOf(row)).not.toContain('chain');
});

test('what two have in common is named: a file twice, a neighbour’s work, another try', () => {
  const [ash, elm] = class6 as [Attempt, Attempt];
  const again = labelled(elm, ash.trainee ?? '');
  const rows = rowsOf([
    fileOf('ash.json', ash),
    fileOf('copy of ash.json', ash),
    fileOf('neighbour.json', labelled(ash, 'yew-22')),
    fileOf('second.json', again),
  ]);
  const { rows: all, counted } = classOf(rows, [giving]);
  const looks = new Map(all.map((one) => [one.row.name, one.looks.map(lookText).join('; ')]));
  expect(looks.get('copy of ash.json')).toMatch(/^the same as ash.json: counted once/);
  expect(looks.get('neighbour.json')).toMatch(/^the same work as ash.json, under another label/);
  expect(looks.get('second.json')).toMatch(/^another try at this job, after ash.json/);
  expect(counted).toBe(2);
});

test('a gate that the tutor sets aside counts, and both are shown', () => {
  const [row] = rowsOf([fileOf('a.json', class6[0] as Attempt)]) as [Marked];
  const critical = [{ entry: 3, id: 'insulation-live', setAside: null }] as const;
  const unsafe: Marked = {
    ...row,
    marks: {
      ...row.marks,
      ...{ total: 90, hurdles: [], passed: false },
      gates: { verdict: true, critical },
    },
  };
  const noted = {
    ...giving,
    tutor: {
      notes: { [row.code]: { comment: '', setAside: [{ gate: 'insulation-live', reason: 'my lead' }] } },
    },
  };
  expect(classOf([unsafe], [giving]).rows[0]?.passed).toBe(false);
  const [one] = classOf([unsafe], [noted]).rows;
  expect(one?.passed).toBe(true);
  expect(csvOf(csvRows(one === undefined ? [] : [one], new Map()))).toContain('(set aside: my lead)');
});

test('the gate of the verdict is set aside as any other is, with the hurdle that is the same verdict; a set goes by it', () => {
  const [row] = rowsOf([fileOf('a.json', class6[0] as Attempt)]) as [Marked];
  const critical = [{ entry: 3, id: 'insulation-live', setAside: null }] as const;
  const fit = {
    ...row,
    marks: {
      ...row.marks,
      ...{ total: 90, hurdles: ['verdict'], passed: false },
      gates: { verdict: false, critical },
    },
    verdict: { said: 'as-designed', right: false, truth: 'not-fit' },
  } as Marked;
  const rule = { pass: 1, noCritical: true, noUnsound: true };
  const noted = (...gates: readonly string[]) => ({
    ...giving,
    rule,
    tutor: {
      notes: { [row.code]: { comment: '', setAside: gates.map((gate) => ({ gate, reason: 'a talk' })) } },
    },
  });
  const told = (...gates: readonly string[]) => {
    const made = classOf([fit], [noted(...gates)]);
    return [made.rows[0]?.passed, made.sets.get(giving.giving)?.[0]?.outcome.met];
  };
  expect(told()).toEqual([false, false]);
  expect(told('verdict')).toEqual([false, false]);
  expect(told('insulation-live')).toEqual([false, false]);
  expect(told('verdict', 'insulation-live')).toEqual([true, true]);
  // The gate holds by itself.
  const alone = { ...fit, marks: { ...fit.marks, hurdles: [] } } as Marked;
  expect(classOf([alone], [noted('insulation-live')]).rows[0]?.passed).toBe(false);
  // Another hurdle is none of the verdict's.
  const below = { ...fit, marks: { ...fit.marks, hurdles: ['verdict', 'judgement'] } } as Marked;
  expect(classOf([below], [noted('verdict', 'insulation-live')]).rows[0]?.passed).toBe(false);
  const [one] = classOf([fit], [noted('verdict')]).rows;
  expect(csvOf(csvRows(one === undefined ? [] : [one], new Map()))).toContain(
    'called fit, not shown to be sound (set aside: a talk); insulation test on a live circuit',
  );
});

test('no row is lost, whatever came, and every one has a place in the table', () => {
  const came: readonly Came[] = [
    fileOf('ok.json', class6[0] as Attempt),
    { name: 'empty.json', text: '' },
    { name: 'list.json', text: '[]' },
    { name: 'null.json', text: 'null' },
    { name: 'scenario.json', text: JSON.stringify(dyers) },
    { name: 'giving.json', text: JSON.stringify(giving) },
    { name: 'notes.txt', problem: 'no-attempt-file' },
    { name: '<img src=x>.json', text: '{"trainee":"=cmd|x","entries":[]}' },
  ];
  const rows = rowsOf(came);
  const table = csvRows(classOf(rows, [giving]).rows, new Map());
  expect(table).toHaveLength(came.length + 1);
  for (const row of table) expect(row).toHaveLength(table[0]?.length ?? 0);
  for (const row of rows.slice(1)) expect(why(row)).not.toBe('marked');
  expect(new Set(table.slice(1).map((row) => row.at(-1)))).toEqual(new Set(came.map(({ name }) => name)));
  expect(csvOf(table)).toContain(`"'=cmd|x"`);
});

test('tampered attempts and doctored scenarios: the true mark by the tutor’s copy, or refused by name', () => {
  expect(sweepTampered({ tampered: 60, doctored: 30, seed: 7 })).toEqual([]);
});

test('the draw of what is tampered with is another one by another seed', () => {
  expect(drawer(1)('which')).not.toBe(drawer(2)('which'));
});

test('a quiz that was handed in has its row: its questions made again, its answers judged again, changed ones named', () => {
  const quiz = { format: 1, title: '=Friday', count: 4, seed: 5, minutes: null, sure: true } as const;
  const [first, ...others] = questionsOf(quiz) as readonly [Question, ...Question[]];
  const worked = [first, ...others.slice(0, 2)].reduce(
    (attempt, question, i) =>
      withAnswer(attempt, {
        question: question.id,
        given: i === 0 ? { way: 'choice', id: 'nonsense' } : rightGiven(question),
        sure: 'would-sign',
        wall: 1000 * i,
      }),
    beginQuiz(quiz, 'ash-07'),
  );
  const better = { ...worked, entries: worked.entries.map((one) => ({ ...one, given: rightGiven(first) })) };
  const rows = rowsOf(
    [
      { name: 'a.json', text: JSON.stringify(worked) },
      { name: 'b.json', text: JSON.stringify({ ...better, trainee: 'elm-19' }) },
      { name: 'c.json', text: JSON.stringify({ ...worked, entries: 'none' }) },
    ],
    [readGiving(quizGiving(quiz, 1))],
  );
  expect(rows.slice(0, 2)).toMatchObject([
    { kind: 'quiz', label: 'ash-07', quiz: { right: 2, of: 4, sureAndWrong: 1, doubts: [] } },
    { kind: 'quiz', quiz: { doubts: ['broken-chain'] } },
  ]);
  expect(rows[2]).toMatchObject({ kind: 'refused' });
  const made = classOf(rows, []);
  expect(made.rows.map(({ row }) => row.name)).toEqual(['c.json', 'b.json', 'a.json']);
  const text = csvOf(csvRows(made.rows, made.sets));
  expect(text).toMatch(/^ash-07,"'=Friday",/m);
  expect(text).toContain('changed after its end');
  expect(text).toContain('sure and wrong once');
});

test('of a quiz the tutor’s own copy decides: other topics, fewer questions or another seed earn nothing, and are named', () => {
  const quiz = { format: 1, title: 'Friday', count: 4, seed: 5, minutes: null, sure: false } as const;
  // By its file, as it comes from another computer.
  const own = readGiving(JSON.parse(givingText(quizGiving(quiz, 1))));
  const allRight = (set: SetQuiz, trainee: string): Came => ({
    name: `${trainee}.json`,
    text: JSON.stringify(
      questionsOf(set).reduce(
        (attempt, question, i) =>
          withAnswer(attempt, { question: question.id, given: rightGiven(question), sure: null, wall: i }),
        beginQuiz(set, trainee),
      ),
    ),
  });
  const easier: readonly SetQuiz[] = [
    { ...quiz, topics: ['dead'] },
    { ...quiz, count: 1 },
    { ...quiz, seed: 6 },
  ];
  const [honest, ...others] = rowsOf(
    [allRight(quiz, 'ash-01'), ...easier.map((set, i) => allRight(set, `elm-${i}`))],
    [own],
  );
  expect(honest).toMatchObject({ giving: own.giving.giving, quiz: { right: 4, of: 4, doubts: [] } });
  expect(others).toHaveLength(3);
  for (const row of others) {
    if (row.kind !== 'quiz') throw new Error('refused');
    expect(row.quiz.of).toBe(4);
    expect(row.quiz.right).toBeLessThan(4);
    expect(quizLooks(row, [])).toContain('its copy of the quiz differs from yours; yours decided');
  }
  // Under another title, or with no copy at all, it is none that was given out.
  const [renamed] = rowsOf([allRight({ ...quiz, title: 'Mine', count: 1 }, 'oak-03')], [own]);
  const [alone] = rowsOf([allRight(quiz, 'oak-03')], []);
  for (const row of [renamed, alone])
    expect(row?.kind === 'quiz' ? quizLooks(row, []) : '').toContain('of no quiz that was given out here');
  // Twice, and a second try, are one.
  const twice = rowsOf(
    [
      allRight(quiz, 'ash-01'),
      { ...allRight(quiz, 'ash-01'), name: 'copy.json' },
      allRight({ ...quiz, seed: 6 }, 'ash-01'),
    ],
    [own],
  );
  expect(classOf(twice, [own.giving]).rows.flatMap(({ looks }) => looks.map(({ id }) => id))).toEqual([
    'same-file',
    'another-try',
  ]);
});

test('a giving-out of nothing is none', () => {
  expect(() => readGiving({ ...giving, jobs: [] })).toThrow('a job is expected, or a quiz beside it');
});
