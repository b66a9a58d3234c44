/**
 * Residual test currents from a line to PE, at the outlet or at the origin: fixed or rising, a.c., half-wave or smooth
 * d.c. A.c. is drawn by a resistor that is set for the current, the loop's own impedance allowed for; the others are
 * driven, up to what the instrument's own voltage can push. The test ends when the line is no longer supplied.
 */
import type { Line } from '../../laws/conductors.ts';
import type { Amps, Ohms, Seconds, Volts } from '../../laws/quantities.ts';
import { microseconds, seconds } from '../../laws/quantities.ts';
import type { Seen } from '../../network/port.ts';
import type { TestedPlace } from '../plant.ts';
import { leadsOn, modulus, seenBy } from '../port.ts';
import type { Truth } from '../reading.ts';
import type { ResidualMode, TrippedWhat, Waveform } from '../readings/choices.ts';
import type { FieldsOf } from '../readings/quantity.ts';
import type { Refusal } from '../refusal.ts';
import { advance, move, settle } from '../settle.ts';
import type { World } from '../world.ts';
import { supplied } from './voltageTools.ts';

export interface ResidualSetting {
  readonly at: TestedPlace;
  readonly line: Line;
  readonly waveform: Waveform;
  readonly mode: ResidualMode;
  /** Fixed: the current; ramp: the rating that its steps are shares of. */
  readonly amps: Amps;
  /** Fixed: how long it is held at most. */
  readonly seconds: Seconds;
}

/** Rising a.c.: 30 % to 110 % of the rating in 10 % steps of 300 ms. */
export const ALTERNATING_STEPS = [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1] as const;
export const ALTERNATING_STEP: Seconds = 0.3;
/** Rising d.c.: 2 to 6 mA in 30 s (IEC 62955:2018 9.9.2.1), as a staircase of 0.25 mA. */
export const DIRECT_STEPS: readonly Amps[] = Array.from({ length: 17 }, (_, i) => 0.002 + 0.00025 * i);
export const DIRECT_STEP: Seconds = 30 / 17;
/** What the instrument's own source can push a driven current with, V. A design choice. */
const COMPLIANCE: Volts = 50;
const NO_RETURN = { id: 'no-return' } as const satisfies Refusal;

export const isDirect = (waveform: Waveform): boolean => waveform.startsWith('smooth');
export const signOf = (waveform: Waveform): 1 | -1 => (waveform.endsWith('negative') ? -1 : 1);

export function residual(world: World, setting: ResidualSetting): Truth {
  const { at, line, waveform, mode } = setting;
  const details: FieldsOf<'residual'> = { line, waveform, mode, ...(at === 'outlet' ? {} : { place: at }) };
  if (!isLiveAt(world, setting)) {
    // Supplied to neutral and not to PE: what is missing is the way back.
    const refused: Refusal = supplied(world, `${at}.${line}`, `${at}.N`)
      ? NO_RETURN
      : { id: 'not-live', place: at };
    return { quantity: 'residual', refused, details };
  }
  const steps: readonly Amps[] =
    mode === 'fixed'
      ? [setting.amps]
      : isDirect(waveform)
        ? DIRECT_STEPS
        : ALTERNATING_STEPS.map((share) => share * setting.amps);
  const hold = mode === 'fixed' ? setting.seconds : isDirect(waveform) ? DIRECT_STEP : ALTERNATING_STEP;
  const seen = seenBy(leadsOn(world, `${at}.${line}`, `${at}.PE`));
  // The loop may not lose more volts than a person may touch, nor more than a current can be driven by.
  const greatest = Math.max(...steps);
  const refused =
    waveform === 'sinusoidal'
      ? modulus(seen.impedance) * greatest > COMPLIANCE
      : seen.resistance * greatest > COMPLIANCE;
  if (refused) return { quantity: 'residual', refused: NO_RETURN, details };
  return runSteps(world, setting, steps, hold, seen, details);
}

function runSteps(
  world: World,
  setting: ResidualSetting,
  steps: readonly Amps[],
  hold: Seconds,
  seen: Seen,
  details: FieldsOf<'residual'>,
): Truth {
  const before = positions(world);
  for (const amps of steps) {
    const began = world.timeline.now;
    move(world, { test: testCurrent(setting, amps, seen) });
    settle(world);
    advance(world, began + microseconds(hold), () => !isLiveAt(world, setting));
    if (!isLiveAt(world, setting)) {
      const tripMs = 1000 * seconds(world.timeline.now - began);
      return {
        quantity: 'residual',
        value: amps,
        details: { ...details, tripAmps: amps, tripMs, trippedWhat: ended(world, before) },
      };
    }
  }
  const reached = steps.at(-1) ?? 0;
  return {
    quantity: 'residual',
    value: reached,
    details: { ...details, tripAmps: null, tripMs: null, trippedWhat: ended(world, before) },
  };
}

/** Through the loop and the resistor together flows what is set. */
function resistorFor(amps: Amps, { open, impedance: { re, im } }: Seen): Ohms {
  const whole = modulus(open.mains) / amps;
  return Math.sqrt(whole * whole - im * im) - re;
}

function testCurrent({ at, line, waveform }: ResidualSetting, amps: Amps, seen: Seen) {
  const idle = { at, line, to: 'PE' as const, resistance: null, direct: 0, halfWave: 0 };
  if (waveform === 'sinusoidal') return { ...idle, resistance: resistorFor(amps, seen) };
  const signed = signOf(waveform) * amps;
  return isDirect(waveform) ? { ...idle, direct: signed } : { ...idle, halfWave: signed };
}

const isLiveAt = (world: World, { at, line }: ResidualSetting): boolean =>
  supplied(world, `${at}.${line}`, `${at}.PE`);

const positions = (world: World) => ({
  unit:
    world.plant.unitBreaker === 'tripped' || world.trips.residual.hasTripped || world.trips.direct.hasTripped,
  upstream: world.plant.upstream === 'tripped',
  breaker: world.plant.breaker === 'tripped',
});

/** Takes the current off again and says what opened. */
function ended(world: World, before: ReturnType<typeof positions>): TrippedWhat {
  move(world, { test: null });
  settle(world);
  const after = positions(world);
  const unit = after.unit && !before.unit;
  const upstream = after.upstream && !before.upstream;
  if (unit && upstream) return 'both';
  if (unit) return 'unit';
  if (upstream) return 'upstream';
  return after.breaker && !before.breaker ? 'breaker' : 'none';
}
