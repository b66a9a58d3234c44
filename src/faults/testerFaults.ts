/** Faults of the tester and of the voltage detector, which falsify what is read of a sound installation until they are replaced. */
import { OPEN } from '../site/part.ts';
import type { Fault } from './fault.ts';
import { PUT_RIGHT } from './fault.ts';
import type { Parts } from './parts.ts';
import type { Tester } from './tester.ts';

const frame = {
  kind: 'fault',
  family: 'tester',
  component: 'tester',
  next: PUT_RIGHT,
  tell: ['client'],
  parameters: [],
} as const;

const withTester = (parts: Parts, change: Partial<Tester>): Parts => ({
  ...parts,
  tester: { ...parts.tester, ...change },
});

export const testerFaults: readonly Fault[] = [
  {
    ...frame,
    // HSE GS38, 4th edition 2015: leads are looked over before use.
    id: 'tester-lead-broken',
    change: (parts) => withTester(parts, { lead: OPEN }),
  },
  {
    ...frame,
    // BS EN 61557-4 (from memory): leads are compensated.
    id: 'tester-does-not-null',
    change: (parts) => withTester(parts, { nulls: false }),
  },
  {
    ...frame,
    // BS EN 61557-4 and 61557-2 (from memory): 200 mA at least; the nominal voltage at least.
    id: 'tester-battery-flat',
    parameters: [{ name: 'share', unit: '', min: 0.4, max: 0.75, default: 0.6 }],
    change: (parts, { share = 1 }) => withTester(parts, { battery: share }),
  },
  {
    ...frame,
    // IEC 61557-2 and 61557-4 (from memory): within 30 %; Guidance Note 3 (from memory): checked against known resistors.
    id: 'tester-out-of-calibration',
    parameters: [{ name: 'times', unit: '', min: 1.35, max: 2.5, default: 1.6 }],
    change: (parts, { times = 1 }) => withTester(parts, { gain: times }),
  },
  {
    ...frame,
    component: 'detector',
    // HSE GS38, 4th edition 2015, and HSG85: proved before and after.
    id: 'detector-lead-parts',
    change: (parts) => ({ ...parts, detector: { leadParts: true } }),
  },
];
