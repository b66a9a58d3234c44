// A test as a fluent person does it on a phone: by the shortest way that the page has. What was done before in the job is
// done again as a row, like readings are taken in one press, leads are put on by touching the drawing, what is set up is
// touched where it stands. The bench sees the same acts as from anybody else who does the test.

import type { Locator, Page } from 'playwright-core';
import type { Run } from '../../src/attempt/run.ts';
import { rungOf } from '../../src/attempt/rung.ts';
import { lastSitting } from '../../src/attempt/sitting.ts';
import { truthOf } from '../../src/attempt/truth.ts';
import type { Measurement, Operation } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import type { Outcome } from '../../src/bench/perform.ts';
import type { Probe, Terminal } from '../../src/bench/terminals.ts';
import { terminalsIn } from '../../src/bench/terminals.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { verifyingOnce } from '../../src/scenario/verify.ts';
import type { Site } from '../../src/site/site.ts';
import { takenUp } from '../../src/ui/flow/bench.ts';
import type { Position } from '../../src/ui/flow/position.ts';
import { positionAfter } from '../../src/ui/flow/position.ts';
import { isLike, rowsDone } from '../../src/ui/flow/rows.ts';
import type { Spread } from '../../src/ui/flow/spread.ts';
import { SPREAD_WORDS, spreadOver, spreadsOn } from '../../src/ui/flow/spread.ts';
import { actsOn } from '../../src/ui/screens/measure/acts.ts';
import { rowText } from '../../src/ui/screens/measure/rowText.ts';
import { procedure } from '../../src/verification/procedure.ts';
import type { Papers, TestAction } from '../../src/verification/testAction.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { terminalName } from '../../src/words/trade.ts';
import { press, tick, type } from './hands.ts';
import {
  act,
  actWith,
  actWords,
  button,
  choose,
  figured,
  figureIn,
  inHand,
  judgeRightly,
  OPENINGS,
  PLACES,
  predict,
  putLead,
  setUp,
  setUpFor,
  vehicleWords,
  WAIT,
  WAVES,
} from './trainee.ts';

const WAITS = [3, 10, 30, 60];

/** What one press does, by its words; and what the bench makes of it. */
interface Step {
  readonly words: string;
  readonly field?: readonly [string, number];
  readonly operation: Operation;
}

/** Acts as they are pressed one by one; waits that follow each other are one, of a length that has a key. */
function stepsOf(acts: readonly Operation[], papers: Papers, from: Position): readonly Step[] {
  const steps: Step[] = [];
  let wait = 0;
  let stands = from;
  const endWait = () => {
    if (wait === 0) return;
    const seconds = WAITS.find((one) => one >= wait) ?? wait;
    const act: Operation = { op: 'wait', seconds };
    const isKey = WAITS.includes(seconds);
    steps.push(
      isKey
        ? { words: `Wait ${seconds} s`, operation: act }
        : { words: 'wait', field: ['seconds', seconds], operation: act },
    );
    wait = 0;
  };
  const named = (words: string): Step => {
    const found = actsOn(papers).find(([, text]) => text === words);
    if (found === undefined) throw new Error(`no act "${words}"`);
    return { words, operation: operation(found[2]) };
  };
  for (const one of acts) {
    if (one.op === 'wait') {
      wait += one.seconds;
      continue;
    }
    endWait();
    const asked = figured(one);
    if (asked !== null) steps.push({ words: asked[0], field: [asked[1], asked[2]], operation: one });
    else if (one.op === 'vehicle') steps.push(...vehicleWords(one, stands).map(named));
    else steps.push({ ...named(actWords(one)), operation: one });
    stands = positionAfter(stands, one, false);
  }
  endWait();
  return steps;
}

type Segment =
  | { readonly kind: 'acts'; readonly acts: readonly Operation[] }
  | { readonly kind: 'proof'; readonly proof: Operation }
  | { readonly kind: 'readings'; readonly readings: readonly Measurement[] };

function segmentsOf(operations: readonly Operation[]): readonly Segment[] {
  const segments: Segment[] = [];
  for (const one of operations) {
    const last = segments.at(-1);
    if (one.op === 'prove-dead') segments.push({ kind: 'proof', proof: one });
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

/** What a row comes to: where the stand-in goes, how long is waited there, and every other act. */
function courseOf(row: readonly Operation[], from: Position): readonly (string | number)[] {
  const course: (string | number)[] = [];
  let stands = from;
  for (const one of row) {
    stands = positionAfter(stands, one, false);
    const last = course.at(-1);
    if (one.op === 'wait') {
      if (typeof last === 'number') course[course.length - 1] = last + one.seconds;
      else course.push(one.seconds);
    } else if (one.op !== 'vehicle') course.push(JSON.stringify(one));
    else {
      if (typeof last === 'string' && last.startsWith('at ')) course.pop();
      course.push(`at ${JSON.stringify(stands)}`);
    }
  }
  return course;
}

/** A row of the trainee's own that comes to the same; what is waited in it may be longer. */
function ownRow(run: Run, wanted: readonly Operation[], from: Position): readonly Operation[] | undefined {
  const done = run.attempt.entries.flatMap((entry, i) =>
    entry.kind === 'operation'
      ? [{ test: entry.test, entry: i, at: 0, operation: entry.operation, outcome: NOT_REFUSED }]
      : [],
  );
  const course = courseOf(wanted, from);
  return rowsDone(done).find((row) => {
    const own = courseOf(row, from);
    return (
      own.length === course.length &&
      own.every((one, i) => {
        const due = course[i];
        return typeof one === 'number' && typeof due === 'number' ? one >= due : one === due;
      })
    );
  });
}

/** What a faultless person does is not refused. */
const NOT_REFUSED = { refused: null } as Outcome;

/** A row that was done before is one press, in sight or on the sheet of acts; else each act is. */
async function doActs(page: Page, acts: readonly Operation[], papers: Papers, from: Position): Promise<void> {
  const steps = stepsOf(acts, papers, from);
  const offered = page.getByRole('button', { name: /^next in this test: / });
  if (await offered.isVisible()) {
    const text = `next in this test: ${rowText(acts)}`;
    if (((await offered.textContent()) ?? '').replace(/\s+/g, ' ') === text) return press(offered);
  }
  const own = ownRow(await inHand(page), acts, from);
  if (own !== undefined) {
    const again = page.getByRole('button', { name: `Again: ${rowText(own)}`, exact: true });
    if (!(await again.first().isVisible())) await press(button(page, 'Do…'));
    return press(again.last());
  }
  for (const { words, field } of steps) {
    const wait = page.getByRole('button', { name: words, exact: true });
    if (words.startsWith('Wait') && (await wait.first().isVisible())) await press(wait.first());
    else if (field === undefined) await act(page, words);
    else await actWith(page, words, ...field);
  }
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

/** A terminal on the drawing, which is turned to its part first. */
async function lookAt(page: Page, terminal: Terminal): Promise<Locator> {
  const at = page.getByRole('button', { name: new RegExp(`^${terminalName(terminal)}, `) });
  if (!(await at.isVisible())) await tick(key(page, 'part shown', partOf(terminal)));
  return at;
}

type LeadEnd = 'first' | 'join to first' | 'second';

/** One lead by a touch. */
async function touch(page: Page, end: LeadEnd, terminal: Terminal): Promise<void> {
  await tick(key(page, 'lead that the next tap puts on', end));
  await press(await lookAt(page, terminal));
}

/** Both leads where they are to be; one that is there already stays. */
async function putLeads(
  page: Page,
  { between: [first, second] }: { between: readonly [Probe, Probe] },
): Promise<void> {
  const state = async (terminal: Terminal) =>
    (await (await lookAt(page, terminal)).getAttribute('aria-label')) ?? '';
  const [main = '', ...joined] = terminalsIn(first);
  const [other = ''] = terminalsIn(second);
  // Both on one terminal: a touch would take the lead off that is there.
  if (other === main) {
    await press(page.locator('summary', { hasText: 'Leads, in a list' }));
    for (const label of ['first lead', 'second lead']) await putLead(page, label, main);
    return press(page.locator('summary', { hasText: 'Leads, in a list' }));
  }
  // Between two single terminals either lead may be on either.
  const isJoined = (await page.locator('.bar-line').first().textContent())?.includes(' + ') === true;
  if (
    !isJoined &&
    joined.length === 0 &&
    (/, second lead$/.test(await state(main)) || /, first lead$/.test(await state(other)))
  ) {
    if (!/, second lead$/.test(await state(main))) await touch(page, 'second', main);
    if (!/, first lead$/.test(await state(other))) await touch(page, 'first', other);
    return;
  }
  const put = async (end: LeadEnd, words: RegExp, terminal: Terminal) => {
    const there = await state(terminal);
    if (words.test(there) && !(isJoined && end === 'first')) return;
    // Another lead that is there comes off with the first touch.
    if (/ lead$/.test(there) && !/no lead$/.test(there)) await press(await lookAt(page, terminal));
    await touch(page, end, terminal);
  };
  await put('second', /, second lead$/, other);
  await put('first', /, first lead$/, main);
  for (const terminal of joined) await put('join to first', /, joined to the first lead$/, terminal);
}

const INSTRUMENT: Readonly<Record<Measurement['quantity'], string>> = {
  voltage: 'two-pole detector, voltage',
  continuity: 'continuity',
  loop: 'loop',
  insulation: 'insulation',
  pilot: 'pilot against time',
  coding: 'proximity coding',
  residual: 'residual current',
  'opening-time': 'opening time',
  electrode: 'earth electrode, three stakes',
  'phase-sequence': 'order of the lines',
};

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

async function setInstrument(page: Page, m: Measurement, spread: Spread): Promise<void> {
  await takeTile(
    page,
    m.quantity === 'voltage' && m.tool === 'meter' ? 'meter 10 MΩ, voltage' : INSTRUMENT[m.quantity],
  );
  const spreads = page.getByRole('group', { name: 'readings on', exact: true });
  if (await spreads.isVisible()) {
    const word = m.quantity === 'residual' && spread === 'one' ? 'this line' : SPREAD_WORDS[spread];
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
      await closePad(page);
      break;
    }
  }
  if ('between' in m) await putLeads(page, m);
}

async function closePad(page: Page): Promise<void> {
  const done = page
    .getByRole('region', { name: 'Key pad' })
    .getByRole('button', { name: 'Done', exact: true });
  if (await done.isVisible()) await press(done);
}

/** Sets the instrument, puts the leads on, reads, and writes down; as often as the patterns need. */
async function takeReadings(
  page: Page,
  readings: readonly Measurement[],
  { site, isLast }: { readonly site: Site; readonly isLast: boolean },
): Promise<void> {
  const offered = page.getByRole('button', { name: /^next in this test: / });
  let left = readings;
  while (left.length > 0) {
    if ((await offered.isVisible()) && /: apply /.test((await offered.textContent()) ?? '')) {
      await press(offered);
      const apply = button(page, /^Apply/);
      await apply
        .or(page.getByRole('form', { name: /^Write down/ }))
        .first()
        .waitFor();
      if (await apply.isVisible()) await press(apply);
      left = [];
    } else {
      const { m, spread, takes } = patternFor(left, site);
      await setInstrument(page, m, spread);
      const read = button(page, /^Read( \d+ pairs)?$/);
      if (await read.isVisible()) await press(read);
      else {
        await press(button(page, 'Check leads'));
        await press(button(page, /^Apply/));
      }
      left = left.filter((one) => !takes.includes(named(one)));
    }
    await writeDown(page, isLast && left.length === 0);
  }
}

/** Everything that is shown, as it is shown; the last of a test with the press that goes on to judge it. */
async function writeDown(page: Page, isLast: boolean): Promise<void> {
  const form = page.getByRole('form', { name: /^Write down/ });
  await form.waitFor();
  const pad = page.getByRole('region', { name: 'Key pad' });
  const rows = await form
    .getByRole('row')
    .filter({ has: page.getByRole('textbox') })
    .all();
  if (rows.length > 0) {
    for (const row of rows) {
      const [shown = ''] = await row.getByRole('cell').allInnerTexts();
      await type(row.getByRole('textbox'), await withUnit(form, typedText(shown)));
      await tickTripped(page, row);
    }
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
  const write = (await pad.isVisible()) ? pad : form;
  await press(write.getByRole('button', { name: isLast ? 'Write, judge' : /^Write / }).first());
  await form.waitFor({ state: 'detached' });
}

/** As it is set on the instrument. */
const lastVolts = async (page: Page): Promise<string | null> => {
  const run = await inHand(page);
  const reading = run.readings.at(-1)?.reading;
  return reading?.volts === undefined ? null : String(reading.volts);
};

async function tickTripped(page: Page, within: Locator): Promise<void> {
  const keys = within.getByRole('group', { name: /what tripped/ });
  if ((await keys.count()) === 0) return;
  const { readings } = await inHand(page);
  const reading = readings.at(-1)?.reading;
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
  const operations = procedure(before.world, action, papers);
  const bench = takenUp(before.scenario, before.attempt);
  await choose(page, testTitle(action.id));
  const isGuided = rungOf(before.scenario.support, before.attempt) === 1;
  const [first] = segmentsOf(operations);
  const isRow =
    isGuided || (first?.kind === 'acts' && ownRow(before, first.acts, bench.position) !== undefined);
  const { settings, done } = isRow ? { settings: {}, done: 0 } : setUpFor(before, bench.position, operations);
  const { [WAIT]: _, ...touched } = settings as Record<string, string>;
  await setUpByHand(page, touched);
  await predict(page, before, action, 'fairly-sure');
  let stands = bench.position;
  // What is waited at the end is waited afterwards: it has a key there.
  const skipped = operations[done - 1]?.op === 'wait' ? done - 1 : done;
  for (const one of operations.slice(0, skipped)) stands = positionAfter(stands, one, false);
  const segments = segmentsOf(operations.slice(skipped));
  for (const [i, segment] of segments.entries()) {
    const isLast = i === segments.length - 1;
    if (segment.kind === 'acts') {
      await doActs(page, segment.acts, papers, stands);
      for (const one of segment.acts) stands = positionAfter(stands, one, false);
    } else if (segment.kind === 'proof') {
      const again = page.getByRole('button', {
        name: new RegExp(
          `^(Again|next in this test): proved dead at the ${PLACES[(segment.proof as Extract<Operation, { op: 'prove-dead' }>).at]}`,
        ),
      });
      if (await again.first().isVisible()) await press(again.first());
      else await act(page, actWords(segment.proof));
      await writeDown(page, isLast);
    } else {
      await takeReadings(page, segment.readings, { site: papers.site, isLast });
      // Some instruments move the stand-in themselves.
      for (const one of segment.readings) stands = positionAfter(stands, one, false);
    }
  }
  const after = await inHand(page);
  // What the faultless procedure shows is shown: nothing was saved by leaving a reading out.
  const { lines } = truthOf(after, action, lastSitting(after, action.id));
  const due = toItsEnd(verifyingOnce(before.scenario)).actions.find((one) => one.action.id === action.id);
  const missing = lines.filter(
    ({ id, finding }) =>
      finding === 'not shown' &&
      due?.expectations.some((one) => one.expectation.id === id && one.finding !== 'not shown'),
  );
  if (missing.length > 0)
    throw new Error(`${action.id}: not shown: ${missing.map(({ id }) => id).join(', ')}`);
  // The last reading was written down with the press that goes on from it.
  const isThere = segments.at(-1)?.kind !== 'acts' && segments.length > 0;
  await judgeRightly(page, after, action, isThere ? 'there' : 'the readings');
}
