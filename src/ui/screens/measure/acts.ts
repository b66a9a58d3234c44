/**
 * What can be done at the bench beside measuring, by name: acts of one piece, and acts that take a figure or two. Which
 * of them a site offers follows from its papers; nothing here says what would be right.
 */
import type { Operation, OperationInput } from '../../../bench/operation.ts';
import { operation } from '../../../bench/operation.ts';
import type { Line } from '../../../laws/conductors.ts';
import { LINES } from '../../../laws/conductors.ts';
import { CABLE_CODINGS } from '../../../laws/proximity.ts';
import type { Site } from '../../../site/site.ts';
import { hasPen, linesOf, livesOf } from '../../../site/site.ts';
import { disturb, restore } from '../../../verification/actions/penHazard.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { operationText, STATE_WORDS } from '../../../words/trade.ts';
import type { Position } from '../../flow/position.ts';
import type { FigureRange } from '../../format/ranges.ts';
import { RANGES } from '../../format/ranges.ts';

export type Act = readonly [name: string, text: string, operation: OperationInput];

interface Asked {
  readonly key: string;
  readonly label: string;
  readonly range: FigureRange;
  readonly start: string;
}

/** An act that takes figures, and sometimes the line that it is done on. */
export interface FiguredAct {
  readonly name: string;
  readonly text: string;
  readonly asks: readonly Asked[];
  readonly lines: readonly Line[];
  readonly operation: (figures: Readonly<Record<string, number>>, line: Line) => OperationInput;
}

const ACTS: readonly Act[] = [
  ['plug in', 'stand-in: plug in', { op: 'vehicle', plugged: true }],
  ['unplug', 'stand-in: unplug', { op: 'vehicle', plugged: false }],
  ...(['A', 'B', 'C', 'D'] as const).map(
    (state): Act => [`state ${state}`, `stand-in: state ${STATE_WORDS[state]}`, { op: 'vehicle', state }],
  ),
  ['pilot sound', 'stand-in: pilot (CP) sound', { op: 'vehicle', pilot: 'sound' }],
  ['pilot shorted', 'stand-in: pilot (CP) shorted to PE', { op: 'vehicle', pilot: 'shorted-to-earth' }],
  ['pilot open', 'stand-in: pilot (CP) open', { op: 'vehicle', pilot: 'open' }],
  ['diode sound', 'stand-in: diode sound', { op: 'vehicle', diode: 'sound' }],
  ['diode shorted', 'stand-in: diode shorted', { op: 'vehicle', diode: 'shorted' }],
  ['earth sound', 'stand-in: PE sound', { op: 'vehicle', earth: 'sound' }],
  ['earth open', 'stand-in: PE open', { op: 'vehicle', earth: 'open' }],
  ['authorise', 'press: authorise', { op: 'press', button: 'authorise' }],
  ['override', 'press: override the delay', { op: 'press', button: 'override-delay' }],
  ['stop', 'press: stop', { op: 'press', button: 'stop' }],
  ['emergency', 'press: emergency stop', { op: 'press', button: 'emergency' }],
  ['test button', 'press: test button of the residual device', { op: 'press', button: 'residual-test' }],
  ['reset unit', 'reset the unit, as its sheet says', { op: 'reset', what: 'unit' }],
  ['reset supply', 'supply off 10 s and on', { op: 'reset', what: 'supply' }],
  ['reset upstream', 'reset the device at the origin', { op: 'reset', what: 'upstream' }],
  ['check', 'check the instruments', { op: 'check-instruments' }],
  [
    'check known',
    'check the instruments, the tester on its known resistor',
    { op: 'check-instruments', known: true },
  ],
  ['null', 'null the leads', { op: 'null-leads' }],
  ['dead origin', 'prove dead at the origin', { op: 'prove-dead', at: 'origin' }],
  ['dead supply', 'prove dead at the unit’s supply terminals', { op: 'prove-dead', at: 'supply' }],
  ['dead outlet', 'prove dead at the outlet', { op: 'prove-dead', at: 'outlet' }],
  ['isolate', 'isolate at the origin: all poles, locked', { op: 'isolate' }],
  ['isolate line', 'isolate at the origin: line poles only, locked', { op: 'isolate', poles: 'line' }],
  [
    'isolate main',
    'isolate at the main switch: whole installation, locked',
    { op: 'isolate', at: 'main-switch' },
  ],
  ['energise', 'energise: all that is off', { op: 'energise' }],
  ['energise origin', 'energise at the origin', { op: 'energise', at: 'origin' }],
  ['energise main', 'energise at the main switch', { op: 'energise', at: 'main-switch' }],
  ['open cover', 'open the cover', { op: 'open-cover' }],
  ['close cover', 'close the cover', { op: 'close-cover' }],
  ['discharge', 'wait for stored energy to go', { op: 'discharge' }],
  ['take off', 'take the unit’s conductors off', { op: 'disconnect', what: 'unit' }],
  ['connect', 'connect the unit’s conductors', { op: 'reconnect', what: 'unit' }],
  ['pull', 'pull at the plug', { op: 'pull-plug' }],
  ['flex', 'bend the cable', { op: 'flex-cable' }],
  ['rest', 'let the cable rest', { op: 'flex-cable', on: false }],
  ['look', 'look it over', { op: 'inspect' }],
  ['guard', 'guard the area', { op: 'guard' }],
];

const ARRESTER: readonly Act[] = [
  ['take off arrester', 'take the surge arrester off', { op: 'disconnect', what: 'arrester' }],
  ['connect arrester', 'connect the surge arrester', { op: 'reconnect', what: 'arrester' }],
];

/** Dead work at the origin: what can be taken off, and the links for R1 + R2 and for line and neutral. */
const originActs = (site: Site): readonly Act[] => {
  const what = site.earthing === 'TT' ? 'electrode' : 'earthing-conductor';
  const words = site.earthing === 'TT' ? 'earth electrode' : 'earthing conductor';
  return [
    ['earth off', `take the ${words} off`, { op: 'disconnect', what }],
    ['earth on', `connect the ${words}`, { op: 'reconnect', what }],
    ...linesOf(site).flatMap((x): Act[] => [
      [`link ${x}`, `link ${x} to PE at the origin`, { op: 'link', between: [`origin.${x}`, 'origin.PE'] }],
      [`unlink ${x}`, `take the ${x} link out`, { op: 'unlink', between: [`origin.${x}`, 'origin.PE'] }],
      [`link ${x} N`, `link ${x} to N at the origin`, { op: 'link', between: [`origin.${x}`, 'origin.N'] }],
      [
        `unlink ${x} N`,
        `take the link from ${x} to N out`,
        { op: 'unlink', between: [`origin.${x}`, 'origin.N'] },
      ],
    ]),
  ];
};

const CODING: readonly Act[] = [
  ...CABLE_CODINGS.map(
    (coding): Act => [`coding ${coding}`, `coding in the plug: ${coding} A`, { op: 'vehicle', coding }],
  ),
  ['coding none', 'coding in the plug: none', { op: 'vehicle', coding: null }],
];

/** What the tutor, or the maker's test function, can do to the supply; a PEN conductor is where the papers have one. */
const disturbances = (papers: Papers): readonly Act[] => [
  ...(papers.sheet.openPen === 'none'
    ? []
    : ([['pen hazard', 'disturbance: what the open-PEN measure watches for', disturb(papers)]] as const)),
  ...(hasPen(papers.site)
    ? ([
        ['pen open', 'disturbance: PEN conductor open', { op: 'supply', pen: 'open' }],
        ['pen sound', 'disturbance: PEN conductor sound', { op: 'supply', pen: 'sound' }],
      ] as const)
    : []),
  ...livesOf(papers.site).map(
    (live): Act => [`lose ${live}`, `disturbance: ${live} lost`, { op: 'supply', missing: live }],
  ),
  ['all back', 'disturbance: every conductor back', { op: 'supply', missing: null }],
  ['no limit', 'disturbance: no load limit', { op: 'supply', loadLimit: null }],
  ['as it was', 'disturbance over: supply as it was', restore],
];

/** The codings that a plug in the hand may be given, where the cable is the customer’s own. */
export const codingsAtHand = ({ sheet }: Papers, { plugged, coding }: Position): readonly Operation[] =>
  sheet.outlet === 'socket' && !plugged
    ? CODING.map(([, , act]) => operation(act)).filter((act) => 'coding' in act && act.coding !== coding)
    : [];

export const actsOn = (papers: Papers): readonly Act[] => [
  ...ACTS,
  ...originActs(papers.site),
  ...disturbances(papers),
  ...(papers.sheet.surgeArrester ? ARRESTER : []),
  ...(papers.sheet.outlet === 'socket' ? CODING : []),
];

/** What the sheet calls its acts, by what they are in the log: read once for the papers, not with every press. */
const named = new WeakMap<Papers, ReadonlyMap<string, string>>();

function namesOn(papers: Papers): ReadonlyMap<string, string> {
  const before = named.get(papers);
  if (before !== undefined) return before;
  // The first of those that come to the same names it.
  const names = new Map(
    actsOn(papers)
      .toReversed()
      .map(([, text, act]) => [JSON.stringify(operation(act)), text]),
  );
  named.set(papers, names);
  return names;
}

/** What an act is called on the sheet; one that took a figure, by what came of it. */
export const actText = (act: Operation, papers: Papers): string =>
  namesOn(papers).get(JSON.stringify(act)) ?? operationText(act);

/** A reset and the wait after it, as one key. */
export const resetText = (row: readonly Operation[], papers: Papers): string =>
  row.map((act) => (act.op === 'wait' ? `wait ${act.seconds} s` : actText(act, papers))).join('; ');

/** Seconds that are waited by one press. */
export const WAITS = [3, 10, 30, 60] as const;

/** A start of 0 is none of it, and is said to be. */
const ask = (key: string, label: string, range: FigureRange, start: string): Asked => ({
  key,
  label: `${label}, ${range.unit}${start === '0' ? ' (0: none)' : ''}`,
  range,
  start,
});

const WAIT: FiguredAct = {
  name: 'wait',
  text: 'wait',
  asks: [{ key: 'seconds', label: 'seconds', range: RANGES.wait, start: '3' }],
  lines: [],
  operation: ({ seconds = 0 }) => ({ op: 'wait', seconds }),
};

const standIn = (site: Site): readonly FiguredAct[] => [
  {
    name: 'load',
    text: 'stand-in: load',
    asks: [ask('amps', 'load on each line', RANGES.load, '0')],
    lines: [],
    operation: ({ amps = 0 }) => ({ op: 'vehicle', load: amps }),
  },
  {
    name: 'leakage',
    text: 'stand-in: leakage to PE',
    asks: [ask('ac', 'a.c.', RANGES.leakageAc, '0'), ask('dc', 'smooth d.c.', RANGES.leakageDc, '0')],
    lines: linesOf(site),
    operation: ({ ac = 0, dc = 0 }, line) => ({
      op: 'vehicle',
      leakage: ac === 0 && dc === 0 ? null : { ac: ac / 1000, dc: dc / 1000, line },
    }),
  },
];

/** Neighbours share the PEN conductor: they count where there is one, on any line of the street. */
const NEIGHBOURS: FiguredAct = {
  name: 'neighbours',
  text: 'disturbance: neighbours’ load',
  asks: LINES.map((line) => ask(line, `neighbours on ${line}`, RANGES.neighbours, '0')),
  lines: [],
  operation: (figures) => ({
    op: 'supply',
    neighbours: LINES.flatMap((line) => {
      const kilowatts = figures[line] ?? 0;
      return kilowatts === 0 ? [] : [{ line, power: 1000 * kilowatts }];
    }),
  }),
};

const supplyFigures = ({ site, sheet }: Papers): readonly FiguredAct[] => [
  {
    name: 'volts',
    text: 'disturbance: supply voltage',
    asks: [ask('volts', 'line to neutral without load', RANGES.supplyVolts, '230')],
    lines: [],
    operation: ({ volts = 230 }) => ({ op: 'supply', voltage: volts }),
  },
  {
    name: 'limit',
    text: 'disturbance: load limit',
    asks: [ask('amps', 'left for the unit on each line', RANGES.loadLimit, String(sheet.loadLimit ?? 10))],
    lines: [],
    operation: ({ amps = 0 }) => ({ op: 'supply', loadLimit: amps }),
  },
  {
    name: 'site load',
    text: 'disturbance: known load on the site',
    asks: [ask('amps', 'drawn on each line', RANGES.siteLoad, '0')],
    lines: [],
    operation: ({ amps = 0 }) => ({ op: 'supply', siteLoad: amps }),
  },
  ...(site.nextPoint === undefined
    ? []
    : [
        {
          name: 'next point',
          text: 'next point: vehicle on it',
          asks: [ask('amps', 'drawn on each line', RANGES.nextPoint, '0')],
          lines: [],
          operation: ({ amps = 0 }: Readonly<Record<string, number>>): Operation => ({
            op: 'supply',
            nextPoint: amps,
          }),
        },
      ]),
  ...(hasPen(site) ? [NEIGHBOURS] : []),
];

export const figuredActsOn = (papers: Papers): readonly FiguredAct[] => [
  WAIT,
  ...standIn(papers.site),
  ...supplyFigures(papers),
];

/**
 * Acts that take a figure, of those that were done, each once, the newest first: with another figure it is another act. The
 * wait has keys of its own.
 */
export function figuredIn(done: readonly Operation[], papers: Papers): readonly FiguredAct[] {
  const fieldsOf = (act: unknown): string =>
    Object.keys(JSON.parse(JSON.stringify(act)))
      .sort()
      .join();
  const figured = new Map(
    figuredActsOn(papers).map((act) => [fieldsOf(act.operation({ ac: 1 }, 'L1')), act]),
  );
  return [...new Set(done.toReversed().flatMap((act) => figured.get(fieldsOf(act)) ?? []))].filter(
    (act) => act !== WAIT,
  );
}
