/**
 * Safe isolation on site, script by script: what is done, and every act that is unsafe about it, in order, with what is
 * critical. The rule of each row stands in the document beside it; where a document leaves open how grave an act is, the
 * grade is a judgement of ours, and said to be one. EAWR regs 12 to 14 and the four steps of GS38 were seen in texts
 * that quote them; what is marked so is from memory.
 */
import type { OperationInput } from '../../src/bench/operation.ts';
import type { UnsafeId } from '../../src/bench/unsafe.ts';
import type { ReferenceRow } from './row.ts';

/** One operation, or a whole test action as a faultless trainee does it. */
export type Step = OperationInput | { readonly op: 'action'; readonly id: string };

export interface Expected {
  readonly id: UnsafeId;
  readonly critical: boolean;
}

export interface IsolationScript extends ReferenceRow {
  readonly what: string;
  /** A TN-C-S home with a surge arrester in its unit, a TT one and a TN-S shop, both behind single-pole breakers. */
  readonly at: 'home' | 'cottage' | 'shop';
  /** A conductor that is not there, or a detector that fails, for those who find it out. */
  readonly fault?: 'pe-not-landed' | 'pe-joint' | 'detector-lead-parts';
  readonly script: readonly Step[];
  readonly expected: readonly Expected[];
}

const critical = (id: UnsafeId): Expected => ({ id, critical: true });
const unsafe = (id: UnsafeId): Expected => ({ id, critical: false });

const OFF: OperationInput = { op: 'isolate' };
const OFF_UNLOCKED: OperationInput = { op: 'isolate', lock: false };
const MAIN_OFF: OperationInput = { op: 'isolate', at: 'main-switch' };
const MAIN_ON: OperationInput = { op: 'energise', at: 'main-switch' };
const ON: OperationInput = { op: 'energise' };
const OPEN: OperationInput = { op: 'open-cover' };
const CLOSE: OperationInput = { op: 'close-cover' };
const proved = (
  at: 'origin' | 'supply' | 'outlet',
  how: { tool?: 'meter'; proof?: 'both' | 'before' | 'none' } = {},
): OperationInput => ({ op: 'prove-dead', at, ...how });
const off = (what: 'unit' | 'arrester' | 'earthing-conductor' | 'electrode'): OperationInput => ({
  op: 'disconnect',
  what,
});
const on = (what: 'unit' | 'arrester' | 'earthing-conductor' | 'electrode'): OperationInput => ({
  op: 'reconnect',
  what,
});
const link = (to: 'PE' | 'N' = 'PE'): OperationInput => ({
  op: 'link',
  between: ['origin.L1', `origin.${to}`],
});
const unlink = (to: 'PE' | 'N' = 'PE'): OperationInput => ({
  op: 'unlink',
  between: ['origin.L1', `origin.${to}`],
});
const wait = (seconds: number): OperationInput => ({ op: 'wait', seconds });
const continuity = (a: string, b: string): OperationInput => ({
  op: 'measure',
  quantity: 'continuity',
  between: [a, b],
});
const insulation = (a: string | string[], b: string): OperationInput => ({
  op: 'measure',
  quantity: 'insulation',
  between: [a, b],
  volts: 250,
});
const loop = (a: string, b: string): OperationInput => ({ op: 'measure', quantity: 'loop', between: [a, b] });
const RAMP: OperationInput = { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'ramp' };
const action = (id: string): Step => ({ op: 'action', id });

/** Off and locked, the cover off, every pair proved dead at the board and at the unit, by a detector tried twice. */
const DEAD: readonly OperationInput[] = [OFF, wait(2), proved('origin'), OPEN, proved('supply')];
const CHARGING: readonly OperationInput[] = [
  { op: 'vehicle', plugged: true, state: 'B' },
  wait(2),
  { op: 'vehicle', state: 'C', load: 32 },
  wait(3),
];
const SUPPLIED: readonly OperationInput[] = [...CHARGING.slice(0, 2), { op: 'vehicle', state: 'C' }, wait(3)];
const ENDED: readonly OperationInput[] = [
  { op: 'vehicle', state: 'B' },
  wait(1),
  { op: 'vehicle', state: 'A' },
  wait(1),
  { op: 'vehicle', plugged: false },
];

const ORDER = 'HSG85 and GS38, the order of safe isolation; EAWR 1989 regs 12 to 14';
const LOCK = 'EAWR 1989 regs 12(2), from memory, and 13: isolation is secure; grade: judgement';
const LIVE = 'EAWR 1989 reg. 14: live work only where dead is unreasonable';
const POINT = 'HSG85, GS38: proved dead at the point of work';
const TOOL = 'GS38: a proved two-pole detector, no meter';
const STEPS = 'GS38: prove, test, prove again';
const NEUTRAL = 'BS 7671 461.2, from memory: N may stay where reliably earthed, on TT all live poles open';
const DEVICE = 'BS 7671 Table 537.4, from memory; IEC 61851-1:2017 6.2.1: a contactor does not isolate';
const SOURCES = 'EAWR 1989 reg. 12(2), from memory: isolated from every source';
const EARTH =
  'BS 7671 Guidance Note 3, EAWR 1989 reg. 8: main switch off and locked before the earth is, from memory';
const TESTER = 'BS 7671 643.3, GS38: continuity and insulation are tested dead';
const CONTINUITY = 'BS 7671 643.1, 643.2: continuity before any test that puts current into PE';
const BEFORE_POWER = 'BS 7671 643.1: dead tests pass before power; common practice for links, no source';

const AT_HOME: readonly Omit<IsolationScript, 'at'>[] = [
  // The right order, and what is right of it by itself.
  {
    what: 'the whole order: off, locked, proved, opened, proved, worked on, closed, on',
    script: [...DEAD, off('unit'), on('unit'), CLOSE, ON],
    expected: [],
    source: ORDER,
  },
  {
    what: 'isolated, locked and opened, nothing touched yet',
    script: [OFF, OPEN],
    expected: [],
    source: ORDER,
  },
  {
    what: 'the charge ended and the plug drawn first',
    script: [...CHARGING, ...ENDED, ...DEAD, off('unit')],
    expected: [],
    source: ORDER,
  },
  {
    what: 'by the main switch alone, locked, proved at both places',
    script: [MAIN_OFF, wait(2), proved('origin'), OPEN, proved('supply'), off('unit'), link()],
    expected: [],
    source: ORDER,
  },
  {
    what: 'energised, and isolated once more: proved afresh',
    script: [...DEAD, CLOSE, ON, ...DEAD, off('unit')],
    expected: [],
    source: ORDER,
  },
  {
    what: 'energised, and isolated once more: the old proof relied on',
    script: [...DEAD, CLOSE, ON, OFF, OPEN, off('unit')],
    expected: [critical('conductor-not-proved-dead')],
    source: ORDER,
  },
  {
    what: 'proved behind the main switch, which goes on: the circuit is off by its own device, proved by nobody',
    script: [MAIN_OFF, wait(2), OPEN, proved('supply'), OFF, MAIN_ON, off('unit')],
    expected: [critical('conductor-not-proved-dead')],
    source: ORDER,
  },
  {
    what: 'proved by its own device; the main switch off and on between changes nothing of it',
    script: [...DEAD, MAIN_OFF, MAIN_ON, off('unit')],
    expected: [],
    source: ORDER,
  },
  {
    what: 'proved by its own device, and again while the main switch was off: dead by its own device all the same',
    script: [...DEAD, MAIN_OFF, proved('supply'), MAIN_ON, off('unit')],
    expected: [],
    source: ORDER,
  },
  // The lock.
  {
    what: 'isolated without a lock',
    script: [OFF_UNLOCKED],
    expected: [unsafe('isolated-without-lock')],
    source: LOCK,
  },
  {
    what: 'main switch off without a lock',
    script: [{ op: 'isolate', at: 'main-switch', lock: false }],
    expected: [unsafe('isolated-without-lock')],
    source: LOCK,
  },
  {
    what: 'isolated, not locked, opened',
    script: [OFF_UNLOCKED, OPEN],
    expected: [unsafe('isolated-without-lock'), unsafe('cover-without-lock')],
    source: LOCK,
  },
  {
    what: 'isolated and proved, not locked, a conductor handled',
    script: [OFF_UNLOCKED, wait(2), proved('origin'), OPEN, proved('supply'), off('unit')],
    expected: [
      unsafe('isolated-without-lock'),
      unsafe('cover-without-lock'),
      critical('conductor-not-proved-dead'),
    ],
    source: LOCK,
  },
  {
    what: 'its own device not locked, the main switch locked over it',
    script: [OFF_UNLOCKED, MAIN_OFF, wait(2), OPEN, proved('supply'), off('unit')],
    expected: [unsafe('isolated-without-lock')],
    source: LOCK,
  },
  // Live.
  {
    what: 'opened with the circuit on',
    script: [OPEN],
    expected: [critical('cover-circuit-on')],
    source: LIVE,
  },
  {
    what: 'found live at the board, and opened all the same',
    script: [proved('origin'), OPEN],
    expected: [critical('cover-circuit-on')],
    source: LIVE,
  },
  {
    what: 'energised with the cover still off',
    script: [...DEAD, ON],
    expected: [critical('energised-cover-open')],
    source: LIVE,
  },
  {
    what: 'the main switch on with the cover off, the circuit locked off at its own device',
    script: [...DEAD, MAIN_OFF, MAIN_ON],
    expected: [],
    source: LIVE,
  },
  {
    what: 'the main switch on with the cover off, the circuit on behind it',
    script: [MAIN_OFF, OPEN, MAIN_ON],
    expected: [critical('energised-cover-open')],
    source: LIVE,
  },
  {
    what: 'the circuit’s own device on behind the main switch that is off, then the main switch',
    script: [...DEAD, MAIN_OFF, { op: 'energise', at: 'origin' }, MAIN_ON],
    expected: [critical('energised-cover-open')],
    source: LIVE,
  },
  // Where the work is.
  {
    what: 'proved at the board alone, the unit’s conductors handled',
    script: [OFF, wait(2), proved('origin'), OPEN, off('unit')],
    expected: [critical('conductor-not-proved-dead')],
    source: POINT,
  },
  {
    what: 'proved at the board alone, the arrester handled',
    script: [OFF, wait(2), proved('origin'), OPEN, off('arrester')],
    expected: [critical('conductor-not-proved-dead')],
    source: POINT,
  },
  {
    what: 'proved at the unit alone, a link put in at the board',
    script: [OFF, wait(2), OPEN, proved('supply'), link()],
    expected: [critical('conductor-not-proved-dead')],
    source: POINT,
  },
  {
    what: 'proved at the unit alone, the main earth handled, the main switch locked off',
    script: [OFF, MAIN_OFF, wait(2), OPEN, proved('supply'), off('earthing-conductor')],
    expected: [critical('conductor-not-proved-dead')],
    source: POINT,
  },
  {
    what: 'proved at the outlet alone, which the open contactor makes dead',
    script: [OFF, wait(2), proved('outlet'), OPEN, off('unit')],
    expected: [critical('conductor-not-proved-dead')],
    source: POINT,
  },
  {
    what: 'the unit’s terminals out of reach behind the cover: nothing was proved',
    script: [OFF, wait(2), proved('supply'), OPEN, off('unit')],
    expected: [critical('conductor-not-proved-dead')],
    source: POINT,
  },
  {
    what: 'a repair behind a proof at the board alone',
    script: [OFF, wait(2), proved('origin'), OPEN, { op: 'put-right', what: 'pe-joint' }],
    expected: [critical('conductor-not-proved-dead')],
    source: POINT,
  },
  // With what.
  {
    what: 'proved with a meter, and handled on it',
    script: [OFF, wait(2), OPEN, proved('supply', { tool: 'meter' }), off('unit')],
    expected: [unsafe('proved-with-meter'), critical('conductor-not-proved-dead')],
    source: TOOL,
  },
  {
    what: 'a detector proved before and after',
    script: [OFF, wait(2), OPEN, proved('supply', { proof: 'both' }), off('unit')],
    expected: [],
    source: STEPS,
  },
  {
    what: 'a detector proved before and not after, and handled on it',
    script: [OFF, wait(2), OPEN, proved('supply', { proof: 'before' }), off('unit')],
    expected: [unsafe('detector-not-proved'), unsafe('conductor-half-proved')],
    source: `${STEPS}; grade of the handling: judgement`,
  },
  {
    what: 'a detector never proved, and handled on it',
    script: [OFF, wait(2), OPEN, proved('supply', { proof: 'none' }), off('unit')],
    expected: [unsafe('detector-not-proved'), critical('conductor-not-proved-dead')],
    source: STEPS,
  },
  {
    what: 'proved once more, the detector before and after, before anything is touched',
    script: [OFF, wait(2), OPEN, proved('supply', { proof: 'before' }), proved('supply'), off('unit')],
    expected: [unsafe('detector-not-proved')],
    source: STEPS,
  },
  {
    what: 'proved, and looked at once more with the detector not proved after it: the proof stands',
    script: [...DEAD, proved('supply', { proof: 'before' }), off('unit')],
    expected: [unsafe('detector-not-proved')],
    source: STEPS,
  },
  {
    what: 'a repair, half proved at one of its two places',
    script: [
      OFF,
      wait(2),
      proved('origin', { proof: 'before' }),
      OPEN,
      proved('supply'),
      { op: 'put-right', what: 'pe-joint' },
    ],
    expected: [unsafe('detector-not-proved'), unsafe('conductor-half-proved')],
    source: `${STEPS}; grade of the handling: judgement`,
  },
  {
    what: 'a detector that is dark at its second trial, and the conductor handled all the same',
    fault: 'detector-lead-parts',
    script: [OFF, wait(2), OPEN, proved('supply'), off('unit')],
    expected: [critical('conductor-not-proved-dead')],
    source: STEPS,
  },
  {
    what: 'the same, and tested for dead once more with it',
    fault: 'detector-lead-parts',
    script: [OFF, wait(2), OPEN, proved('supply'), proved('supply'), off('unit')],
    expected: [unsafe('detector-failed'), critical('conductor-not-proved-dead')],
    source: `${STEPS}; grade of the second test: judgement`,
  },
  {
    what: 'the same, replaced and proved anew',
    fault: 'detector-lead-parts',
    script: [
      OFF,
      wait(2),
      OPEN,
      proved('supply'),
      { op: 'put-right', what: 'detector-lead-parts' },
      proved('supply'),
      off('unit'),
    ],
    expected: [],
    source: STEPS,
  },
  {
    what: 'the same, replaced, and handled on what the old one showed',
    fault: 'detector-lead-parts',
    script: [
      OFF,
      wait(2),
      OPEN,
      proved('supply'),
      { op: 'put-right', what: 'detector-lead-parts' },
      off('unit'),
    ],
    expected: [critical('conductor-not-proved-dead')],
    source: STEPS,
  },
  {
    what: 'proved before and not after, then dark on the proving unit, and handled on it',
    fault: 'detector-lead-parts',
    script: [
      OFF,
      wait(2),
      OPEN,
      proved('supply', { proof: 'before' }),
      { op: 'check-instruments' },
      { op: 'put-right', what: 'detector-lead-parts' },
      off('unit'),
    ],
    expected: [unsafe('detector-not-proved'), critical('conductor-not-proved-dead')],
    source: STEPS,
  },
  // By what device.
  {
    what: 'the line alone opened where the neutral is the network’s',
    script: [{ op: 'isolate', poles: 'line' }],
    expected: [],
    source: NEUTRAL,
  },
  {
    what: 'the stop button taken for isolation, and opened',
    script: [...SUPPLIED, { op: 'press', button: 'stop' }, OPEN],
    expected: [critical('cover-circuit-on')],
    source: DEVICE,
  },
  {
    what: 'the stop button taken for isolation, and handled',
    script: [{ op: 'press', button: 'stop' }, OPEN, proved('supply'), off('unit')],
    expected: [critical('cover-circuit-on'), critical('conductor-not-proved-dead')],
    source: DEVICE,
  },
  {
    what: 'the isolator opened under 32 A',
    script: [...CHARGING, OFF],
    expected: [unsafe('isolated-under-load')],
    source: 'BS 7671 Table 537.4, from memory: the charge is ended first',
  },
  {
    what: 'the main switch opened under 32 A',
    script: [...CHARGING, MAIN_OFF],
    expected: [unsafe('isolated-under-load')],
    source: 'BS 7671 Table 537.4, from memory: the charge is ended first',
  },
  {
    what: 'the vehicle plugged in during dead work',
    script: [
      ...SUPPLIED.slice(0, 2),
      ...DEAD,
      insulation(['supply.L1', 'supply.N'], 'supply.PE'),
      off('unit'),
    ],
    expected: [unsafe('vehicle-left-plugged'), unsafe('vehicle-left-plugged')],
    source: SOURCES,
  },
  // The earth.
  {
    what: 'the main earth off with the circuit alone isolated: the house stays on without an earth',
    script: [...DEAD, off('earthing-conductor'), on('earthing-conductor')],
    expected: [critical('earth-off-supply-on')],
    source: EARTH,
  },
  {
    what: 'the main earth off with the main switch off and not locked',
    script: [
      ...DEAD,
      { op: 'isolate', at: 'main-switch', lock: false },
      off('earthing-conductor'),
      on('earthing-conductor'),
    ],
    expected: [unsafe('isolated-without-lock'), critical('earth-off-supply-on')],
    source: EARTH,
  },
  {
    what: 'the main earth off with nothing off at all',
    script: [off('earthing-conductor')],
    expected: [critical('earth-off-supply-on'), critical('conductor-not-proved-dead')],
    source: EARTH,
  },
  {
    what: 'Ze rightly: main switch locked off, proved, earth off, measured, back, then power',
    script: [
      MAIN_OFF,
      wait(2),
      proved('origin'),
      off('earthing-conductor'),
      loop('incoming.L1', 'earthing'),
      on('earthing-conductor'),
      ON,
    ],
    expected: [],
    source: EARTH,
  },
  {
    what: 'the earth not back before power',
    script: [MAIN_OFF, wait(2), proved('origin'), off('earthing-conductor'), ON],
    expected: [critical('energised-earth-off')],
    source: EARTH,
  },
  {
    what: 'the earth not back before the main switch goes on, the circuit still off',
    script: [...DEAD, MAIN_OFF, off('earthing-conductor'), MAIN_ON],
    expected: [critical('energised-earth-off')],
    source: EARTH,
  },
  {
    what: 'the test action Ze, from dead work and back',
    script: [action('isolate'), action('prove-dead'), action('make-good'), action('ze'), action('energise')],
    expected: [],
    source: EARTH,
  },
  // Testers and power.
  {
    what: 'insulation test on a live part',
    script: [...SUPPLIED, insulation('outlet.L1', 'outlet.PE')],
    expected: [critical('insulation-live'), unsafe('vehicle-left-plugged')],
    source: TESTER,
  },
  {
    what: 'continuity test on a live part',
    script: [continuity('incoming.L1', 'met')],
    expected: [critical('continuity-live')],
    source: TESTER,
  },
  {
    what: 'continuity test on the live side of the main switch that is off',
    script: [MAIN_OFF, wait(2), proved('origin'), continuity('incoming.L1', 'met')],
    expected: [critical('continuity-live')],
    source: TESTER,
  },
  {
    what: 'energised with the link to PE in',
    script: [...DEAD, link(), CLOSE, ON],
    expected: [critical('energised-with-link')],
    source: BEFORE_POWER,
  },
  {
    what: 'energised with the link to neutral in',
    script: [...DEAD, link('N'), CLOSE, ON],
    expected: [critical('energised-with-link')],
    source: BEFORE_POWER,
  },
  {
    what: 'line linked to PE, then to neutral, each measured at the unit and taken out',
    script: [
      ...DEAD,
      link(),
      continuity('supply.L1', 'supply.PE'),
      unlink(),
      link('N'),
      continuity('supply.L1', 'supply.N'),
      unlink('N'),
      CLOSE,
      ON,
    ],
    expected: [],
    source: BEFORE_POWER,
  },
  {
    what: 'energised with a failed dead test standing',
    fault: 'pe-joint',
    script: [...DEAD, continuity('met', 'supply.PE'), CLOSE, ON],
    expected: [critical('energised-failed-test')],
    source: BEFORE_POWER,
  },
  {
    what: 'the main switch on with a failed dead test standing, the circuit still off',
    fault: 'pe-joint',
    script: [...DEAD, continuity('met', 'supply.PE'), MAIN_OFF, MAIN_ON],
    expected: [],
    source: BEFORE_POWER,
  },
  {
    what: 'loop test with PE found open',
    fault: 'pe-not-landed',
    script: [
      ...DEAD,
      continuity('met', 'supply.PE'),
      CLOSE,
      ON,
      wait(20),
      ...SUPPLIED,
      loop('outlet.L1', 'outlet.PE'),
    ],
    expected: [critical('energised-failed-test'), critical('loop-earth-open')],
    source: CONTINUITY,
  },
  {
    what: 'residual test with PE found open',
    fault: 'pe-not-landed',
    script: [...DEAD, continuity('met', 'supply.PE'), CLOSE, ON, wait(20), ...SUPPLIED, RAMP],
    expected: [critical('energised-failed-test'), critical('residual-earth-open')],
    source: CONTINUITY,
  },
  {
    what: 'loop and residual test with PE never shown',
    script: [...SUPPLIED, loop('outlet.L1', 'outlet.PE'), RAMP],
    expected: [unsafe('loop-earth-not-shown'), unsafe('residual-earth-not-shown')],
    source: CONTINUITY,
  },
  {
    what: 'insulation from line to neutral through the electronics',
    script: [...DEAD, insulation('supply.L1', 'supply.N')],
    expected: [unsafe('insulation-through-electronics')],
    source: 'BS 7671 643.3.3',
  },
  {
    what: 'energised with the unit’s conductors off, the cover on',
    script: [...DEAD, off('unit'), CLOSE, ON],
    expected: [unsafe('energised-unit-off')],
    source: `${LIVE}; grade: judgement`,
  },
  {
    what: 'energised with the unit’s conductors off and the cover off: their ends are bare',
    script: [...DEAD, off('unit'), ON],
    expected: [unsafe('energised-unit-off'), critical('energised-cover-open')],
    source: `${LIVE}; grade: judgement`,
  },
];

const AT_THE_COTTAGE: readonly Omit<IsolationScript, 'at'>[] = [
  {
    what: 'all poles, locked, proved, worked on',
    script: [...DEAD, off('unit'), on('unit'), CLOSE, ON],
    expected: [],
    source: NEUTRAL,
  },
  {
    what: 'the line alone opened, with an electrode of one’s own',
    script: [{ op: 'isolate', poles: 'line' }],
    expected: [unsafe('neutral-not-isolated')],
    source: NEUTRAL,
  },
  {
    what: 'the line alone opened, and the neutral handled',
    script: [{ op: 'isolate', poles: 'line' }, wait(2), OPEN, proved('supply'), off('unit')],
    expected: [unsafe('neutral-not-isolated'), critical('conductor-not-proved-dead')],
    source: NEUTRAL,
  },
  {
    what: 'the line alone opened behind the main switch, which opens the neutral',
    script: [MAIN_OFF, { op: 'isolate', poles: 'line' }, wait(2), OPEN, proved('supply'), off('unit')],
    expected: [],
    source: NEUTRAL,
  },
  {
    what: 'the electrode off with the circuit alone isolated',
    script: [...DEAD, off('electrode'), on('electrode')],
    expected: [critical('earth-off-supply-on')],
    source: EARTH,
  },
  {
    what: 'the electrode rightly: main switch locked off, proved, off, measured, back, then power',
    script: [
      MAIN_OFF,
      wait(2),
      proved('origin'),
      off('electrode'),
      { op: 'measure', quantity: 'electrode' },
      on('electrode'),
      ON,
    ],
    expected: [],
    source: EARTH,
  },
  {
    what: 'the electrode not back before power',
    script: [MAIN_OFF, wait(2), proved('origin'), off('electrode'), ON],
    expected: [critical('energised-earth-off')],
    source: EARTH,
  },
  {
    what: 'the test action electrode, in dead work, and the next dead test after it',
    script: [
      action('isolate'),
      action('prove-dead'),
      action('electrode'),
      action('r1r2-polarity'),
      action('energise'),
    ],
    expected: [],
    source: EARTH,
  },
];

/** 250 A of other circuits: the neutral stands over 20 V from PE, by some 0.11 Ω of the supply’s own. */
const LOADED: OperationInput = { op: 'supply', siteLoad: 250 };

const AT_THE_SHOP: readonly Omit<IsolationScript, 'at'>[] = [
  {
    what: 'proved, and found live at a later look: the proof is gone',
    script: [
      { op: 'isolate', poles: 'line' },
      wait(2),
      OPEN,
      proved('supply'),
      LOADED,
      proved('supply'),
      off('unit'),
    ],
    expected: [critical('conductor-not-proved-dead')],
    source: ORDER,
  },
  {
    what: 'found live though isolated; the main switch off and on changes nothing of it, and it is opened',
    script: [{ op: 'isolate', poles: 'line' }, LOADED, wait(2), proved('origin'), MAIN_OFF, MAIN_ON, OPEN],
    expected: [critical('cover-circuit-on')],
    source: ORDER,
  },
];

export const ISOLATION_SCRIPTS: readonly IsolationScript[] = [
  ...AT_HOME.map((row) => ({ ...row, at: 'home' as const })),
  ...AT_THE_COTTAGE.map((row) => ({ ...row, at: 'cottage' as const })),
  ...AT_THE_SHOP.map((row) => ({ ...row, at: 'shop' as const })),
];
