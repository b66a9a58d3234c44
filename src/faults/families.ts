/**
 * The families of causes: what a broken expectation points to, and what a trainee names when the very cause is not
 * yet known.
 */
export const FAMILIES = [
  'protective-conductor',
  'supply-wiring',
  'design',
  'switching',
  'pilot',
  'proximity-retention',
  'residual-direct',
  'insulation',
  'mechanical',
  'tester',
] as const;
export type Family = (typeof FAMILIES)[number];
