/**
 * What the person at the bench has established so far: where it was proved dead since it was last energised and where
 * it was found live since it was isolated, which dead tests stand failed, whether the protective conductor is known to
 * be open. Unsafe acts are judged by it.
 */
import type { Volts } from '../laws/quantities.ts';
import type { Proofs } from './proofs.ts';
import type { Place } from './terminals.ts';

export interface Knowledge {
  readonly provedDead: Proofs;
  /** Where proving showed a voltage though it was isolated, and no later one showed it gone. */
  readonly foundLive: readonly Place[];
  /** The detector showed nothing on its proving unit: until it is replaced, what it shows dead may be live (GS38). */
  readonly detectorFailed: boolean;
  /** Failed dead tests that stand: those of which a path has not passed since. */
  readonly failedTests: readonly FailedTest[];
  /** Paths of the protective conductor that have read as they should. */
  readonly earthShown: readonly string[];
}

export type DeadFailure = 'insulation-low' | 'protective-open' | 'protective-above-sum' | 'earths-together';

export interface FailedTest {
  readonly why: DeadFailure;
  /** A protective conductor that reads open. */
  readonly isOpen: boolean;
  /** Of an insulation test, V; 0 for continuity. */
  readonly volts: Volts;
  /** What its reading joined and no later reading has shown to be right (deadTests.ts names the paths). */
  readonly left: readonly string[];
}

export const nothingKnown = (): Knowledge => ({
  provedDead: {},
  foundLive: [],
  detectorFailed: false,
  failedTests: [],
  earthShown: [],
});
