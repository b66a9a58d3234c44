/**
 * What the protective devices feel in a solved network: residual currents as the sum over all live conductors
 * through each device, smooth d.c. apart, line currents in the breaker; and the time in which each would trip.
 */

import type { Parts } from '../faults/parts.ts';
import { breakerTripTime } from '../laws/overcurrent.ts';
import type { Amps, Seconds } from '../laws/quantities.ts';
import { directTripTime, residualTripTime } from '../laws/residualCurves.ts';
import type { Delay, DeviceType } from '../laws/residualLimits.ts';
import { toleratedDirect } from '../laws/residualLimits.ts';
import { branchCurrent } from '../network/potentials.ts';
import { linesOf, livesOf } from '../site/site.ts';
import type { UnitDesign } from '../unit/design.ts';
import type { Plant } from './plant.ts';
import type { Solution, Wiring } from './wiring.ts';

/** Mean of a half-wave of 1 A r.m.s., both over whole periods: peak / π over peak / 2, which is 2/π. */
const MEAN_OF_HALF_WAVE = 0.6366197723675814;

export interface Residual {
  /** 50 Hz, r.m.s. */
  readonly alternating: Amps;
  readonly halfWave: Amps;
  /** Smooth d.c., signed. */
  readonly direct: Amps;
}

const UNIT = ['unit'];

/** The residual current through a device that embraces all live conductors at one place. */
export function residualThrough(
  wiring: Wiring,
  solution: Solution,
  parts: Parts,
  place: 'unit' | 'origin',
): Residual {
  let re = 0;
  let im = 0;
  let halfWave = 0;
  let direct = 0;
  const through = place === 'unit' ? UNIT : parts.ways;
  for (const branch of through.flatMap((at) => livesOf(parts.site).map((live) => `${at}.${live}`))) {
    const current = branchCurrent(solution.reduced, solution.planes, wiring.branchOf(branch));
    re += current.mains.re;
    im += current.mains.im;
    halfWave += current.halfWave;
    direct += current.high;
  }
  return { alternating: Math.sqrt(re * re + im * im), halfWave, direct };
}

/** A type B device acts on smooth d.c. at this multiple of its pick-up for a.c.; with a pick-up of 0.67 to 0.87 of rated that is 0.87 to 1.13, inside 0.5 to 2 (BS EN 62423, from memory). */
const SMOOTH_MULTIPLE = 1.3;

/**
 * Below this a core of type AC is not yet held by smooth d.c., A. A design choice: no standard gives it any
 * (BS 7671:2018+A2:2022 531.3.3).
 */
const BLINDS_AC: Amps = 0.003;

/** Smooth d.c. above what its type bears holds the core: the device then answers to nothing (type B excepted, which acts on d.c. itself). */
const isBlinded = (type: DeviceType, rated: Amps, direct: Amps): boolean =>
  type !== 'B' && direct > 1.001 * Math.max(BLINDS_AC, toleratedDirect(type, rated));

/**
 * In which time a sound device of this type trips on what it feels, s. Type AC does not answer to half-waves, types A
 * and F do at their pick-up for a.c. (IEC 61008-1: 0.35 to 1.4 of rated), type B to smooth d.c. as well
 * (BS EN 62423).
 */
export function residualTime(
  device: { readonly type: DeviceType; readonly rated: Amps; readonly delay: Delay },
  pickup: Amps,
  felt: Residual,
): Seconds {
  const { type, rated, delay } = device;
  const direct = Math.abs(felt.direct);
  if (isBlinded(type, rated, direct)) return Infinity;
  const alternating = residualTripTime(felt.alternating, pickup, delay);
  if (type === 'AC') return alternating;
  const halfWave = residualTripTime(Math.abs(felt.halfWave), pickup, delay);
  const smooth = type === 'B' ? residualTripTime(direct, SMOOTH_MULTIPLE * pickup, delay) : Infinity;
  return Math.min(alternating, halfWave, smooth);
}

/** A detector whose sensor is offset feels one polarity alone. */
const directFelt = (direct: Amps, { directFeels }: UnitDesign): Amps =>
  directFeels === 'both' ? direct : Math.max(0, direct);

export interface TripTimes {
  readonly residual: Seconds;
  readonly direct: Seconds;
  readonly upstream: Seconds;
  readonly breaker: Seconds;
}

/** How soon each device would trip from rest, s; Infinity where it would not, or is not there. */
export function tripTimes(
  wiring: Wiring,
  solution: Solution,
  parts: Parts,
  plant: Plant,
  upstreamPickup: Amps,
): TripTimes {
  const { design, site } = parts;
  const { residual } = design.sheet;
  const atUnit = residualThrough(wiring, solution, parts, 'unit');
  const { residualDevice, breaker } = site.circuit;
  const powered = plant.pilot !== 'unpowered';
  // A device that opens the contactor is part of the electronics; one that opens its own breaker needs no supply.
  const alive = residual.by === 'breaker' || powered;
  const lineCurrents = parts.ways.flatMap((way) =>
    linesOf(site).map((line) => {
      const { reduced, planes } = solution;
      const { re, im } = branchCurrent(reduced, planes, wiring.branchOf(`${way}.${line}`)).mains;
      return Math.sqrt(re * re + im * im);
    }),
  );
  return {
    residual:
      residual.type !== null && alive
        ? residualTime(
            { type: design.residualType ?? residual.type, rated: residual.rated ?? 0.03, delay: 'general' },
            design.residualPickup,
            atUnit,
          ) +
          design.residualDelay +
          (plant.freed.includes('unit') ? 0 : design.firstTripLater)
        : Infinity,
    direct:
      residual.direct !== null && powered
        ? directTripTime(
            directFelt(atUnit.direct + MEAN_OF_HALF_WAVE * atUnit.halfWave, design),
            design.directPickup,
          ) + design.directDelay
        : Infinity,
    upstream:
      residualDevice !== null
        ? residualTime(residualDevice, upstreamPickup, residualThrough(wiring, solution, parts, 'origin')) +
          (plant.freed.includes('upstream') ? 0 : parts.upstreamFirstLater)
        : Infinity,
    breaker: breakerTripTime(breaker.type, breaker.rating, Math.max(...lineCurrents)),
  };
}
