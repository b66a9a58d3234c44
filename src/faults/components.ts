/**
 * What is put right as one piece, and where the hand goes that does it. Finer than the families of causes: a repair
 * replaces or remakes one of these, and the tests that rest on it are done again (BS 7671 643.1).
 */

/**
 * `behind cover`: dead work at the unit, with its cover off. `outside`: dead work elsewhere. `no conductor`: nothing
 * electrical is handled. `in hand`: whoever tests has brought it, and nothing of the installation is touched. `not here`: it belongs to the distributor, and nobody on the site may touch it.
 */
type Reach = 'behind cover' | 'outside' | 'no conductor' | 'in hand' | 'not here';

export const COMPONENTS = {
  supply: 'not here',
  /** The main earthing terminal with its conductor or its electrode. */
  earthing: 'outside',
  breaker: 'outside',
  'upstream-device': 'outside',
  /** Every core from the origin to the unit's supply terminals, with its ends and its insulation. */
  circuit: 'behind cover',
  /** The protective conductor inside the unit, from its supply terminal to case and outlet. */
  'unit-earth': 'behind cover',
  /** Socket or tether with its contacts; a tether's cores end behind the cover. */
  outlet: 'behind cover',
  arrester: 'behind cover',
  /** Condensers from its live conductors to PE, which leak a little. */
  filter: 'behind cover',
  contactor: 'behind cover',
  /** Everything that makes, reads and acts on the pilot. */
  pilot: 'behind cover',
  /** What reads the cable's coding at a socket-outlet. */
  coding: 'behind cover',
  lock: 'behind cover',
  'residual-device': 'behind cover',
  'direct-detector': 'behind cover',
  'open-pen': 'behind cover',
  /** Enclosure, guards and labels. */
  enclosure: 'no conductor',
  tester: 'in hand',
  /** The two-pole voltage detector. */
  detector: 'in hand',
} as const satisfies Record<string, Reach>;
export type Component = keyof typeof COMPONENTS;
