/*
 * Random sequences of what people do to a sound unit, and a watch over what it must never do, whatever the order:
 * leave its outlet live beyond the permitted time, offer more than it may, or be live without its plug held. Times are
 * those of IEC 61851-1:2017 Table A.6 and 6.3.1.2; the current that of 6.3.1.6.
 */
import { outletLive } from '../../src/bench/instruments/openingTimer.ts';
import { type Operation, type OperationInput, operation } from '../../src/bench/operation.ts';
import { perform } from '../../src/bench/perform.ts';
import type { World } from '../../src/bench/world.ts';
import { dutyForCurrent, greatestOffer } from '../../src/laws/pilotDuty.ts';
import type { Seconds } from '../../src/laws/quantities.ts';
import { seconds } from '../../src/laws/quantities.ts';
import type { UnitSheet } from '../../src/unit/design.ts';

/** How soon supply has to be off after each change, s. */
const OFF_WITHIN = { request: 0.1, unplugged: 0.1, pilotOpen: 0.1, earthOpen: 0.1, pilotShort: 3 } as const;
const REASONS = Object.keys(OFF_WITHIN) as readonly (keyof typeof OFF_WITHIN)[];
/** How long a changed limit may take to be followed, s (Table A.6 sequence 6). */
const FOLLOWED_WITHIN: Seconds = 10;

/** The moves: settings of the stand-in mostly, for that is where trouble comes from, then buttons, power and time. */
const INPUTS: readonly OperationInput[] = [
  { op: 'vehicle', plugged: true, state: 'B' },
  { op: 'vehicle', plugged: true, state: 'C' },
  { op: 'vehicle', plugged: true, state: 'D' },
  { op: 'vehicle', state: 'A' },
  { op: 'vehicle', state: 'B' },
  { op: 'vehicle', state: 'C' },
  { op: 'vehicle', plugged: false },
  { op: 'vehicle', pilot: 'shorted-to-earth' },
  { op: 'vehicle', pilot: 'open' },
  { op: 'vehicle', pilot: 'sound' },
  { op: 'vehicle', diode: 'shorted' },
  { op: 'vehicle', diode: 'sound' },
  { op: 'vehicle', earth: 'open' },
  { op: 'vehicle', earth: 'sound' },
  { op: 'vehicle', coding: 13 },
  { op: 'vehicle', coding: null },
  { op: 'vehicle', coding: 32 },
  { op: 'pull-plug' },
  { op: 'press', button: 'authorise' },
  { op: 'press', button: 'override-delay' },
  { op: 'press', button: 'stop' },
  { op: 'press', button: 'emergency' },
  { op: 'press', button: 'residual-test' },
  { op: 'reset', what: 'unit' },
  { op: 'reset', what: 'supply' },
  { op: 'isolate' },
  { op: 'energise' },
  { op: 'isolate', at: 'main-switch' },
  { op: 'energise', at: 'main-switch' },
  { op: 'energise', at: 'origin' },
  // Taken only while it is isolated: a sound part for a sound one, and the control begins anew.
  { op: 'put-right', what: 'breaker-too-slow' },
  { op: 'supply', loadLimit: 10 },
  { op: 'supply', loadLimit: null },
  { op: 'supply', missing: 'N' },
  { op: 'supply', missing: null },
  { op: 'supply', voltage: 200, siteLoad: 20 },
  { op: 'supply', pen: 'sound', voltage: null, neighbours: null, siteLoad: 0 },
  { op: 'vehicle', load: 32 },
  { op: 'vehicle', leakage: { ac: 0.002, dc: 0.007, line: 'L1' } },
  { op: 'vehicle', load: 0, leakage: null },
  { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'ramp' },
  { op: 'measure', quantity: 'residual', waveform: 'smooth-dc-positive', mode: 'fixed', amps: 0.007 },
];
export const MOVES: readonly Operation[] = INPUTS.map(operation);
/** Waits after a move: around every time that matters. */
export const WAITS: readonly (Operation & { op: 'wait' })[] = [0, 0.03, 0.1, 0.5, 3, 10].map(
  (time) => operation({ op: 'wait', seconds: time }) as Operation & { op: 'wait' },
);

interface Since {
  /** When each reason not to supply began, s of bench time; absent while it does not hold. */
  readonly reasons: Readonly<Partial<Record<keyof typeof OFF_WITHIN, Seconds>>>;
  /** When the limits on the offer last changed. */
  readonly limits: Seconds;
}

export class Watch {
  private since: Since = { reasons: {}, limits: 0 };
  private readonly world: World;

  constructor(world: World) {
    this.world = world;
  }

  private get now(): Seconds {
    return seconds(this.world.timeline.now);
  }

  /** Does a move and a wait; says what was wrong after either, or null. */
  step(move: Operation, wait: Operation & { op: 'wait' }): string | null {
    const limits = this.limits();
    perform(this.world, move);
    this.note(limits);
    const wrong = this.look();
    if (wrong !== null || wait.seconds === 0) return wrong;
    perform(this.world, wait);
    return this.look();
  }

  private limits(): number {
    const { sheet } = this.world.installation.design;
    return mostOffered(sheet, this.world);
  }

  private note(limitsBefore: number): void {
    const { standIn } = this.world.plant;
    const { ventilation } = this.world.installation.design.sheet;
    const asks = standIn.state === 'C' || (standIn.state === 'D' && ventilation);
    const holds: Record<keyof typeof OFF_WITHIN, boolean> = {
      request: !asks,
      unplugged: !standIn.plugged,
      pilotOpen: standIn.pilot === 'open',
      earthOpen: standIn.earth === 'open',
      pilotShort: standIn.pilot === 'shorted-to-earth',
    };
    const reasons: Partial<Record<keyof typeof OFF_WITHIN, Seconds>> = {};
    for (const reason of REASONS) if (holds[reason]) reasons[reason] = this.since.reasons[reason] ?? this.now;
    this.since = { reasons, limits: this.limits() === limitsBefore ? this.since.limits : this.now };
  }

  private look(): string | null {
    const { world } = this;
    const { sheet } = world.installation.design;
    const live = outletLive(world);
    if (live)
      // A microsecond of rounding on either side.
      for (const reason of REASONS) {
        const lasts = this.now - (this.since.reasons[reason] ?? this.now);
        if (lasts > OFF_WITHIN[reason] + 2e-6) return `live ${lasts.toFixed(3)} s after ${reason}`;
      }
    if (live && sheet.outlet === 'socket' && world.plant.plugLock !== 'held')
      return 'live with the plug not held';
    if (world.plant.pilot === 'oscillating' && this.now - this.since.limits > FOLLOWED_WITHIN + 2e-6) {
      const most = this.limits();
      const allowed = most === 0 ? 0 : dutyForCurrent(most);
      if (world.plant.duty > allowed + 0.005) return `offers ${world.plant.duty}, allowed ${allowed}`;
    }
    return null;
  }
}

/** The least of unit, cable, setting and load limit as they stand now, A. */
function mostOffered(sheet: UnitSheet, { plant }: World): number {
  const { coding } = plant.standIn;
  const cable = sheet.outlet === 'tethered' ? [] : [plant.standIn.plugged ? (coding ?? 0) : 0];
  const limit = plant.loadLimit === null ? [] : [plant.loadLimit];
  return greatestOffer(sheet.ratedCurrent, sheet.setCurrent, ...cable, ...limit);
}
