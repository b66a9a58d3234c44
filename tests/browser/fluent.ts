// A test as a fluent person does it on a phone: by the shortest way that the page has. What was done before in the job is
// done again as a row, like readings are taken in one press, leads are put on by touching the drawing, what is set up is
// touched where it stands. The bench sees the same acts as from anybody else who does the test.

import type { Locator, Page } from 'playwright-core';
import type { Answer } from '../../src/attempt/record/attempt.ts';
import { ANSWERS } from '../../src/attempt/record/attempt.ts';
import { testLines } from '../../src/attempt/record/lines.ts';
import type { Run } from '../../src/attempt/record/run.ts';
import { rungOf } from '../../src/attempt/record/rung.ts';
import { lastSitting } from '../../src/attempt/record/sitting.ts';
import { truthOf } from '../../src/attempt/record/truth.ts';
import type { Measurement, Operation } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import type { Outcome } from '../../src/bench/perform.ts';
import type { AnyReading } from '../../src/bench/reading.ts';
import type { Probe, Terminal } from '../../src/bench/terminals.ts';
import { terminalsIn } from '../../src/bench/terminals.ts';
import { verify } from '../../src/scenario/verify.ts';
import type { Site } from '../../src/site/site.ts';
import { AT_HAND, actsAtHand, readingsAtHand, rowsAtHand } from '../../src/ui/flow/atHand.ts';
import type { Bench, Happened } from '../../src/ui/flow/bench.ts';
import { takenUp, upTo } from '../../src/ui/flow/bench.ts';
import { instrumentWords } from '../../src/ui/flow/measurement.ts';
import type { Position } from '../../src/ui/flow/position.ts';
import { positionAfter, positionAtStart } from '../../src/ui/flow/position.ts';
import type { ActRow, Offered } from '../../src/ui/flow/rows.ts';
import { isLike, offeredNext, showsReadings } from '../../src/ui/flow/rows.ts';
import type { Spread } from '../../src/ui/flow/spread.ts';
import { SPREAD_WORDS, SPREADS, spreadOver, spreadsOn } from '../../src/ui/flow/spread.ts';
import { resetsAtHand } from '../../src/ui/flow/toReset.ts';
import { actsOn, actText, codingsAtHand, resetText, WAITS } from '../../src/ui/screens/measure/acts.ts';
import { measurementsText, rowText } from '../../src/ui/screens/measure/rowText.ts';
import { procedure } from '../../src/verification/procedure.ts';
import type { Papers, TestAction } from '../../src/verification/testAction.ts';
import { lineText } from '../../src/words/actions.ts';
import { answerText, LIMIT_WORDS } from '../../src/words/answers.ts';
import { probeText, terminalText } from '../../src/words/terminals.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { terminalName } from '../../src/words/trade.ts';
import { press, tick, type } from './hands.ts';
import {
  ANSWER_KEYS,
  act,
  actWith,
  actWords,
  button,
  choose,
  figured,
  figureIn,
  finishTest,
  inHand,
  judgeLimits,
  judgeLines,
  OPENINGS,
  PLACES,
  predict,
  putLead,
  sayFigures,
  setUp,
  setUpFor,
  toJudge,
  toPredict,
  vehicleWords,
  WAIT,
  WAVES,
} from './trainee.ts';

type Segment =
  | { readonly kind: 'acts'; readonly acts: readonly Operation[] }
  | { readonly kind: 'proof'; readonly proof: Operation }
  | { readonly kind: 'readings'; readonly readings: readonly Measurement[] };

function segmentsOf(operations: readonly Operation[]): readonly Segment[] {
  const segments: Segment[] = [];
  for (const one of operations) {
    const last = segments.at(-1);
    if (showsReadings(one)) segments.push({ kind: 'proof', proof: one });
    else if (one.op === 'measure') {
      const [like] = last?.kind === 'readings' ? last.readings : [];
      if (last?.kind === 'readings' && like !== undefined && isLike(like, one))
        segments[segments.length - 1] = { kind: 'readings', readings: [...last.readings, one] };
      else segments.push({ kind: 'readings', readings: [one] });
    } else if (last?.kind === 'acts')
      segments[segments.length - 1] = { kind: 'acts', acts: [...last.acts, one] };
    else segments.push({ kind: 'acts', acts: [one] });
  }
  return segments;
}

/** What a press does is kept a moment after it, ms. */
const KEPT_WITHIN = 10_000;

/** The hands on the drawing by the labels of the lists that set the same. */
const HANDS: Readonly<Record<string, RegExp>> = {
  supply: /^circuit breaker/,
  'main switch': /^main switch/,
  'stand-in': /^vehicle stand-in/,
  'unit’s cover': /^unit’s cover/,
  'unit’s conductors': /^unit’s supply conductors/,
};

/** Touches the thing on the drawing; where it has more positions than two, the bar offers them. */
async function setUpByHand(page: Page, settings: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, option] of Object.entries(settings)) {
    const hand = HANDS[label];
    if (hand === undefined) await setUp(page, { [label]: option });
    else {
      await press(button(page, hand));
      const offered = page.getByRole('button', { name: option, exact: true });
      if (label !== 'unit’s cover' && label !== 'unit’s conductors') await press(offered);
    }
  }
}

/** What a row comes to as things stand: where the stand-in goes, how long is waited there, and every other act. */
function courseOf(row: ActRow, position: Position): readonly (string | number)[] {
  const course: (string | number)[] = [];
  let stands = position;
  for (const act of row) {
    stands = positionAfter(stands, act, false);
    const last = course.at(-1);
    if (act.op === 'wait') {
      if (typeof last === 'number') course[course.length - 1] = last + act.seconds;
      else course.push(act.seconds);
    } else if (act.op !== 'vehicle') course.push(JSON.stringify(act));
    else {
      if (typeof last === 'string' && last.startsWith('at ')) course.pop();
      course.push(`at ${JSON.stringify(stands)}`);
    }
  }
  return course;
}

/**
 * The bench as the page has it, which goes by it to offer something again. What a faultless person does is not refused,
 * but a pull at a plug that is held.
 */
function benchIn(run: Run): Bench {
  const happened = run.samples.map(({ test, entry, sample }): Happened => {
    const { operation, seen, events, readings } = sample;
    const refused = operation.op === 'pull-plug' ? 'it is held' : null;
    return { test, entry, at: seen.at, operation, outcome: { refused, seen, events, readings } as Outcome };
  });
  return upTo({ run, happened, position: positionAtStart(run.papers.sheet) }, happened.length);
}

/** One by one as they are pressed; waits that follow each other are one. */
function singly(acts: readonly Operation[], papers: Papers, from: Position): readonly Operation[] {
  const list: Operation[] = [];
  let stands = from;
  const named = (words: string): Operation => {
    const found = actsOn(papers).find(([, text]) => text === words);
    if (found === undefined) throw new Error(`no act "${words}"`);
    return operation(found[2]);
  };
  for (const one of acts) {
    const last = list.at(-1);
    if (one.op === 'wait' && last?.op === 'wait')
      list[list.length - 1] = { ...last, seconds: last.seconds + one.seconds };
    else if (one.op === 'vehicle' && figured(one) === null)
      list.push(...vehicleWords(one, stands).map(named));
    else list.push(one);
    stands = positionAfter(stands, one, false);
  }
  return list;
}

/** A way of doing the first of what is to be done: what it takes in taps, and how many acts it does. */
interface Way {
  readonly taps: number;
  readonly acts: number;
  readonly by:
    | { readonly kind: 'row'; readonly row: readonly Operation[] }
    | { readonly kind: 'key'; readonly words: string }
    | { readonly kind: 'sheet'; readonly waits?: boolean };
}

/** Every way of doing the first of the acts, and as many after it as one press does with it. */
function waysFrom(acts: readonly Operation[], stands: Position, known: Known): readonly Way[] {
  const { bench, resets } = known;
  const { papers } = bench.run;
  const [first] = acts;
  if (first === undefined) return [];
  const doneBy = (row: ActRow): number => {
    const own = courseOf(row, stands);
    return acts.findIndex((_, end) => comesTo(own, courseOf(acts.slice(0, end + 1), stands))) + 1;
  };
  const rows = [
    ...resets.map((row): Way => {
      return { taps: 1, acts: doneBy(row), by: { kind: 'key', words: resetText(row, papers) } };
    }),
    ...rowsAtHand({ ...bench, position: stands }).map((row, i): Way => {
      return { taps: i < AT_HAND.rows ? 1 : 2, acts: doneBy(row), by: { kind: 'row', row } };
    }),
  ].filter((way) => way.acts > 0);
  const wait = first.op === 'wait' ? WAITS.find((one) => one >= first.seconds) : undefined;
  if (wait !== undefined)
    return [...rows, { taps: 1, acts: 1, by: { kind: 'key', words: `Wait ${wait} s` } }];
  const inSight = [
    ...codingsAtHand(papers, stands),
    ...actsAtHand(bench.happened, stands).slice(0, AT_HAND.acts),
  ];
  const onKey = inSight.find((one) => comesTo(courseOf([one], stands), courseOf([first], stands)));
  const single: Way =
    onKey !== undefined
      ? { taps: 1, acts: 1, by: { kind: 'key', words: actText(onKey, papers) } }
      : { taps: figured(first) === null ? 2 : 3, acts: 1, by: { kind: 'sheet' } };
  const [, second] = acts;
  // With its figure it is done and waited by one press.
  const withWait: readonly Way[] =
    figured(first) !== null && second?.op === 'wait' && second.seconds <= 10
      ? [{ ...single, acts: 2, by: { kind: 'sheet', waits: true } }]
      : [];
  return [...rows, single, ...(onKey === undefined ? withWait : [])];
}

interface Known {
  readonly bench: Bench;
  /** Of what was heard to trip, or says so. */
  readonly resets: readonly ActRow[];
}

function knownIn(run: Run): Known {
  const bench = benchIn(run);
  return { bench, resets: resetsAtHand(bench) };
}

/** Without a reset of what nobody heard trip, and that does not say so, where something else did. */
function withoutNeedless(acts: readonly Operation[], { resets }: Known): readonly Operation[] {
  const due = resets.flat().flatMap((act) => (act.op === 'reset' ? [act.what] : []));
  return due.length === 0
    ? acts
    : acts.filter((act) => act.op !== 'reset' || act.what === 'supply' || due.includes(act.what));
}

/** Whether a row comes to the same; what is waited in it may be longer. */
const comesTo = (own: readonly (string | number)[], due: readonly (string | number)[]): boolean =>
  own.length === due.length &&
  own.every((one, i) => {
    const wanted = due[i];
    return typeof one === 'number' && typeof wanted === 'number' ? one >= wanted : one === wanted;
  });

/** The way with which all of the acts take least. */
function shortest(
  acts: readonly Operation[],
  stands: Position,
  known: Known,
): { readonly taps: number; readonly way: Way | null } {
  const tried = waysFrom(acts, stands, known).map((way) => {
    const after = acts.slice(0, way.acts).reduce((at, one) => positionAfter(at, one, false), stands);
    return { taps: way.taps + shortest(acts.slice(way.acts), after, known).taps, way };
  });
  return tried.toSorted((a, b) => a.taps - b.taps)[0] ?? { taps: 0, way: null };
}

/** By the shortest way: a row that was done before, a key in sight, or the sheet of acts. */
async function doActs(
  page: Page,
  acts: readonly Operation[],
  action: TestAction,
  from: Position,
): Promise<void> {
  const { papers, attempt } = await inHand(page);
  const offered = await offeredIn(page, action);
  if (offered?.next.kind === 'acts' && rowText(offered.next.row) === rowText(acts)) {
    await press(offered.key);
    const after = await inHand(page, attempt.entries.length + 1);
    // What the bench refuses ends a row; what is left of it is the next then.
    const did = after.attempt.entries.length - attempt.entries.length;
    return did < acts.length ? doActs(page, acts.slice(did), action, from) : undefined;
  }
  const known = knownIn(await inHand(page));
  const [whole, needed] = [acts, withoutNeedless(acts, known)].map((all) => singly(all, papers, from));
  const taps = (all: readonly Operation[] = []) => shortest(all, from, known).taps;
  let left = (taps(needed) < taps(whole) ? needed : whole) ?? [];
  let stands = from;
  while (left.length > 0) {
    const run = await inHand(page);
    const { way } = shortest(left, stands, knownIn(run));
    if (way === null) return;
    await goBy(page, way, left[0] as Operation);
    for (const one of left.slice(0, way.acts)) stands = positionAfter(stands, one, false);
    left = left.slice(way.acts);
    await inHand(page, run.attempt.entries.length + 1);
  }
}

/** On the first rung the key of what comes next in the test, once page and log agree on it; null where there is none. */
async function offeredIn(
  page: Page,
  action: TestAction,
): Promise<{ readonly next: Offered; readonly key: Locator } | null> {
  for (const began = Date.now(); ; await page.waitForTimeout(50)) {
    const run = await inHand(page);
    const { scenario, attempt, papers } = run;
    if (rungOf(scenario.support, attempt) !== 1) return null;
    const since = attempt.entries.findLastIndex(({ kind }) => kind === 'prediction');
    const done = run.samples.flatMap(({ entry, sample }) => (entry > since ? [sample.operation] : []));
    const next = offeredNext(action, papers, done);
    if (next === null) return null;
    const text = next.kind === 'acts' ? rowText(next.row) : measurementsText(next.measurements);
    const key = page.getByRole('button', { name: `next in this test: ${text}`, exact: true });
    if (await key.isVisible()) return { next, key };
    if (Date.now() - began > KEPT_WITHIN) throw new Error(`${action.id}: the page does not offer “${text}”`);
  }
}

async function goBy(page: Page, { by, taps }: Way, first: Operation): Promise<void> {
  if (by.kind === 'key') return press(page.getByRole('button', { name: by.words, exact: true }).first());
  if (by.kind === 'row') {
    const again = { name: `Again: ${rowText(by.row)}`, exact: true };
    if (taps === 1) return press(page.getByRole('button', again).first());
    await press(button(page, 'Do…'));
    return press(page.getByRole('dialog').getByRole('button', again).first());
  }
  const asked = figured(first);
  if (asked !== null) return actWith(page, ...asked, by.waits);
  return act(page, first.op === 'vehicle' ? (vehicleWords(first)[0] ?? '') : actWords(first));
}

const key = (page: Page, legend: string, name: string): Locator =>
  page.getByRole('group', { name: legend, exact: true }).getByRole('radio', { name, exact: true });

async function takeTile(page: Page, name: string): Promise<void> {
  const tile = page.getByRole('radio', { name, exact: true });
  if (!(await tile.isVisible())) await press(button(page, /^\d+ more$/));
  await tick(tile);
}

const partOf = (terminal: Terminal): string => {
  const [at = ''] = terminal.split('.');
  return at === 'outlet' ? 'outlet' : at === 'supply' || at === 'case' ? 'unit' : 'origin';
};

const terminalOn = (page: Page, terminal: Terminal): Locator =>
  page.getByRole('button', { name: new RegExp(`^${terminalName(terminal)}, `) });

/** A terminal on the drawing, which is turned to its part first. */
async function lookAt(page: Page, terminal: Terminal): Promise<Locator> {
  const at = terminalOn(page, terminal);
  if (!(await at.isVisible())) await tick(key(page, 'part shown', partOf(terminal)));
  return at;
}

/** The terminal on the drawing, or by its key where a lead of this test was on it before and another part is shown. */
async function reach(page: Page, terminal: Terminal): Promise<Locator> {
  const again = page.getByRole('button', { name: `on ${terminalText(terminal)} again`, exact: true });
  const isByKey = !(await terminalOn(page, terminal).isVisible()) && (await again.isVisible());
  return isByKey ? again : lookAt(page, terminal);
}

const NEXT_LEAD = 'lead that the next tap puts on';
type LeadEnd = 'first' | 'join to first' | 'second';

/** One lead by a touch. */
async function touch(page: Page, end: LeadEnd, terminal: Terminal): Promise<void> {
  await tick(key(page, NEXT_LEAD, end));
  await press(await reach(page, terminal));
}

/** Both leads where they are to be; one that is there already stays. */
async function putLeads(
  page: Page,
  { between: [first, second] }: { between: readonly [Probe, Probe] },
): Promise<void> {
  const on = await page.locator('.bar-line .lead-end').allInnerTexts();
  const [main = '', ...joined] = terminalsIn(first);
  const [other = ''] = terminalsIn(second);
  if (isSame(on, [probeText(first), probeText(second)])) return;
  if (joined.length > 0) return joinLeads(page, [main, ...joined], other);
  // Between two single terminals either lead may be on either.
  if (isSame(on, [probeText(second), probeText(first)])) return;
  // Both on one terminal: a touch would take the lead off that is there.
  if (other === main) {
    if (!(await page.getByLabel('first lead', { exact: true }).isVisible()))
      await press(page.locator('summary', { hasText: 'Leads, in a list' }));
    for (const label of ['first lead', 'second lead']) await putLead(page, label, main);
    return;
  }
  // Of what is joined a touch would take a terminal off; the first lead put elsewhere takes all of it along.
  if (on[0]?.includes(' + ')) {
    const isOn = async (terminal: Terminal) =>
      !/, no lead$/.test((await (await lookAt(page, terminal)).getAttribute('aria-label')) ?? '');
    const free = (await isOn(main)) ? other : main;
    await touch(page, 'first', free);
    return touch(page, 'second', free === main ? other : main);
  }
  const texts = [terminalText(main), terminalText(other)];
  const stays = on.findIndex((text) => texts.includes(text));
  if (stays >= 0) {
    // A first lead that others are joined to reads otherwise, and is put on anew.
    const moves = on[stays] === texts[0] ? other : main;
    return touch(page, stays === 0 ? 'second' : 'first', moves);
  }
  // What is in sight first; the other lead is the next by itself.
  const inSight = await terminalOn(page, other).isVisible();
  const [now, then] = inSight ? [other, main] : [main, other];
  const isJoining = await key(page, NEXT_LEAD, 'join to first').isChecked();
  if (isJoining) await touch(page, 'first', now);
  else await press(await reach(page, now));
  await press(await reach(page, then));
}

/** The first lead on several terminals, and the second on another. */
async function joinLeads(page: Page, wanted: readonly Terminal[], other: Terminal): Promise<void> {
  const stateOf = async (terminal: Terminal) =>
    (await (await lookAt(page, terminal)).getAttribute('aria-label')) ?? '';
  if (!/, second lead$/.test(await stateOf(other))) {
    // Another lead that is there comes off with the first touch.
    if (!/, no lead$/.test(await stateOf(other))) await press(await lookAt(page, other));
    await touch(page, 'second', other);
  }
  const [main = '', ...joined] = wanted;
  // What is on it alone stays; what is joined to another comes off first.
  const [now = ''] = await page.locator('.bar-line .lead-end').allInnerTexts();
  if (now !== terminalText(main)) {
    if (!/, no lead$/.test(await stateOf(main))) await press(await lookAt(page, main));
    await touch(page, 'first', main);
  }
  for (const terminal of joined) await touch(page, 'join to first', terminal);
}

const isSame = (a: readonly string[], b: readonly string[]): boolean => a.join('|') === b.join('|');

const named = (m: Measurement): string =>
  JSON.stringify({
    ...m,
    angle: undefined,
    between: 'between' in m ? m.between.map(terminalsIn).toSorted() : null,
  });

/** The pattern of leads that takes most of what is to be read, and the pair that it begins with. */
function patternFor(
  wanted: readonly Measurement[],
  site: Site,
): { m: Measurement; spread: Spread; takes: readonly string[] } {
  const open = new Set(wanted.map(named));
  const [m] = wanted;
  if (m === undefined) throw new Error('nothing is to be read');
  const spreads =
    m.quantity === 'residual' && site.phases > 1 ? (['one', 'lines'] as const) : spreadsOn(site);
  const tried = spreads.map((spread) => ({ m, spread, takes: spreadOver(m, spread, site).map(named) }));
  const own = ({ takes }: (typeof tried)[number]) => takes.filter((one) => open.has(one)).length;
  // More rows than needed are more to write.
  const worth = (one: (typeof tried)[number]) => 4 * own(one) - 2 * one.takes.length;
  return tried.toSorted((a, b) => worth(b) - worth(a))[0] ?? { m, spread: 'one', takes: [named(m)] };
}

async function setInstrument(page: Page, m: Measurement, spread: Spread, site: Site): Promise<void> {
  await takeTile(page, instrumentWords(m.quantity === 'voltage' ? m.tool : m.quantity));
  const spreads = page.getByRole('group', { name: 'readings on', exact: true });
  if (await spreads.isVisible()) {
    const word = m.quantity === 'residual' && spread === 'one' ? 'this line' : SPREAD_WORDS[spread];
    // Where the pattern that is set takes the same it stays.
    const checked = spreads.locator('input:checked');
    const now = (await checked.count()) === 0 ? '' : await checked.inputValue();
    const same = (SPREADS as readonly string[]).includes(now) ? spreadOver(m, now as Spread, site) : [];
    if (JSON.stringify(same) !== JSON.stringify(spreadOver(m, spread, site)))
      await tick(spreads.getByRole('radio', { name: word, exact: true }));
  }
  switch (m.quantity) {
    case 'insulation':
      await tick(key(page, 'test voltage, V d.c.', String(m.volts)));
      break;
    case 'loop':
      await tick(key(page, 'test current', m.current));
      break;
    case 'opening-time':
      await tick(key(page, 'clock starts', OPENINGS[m.of]));
      break;
    case 'phase-sequence':
      await tick(key(page, 'at', PLACES[m.at] ?? ''));
      break;
    case 'residual': {
      await tick(key(page, 'waveform', WAVES[m.waveform] ?? ''));
      await tick(key(page, 'at', m.at));
      const lines = page.getByRole('group', { name: 'line to PE', exact: true });
      if (await lines.isVisible()) await tick(lines.getByRole('radio', { name: m.line, exact: true }));
      await tick(key(page, 'current', m.mode === 'ramp' ? 'rising' : 'fixed'));
      if (m.mode === 'ramp') break;
      const fields = [
        [/^fixed at/, m.amps === undefined ? '' : String(Number((1000 * m.amps).toPrecision(6)))],
        [/^held at most/, m.seconds === undefined ? '' : String(m.seconds)],
      ] as const;
      for (const [label, text] of fields) {
        const field = page.getByLabel(label);
        if ((await field.inputValue()) !== text) await type(field, text);
      }
      // The pad’s last key checks the leads.
      break;
    }
  }
  if ('between' in m) await putLeads(page, m);
}

/** Sets the instrument, puts the leads on, reads, and writes down; as often as the patterns need. */
async function takeReadings(
  page: Page,
  readings: readonly Measurement[],
  { site, action, goesOn }: { readonly site: Site; readonly action: TestAction; readonly goesOn: GoesOn },
): Promise<boolean> {
  let left = readings;
  let goes = false;
  while (left.length > 0) {
    const offered = await offeredIn(page, action);
    if (offered?.next.kind === 'readings') {
      await press(offered.key);
      const apply = button(page, /^Apply/);
      await apply
        .or(page.getByRole('form', { name: /^Write down/ }))
        .first()
        .waitFor();
      if (await apply.isVisible()) await press(apply);
      const taken = offered.next.measurements.map(named);
      left = left.filter((one) => !taken.includes(named(one)));
    } else {
      const { m, spread, takes } = patternFor(left, site);
      const again = await readAgain(
        page,
        left,
        takes.filter((one) => left.some((due) => named(due) === one)).length,
      );
      if (again !== null) {
        left = left.filter((one) => !again.includes(named(one)));
        goes = await writeDown(page, left.length === 0 ? goesOn : null);
        continue;
      }
      await setInstrument(page, m, spread, site);
      const read = button(page, /^Read( \d+ pairs)?$/);
      if (await read.isVisible()) await press(read);
      else {
        await press(button(page, 'Check leads'));
        await press(button(page, /^Apply/));
      }
      left = left.filter((one) => !takes.includes(named(one)));
    }
    goes = await writeDown(page, left.length === 0 ? goesOn : null);
  }
  return goes;
}

/** Readings that were taken before in the job, by one press; null where they are fewer of those that are due than `least`. */
async function readAgain(
  page: Page,
  due: readonly Measurement[],
  least: number,
): Promise<readonly string[] | null> {
  const open = new Set(due.map(named));
  // What is held until it trips may be held longer than it needs.
  const fulfils = (one: Measurement): string =>
    open.has(named(one)) || one.quantity !== 'residual' ? named(one) : named({ ...one, seconds: undefined });
  const groups = readingsAtHand(benchIn(await inHand(page))).slice(0, AT_HAND.readings);
  const fits = groups.filter(
    (group) => group.length >= least && group.every((one) => open.has(fulfils(one))),
  );
  const [most] = fits.toSorted((a, b) => b.length - a.length);
  const [first] = most ?? [];
  if (most === undefined || first === undefined) return null;
  const text = `Again: ${measurementsText(most)}`;
  const sameText = groups.filter((group) => measurementsText(group) === measurementsText(most));
  const keys = page.getByRole('button', { name: text, exact: true });
  await press(keys.nth(sameText.indexOf(most)));
  const apply = button(page, /^Apply/);
  await apply
    .or(page.getByRole('form', { name: /^Write down/ }))
    .first()
    .waitFor();
  if (await apply.isVisible()) await press(apply);
  return most.map(fulfils);
}

/** What the press that writes goes on to: to be judged, or on the first rung the next acts of the test. */
type GoesOn = 'judge' | 'next' | null;

/** Everything that is shown, as it is shown; the last of a test with the press that goes on to judge it. */
async function writeDown(page: Page, goesOn: GoesOn): Promise<boolean> {
  const form = page.getByRole('form', { name: /^Write down/ });
  await form.waitFor();
  const rows = await form
    .getByRole('row')
    .filter({ has: page.getByRole('textbox') })
    .all();
  if (rows.length > 0) {
    const shown = await Promise.all(rows.map((row) => row.getByRole('cell').first().textContent()));
    const texts = shown.map((text) => typedText(text ?? ''));
    // The pad goes on by itself from a figure that has digits.
    const isAlike = texts.length > 2 && new Set(texts).size === 1 && !/\d/.test(texts[0] ?? '');
    for (const [i, row] of rows.entries()) {
      if (i === 0 || !isAlike) await type(row.getByRole('textbox'), await withUnit(form, texts[i] ?? ''));
      await tickTripped(page, row);
    }
    if (isAlike) await press(form.getByRole('button', { name: /^Same figure for every/ }));
  } else {
    const [text = ''] = await form.allInnerTexts();
    const shown = text.split('\n').slice(1).join(' ');
    const figure = (await form.locator('.shown').first().textContent()) ?? '';
    const field = form.getByLabel(/^(it shows|high half|tripped after, ms)$/);
    await type(field, await withUnit(form, typedText(figure)));
    const period = /a to b\s([\d.]+)\sms.*period\s([\d.]+)\sms/su.exec(shown);
    if (period !== null) {
      const duty = (100 * Number(period[1])) / Number(period[2]);
      await type(form.getByLabel('low half, V'), /low ([+−][\d.]+)/u.exec(shown)?.[1] ?? '');
      await type(form.getByLabel(/^duty/), duty.toFixed(1));
      await type(form.getByLabel(/^so it offers/), String(Math.round(0.6 * duty)));
    }
    await tickTripped(page, form);
  }
  const volts = /(\d+)\sV d\.c\.|insulation, (\d+) V/u.exec((await form.textContent()) ?? '');
  const voltage = form.getByLabel(/test voltage/);
  if ((await voltage.count()) > 0 && (await voltage.inputValue()) === '')
    await type(voltage, (await lastVolts(page)) ?? volts?.[1] ?? volts?.[2] ?? '');
  // On the pad as long as it is up; it goes by itself with the last digit that is shown.
  const own = await form.evaluateHandle((one) => one);
  const { length } = (await inHand(page)).attempt.entries;
  const on = goesOn === null ? null : button(page, `Write, ${goesOn}`).filter({ visible: true });
  // A pad that goes by itself is waited for; one that stays has a key of its own.
  const pad = page.getByRole('region', { name: 'Key pad' });
  if (goesOn === 'next') await pad.waitFor({ state: 'hidden', timeout: PAD_GOES_WITHIN }).catch(() => {});
  const write = button(page, /^Write /).filter({ visible: true });
  await write.first().waitFor();
  const goes = on !== null && (goesOn === 'judge' || (await on.count()) > 0);
  await press(goes ? on.first() : write.first());
  if (goes && goesOn === 'next') await inHand(page, length + 2);
  // There may be another already.
  await page.waitForFunction((one) => !one.isConnected, own);
  return goes;
}

/** Long beside what a busy page takes to put its pad away, ms. */
const PAD_GOES_WITHIN = 1000;

/** As it is set on the instrument. */
const lastVolts = async (page: Page): Promise<string | null> => {
  const run = await inHand(page);
  const reading: AnyReading | undefined = run.readings.at(-1)?.reading;
  return reading?.volts === undefined ? null : String(reading.volts);
};

async function tickTripped(page: Page, within: Locator): Promise<void> {
  const keys = within.getByRole('group', { name: /what tripped/ });
  if ((await keys.count()) === 0) return;
  const { readings } = await inHand(page);
  const reading: AnyReading | undefined = readings.at(-1)?.reading;
  await tick(keys.locator(`input[value="${reading?.trippedWhat ?? 'none'}"]`));
}

/** Where the unit is in the field's name there is no key for it. */
const withUnit = async (form: Locator, text: string): Promise<string> =>
  (await form.getByRole('group', { name: 'unit', exact: true }).count()) > 0
    ? text
    : text.replace(/ ms$/, '');

/** What is typed of what is shown. */
function typedText(shown: string): string {
  if (/no reading/.test(shown)) return 'no reading';
  if (/no trip/.test(shown) && !/no trip up to/.test(shown)) return 'no trip';
  // The order of the lines is a bare number.
  if (/^\s*\d\s/.test(shown) && !/[VAΩs]/.test(shown)) return shown.trim().charAt(0);
  const { number, unit, over } = figureIn(shown);
  return `${over ? '> ' : ''}${number} ${unit}`;
}

/** The whole test: chosen, set up, predicted, measured, judged, told, and on. */
export async function fluently(page: Page, action: TestAction): Promise<void> {
  const before = await inHand(page);
  const { papers } = before;
  const isGuided = rungOf(before.scenario.support, before.attempt) === 1;
  const operations = procedure(before.world, action, papers);
  const bench = takenUp(before.scenario, before.attempt);
  await choose(page, testTitle(action.id));
  const { settings, done } = isShorterDone(before, bench.position, operations)
    ? { settings: {}, done: 0 }
    : setUpFor(before, bench.position, operations);
  const { [WAIT]: _, ...touched } = settings as Record<string, string>;
  await setUpByHand(page, touched);
  await predictFluently(page, before, action);
  let stands = bench.position;
  // What is waited at the end is waited afterwards: it has a key there.
  const skipped = operations[done - 1]?.op === 'wait' ? done - 1 : done;
  for (const one of operations.slice(0, skipped)) stands = positionAfter(stands, one, false);
  const end = operations.at(-1);
  // To look takes a second by itself; where that was too early it is waited.
  const isOver = !isGuided && end?.op === 'wait' && end.seconds <= 1;
  const segments = segmentsOf(operations.slice(skipped, isOver ? -1 : undefined));
  // What comes next was done with the press that wrote down what came before it.
  let isDone = false;
  for (const [i, segment] of segments.entries()) {
    const next = segments[i + 1];
    const goesOn = next === undefined ? 'judge' : isGuided && next.kind !== 'readings' ? 'next' : null;
    if (segment.kind === 'acts') {
      if (!isDone) await doActs(page, segment.acts, action, stands);
      isDone = false;
      for (const one of segment.acts) stands = positionAfter(stands, one, false);
    } else if (segment.kind === 'proof') {
      if (!isDone) await proveAgain(page, segment.proof);
      isDone = await writeDown(page, goesOn);
    } else {
      isDone = await takeReadings(page, segment.readings, { site: papers.site, action, goesOn });
      // Some instruments move the stand-in themselves.
      for (const one of segment.readings) stands = positionAfter(stands, one, false);
    }
  }
  if (isOver && notShown(await inHand(page), action).length > 0) await doActs(page, [end], action, stands);
  const after = await onceShown(page, action);
  // The last reading was written down with the press that goes on from it.
  const isThere = segments.at(-1)?.kind !== 'acts' && segments.length > 0;
  if (!isThere) await toJudge(page);
  await judgeFluently(page, after, action);
  await finishTest(page);
}

/** By the row of it that was done before, or from the sheet of acts. */
async function proveAgain(page: Page, proof: Operation): Promise<void> {
  const did = proof.op === 'prove-dead' ? `proved dead at the ${PLACES[proof.at]}` : actWords(proof);
  const again = page.getByRole('button', { name: new RegExp(`^(Again|next in this test): ${did}`) });
  if (await again.first().isVisible()) await press(again.first());
  else await act(page, actWords(proof));
}

/** Lines of which an attempt does not show what the faultless procedure shows. */
function notShown(run: Run, action: TestAction): readonly string[] {
  const { lines } = truthOf(run, action, lastSitting(run, action.id));
  const due = verify(run.scenario).actions.find((one) => one.action.id === action.id);
  return lines
    .filter(
      ({ id, finding }) =>
        finding === 'not shown' &&
        due?.expectations.some((one) => one.expectation.id === id && one.finding !== 'not shown'),
    )
    .map(({ id }) => id);
}

/** The attempt once it shows what the faultless procedure shows: nothing was saved by leaving something out. */
async function onceShown(page: Page, action: TestAction): Promise<Run> {
  for (const began = Date.now(); ; await page.waitForTimeout(50)) {
    const run = await inHand(page);
    const missing = notShown(run, action);
    if (missing.length === 0) return run;
    if (Date.now() - began > KEPT_WITHIN) throw new Error(`${action.id}: not shown: ${missing.join(', ')}`);
  }
}

/** Whether the first acts take less where they are done than where they are set up; on the first rung they always do. */
function isShorterDone(run: Run, from: Position, operations: readonly Operation[]): boolean {
  if (rungOf(run.scenario.support, run.attempt) === 1) return true;
  const [first] = segmentsOf(operations);
  if (first?.kind !== 'acts') return false;
  const known = knownIn(run);
  const { settings, done } = setUpFor(run, from, operations);
  const stands = operations.slice(0, done).reduce((at, one) => positionAfter(at, one, false), from);
  const touches = Object.entries(settings).filter(([label]) => label !== WAIT).length;
  const rest = singly(first.acts.slice(done), run.papers, stands);
  const wait = (settings as Record<string, string>)[WAIT] === '' ? 0 : 1;
  return (
    shortest(singly(first.acts, run.papers, from), from, known).taps <
    2 * touches + wait + shortest(rest, stands, known).taps
  );
}

/** All lines at once where that takes less: the exceptions, then the same of all that are left. */
async function predictFluently(page: Page, run: Run, action: TestAction): Promise<void> {
  const rung = rungOf(run.scenario.support, run.attempt);
  const lines = testLines(run.scenario, action);
  const counts = ANSWERS.map((answer) => lines.filter(({ right }) => right === answer).length);
  const most = ANSWERS[counts.indexOf(Math.max(...counts))] as Answer;
  const exceptions = lines.filter(({ right }) => right !== most);
  if (rung === 1 || rung === 3) return predict(page, run, action, 'fairly-sure');
  await toPredict(page);
  const turn = button(page, 'All lines at once');
  const saved = lines.length - exceptions.length - 1;
  if (saved > 1 && (await turn.isVisible())) await press(turn);
  if (await button(page, 'Line by line').isVisible()) {
    for (const line of exceptions)
      await press(button(page, `${answerText(line.right)}: ${lineText(action.id, line)}`));
    await press(button(page, ANSWER_KEYS[most]));
  } else for (const { right } of lines) await press(button(page, ANSWER_KEYS[right]));
  await sayFigures(page, run, action, 'fairly-sure');
}

/** As it was said, and all limits alike, each by one press; what differs by itself. */
async function judgeFluently(page: Page, run: Run, action: TestAction): Promise<void> {
  const { lines, limits } = truthOf(run, action, lastSitting(run, action.id));
  const asSaid = button(page, /^\d+ lines as (given|you said)$/);
  if (await asSaid.isVisible()) await press(asSaid);
  const alike = page.getByRole('group', { name: /^All \d+ limits alike/ });
  const words = limits.map(({ right }) => LIMIT_WORDS[right]);
  const [word = ''] = words.toSorted(
    (a, b) => words.filter((x) => x === b).length - words.filter((x) => x === a).length,
  );
  if (await alike.isVisible()) await tick(alike.getByRole('radio', { name: word, exact: true }));
  await judgeLines(page, action, lines);
  await judgeLimits(page, limits);
}
