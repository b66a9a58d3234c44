/** How a charge point reads the proximity resistor, at and beside every edge. Ohms. */

import type { ReferenceRow } from './row.ts';

const SOURCE = 'IEC 61851-1:2017, Table B.2';

export const PROXIMITY_ROWS: readonly (ReferenceRow & {
  ohms: number;
  reading: 13 | 20 | 32 | 63 | 'none' | 'invalid' | 'gap';
})[] = [
  { ohms: 0, reading: 'invalid', source: SOURCE },
  { ohms: 59.9, reading: 'invalid', source: SOURCE },
  { ohms: 60, reading: 'gap', source: SOURCE },
  { ohms: 79.9, reading: 'gap', source: SOURCE },
  { ohms: 80, reading: 63, source: SOURCE },
  { ohms: 100, reading: 63, source: SOURCE },
  { ohms: 140, reading: 63, source: SOURCE },
  { ohms: 140.1, reading: 'gap', source: SOURCE },
  { ohms: 163.9, reading: 'gap', source: SOURCE },
  { ohms: 164, reading: 32, source: SOURCE },
  { ohms: 220, reading: 32, source: SOURCE },
  { ohms: 308, reading: 32, source: SOURCE },
  { ohms: 308.1, reading: 'gap', source: SOURCE },
  { ohms: 399.9, reading: 'gap', source: SOURCE },
  { ohms: 400, reading: 20, source: SOURCE },
  { ohms: 680, reading: 20, source: SOURCE },
  { ohms: 936, reading: 20, source: SOURCE },
  { ohms: 936.1, reading: 'gap', source: SOURCE },
  { ohms: 1099.9, reading: 'gap', source: SOURCE },
  { ohms: 1100, reading: 13, source: SOURCE },
  { ohms: 1500, reading: 13, source: SOURCE },
  { ohms: 2460, reading: 13, source: SOURCE },
  { ohms: 2460.1, reading: 'gap', source: SOURCE },
  { ohms: 4500, reading: 'gap', source: SOURCE },
  { ohms: 4500.1, reading: 'none', source: SOURCE },
  { ohms: Infinity, reading: 'none', source: SOURCE },
  { ohms: -1, reading: 'invalid', source: 'no such resistance' },
  { ohms: Number.NaN, reading: 'invalid', source: 'no such resistance' },
];
