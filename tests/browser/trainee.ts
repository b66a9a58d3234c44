// A person at the page, in the words of one: opens it, chooses, sets up, predicts, locks, does, measures, writes down
// what is shown, judges, stops, concludes. Finds everything by role and label. What a faultless person does and knows
// comes from the floors below the screens, from the attempt as the page keeps it.

import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import type { Attempt, Judged, Sure, Verdict } from '../../src/attempt/record/attempt.ts';
import { headOf } from '../../src/attempt/record/attempt.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { testFigures, testLines } from '../../src/attempt/record/lines.ts';
import type { Run } from '../../src/attempt/record/run.ts';
import { act as actOut, note, replay } from '../../src/attempt/record/run.ts';
import type { Rung } from '../../src/attempt/record/rung.ts';
import { rungOf } from '../../src/attempt/record/rung.ts';
import { lastSitting } from '../../src/attempt/record/sitting.ts';
import type { TruthOfLimit, TruthOfLine } from '../../src/attempt/record/truth.ts';
import { judgedRight, truthOf } from '../../src/attempt/record/truth.ts';
import type { Operation } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import type { Probe } from '../../src/bench/terminals.ts';
import { terminalsIn } from '../../src/bench/terminals.ts';
import type { NextStep, Tell } from '../../src/faults/fault.ts';
import { aimOf } from '../../src/scenario/aims.ts';
import { takenUp } from '../../src/ui/flow/bench.ts';
import type { Position } from '../../src/ui/flow/position.ts';
import { operationsBetween, positionAfter } from '../../src/ui/flow/position.ts';
import { showsReadings } from '../../src/ui/flow/rows.ts';
import { ACTIONS, actionNamed } from '../../src/verification/actions.ts';
import { procedure } from '../../src/verification/procedure.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import { figureInWords, lineText } from '../../src/words/actions.ts';
import { AIM_WORDS } from '../../src/words/aims.ts';
import { answerText, JUDGED_WORDS, LIMIT_WORDS, SURE_WORDS } from '../../src/words/answers.ts';
import { RUNG_NAMES } from '../../src/words/rungs.ts';
import { LEFT_OUT_WORDS, NEXT_WORDS, TELL_WORDS, VERDICT_WORDS } from '../../src/words/verdicts.ts';
import '../../src/words/allTests.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { listenTo } from './complaints.ts';
import type { Hands } from './hands.ts';
import { end, mouse, press, putHands, take, tick, type } from './hands.ts';
import { lateAsAsked } from './latePage.ts';
import { freeSeat, takeSeat } from './seats.ts';

interface Look {
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: 'light' | 'dark';
  /** Pixels of a picture to each of the page. */
  readonly scale?: number;
  /** A screen that can be touched. */
  readonly touch?: boolean;
  /** The worker that serves the page without a network; where nothing is said of it there is none. */
  readonly worker?: boolean;
  /** Runs in the page before anything of its own. */
  readonly before?: () => void;
  /** How the page is used. */
  readonly hands?: Hands;
}

/** How long a person waits for the page to answer on a busy machine before calling it broken, ms. Nothing is measured by it. */
const PATIENCE = 30_000;

/** A new person with an empty browser in front of the first screen. */
export async function sitDown(browser: Browser, url: string, look: Look = {}): Promise<Page> {
  const {
    width = 1280,
    height = 860,
    colorScheme = 'light',
    scale = 1,
    worker = false,
    touch = false,
    hands = mouse,
    before,
  } = look;
  const options = {
    viewport: { width, height },
    colorScheme,
    deviceScaleFactor: scale,
    hasTouch: touch,
    reducedMotion: 'reduce',
    serviceWorkers: worker ? 'allow' : 'block',
  } as const;
  // What a worker keeps, and what runs before the page, stays with it.
  const isShared = before === undefined && !worker;
  const left = isShared ? await freeSeat(browser, url, options) : null;
  if (left !== null) {
    putHands(left, hands);
    await arrive(left, url);
    return left;
  }
  const context = await browser.newContext(options);
  await lateAsAsked(context);
  if (before !== undefined) await context.addInitScript(before);
  const page = await openPage(context, url);
  if (isShared) takeSeat(page, url, options);
  putHands(page, hands);
  return page;
}

/** One more tab in the same browser. */
export async function openPage(context: BrowserContext, url: string): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  listenTo(page, url);
  await arrive(page, url);
  return page;
}

async function arrive(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
}

/** For `before`: a browser whose site data are blocked, as somebody may set it. */
export function keepNothing(): void {
  const refused = () => new DOMException('no', 'SecurityError');
  indexedDB.open = () => {
    throw refused();
  };
  indexedDB.databases = () => Promise.reject(refused());
  Object.defineProperty(globalThis, 'localStorage', {
    get: () => {
      throw refused();
    },
  });
  LockManager.prototype.request = () => Promise.reject(refused());
  LockManager.prototype.query = () => Promise.reject(refused());
}

/** Gives the page a file, as somebody does who presses the button and picks one. */
export async function openFile(page: Page, name: string, text: string, by = 'Open a file…'): Promise<void> {
  if (by === 'Open a file…') await toScenarios(page);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    press(page.getByRole('button', { name: by })),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** The list of scenarios, from wherever the page stands. */
export async function toScenarios(page: Page): Promise<void> {
  if (!page.url().endsWith('#/jobs'))
    await press(page.getByRole('contentinfo').getByRole('link', { name: 'Scenarios' }));
  await page.getByRole('heading', { name: 'Scenarios', level: 1 }).waitFor();
}

/** Waits until the worker serves the page. */
export const isServed = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');

/** Without a rung on the one that the scenario is made for. */
export async function begin(page: Page, title: string, rung?: Rung): Promise<void> {
  await toScenarios(page);
  await tick(page.getByRole('radio', { name: title }));
  if (rung !== undefined) await tick(page.getByRole('radio', { name: new RegExp(`^${RUNG_NAMES[rung]}`) }));
  await press(page.getByRole('button', { name: 'Begin' }));
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
}

export const WAIT = 'then wait, s';

/** A test action by its id. */
export function actionFor(id: string): TestAction {
  const action = actionNamed(id);
  if (action === undefined) throw new Error(`no test action "${id}"`);
  return action;
}

export async function choose(page: Page, title: string): Promise<void> {
  // Led in order, the next test is open already; another is chosen from the list.
  const open = page.getByRole('heading', { level: 2, name: title, exact: true });
  if (await open.isVisible()) return;
  const leave = button(page, 'Another test');
  if (await leave.isVisible()) {
    await press(leave);
    await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  }
  const test = page.getByRole('button', { name: title, exact: true });
  if (!(await test.isVisible())) await openAimOf(page, title);
  await press(test);
  await page.getByRole('heading', { name: 'Set up', exact: true }).waitFor();
}

/** Opens the aim that a test belongs to, in the list of them. */
export async function openAimOf(page: Page, title: string): Promise<void> {
  const action = TEST_BY_TITLE.get(title);
  const aim = action === undefined ? null : aimOf(action);
  if (aim === null) throw new Error(`no aim has the test "${title}"`);
  await press(page.getByRole('button', { name: new RegExp(`^${escaped(AIM_WORDS[aim].question)}`) }));
}

const TEST_BY_TITLE = new Map(ACTIONS.map(({ id }) => [testTitle(id), id]));
const escaped = (text: string): string => text.replaceAll(/[?()]/g, '\\$&');

/** What is inside the stand-in, where it is folded away. */
export async function unfold(page: Page): Promise<void> {
  if (!(await page.locator('summary', { hasText: /^its CP, diode/ }).isVisible()))
    await press(page.locator('summary', { hasText: 'All of it, in a list' }));
  if (!(await page.getByLabel(/^its diode/).isVisible()))
    await press(page.locator('summary', { hasText: /^its CP, diode/ }));
}

/** Lists of the set-up by their labels, as far as they are to be changed. */
export async function setUp(page: Page, settings: Readonly<Record<string, string>>): Promise<void> {
  await page.getByRole('heading', { name: 'Set up' }).waitFor();
  for (const [label, option] of Object.entries(settings)) {
    const field = page.getByLabel(new RegExp(`^${escaped(label)}( changed)?$`));
    if (label !== WAIT) {
      if (label.startsWith('its ')) await unfold(page);
      else if (!(await field.isVisible()))
        await press(page.locator('summary', { hasText: 'All of it, in a list' }));
      await take(field, option);
    } else if ((await field.inputValue()) !== option) await type(field, option);
  }
}

export const button = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name });

/** Answers every line, in the order in which the page asks, and every figure; then says how sure, which locks. */
export async function predict(page: Page, run: Run, action: TestAction, sure: Sure): Promise<void> {
  const rung = rungOf(run.scenario.support, run.attempt);
  await toPredict(page);
  if (rung === 1) {
    await press(button(page, 'Lock'));
    await page.getByRole('heading', { name: 'Measure', level: 3, exact: true }).waitFor();
    return;
  }
  if (rung === 3) await chooseLines(page, run, action);
  for (const { right } of rung === 3 ? [] : testLines(run.scenario, action))
    await press(button(page, ANSWER_KEYS[right]));
  await sayFigures(page, run, action, sure);
}

/** The keys that answer a line. */
export const ANSWER_KEYS = {
  should: /^should($| ?(all|the last) )/,
  'should-not': /^should not($| ?(all|the last) )/,
  'cant-tell': /^can’t tell($| ?(all|the last|from) )/,
} as const;

/** What is asked in figures; then how sure of all of it, which locks. */
export async function sayFigures(page: Page, run: Run, action: TestAction, sure: Sure): Promise<void> {
  for (const figure of testFigures(run.scenario, action)) {
    const { text, unit, value } = figureInWords(action.id, figure);
    await type(page.getByLabel(`${text}, ${unit}`), String(Number(value.toPrecision(3))).replace('.', ','));
  }
  await press(button(page, new RegExp(`^${SURE_WORDS[sure]}`)));
  await page.getByRole('heading', { name: 'Measure', level: 3, exact: true }).waitFor();
}

/** On from the set-up to what is said of it. */
export async function toPredict(page: Page): Promise<void> {
  await closePad(page);
  await press(page.getByRole('button', { name: 'Predict', exact: true }));
  await page.getByRole('heading', { name: 'Predict', level: 3, exact: true }).waitFor();
}

/** Takes the page's own pad away, where it is up. */
export async function closePad(page: Page): Promise<void> {
  const close = button(page, 'Close the pad');
  if (!(await close.isVisible())) return;
  await page.keyboard.press('Escape');
  await close.waitFor({ state: 'hidden' });
}

/** Leaves a reading to be written down later. */
export async function later(page: Page): Promise<void> {
  await closePad(page);
  await press(button(page, 'Later'));
}

/** From anywhere to one of the pages beside an attempt; the bench has the way on a sheet. */
export async function toPage(page: Page, name: string): Promise<void> {
  const foot = page.getByRole('contentinfo');
  if (!(await foot.isVisible())) await button(page, /^Papers$/).click();
  const from = (await foot.isVisible()) ? foot : page.getByRole('dialog');
  await from.getByRole('link', { name, exact: true }).click();
}

/** On from the readings to how they are judged. */
export async function toJudge(page: Page): Promise<void> {
  await press(page.getByRole('button', { name: 'Judge', exact: true }));
  await page.getByRole('heading', { name: 'Judge', level: 3, exact: true }).waitFor();
}

/** Of the ten lines those that the test tells, each with its right answer; the others are left alone. */
async function chooseLines(page: Page, run: Run, action: TestAction): Promise<void> {
  for (const line of testLines(run.scenario, action))
    if (line.judged) {
      const name = `${answerText(line.right)}: ${lineText(action.id, line)}`;
      await press(page.getByRole('button', { name, exact: true }));
    }
}

/** The sheet of acts; one that was half typed is put aside. */
async function openActs(page: Page): Promise<void> {
  await press(button(page, 'Do…'));
  // The sheet is there at once, what stands in it a little later: after the way back.
  await page.getByRole('dialog').getByRole('button').nth(1).waitFor();
  const another = button(page, 'Another act');
  if (await another.isVisible()) await press(another);
}

/** One act from the sheet of acts. */
export async function act(page: Page, words: string): Promise<void> {
  await openActs(page);
  await press(page.getByRole('dialog').getByRole('button', { name: words, exact: true }));
  // The first time it is asked when the detector is tried; then it is as it was the last time.
  if (words.startsWith('prove dead') && (await button(page, PROVED).isVisible()))
    await press(button(page, PROVED));
}

/** The detector tried before the test and after it. */
const PROVED = /^prove the detector, test, prove it again$/i;

/** One act that takes a figure, from the sheet or by its key where it was done in this test; with the wait after it by one press. */
export async function actWith(
  page: Page,
  words: string,
  field: string,
  figure: number,
  waits = false,
): Promise<void> {
  const again = page.getByRole('button', { name: `${words} …`, exact: true });
  if (await again.isVisible()) await press(again);
  else {
    await openActs(page);
    await press(page.getByRole('dialog').getByRole('button', { name: words, exact: true }));
  }
  await type(page.getByLabel(field), String(figure));
  const name = waits ? /^Do it, wait \d+ s$/ : 'Do it';
  await press(page.getByRole('button', { name, exact: true }).last());
}

type Measurement = Extract<Operation, { op: 'measure' }>;

export const PLACES: Readonly<Record<string, string>> = {
  origin: 'origin',
  supply: 'unit’s supply terminals',
  outlet: 'outlet',
  incoming: 'live side of the origin',
};
const SINGLE: Readonly<Record<string, string>> = {
  met: 'main earthing terminal',
  house: 'house’s earthing terminal',
  earth: 'remote rod',
  earthing: 'distributor’s earth',
  case: 'exposed metal of the unit',
};
const terminalWords = (terminal: string): string => {
  const [place = '', conductor] = terminal.split('.');
  return conductor === undefined ? (SINGLE[place] ?? '') : `${conductor} at the ${PLACES[place]}`;
};

export const OPENINGS = {
  'C-to-B': 'from C to B',
  'C-to-A': 'from C to A',
  unplug: 'from unplugging',
  'pilot-short': 'from CP shorted to PE',
  'pilot-open': 'from CP open',
  'earth-open': 'from PE open at the stand-in',
  'proximity-lost': 'from PP open at the plug',
} as const;
export const WAVES: Readonly<Record<string, string>> = {
  sinusoidal: 'a.c.',
  'half-wave-positive': 'half-wave, positive',
  'half-wave-negative': 'half-wave, negative',
  'smooth-dc-positive': 'smooth d.c., positive',
  'smooth-dc-negative': 'smooth d.c., negative',
};

/** Chooses and sets the instrument, puts the leads on, checks them, applies. */
export async function measure(page: Page, m: Measurement, checked?: () => Promise<void>): Promise<void> {
  const key = (legend: string, name: string) =>
    tick(page.getByRole('group', { name: legend, exact: true }).getByRole('radio', { name, exact: true }));
  const list = async (label: string, option: string) => {
    if (label !== 'instrument') return take(page.getByLabel(label, { exact: true }), option);
    const tile = page.getByRole('radio', { name: option, exact: true });
    const more = button(page, /^\d+ more$/);
    await tile.or(more).first().waitFor();
    if (!(await tile.isVisible())) await press(more);
    await tick(tile);
  };
  const leads = async (first: Probe, second: Probe) => {
    if (!(await page.getByLabel('first lead', { exact: true }).isVisible()))
      await press(page.locator('summary', { hasText: 'Leads, in a list' }));
    const [a = '', ...joined] = terminalsIn(first);
    await putLead(page, 'first lead', a);
    for (const terminal of joined) {
      if ((await page.getByLabel(/^joined to it/).count()) < joined.length)
        await press(button(page, 'Join a terminal to the first lead'));
      await putLead(page, `joined to it (${joined.indexOf(terminal) + 1})`, terminal);
    }
    for (let more = await page.getByLabel(/^joined to it/).count(); more > joined.length; more--)
      await list(`joined to it (${more})`, 'none');
    await putLead(page, 'second lead', terminalsIn(second)[0] ?? '');
  };
  switch (m.quantity) {
    case 'voltage':
      await list('instrument', m.tool === 'meter' ? 'meter 10 MΩ, voltage' : 'two-pole detector, voltage');
      await leads(...m.between);
      break;
    case 'continuity':
    case 'loop':
      await list('instrument', m.quantity);
      await leads(...m.between);
      break;
    case 'insulation':
      await list('instrument', 'insulation');
      await tick(page.getByRole('radio', { name: String(m.volts), exact: true }));
      await leads(...m.between);
      break;
    case 'pilot':
      await list('instrument', 'pilot against time');
      break;
    case 'coding':
      await list('instrument', 'proximity coding');
      break;
    case 'residual':
      await list('instrument', 'residual current');
      await key('at', m.at);
      if (await page.getByRole('group', { name: 'line to PE' }).isVisible()) await key('line to PE', m.line);
      await key('waveform', WAVES[m.waveform] ?? '');
      await key('current', m.mode === 'ramp' ? 'rising' : 'fixed');
      if (m.mode === 'fixed') {
        await type(
          page.getByLabel(/^fixed at/),
          m.amps === undefined ? '' : String(Number((1000 * m.amps).toPrecision(6))),
        );
        await type(page.getByLabel(/^held at most/), m.seconds === undefined ? '' : String(m.seconds));
      }
      break;
    case 'opening-time':
      await list('instrument', 'opening time');
      await key('clock starts', OPENINGS[m.of]);
      break;
    case 'electrode':
      await list('instrument', 'earth electrode, three stakes');
      break;
    case 'phase-sequence':
      await list('instrument', 'order of the lines');
      await key('at', PLACES[m.at] ?? '');
      break;
  }
  await closePad(page);
  const read = button(page, /^Read( \d+ pairs)?$/);
  // What only looks at the circuit is read at once; what applies something is checked before.
  if (await read.isVisible()) await press(read);
  else {
    await press(button(page, 'Check leads'));
    await checked?.();
    await press(button(page, /^Apply/));
  }
  await page.getByRole('form', { name: /^Write down/ }).waitFor({ state: 'attached' });
}

export const putLead = (page: Page, label: string, terminal: string): Promise<unknown> =>
  take(page.getByLabel(label, { exact: true }), terminalWords(terminal));

const REMOVABLES = {
  unit: 'unit’s conductors',
  arrester: 'surge arrester',
  'earthing-conductor': 'earthing conductor',
  electrode: 'earth electrode',
} as const;
const BUTTONS = {
  authorise: 'authorise',
  'override-delay': 'override the delay',
  stop: 'stop',
  emergency: 'emergency stop',
  'residual-test': 'test button of the residual device',
} as const;

const lineOf = (between: readonly Probe[]): string =>
  between
    .flatMap(terminalsIn)
    .find((t) => t !== 'origin.PE')
    ?.split('.')[1] ?? '';

function disturbance(operation: Extract<Operation, { op: 'supply' }>): string {
  const { pen, voltage, missing } = operation;
  if (pen === 'sound' && voltage !== undefined) return 'disturbance over: supply as it was';
  if (pen !== undefined || voltage !== undefined) return 'disturbance: what the open-PEN measure watches for';
  if (missing !== undefined)
    return `disturbance: ${missing === null ? 'every conductor back' : `${missing} lost`}`;
  return 'disturbance: no load limit';
}

/** Acts that take a figure: their words, and the figure by the words of its field. */
export function figured(operation: Operation): readonly [act: string, field: string, figure: number] | null {
  if (operation.op === 'wait') return ['wait', 'seconds', operation.seconds];
  if (operation.op === 'vehicle' && operation.load !== undefined)
    return ['stand-in: load', 'load on each line', operation.load];
  if (operation.op !== 'supply') return null;
  if (typeof operation.loadLimit === 'number')
    return ['disturbance: load limit', 'left for the unit', operation.loadLimit];
  if (operation.nextPoint !== undefined)
    return ['next point: vehicle on it', 'drawn on each line', operation.nextPoint];
  if (operation.siteLoad !== undefined && operation.pen === undefined)
    return ['disturbance: known load on the site', 'drawn on each line', operation.siteLoad];
  return null;
}

/** What is done, in the words of the list of acts. */
export function actWords(operation: Operation): string {
  switch (operation.op) {
    case 'isolate':
      return operation.at === 'main-switch'
        ? 'isolate at the main switch: whole installation, locked'
        : 'isolate at the origin: all poles, locked';
    case 'energise':
      return operation.at === 'main-switch' ? 'energise at the main switch' : 'energise: all that is off';
    case 'open-cover':
      return 'open the cover';
    case 'close-cover':
      return 'close the cover';
    case 'check-instruments':
      return operation.known === true
        ? 'check the instruments, the tester on its known resistor'
        : 'check the instruments';
    case 'discharge':
      return 'wait for stored energy to go';
    case 'null-leads':
      return 'null the leads';
    case 'prove-dead':
      return `prove dead at the ${PLACES[operation.at]}`;
    case 'disconnect':
      return `take the ${REMOVABLES[operation.what]} off`;
    case 'reconnect':
      return `connect the ${REMOVABLES[operation.what]}`;
    case 'press':
      return `press: ${BUTTONS[operation.button]}`;
    case 'link':
      return `link ${lineOf(operation.between)} to PE at the origin`;
    case 'unlink':
      return `take the ${lineOf(operation.between)} link out`;
    case 'supply':
      return disturbance(operation);
    case 'flex-cable':
      return operation.on ? 'bend the cable' : 'let the cable rest';
    case 'inspect':
      return 'look it over';
    case 'guard':
      return 'guard the area';
    case 'pull-plug':
      return 'pull at the plug';
    case 'reset':
      return {
        unit: 'reset the unit, as its sheet says',
        supply: 'supply off 10 s and on',
        upstream: 'reset the device at the origin',
      }[operation.what];
    default:
      throw new Error(`no words for ${operation.op}`);
  }
}

const STATES = {
  A: 'A: no vehicle',
  B: 'B: connected, 2.74 kΩ',
  C: 'C: asks, 1.3 kΩ added',
  D: 'D: asks with ventilation, 270 Ω added',
} as const;
const SHORTED: Readonly<Record<string, string>> = {
  sound: 'sound',
  'shorted-to-earth': 'shorted to PE',
  shorted: 'shorted',
  open: 'open',
};

/**
 * The stand-in's settings one by one, in the order in which they do not disturb each other; what is wrong with it or in its
 * plug is not set once more where it stands so.
 */
export function vehicleWords(
  operation: Extract<Operation, { op: 'vehicle' }>,
  stands: Partial<Position> = {},
): readonly string[] {
  const { state, plugged } = operation;
  const [pilot, diode, earth, coding] = [
    operation.pilot === stands.pilot ? undefined : operation.pilot,
    operation.diode === stands.diode ? undefined : operation.diode,
    operation.earth === stands.earth ? undefined : operation.earth,
    operation.coding === stands.coding ? undefined : operation.coding,
  ];
  return [
    ...(state === 'A' ? [`stand-in: state ${STATES.A}`] : []),
    ...(pilot === undefined ? [] : [`stand-in: pilot (CP) ${SHORTED[pilot]}`]),
    ...(diode === undefined ? [] : [`stand-in: diode ${SHORTED[diode]}`]),
    ...(earth === undefined ? [] : [`stand-in: PE ${SHORTED[earth]}`]),
    ...(coding === undefined ? [] : [`coding in the plug: ${coding === null ? 'none' : `${coding} A`}`]),
    ...(plugged === undefined ? [] : [`stand-in: ${plugged ? 'plug in' : 'unplug'}`]),
    ...(state === undefined || state === 'A' ? [] : [`stand-in: state ${STATES[state]}`]),
  ];
}

/** How many acts it took; none for a stand-in that stands so already. */
async function carryOut(page: Page, operation: Operation, stands?: Position): Promise<number> {
  const asked = figured(operation);
  if (operation.op === 'vehicle' && asked === null) {
    const words = vehicleWords(operation, stands);
    for (const each of words) await act(page, each);
    return words.length;
  }
  if (operation.op === 'measure') await measure(page, operation);
  else if (asked !== null) await actWith(page, ...asked);
  else await act(page, actWords(operation));
  return 1;
}

/** The figure in a text such as `> 200 MΩ`, with its unit, and whether it is beyond the range. */
export function figureIn(text: string): { number: string; unit: string; over: boolean } {
  const match = /(>?)\s*([+−-]?[\d.]+)\s?(MΩ|kΩ|Ω|mA|A|V|ms|s)/u.exec(text);
  if (match === null) throw new Error(`no figure in "${text}"`);
  const [, over, number = '', unit = ''] = match;
  return { number, unit, over: over === '>' };
}

/** Types what the newest instrument shows, as it shows it. */
export async function writeDown(page: Page, tripped: string | undefined): Promise<void> {
  const reading = page.getByRole('form', { name: /^Write down/ });
  await reading.waitFor();
  const [text = ''] = await reading.allInnerTexts();
  const shown = text.split('\n').slice(1).join(' ');
  const figure = reading.getByLabel(/^(it shows|high half|tripped after, ms)$/);
  const isNone = /no reading:/.test(text);
  const sign = (name: string) => reading.getByRole('group', { name: 'sign' }).getByRole('radio', { name });
  // What the instrument shows stands before the fields, one of whose choices is "no trip" as well; a current that was
  // raised to its end without a trip is written as over that end.
  const isNoTrip = /no trip|[\d.]+\s?m[sA]/u.exec(shown)?.[0] === 'no trip';
  if (isNone || isNoTrip) await closePad(page);
  if (isNone) await tick(sign('no reading'));
  else if (isNoTrip) await tick(sign('no trip'));
  else {
    const { number, unit, over } = figureIn(shown);
    // A time stands in its one unit, which its label names.
    const isTimed = await reading.getByLabel('tripped after, ms').isVisible();
    await type(figure, isTimed ? number : `${over ? '> ' : ''}${number} ${unit}`);
  }
  let last = figure;
  const period = /a to b\s([\d.]+)\sms.*period\s([\d.]+)\sms/su.exec(shown);
  if (period !== null) {
    const duty = (100 * Number(period[1])) / Number(period[2]);
    const low = /low ([+−][\d.]+)/u.exec(shown)?.[1] ?? '';
    await type(reading.getByLabel('low half, V'), low);
    await type(reading.getByLabel(/^duty/), duty.toFixed(1));
    last = reading.getByLabel(/^so it offers/);
    await type(last, String(Math.round(0.6 * duty)));
  }
  if (tripped !== undefined)
    await tick(reading.getByRole('group', { name: 'what tripped' }).locator(`input[value="${tripped}"]`));
  const volts = /at (\d+)\sV d\.c\./u.exec(shown)?.[1];
  const voltage = reading.getByLabel(/test voltage/);
  // What was written last stands there already.
  if (volts !== undefined && (await voltage.inputValue()) !== volts) {
    last = voltage;
    await type(voltage, volts);
  }
  await closePad(page);
  await press(reading.getByRole('button', { name: /^Write / }));
}

/** Types the figure shown for every pair; so many they were. */
export async function writeDownPairs(page: Page): Promise<number> {
  const form = page.getByRole('form', { name: /^Write down every/ });
  await form.waitFor();
  const rows = await form
    .getByRole('row')
    .filter({ has: page.getByRole('textbox') })
    .all();
  for (const row of rows) {
    const { number, unit } = figureIn((await row.getByRole('cell').allInnerTexts()).join(' '));
    await type(row.getByRole('textbox'), `${number} ${unit}`);
  }
  const last = rows.at(-1)?.getByRole('textbox');
  if (last !== undefined) await end(last, button(page, 'Write them down').last());
  return rows.length;
}

export interface KeptHere {
  readonly id: string;
  readonly text: string;
  readonly draft: unknown;
}

/** The attempt that this device kept last, and the place that it was left at; null where it keeps none. */
export const keptHere = (page: Page): Promise<KeptHere | null> =>
  page.evaluate(
    () =>
      new Promise<KeptHere | null>((resolve, reject) => {
        const request = indexedDB.open(`charge-point-trainer ${new URL('.', location.href).pathname}`);
        request.onerror = () => reject(request.error);
        request.onupgradeneeded = () => request.transaction?.abort();
        request.onsuccess = () => {
          const db = request.result;
          const all = db.transaction(['about', 'attempts', 'drafts']);
          const about = all.objectStore('about').getAll();
          about.onsuccess = () => {
            const [last] = about.result.sort((x, y) => y.changed - x.changed);
            if (last === undefined) return;
            const text = all.objectStore('attempts').get(last.id);
            const draft = all.objectStore('drafts').get(last.id);
            draft.onsuccess = () => resolve({ id: last.id, text: text.result, draft: draft.result ?? null });
          };
          all.onabort = () => reject(all.error);
          all.oncomplete = () => {
            db.close();
            resolve(null);
          };
        };
      }),
  );

/** How far each page's attempt has been acted out. */
const actedOut = new WeakMap<Page, Run>();

/** The same run up to the end of the attempt, where the attempt goes on from it; null where it does not. */
function carriedOn(run: Run | undefined, attempt: Attempt): Run | null {
  if (run === undefined) return null;
  const done = run.attempt.entries.length;
  if (headOf(run.attempt) !== headOf({ ...attempt, entries: attempt.entries.slice(0, done) })) return null;
  return attempt.entries
    .slice(done)
    .reduce(
      (at, entry) =>
        entry.kind === 'operation'
          ? actOut(at, entry.test, entry.operation, entry.wall).run
          : note(at, entry, entry.wall),
      run,
    );
}

/**
 * The attempt as this device keeps it, replayed; waits until it holds so many entries at least. What was asked for
 * before is acted on from there: its bench moves on with it.
 */
export async function inHand(page: Page, least = 0): Promise<Run> {
  for (const began = Date.now(); Date.now() - began < PATIENCE; ) {
    const kept = await keptHere(page);
    // Each entry has one; to read them all takes long.
    const isWhole = (kept?.text.match(/"hash":/g) ?? []).length >= least;
    const read = kept === null || !isWhole ? null : parseAttempt(kept.text);
    if (read?.ok && read.value.attempt.entries.length >= least) {
      const { scenario, attempt } = read.value;
      const run = carriedOn(actedOut.get(page), attempt) ?? replay(scenario, attempt);
      actedOut.set(page, run);
      return { ...run, attempt };
    }
    await page.waitForTimeout(20);
  }
  throw new Error('the page keeps no attempt');
}

const LABELS: Readonly<Partial<Record<keyof Position, readonly [string, (value: unknown) => string]>>> = {
  supply: ['supply', (value) => (value === 'on' ? 'on' : 'off, all poles, locked')],
  main: ['main switch', (value) => (value === 'on' ? 'on' : 'off, locked')],
  cover: ['unit’s cover', String],
  unit: ['unit’s conductors', String],
  pilot: ['its pilot (CP)', (value) => SHORTED[String(value)] ?? ''],
  diode: ['its diode', (value) => SHORTED[String(value)] ?? ''],
  earth: ['its PE', (value) => SHORTED[String(value)] ?? ''],
};

/** What of the operations can be set up beforehand: as many from the first as the set-up does in the same order. */
export function setUpFor(run: Run, position: Position, operations: readonly Operation[]) {
  const { outlet } = run.papers.sheet;
  for (let done = operations.length; done > 0; done--) {
    const first = operations.slice(0, done);
    const last = first.at(-1);
    const wait = last?.op === 'wait' ? last.seconds : 0;
    const target = first.reduce((at, what) => positionAfter(at, what, false), position);
    const bySetUp = operationsBetween(position, target, wait, outlet).map((input) => operation(input));
    if (JSON.stringify(bySetUp) !== JSON.stringify(first)) continue;
    const changed = (Object.keys(LABELS) as (keyof Position)[]).filter(
      (key) => position[key] !== target[key],
    );
    const settings = changed.flatMap((key): [string, string][] => {
      const [label, words] = LABELS[key] ?? ['', String];
      return [[label, words(target[key])]];
    });
    const isMoved = position.plugged !== target.plugged || position.state !== target.state;
    // One list has plug and state: an unplugged stand-in is in state A there.
    if (isMoved && !target.plugged && target.state !== 'A') continue;
    const inA = target.plugged ? 'A: no vehicle, though plugged in' : 'unplugged';
    const standIn = target.state === 'A' ? inA : STATES[target.state];
    return {
      settings: Object.fromEntries([
        ...settings,
        ...(isMoved ? [['stand-in', standIn]] : []),
        [WAIT, wait === 0 ? '' : String(wait)],
      ]),
      done,
    };
  }
  return { settings: { [WAIT]: '' }, done: 0 };
}

/** Puts a cause right between tests; what the page then says. */
export async function putRight(page: Page, cause: string): Promise<string> {
  await press(button(page, 'Put something right…'));
  await take(page.getByLabel('cause', { exact: true }), cause);
  await press(button(page, 'Put it right'));
  const said = page.getByRole('dialog').getByRole('status');
  await said.filter({ hasText: cause }).waitFor();
  const text = (await said.textContent()) ?? '';
  await press(button(page, 'Back to the tests'));
  return text;
}

/** One whole test as a faultless person does it. */
export async function doTest(page: Page, action: TestAction, sure: Sure = 'fairly-sure'): Promise<void> {
  const before = await inHand(page);
  const operations = procedure(before.world, action, before.papers);
  const { position } = takenUp(before.scenario, before.attempt);
  const { settings, done } = setUpFor(before, position, operations);
  let stands = operations.slice(0, done).reduce((at, what) => positionAfter(at, what, false), position);
  await choose(page, testTitle(action.id));
  await setUp(page, settings);
  await predict(page, before, action, sure);
  let entries = before.attempt.entries.length + 1 + done;
  for (const next of operations.slice(done)) {
    entries += await carryOut(page, next, stands);
    stands = positionAfter(stands, next, false);
    if (next.op === 'prove-dead') {
      entries += await writeDownPairs(page);
    } else if (showsReadings(next)) {
      await writeDown(page, undefined);
      entries += 1;
    } else if (next.op === 'measure') {
      const last = (await inHand(page, entries)).readings.at(-1)?.reading;
      const tripped = last?.quantity === 'residual' ? last.trippedWhat : undefined;
      await writeDown(page, tripped);
      entries += 1;
    }
  }
  await judgeRightly(page, await inHand(page, entries), action);
}

/** Finishes the test; where it is told at once, on from there. */
export async function finishTest(page: Page): Promise<void> {
  await press(button(page, 'Finish test'));
  const told = page.getByRole('heading', { name: 'What was true' });
  const choosing = page.getByRole('heading', { name: 'Choose a test' });
  await told.or(choosing).waitFor();
  if (!(await told.isVisible())) return;
  await press(button(page, /^Next/));
  await told.waitFor({ state: 'hidden' });
}

/** Judges every line and limit as it is, by what was written down. */
export async function judgeRightly(page: Page, run: Run, action: TestAction): Promise<void> {
  const truth = truthOf(run, action, lastSitting(run, action.id));
  await toJudge(page);
  await judgeLines(page, action, truth.lines);
  await judgeLimits(page, truth.limits);
  await finishTest(page);
}

export async function judgeLines(
  page: Page,
  action: TestAction,
  lines: readonly TruthOfLine[],
): Promise<void> {
  for (const line of lines) {
    if (line.finding === null) continue;
    const name = JUDGED_WORDS[judgedRight(line)];
    const text = lineText(action.id, line);
    await tick(page.getByRole('group', { name: text }).getByRole('radio', { name, exact: true }));
  }
}

export async function judgeLimits(page: Page, limits: readonly TruthOfLimit[]): Promise<void> {
  const groups = page.getByRole('group', { name: / limit: / });
  for (const [i, { right }] of limits.entries())
    await tick(groups.nth(i).getByRole('radio', { name: LIMIT_WORDS[right], exact: true }));
}

/** The same answer to every line, and to every figure: for whoever only wants to get on. */
export async function answerAll(page: Page): Promise<void> {
  await toPredict(page);
  await answerRest(page);
}

/** Of a prediction that is open. */
export async function answerRest(page: Page): Promise<void> {
  const should = button(page, /^should$/);
  while (await should.isVisible()) await press(should);
  for (const figure of await page.getByRole('list', { name: 'Lines to predict' }).getByRole('textbox').all())
    await type(figure, '1');
  await closePad(page);
}

/** The same judgement of every line, and `within` of every limit. */
export async function judgeAll(page: Page, word: Judged): Promise<void> {
  await toJudge(page);
  for (const choice of await page.getByRole('radio', { name: JUDGED_WORDS[word], exact: true }).all())
    await tick(choice);
  for (const choice of await page.getByRole('radio', { name: 'within', exact: true }).all())
    await tick(choice);
  await press(button(page, 'Finish test'));
}

export interface Conclusion {
  readonly verdict: Verdict;
  /** In words, as on the page. */
  readonly cause: string;
  /** Asked but where one aim finds nothing wrong. */
  readonly next?: NextStep | undefined;
  readonly tell?: Tell | undefined;
  /** Words of a finding to rest it on. */
  readonly finding?: string;
  /** Titles of the tests to be repeated. */
  readonly repeat?: readonly string[];
  /** Why the tests not done were left out. */
  readonly leftOut?: keyof typeof LEFT_OUT_WORDS;
}

/** What is concluded by whoever stopped early and only wants to get on. */
export const COULD_NOT_FINISH: Conclusion = {
  verdict: 'could-not-finish',
  cause: 'something, cause not known',
  next: 'lock-off-and-label',
  tell: 'client',
};

export async function conclude(page: Page, c: Conclusion): Promise<void> {
  await page.getByRole('heading', { name: 'Conclude' }).waitFor();
  await tick(page.getByRole('radio', { name: VERDICT_WORDS[c.verdict], exact: true }));
  await take(page.getByLabel('cause', { exact: true }), c.cause);
  await tick(
    page
      .getByRole('group', { name: 'How sure of that' })
      .getByRole('radio', { name: SURE_WORDS['would-sign'] }),
  );
  if (c.finding !== undefined) await tick(page.getByRole('checkbox', { name: c.finding }).first());
  const repeats = page.getByRole('group', { name: 'After putting it right, which tests are repeated?' });
  for (const title of c.repeat ?? []) await tick(repeats.getByRole('checkbox', { name: title, exact: true }));
  if (c.next !== undefined) await take(page.getByLabel('what next'), NEXT_WORDS[c.next]);
  if (c.tell !== undefined) await take(page.getByLabel('whom to tell'), TELL_WORDS[c.tell]);
  if (c.leftOut !== undefined) {
    const first = page.getByRole('region', { name: 'Tests left out' }).getByRole('combobox').first();
    await take(first, LEFT_OUT_WORDS[c.leftOut]);
    await press(button(page, 'Same reason for all without one'));
  }
  await press(button(page, 'Conclude'));
  await page.getByRole('heading', { name: 'Debrief' }).waitFor();
}
