/**
 * Why an entry of the catalogue cannot be on an installation, or be put right there, by ids; their words stand in
 * src/words/impossible.ts.
 */

/** By what the installation is, or by the values that a file gives. */
export type Impossible =
  | 'line-unknown'
  | 'line-absent'
  | 'one-line'
  | 'no-socket'
  | 'no-tether'
  | 'no-residual-device'
  | 'no-ac-device'
  | 'no-direct-detector'
  | 'no-device-at-origin'
  | 'no-open-pen-measure'
  | 'no-service-sensor'
  | 'no-next-point'
  | 'no-electrode'
  | 'no-earthing-conductor'
  | 'no-pen'
  | 'no-second-earth'
  | 'no-arrester'
  | 'electrode-decides'
  | 'three-phases'
  | 'no-line-watched'
  | 'slower-breaker-opens'
  | 'ventilation-declared'
  | 'breaker-stays-open'
  | 'no-trip-kept'
  | 'customer-cable-amps'
  | 'no-breaker-too-large'
  | 'no-breaker-too-small'
  | 'cable-carries-more'
  | 'no-greater-rating'
  | 'opens-lines-only-anyway'
  | 'earth-crossed-with-it'
  | 'neutral-would-show'
  | 'nothing-to-bond'
  | 'delayed-by-design'
  | 'no-conductor-too-small'
  | 'cable-carries-in-insulation'
  | 'protective-stands-fault'
  | 'service-kept-within';

/** Whoever is at the bench may not put it right: somebody else's to do. */
export type Never = Impossible | 'designers-to-alter' | 'distributors';
