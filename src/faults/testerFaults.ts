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
    id: 'tester-lead-broken',
    source: 'HSE GS38, 4th edition 2015: leads are looked over before use',
    change: (parts) => withTester(parts, { lead: OPEN }),
  },
  {
    ...frame,
    id: 'tester-does-not-null',
    source: 'BS EN 61557-4 (from memory): leads are compensated',
    change: (parts) => withTester(parts, { nulls: false }),
  },
  {
    ...frame,
    id: 'tester-battery-flat',
    source: 'BS EN 61557-4 and 61557-2 (from memory): 200 mA at least; the nominal voltage at least',
    parameters: [{ name: 'share', unit: '', min: 0.4, max: 0.75, default: 0.6 }],
    change: (parts, { share = 1 }) => withTester(parts, { battery: share }),
  },
  {
    ...frame,
    id: 'tester-out-of-calibration',
    source:
      'IET Guidance Note 3 (from memory): accuracy is checked now and then against known resistors; IEC 61557-2 and 61557-4 (from memory): within 30 %',
    parameters: [{ name: 'times', unit: '', min: 1.35, max: 2.5, default: 1.6 }],
    change: (parts, { times = 1 }) => withTester(parts, { gain: times }),
  },
  {
    ...frame,
    id: 'detector-lead-parts',
    component: 'detector',
    source: 'HSE GS38, 4th edition 2015: proved before and after; HSG85',
    change: (parts) => ({ ...parts, detector: { leadParts: true } }),
  },
];
