/**
 * What the person at the bench has established so far: where it was proved dead since it was last energised and where
 * it was found live since it was isolated, which dead tests stand failed, whether the protective conductor is known to
 * be open. Unsafe acts are judged by it.
 */
import type { Microseconds } from '../laws/quantities.ts';
import type { Place } from './terminals.ts';

export interface Knowledge {
  readonly provedDead: Readonly<Partial<Record<Place, Microseconds>>>;
  /** Where proving showed a voltage though it was isolated, and no later one showed it gone. */
  readonly foundLive: readonly Place[];
  /** Failed dead tests that no later reading has put right: what was measured → why it failed. */
  readonly failedTests: Readonly<Record<string, string>>;
  /** Paths of the protective conductor that read open, by what was measured. */
  readonly openEarth: readonly string[];
}

export const nothingKnown = (): Knowledge => ({
  provedDead: {},
  foundLive: [],
  failedTests: {},
  openEarth: [],
});
