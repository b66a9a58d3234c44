/**
 * What the device keeps, in a database made by the library that stands for a browser's: every version that there was
 * becomes the present one and the next, copies of the page at one origin keep apart, and what cannot be read is not lost.
 */
import { readFileSync } from 'node:fs';
import * as standIn from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import type { KeepProblem } from '../../src/store/keepProblem.ts';
import type { Card, KeptSession } from '../../src/store/questionRecord.ts';
import { NO_QUESTIONS } from '../../src/store/questionRecord.ts';
import { parseRecord } from '../../src/store/recordFile.ts';
import { makeRecordText } from '../../src/store/recordText.ts';
import { problemText } from '../../src/words/problems.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';

const { scenario, file } = scenarioNamed('mill-race');
const whole = faultlessAttempt(scenario, file);
const begun: Attempt = { ...whole, entries: whole.entries.slice(0, 3) };
const textOf = (attempt: Attempt): string => JSON.stringify(attempt);
const SHARED = 'charge-point-trainer';

// The library that opens a database asks for these by name, and may do so when a test has ended already.
const { default: _, ...types } = standIn;
Object.assign(globalThis, types);

beforeEach(() => {
  vi.stubGlobal('indexedDB', new standIn.IDBFactory());
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

/** The copy of the page in this folder, just opened. */
async function copyAt(folder: string) {
  vi.resetModules();
  vi.stubGlobal('location', { href: `https://a.example${folder}index.html#/record` });
  const kept = await import('../../src/store/keptAttempt.ts');
  const deleting = await import('../../src/store/deleting.ts');
  const record = await import('../../src/store/keptRecord.ts');
  const brought = await import('../../src/store/broughtIn.ts');
  const asked = await import('../../src/store/questions.ts');
  const keeping = await import('../../src/store/keepQuestions.ts');
  const problem = await import('../../src/store/keepProblem.ts');
  const left = await import('../../src/store/leftBehind.ts');
  return {
    ...kept,
    ...left,
    ...deleting,
    ...record,
    ...brought,
    ...asked,
    ...keeping,
    ...problem,
    name: `${SHARED} ${folder}`,
  };
}

type Copy = Awaited<ReturnType<typeof copyAt>>;
const listed = async (copy: Copy) => (await copy.keptAttempts()).map(({ id, entries }) => [id, entries]);
const problemOf = (copy: Copy, doing: Promise<unknown>): Promise<KeepProblem | null> =>
  doing.then(() => null, copy.problemOf);

/** A database as a version of the page left it, with one attempt in it. */
async function leftBy(version: number, name: string, attempt = begun, id = 'a'): Promise<void> {
  const { openKept, UPGRADES } = await import('../../src/store/versions.ts');
  const { aboutOf } = await import('../../src/store/about.ts');
  const db = await openKept(name, UPGRADES.slice(0, version), () => {});
  await db.put('attempts', textOf(attempt), version === 1 ? 'current' : id);
  if (version > 1) {
    await db.put('about', aboutOf(id, attempt, { changed: 5, leftWithout: true }), id);
    await db.put('drafts', { step: 'observing' }, id);
    await db.put('other', { text: 'a goal', at: 5 }, 'goal');
  }
  db.close();
}

describe.each([1, 2, 3, 4])('from version %i', (version) => {
  const id = version === 1 ? 'from-version-1' : 'a';

  test('the present version has it all', async () => {
    const copy = await copyAt('/');
    await leftBy(version, copy.name);
    expect(await listed(copy)).toEqual([[id, 3]]);
    expect(await copy.keptAttempt(id)).toMatchObject({
      text: textOf(begun),
      draft: version === 1 ? null : { step: 'observing' },
    });
    expect(await copy.keptGoal()).toEqual(version === 1 ? null : { text: 'a goal', at: 5 });
  });

  test('the next version can be made of it', async () => {
    const { openKept, UPGRADES } = await import('../../src/store/versions.ts');
    await leftBy(version, 'next');
    const more = UPGRADES.length + 1;
    const next = await openKept(
      'next',
      [...UPGRADES, (db) => void db.createObjectStore('more' as never)],
      () => {},
    );
    expect(next.version).toBe(more);
    expect([...next.objectStoreNames]).toEqual([
      'about',
      'attempts',
      'desk',
      'drafts',
      'more',
      'other',
      'questions',
    ]);
    expect(await next.get('attempts', id)).toBe(textOf(begun));
    expect(await next.get('about', id)).toMatchObject({ id, entries: 3, title: scenario.title });
    next.close();
  });
});

test('one text of the first version that cannot be read is kept, and exported as it is', async () => {
  const db = await openDB(SHARED, 1, { upgrade: (made) => void made.createObjectStore('attempts') });
  await db.put('attempts', '{"entries":[', 'current');
  db.close();
  const copy = await copyAt('/');
  expect(await copy.countUnlisted()).toBe(1);
  expect((await copy.keptRecord()).unreadable).toEqual([{ id: 'from-version-1', text: '{"entries":[' }]);
});

/** The browser's local storage, as far as it is used. */
function localStorageOf(): Storage {
  const own = {
    getItem: (key: string) => (Object.hasOwn(all, key) ? (all as Record<string, string>)[key] : null),
    setItem: (key: string, text: string) => Object.assign(all, { [key]: text }),
    removeItem: (key: string) => Reflect.deleteProperty(all, key),
  };
  const all = Object.create(own);
  return all;
}

describe('a page that went before all was kept', () => {
  const HELD = { holder: 'tab', about: { changed: 20, stands: 'Judge' } } as const;
  const further = { attempt: whole, draft: { step: 'judging' }, about: HELD.about };
  /** One attempt that is kept up to its third entry, and the page that kept it gone. */
  async function cutOff() {
    vi.stubGlobal('localStorage', localStorageOf());
    const copy = await copyAt('/');
    await copy.beginAttempt('a', begun, { changed: 10, holder: HELD.holder });
    return copy;
  }

  test('what was left behind is there when it is opened again, and left behind no longer', async () => {
    const { leaveBehind } = await cutOff();
    leaveBehind('a', { holder: HELD.holder, change: further, begun: null });
    const next = await copyAt('/');
    expect(await next.keptAttempt('a')).toMatchObject({
      text: textOf(whole),
      draft: { step: 'judging' },
      about: { entries: whole.entries.length, concluded: true, changed: 20, stands: 'Judge' },
    });
    expect(Object.keys(localStorage)).toEqual([]);
  });

  test('one of which nothing was kept yet is kept', async () => {
    const { leaveBehind } = await cutOff();
    leaveBehind('b', { holder: HELD.holder, change: further, begun: { began: 1, changed: 1 } });
    const next = await copyAt('/');
    expect(await listed(next)).toEqual([
      ['b', whole.entries.length],
      ['a', 3],
    ]);
    expect((await next.keptAttempt('b'))?.about).toMatchObject({ began: 1, holder: HELD.holder });
  });

  test.each([
    ['another tab has it by now', { holder: 'other' }],
    ['it was kept after all', { change: { ...further, about: { changed: 10 } } }],
  ])('what is kept stands where %s', async (_, but) => {
    const { leaveBehind } = await cutOff();
    leaveBehind('a', { holder: HELD.holder, change: further, begun: null, ...but });
    expect(await listed(await copyAt('/'))).toEqual([['a', 3]]);
    expect(Object.keys(localStorage)).toEqual([]);
  });

  test('what was deleted does not come back', async () => {
    const copy = await cutOff();
    copy.leaveBehind('a', { holder: HELD.holder, change: further, begun: null });
    await copy.deleteAttempt('a');
    expect(Object.keys(localStorage)).toEqual([]);
    copy.leaveBehind('a', { holder: HELD.holder, change: further, begun: null });
    expect(await listed(await copyAt('/'))).toEqual([]);
    copy.leaveBehind('b', { holder: HELD.holder, change: further, begun: { changed: 1 } });
    await copy.deleteEverything();
    expect(await listed(await copyAt('/'))).toEqual([]);
  });

  test('a text that is none of this page’s does no harm', async () => {
    const copy = await cutOff();
    copy.leaveBehind('a', {
      holder: HELD.holder,
      change: { ...further, attempt: {} as Attempt },
      begun: null,
    });
    for (const key of Object.keys(localStorage)) localStorage.setItem(`${key}b`, '{');
    expect(await listed(await copyAt('/'))).toEqual([['a', 3]]);
    expect(Object.keys(localStorage)).toEqual([]);
  });
});

describe('another version of the page', () => {
  test('a newer database is said to be that', async () => {
    const copy = await copyAt('/');
    (await openDB(copy.name, 99)).close();
    expect(await problemOf(copy, copy.keptAttempts())).toBe('newer');
  });

  test('one that an open tab of an earlier version holds is said to be that', async () => {
    const copy = await copyAt('/');
    const open = await openDB(copy.name, 1, { upgrade: (db) => void db.createObjectStore('attempts') });
    expect(await problemOf(copy, copy.keptAttempts())).toBe('other version');
    open.close();
  });
});

describe('copies of the page at one origin', () => {
  test('what they shared is copied once into each, and from then on they keep apart', async () => {
    await leftBy(2, SHARED);
    const root = await copyAt('/');
    expect(await listed(root)).toEqual([['a', 3]]);
    expect((await root.keptAttempts())[0]).toMatchObject({ leftWithout: true, changed: 5 });
    expect(await root.keptGoal()).toEqual({ text: 'a goal', at: 5 });
    await root.beginAttempt('b', begun, { changed: 6, holder: 'tab' });
    const below = await copyAt('/tools/charge/');
    expect(await listed(below)).toEqual([['a', 3]]);
    await below.deleteEverything();
    expect(await listed(await copyAt('/tools/charge/'))).toEqual([]);
    expect(await listed(await copyAt('/'))).toEqual([
      ['b', 3],
      ['a', 3],
    ]);
  });

  test('what is deleted in one does not lie about in what they shared', async () => {
    await leftBy(2, SHARED);
    const root = await copyAt('/');
    await root.deleteAttempt('a');
    expect(await listed(root)).toEqual([]);
    const shared = await openDB(SHARED);
    expect(await shared.getAllKeys('attempts')).toEqual([]);
    expect(await shared.getAllKeys('drafts')).toEqual([]);
    shared.close();
  });

  test('an attempt that goes on in a tab of the earlier version comes over once more', async () => {
    await leftBy(2, SHARED);
    expect(await listed(await copyAt('/'))).toEqual([['a', 3]]);
    await leftBy(2, SHARED, whole);
    expect(await listed(await copyAt('/'))).toEqual([['a', whole.entries.length]]);
    await leftBy(2, SHARED, begun, 'later');
    expect(await listed(await copyAt('/'))).toHaveLength(1);
  });

  test('what was worked on here meanwhile is not written over', async () => {
    await leftBy(2, SHARED);
    const root = await copyAt('/');
    await root.claimAttempt('a', 'tab');
    await root.keepAttempt('a', 'tab', { attempt: whole, about: {} });
    expect(await listed(await copyAt('/'))).toEqual([['a', whole.entries.length]]);
  });
});

describe('an attempt of format 1', () => {
  const text = readFileSync(new URL('../golden/hasty.json', import.meta.url), 'utf8');
  const read = parseAttempt(text);
  if (!read.ok) throw new Error('it does not read');
  const { attempt } = read.value;

  test('is kept as it was written, goes out so, and is the same attempt elsewhere', async () => {
    const here = await copyAt('/');
    const id = await here.keepOpened('old', attempt, 5);
    expect(JSON.parse((await here.keptAttempt(id))?.text ?? '')).toEqual(JSON.parse(text));
    const out = makeRecordText(await here.keptRecord());
    expect(JSON.parse(out).attempts[0].attempt).toEqual(JSON.parse(text));
    const again = parseRecord(out);
    if (!again.ok) throw new Error(again.problems.map(problemText).join());
    const same = { added: 0, longer: 0, keptAlready: 1 };
    expect(await here.mergeRecord(again.value.record)).toEqual(same);
    const there = await copyAt('/elsewhere/');
    expect(await there.mergeRecord(again.value.record)).toEqual({ ...same, added: 1, keptAlready: 0 });
    expect(await listed(there)).toEqual([['old', attempt.entries.length]]);
  });

  test('a shorter one of it is gone on with by the longer', async () => {
    const here = await copyAt('/');
    const file = JSON.parse(text);
    const shorter = parseAttempt(JSON.stringify({ ...file, entries: file.entries.slice(0, 9) }));
    if (!shorter.ok) throw new Error('it does not read');
    const id = await here.keepOpened('old', shorter.value.attempt, 5);
    expect(await here.keepOpened('new', attempt, 6)).toBe(id);
    expect(await listed(here)).toEqual([[id, attempt.entries.length]]);
  });

  test('is kept so too where it is kept as it goes', async () => {
    const here = await copyAt('/');
    await here.beginAttempt('old', attempt, { changed: 5, holder: 'tab' });
    await here.keepAttempt('old', 'tab', { attempt, about: {} });
    expect(JSON.parse((await here.keptAttempt('old'))?.text ?? '')).toEqual(JSON.parse(text));
  });
});

describe('an entry that cannot be read', () => {
  const BROKEN = ['{"entries":[', '{"entries":[1e999]}', '{ "entries": [] }'];

  test('goes out as it was kept, comes in elsewhere, and goes out again', async () => {
    const here = await copyAt('/');
    await here.beginAttempt('good', begun, { changed: 6, holder: 'tab' });
    const db = await openDB(here.name);
    for (const [i, text] of BROKEN.entries()) await db.put('attempts', text, `bad-${i}`);
    db.close();
    const out = await here.keptRecord();
    expect(out.items.map(({ id }) => id)).toEqual(['good']);
    expect(out.unreadable.map(({ text }) => text)).toEqual(BROKEN);
    const read = parseRecord(makeRecordText(out));
    if (!read.ok) throw new Error(read.problems.map(problemText).join());
    expect(read.value.leftOut.map(({ path }) => path)).toEqual(BROKEN.map((_, i) => `unreadable[${i}]`));
    const there = await copyAt('/elsewhere/');
    for (const _again of [1, 2]) await there.mergeRecord(read.value.record);
    expect(await listed(there)).toEqual([['good', 3]]);
    expect(await there.countUnlisted()).toBe(BROKEN.length);
    expect((await there.keptRecord()).unreadable).toEqual(out.unreadable);
  });

  test('that another version can read is an attempt again', () => {
    const text = makeRecordText({
      items: [],
      unreadable: [{ id: 'a', text: textOf(begun) }],
      goal: null,
      questions: NO_QUESTIONS,
      further: {},
    });
    const read = parseRecord(text);
    expect(read.ok && read.value.record.items.map(({ id, attempt }) => [id, attempt])).toEqual([
      ['a', begun],
    ]);
    expect(read.ok && [read.value.record.unreadable, read.value.leftOut]).toEqual([[], []]);
  });
});

describe('what was asked', () => {
  const card = (last: number): Card => ({
    ...{ due: last + 5, last, stability: 2, difficulty: 5, scheduledDays: 3, reps: 1, lapses: 0, state: 2 },
    ...{ topic: 'offer', kind: null, mistake: null, asked: 1, right: 1, sureAndWrong: 0, lastWrong: null },
    kinds: {},
  });
  const session: KeptSession = { address: '', ids: ['a.offer.1'], began: 1, answers: [], at: 0, due: {} };

  test('is kept, goes into the record and out of it, and is deleted with everything', async () => {
    const here = await copyAt('/');
    await here.keepSession(session, [card(10)]);
    await here.keepAssessment(77);
    const out = parseRecord(makeRecordText(await here.keptRecord()));
    if (!out.ok) throw new Error('the record cannot be read');
    expect(out.value.record.questions).toEqual({ cards: [card(10)], assessment: 77, session });
    await here.deleteEverything();
    expect(await here.keptQuestions()).toEqual({ cards: [], assessment: null, session: null });
    await here.mergeRecord(out.value.record);
    expect(await here.keptQuestions()).toEqual({ cards: [card(10)], assessment: 77, session });
  });

  test('that is brought in never takes the place of what was answered later', async () => {
    const here = await copyAt('/');
    const older = { cards: [card(10)], assessment: 1, session: null };
    await here.keepSession(session, [card(20)]);
    await here.keepAssessment(2);
    const record = await here.keptRecord();
    await here.mergeRecord({ ...record, questions: older });
    expect(await here.keptQuestions()).toEqual({ cards: [card(20)], assessment: 2, session });
    await here.mergeRecord({ ...record, questions: { ...older, cards: [card(30)] } });
    expect((await here.keptQuestions()).cards).toEqual([card(30)]);
  });
});
