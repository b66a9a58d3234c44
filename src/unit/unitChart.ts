/**
 * The unit's control logic as one statechart: unpowered, starting, or running with its regions side by side. What
 * the control drives is a pure function of the states (`commandsOf`); no action reaches outside.
 */
import type { SnapshotFrom } from 'xstate';
import { dutyForCurrent } from '../laws/pilotDuty.ts';
import type { Duty } from '../laws/quantities.ts';
import { offeredCurrent } from './offer.ts';
import { regions } from './regions/regions.ts';
import { unitSetup } from './regions/setup.ts';
import { UNPLUGGED } from './sensed.ts';

export const unitChart = unitSetup.createMachine({
  id: 'unit',
  context: ({ input }) => ({ design: input.design, sensed: UNPLUGGED, candidate: 'A', session: 0 }),
  initial: 'unpowered',
  options: { maxIterations: 100 },
  states: {
    unpowered: {
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
          on: { sensed: { actions: 'take in' } },
          after: { 'start-up': 'running' },
        },
        running: { type: 'parallel', states: regions },
      },
    },
  },
});

export type UnitSnapshot = SnapshotFrom<typeof unitChart>;

/** What the unit says of itself, in plain words. */
export const INDICATORS = [
  'dark',
  'starting',
  'ready',
  'connected',
  'waiting',
  'preparing',
  'charging',
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
  readonly indicator: Indicator;
}

const NO_POWER = { coil: false, pilot: 'unpowered', duty: 0, lock: null } as const;

/** What the control drives in these states. */
export function commandsOf(snapshot: UnitSnapshot): Commands {
  if (snapshot.matches('unpowered')) return { ...NO_POWER, indicator: 'dark' };
  if (snapshot.matches({ powered: 'starting' })) return { ...NO_POWER, indicator: 'starting' };
  const pilot = snapshot.hasTag('not available')
    ? 'negative'
    : snapshot.hasTag('oscillating')
      ? 'oscillating'
      : 'positive';
  const { design, sensed } = snapshot.context;
  return {
    coil: snapshot.hasTag('coil driven'),
    pilot,
    duty:
      pilot === 'oscillating'
        ? dutyForCurrent(offeredCurrent(design.sheet, sensed.proximity))
        : pilot === 'positive'
          ? 1
          : 0,
    lock: snapshot.hasTag('lock driven'),
    indicator: indicatorOf(snapshot),
  };
}

function indicatorOf(snapshot: UnitSnapshot): Indicator {
  if (snapshot.hasTag('fault')) return 'fault';
  if (snapshot.hasTag('residual tripped') || snapshot.hasTag('direct tripped')) return 'tripped';
  if (snapshot.hasTag('charging')) return 'charging';
  if (!snapshot.hasTag('vehicle')) return 'ready';
  if (!snapshot.hasTag('oscillating')) return 'waiting';
  return snapshot.hasTag('asking') ? 'preparing' : 'connected';
}
