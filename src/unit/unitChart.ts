/**
 * The unit's control logic as one statechart: unpowered, starting, or running with its regions side by side. What
 * the control drives is a pure function of the states (`commandsOf`); no action reaches outside.
 */
import type { SnapshotFrom } from 'xstate';
import { dutyForCurrent } from '../laws/pilotDuty.ts';
import type { Duty } from '../laws/quantities.ts';
import type { AskedDesign } from './asked.ts';
import { opensEarthUnpowered } from './design.ts';
import { offeredCurrent } from './offer.ts';
import { regions } from './regions/regions.ts';
import { type UnitContext, type UnitTag, unitSetup } from './regions/setup.ts';
import { UNPLUGGED } from './sensed.ts';

/** What a unit of this design has in mind before it was ever powered. */
export const beginningContext = (design: AskedDesign): UnitContext => ({
  design,
  sensed: UNPLUGGED,
  candidate: 'A',
  authorised: false,
  overridden: false,
  kept: [],
  limit: design.sheet.loadLimit,
});

const makeChart = () =>
  unitSetup.createMachine({
    id: 'unit',
    context: ({ input }) => beginningContext(input.design),
    initial: 'unpowered',
    options: { maxIterations: 100 },
    states: {
      unpowered: {
        tags: 'unpowered',
        on: {
          power: { guard: 'power comes', target: 'powered' },
          sensed: { actions: 'take in' },
        },
      },
      powered: {
        initial: 'starting',
        on: { power: { guard: 'power goes', target: 'unpowered' } },
        states: {
          starting: {
            tags: 'starting',
            on: {
              sensed: { actions: 'take in' },
              // The button is read from the first moment: what it clears need not be pressed for twice.
              button: { guard: { type: 'pressed', params: { button: 'reset' } }, actions: 'forget by reset' },
            },
            after: { 'start-up': 'running' },
          },
          // A unit that has just started goes by the limit that stands now.
          running: { type: 'parallel', entry: ['take limit', 'forget authorisation'], states: regions },
        },
      },
    },
  });

let made: UnitChart | null = null;

/** The chart is made when it is first asked for: it takes long, and a page that loads has enough to do. */
export const unitChart = (): UnitChart => {
  made ??= makeChart();
  return made;
};

export type UnitChart = ReturnType<typeof makeChart>;
export type UnitSnapshot = SnapshotFrom<UnitChart>;

/** What is asked of a state of the chart, whoever runs it. */
export interface UnitState {
  readonly context: UnitContext;
  readonly hasTag: (tag: UnitTag) => boolean;
}

/** What the unit says of itself, in plain words. */
export const INDICATORS = [
  'dark',
  'starting',
  'ready',
  'connected',
  'waiting',
  'preparing',
  'charging',
  'stopped',
  'tripped',
  'fault',
] as const;
export type Indicator = (typeof INDICATORS)[number];

export interface Commands {
  readonly coil: boolean;
  readonly pilot: 'unpowered' | 'positive' | 'oscillating' | 'negative';
  /** Share of each period at the high level, 0–1; 1 while steady positive. */
  readonly duty: Duty;
  /** Null: the lock motor is left as it is (no power). */
  readonly lock: boolean | null;
  /** The PE pole of an open-PEN measure; null: left as it is. */
  readonly earthPole: boolean | null;
  readonly indicator: Indicator;
}

const NO_POWER = { coil: false, pilot: 'unpowered', duty: 0, lock: null } as const;

/** The PE pole without power, and until the supply has been seen sound: left where it was, or let go. */
const unpoweredPole = ({ sheet, openPen }: AskedDesign): false | null =>
  opensEarthUnpowered(sheet) && openPen.opensEarth ? false : null;

/** What the control drives in these states. */
export function commandsOf(snapshot: UnitState): Commands {
  const { design, sensed, limit } = snapshot.context;
  if (snapshot.hasTag('unpowered'))
    return { ...NO_POWER, earthPole: unpoweredPole(design), indicator: 'dark' };
  if (snapshot.hasTag('starting'))
    return { ...NO_POWER, earthPole: unpoweredPole(design), indicator: 'starting' };
  const pilot = snapshot.hasTag('not available')
    ? 'negative'
    : snapshot.hasTag('oscillating')
      ? 'oscillating'
      : 'positive';
  return {
    coil: snapshot.hasTag('coil driven'),
    pilot,
    duty:
      pilot === 'oscillating'
        ? drawn(dutyForCurrent(offeredCurrent(design.sheet, sensed.proximity, limit)), design.dutyError)
        : pilot === 'positive'
          ? 1
          : 0,
    lock: snapshot.hasTag('lock driven'),
    earthPole: snapshot.hasTag('earth left')
      ? null
      : !(design.openPen.opensEarth && snapshot.hasTag('earth opened')),
    indicator: indicatorOf(snapshot),
  };
}

/** The duty as it comes out: never quite steady while it oscillates. */
const drawn = (meant: Duty, error: Duty): Duty =>
  error === 0 ? meant : Math.min(0.99, Math.max(0.01, meant + error));

function indicatorOf(snapshot: UnitState): Indicator {
  if (snapshot.hasTag('fault')) return 'fault';
  if (snapshot.hasTag('residual tripped') || snapshot.hasTag('direct tripped')) return 'tripped';
  if (snapshot.hasTag('stopped')) return 'stopped';
  if (snapshot.hasTag('charging')) return 'charging';
  if (!snapshot.hasTag('vehicle')) return 'ready';
  if (!snapshot.hasTag('oscillating')) return 'waiting';
  return snapshot.hasTag('asking') ? 'preparing' : 'connected';
}
