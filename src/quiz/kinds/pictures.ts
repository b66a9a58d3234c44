/** Questions that are answered on a picture: a step of a trace, a terminal of the drawing, a pair of leads. */
import { roundTo } from '../../bench/readings/scale.ts';
import type { Terminal } from '../../bench/terminals.ts';
import { PILOT_SOURCE, parallel, pilotHigh, VEHICLE } from '../../laws/pilotLevels.ts';
import type { Ohms, Seconds, Volts } from '../../laws/quantities.ts';
import type { AimId, SiteId } from '../../scenario/aims.ts';
import { SITES } from '../../scenario/aims.ts';
import { PRACTICE, pilotStandard, published } from '../../verification/sources.ts';
import type { Dice, Kind } from '../question.ts';

const peak = (load: Ohms): Volts =>
  roundTo(
    pilotHigh({
      open: PILOT_SOURCE.open,
      sourceResistance: PILOT_SOURCE.resistance,
      vehicleResistance: load,
      diodeDrop: VEHICLE.diodeDrop,
    }),
    0.1,
  );
const PEAKS = {
  A: peak(Infinity),
  B: peak(VEHICLE.permanent),
  C: peak(parallel(VEHICLE.permanent, VEHICLE.stateC)),
  E: 0,
} as const;

/** What happens, and the level that the pilot has from then on. */
interface Step {
  readonly id: string;
  readonly to: keyof typeof PEAKS;
}

const CHARGE: readonly Step[] = [
  { id: 'plugs-in', to: 'B' },
  { id: 'asks', to: 'C' },
  { id: 'stops-asking', to: 'B' },
  { id: 'unplugs', to: 'A' },
];
const FAULTS: readonly Step[] = [
  { id: 'asks', to: 'C' },
  { id: 'pilot-to-earth', to: 'E' },
  { id: 'comes-back', to: 'B' },
  { id: 'pilot-broken', to: 'A' },
];

/** Each step a while after the one before, so that none is too near another to be touched. */
function timesOf(dice: Dice, steps: readonly Step[]): readonly Seconds[] {
  const gaps = steps.map((_, i) => dice.figure(`gap ${i}`, 1.5, 4, 0.5));
  return gaps.map((_, i) => gaps.slice(0, i + 1).reduce((sum, gap) => sum + gap, 0));
}

const onTrace = (
  id: string,
  topic: AimId,
  begins: keyof typeof PEAKS,
  steps: readonly Step[],
  asked: readonly [string, ...string[]],
): Kind => ({
  id,
  topics: [topic],
  ask: (dice) => {
    const [what = ''] = dice.shuffle('what', asked);
    const times = timesOf(dice, steps);
    const at = (step: string): Seconds => times[steps.findIndex((one) => one.id === step)] ?? 0;
    return {
      way: 'cursor',
      values: { what },
      source: pilotStandard('Tables A.4 and A.10'),
      trace: {
        of: 'pilot-peak',
        levels: [
          { at: 0, value: PEAKS[begins] },
          ...steps.map(({ to }, i) => ({ at: times[i] ?? 0, value: PEAKS[to] })),
        ],
        to: (times.at(-1) ?? 0) + 2,
      },
      answer: at(what),
      mistakes: steps.filter((one) => one.id !== what).map((one) => ({ id: one.id, at: at(one.id) })),
    };
  },
});

const traceOfCharge = onTrace('trace-of-a-charge', 'lets-go', 'A', CHARGE, [
  'plugs-in',
  'asks',
  'stops-asking',
  'unplugs',
]);
const traceOfFault = onTrace('trace-of-a-fault', 'refuses', 'B', FAULTS, ['pilot-to-earth', 'pilot-broken']);

interface Leads {
  readonly part: 'outlet' | 'unit';
  readonly pair: readonly [Terminal, Terminal];
  /** Tempting, and telling something else. */
  readonly wrong: Readonly<Record<string, readonly [Terminal, Terminal]>>;
}

const LEADS: Readonly<Record<string, { readonly topic: AimId; readonly leads: Leads }>> = {
  'line-against-earth': {
    topic: 'outlet-dead',
    leads: {
      part: 'outlet',
      pair: ['outlet.L1', 'outlet.PE'],
      wrong: { 'line-neutral': ['outlet.L1', 'outlet.N'], 'neutral-earth': ['outlet.N', 'outlet.PE'] },
    },
  },
  'neutral-against-earth': {
    topic: 'outlet-dead',
    leads: {
      part: 'outlet',
      pair: ['outlet.N', 'outlet.PE'],
      wrong: { 'line-neutral': ['outlet.L1', 'outlet.N'], 'line-earth': ['outlet.L1', 'outlet.PE'] },
    },
  },
  pilot: {
    topic: 'offer',
    leads: {
      part: 'outlet',
      pair: ['outlet.CP', 'outlet.PE'],
      wrong: { 'pilot-neutral': ['outlet.CP', 'outlet.N'], proximity: ['outlet.PP', 'outlet.PE'] },
    },
  },
  coding: {
    topic: 'offer',
    leads: {
      part: 'outlet',
      pair: ['outlet.PP', 'outlet.PE'],
      wrong: { pilot: ['outlet.CP', 'outlet.PE'], 'proximity-neutral': ['outlet.PP', 'outlet.N'] },
    },
  },
  loop: {
    topic: 'clears',
    leads: {
      part: 'outlet',
      pair: ['outlet.L1', 'outlet.PE'],
      wrong: { 'line-neutral': ['outlet.L1', 'outlet.N'], 'neutral-earth': ['outlet.N', 'outlet.PE'] },
    },
  },
  'neutral-insulation': {
    topic: 'insulation',
    leads: {
      part: 'unit',
      pair: ['supply.N', 'supply.PE'],
      wrong: { 'line-neutral': ['supply.L1', 'supply.N'], 'line-earth': ['supply.L1', 'supply.PE'] },
    },
  },
  'line-insulation': {
    topic: 'insulation',
    leads: {
      part: 'unit',
      pair: ['supply.L1', 'supply.PE'],
      wrong: { 'line-neutral': ['supply.L1', 'supply.N'], 'neutral-earth': ['supply.N', 'supply.PE'] },
    },
  },
  'sum-of-line-and-earth': {
    topic: 'wiring',
    leads: {
      part: 'unit',
      pair: ['supply.L1', 'supply.PE'],
      wrong: { 'line-neutral': ['supply.L1', 'supply.N'], 'neutral-earth': ['supply.N', 'supply.PE'] },
    },
  },
};

/** With three phases any line is as good as the first. */
const onEachLine = (
  site: SiteId,
  [a, b]: readonly [Terminal, Terminal],
): readonly (readonly [Terminal, Terminal])[] =>
  site === 'three-socket' && a.endsWith('.L1')
    ? ['L1', 'L2', 'L3'].map((line) => [a.replace('L1', line), b] as const)
    : [[a, b]];

const putLeads: Kind = {
  id: 'put-leads',
  topics: [...new Set(Object.values(LEADS).map(({ topic }) => topic))],
  ask: (dice, topic) => {
    const [drawn] = dice.shuffle(
      'what',
      Object.entries(LEADS).filter(([, one]) => one.topic === topic),
    );
    if (drawn === undefined) throw new Error('no leads to put');
    const [what, { leads }] = drawn;
    const site: SiteId = dice.pick('site', SITES);
    return {
      way: 'leads',
      values: { what, site },
      source: PRACTICE,
      drawing: { site, part: leads.part, plugged: false },
      answers: onEachLine(site, leads.pair),
      mistakes: Object.entries(leads.wrong).map(([id, pair]) => ({ id, pair })),
    };
  },
};

const PLACES: Readonly<
  Record<
    string,
    { readonly topic: AimId; readonly terminal: Terminal; readonly wrong: Readonly<Record<string, Terminal>> }
  >
> = {
  'body-earth': {
    topic: 'earth',
    terminal: 'outlet.PE',
    wrong: { neutral: 'outlet.N', pilot: 'outlet.CP' },
  },
  'neutral-return': {
    topic: 'wiring',
    terminal: 'outlet.N',
    wrong: { earth: 'outlet.PE', line: 'outlet.L1' },
  },
  'asks-for-power': {
    topic: 'offer',
    terminal: 'outlet.CP',
    wrong: { proximity: 'outlet.PP', earth: 'outlet.PE' },
  },
  'tells-the-cable': {
    topic: 'wiring',
    terminal: 'outlet.PP',
    wrong: { pilot: 'outlet.CP', earth: 'outlet.PE' },
  },
  'neutral-floats-up': {
    topic: 'outlet-dead',
    terminal: 'outlet.N',
    wrong: { earth: 'outlet.PE', line: 'outlet.L1' },
  },
};

const touchPlace: Kind = {
  id: 'touch-the-place',
  topics: [...new Set(Object.values(PLACES).map(({ topic }) => topic))],
  ask: (dice, topic) => {
    const [drawn] = dice.shuffle(
      'what',
      Object.entries(PLACES).filter(([, one]) => one.topic === topic),
    );
    if (drawn === undefined) throw new Error('no place to touch');
    const [what, { terminal, wrong }] = drawn;
    const site: SiteId = dice.pick('site', SITES);
    return {
      way: 'touch',
      values: { what, site },
      source: published('IEC 61851-1:2017 Annex A and B'),
      drawing: { site, part: 'outlet', plugged: false },
      answer: terminal,
      mistakes: Object.entries(wrong).map(([id, place]) => ({ id, terminal: place })),
    };
  },
};

export const PICTURE_KINDS: readonly Kind[] = [traceOfCharge, traceOfFault, putLeads, touchPlace];
