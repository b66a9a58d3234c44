/**
 * The families of causes: what a broken expectation points to, and what a trainee names when the very cause is not
 * yet known.
 */
export const FAMILIES = {
  'protective-conductor': 'protective conductor',
  'supply-wiring': 'supply and wiring',
  design: 'design',
  switching: 'switching',
  pilot: 'pilot',
  'proximity-retention': 'proximity and retention',
  'residual-direct': 'residual and direct current',
  insulation: 'insulation',
  mechanical: 'mechanical and visible',
} as const;
export type Family = keyof typeof FAMILIES;
