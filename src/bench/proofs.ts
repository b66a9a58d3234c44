/**
 * Where it was proved dead, with what was off, and how well the detector was tried. A proof is of what was off when it
 * was made: it ends when one of that is switched on.
 */
import type { Volts } from '../laws/quantities.ts';
import type { Isolator } from './plant.ts';
import type { Reading } from './reading.ts';
import type { Place } from './terminals.ts';

export interface Proof {
  /** When, on the clock of whoever keeps it. */
  readonly at: number;
  /** What was off: the circuit is dead by these alone. */
  readonly off: readonly Isolator[];
  /** Whether the detector was tried before and after (GS38), or before alone: then it may have failed meanwhile. */
  readonly isWhole: boolean;
}

export type Proofs = Readonly<Partial<Record<Place, Proof>>>;

/** A detector that shows less than this calls it dead, V. A design choice: under the lowest step of a two-pole detector (12 V, common practice, no source). */
export const DEAD: Volts = 12;

type Values = readonly Pick<Reading, 'value'>[];
export const showDead = (readings: Values): boolean =>
  readings.length > 0 && readings.every(({ value }) => value !== null && value < DEAD);
export const showLive = (readings: Values): boolean =>
  readings.some(({ value }) => value !== null && value >= DEAD);

/** Where somebody looks, with which tool, and how the detector was tried on a proving unit. */
interface Proving {
  readonly at: Place;
  readonly tool: 'two-pole' | 'meter';
  readonly proof: 'both' | 'before' | 'none';
  /** Whether it was dark on the proving unit, at whichever trial: then it may have failed before it was on the place. */
  readonly wasDark: boolean;
}

/** What is seen then: one of the world's happenings. */
export const DARK = 'detector dark';

/** Whether what happened while a place was looked at shows that the detector fails. */
export const showDark = (events: readonly { readonly what: string }[]): boolean =>
  events.some(({ what }) => what === DARK);

/** After one more look at a place with this off. Live by any tool ends a proof; only a two-pole detector, tried before, makes one, and none that fails a trial. */
export function afterProving(
  proofs: Proofs,
  { at: place, tool, proof, wasDark }: Proving,
  readings: Values,
  { at, off }: Pick<Proof, 'at' | 'off'>,
): Proofs {
  if (off.length === 0) return proofs;
  const { [place]: earlier, ...elsewhere } = proofs;
  if (showLive(readings)) return elsewhere;
  if (!showDead(readings) || tool !== 'two-pole' || proof === 'none' || wasDark) return proofs;
  const isWhole = proof === 'both';
  // A poorer proof takes nothing from a better one; what was dead by less stays so.
  if (earlier?.isWhole === true && !isWhole) return proofs;
  const by = earlier !== undefined && earlier.isWhole === isWhole ? earlier.off : off;
  return { ...elsewhere, [place]: { at, off: by, isWhole } };
}

/** What is left once these are switched on. */
export const afterSwitchingOn = (proofs: Proofs, on: readonly Isolator[]): Proofs =>
  Object.fromEntries(Object.entries(proofs).filter(([, { off }]) => !off.some((at) => on.includes(at))));

/** Once the detector was dark on its proving unit: what it showed without a trial afterwards may have been live. */
export const afterDark = (proofs: Proofs): Proofs =>
  Object.fromEntries(Object.entries(proofs).filter(([, { isWhole }]) => isWhole));
