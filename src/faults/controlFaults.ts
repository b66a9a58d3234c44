/**
 * Faults of the rules that act on the pilot: thresholds, checks, times and the offer itself. Each changes one field
 * of the design; what comes of it follows from the control logic.
 */
import type { Fault } from './fault.ts';
import {
  LOCK_OFF,
  nextPointOnly,
  PUT_RIGHT,
  sensorOnly,
  TELL_INSTALLER,
  TELL_MAKER,
  unless,
} from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withTiming } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'pilot',
  component: 'pilot',
  next: LOCK_OFF,
  tell: TELL_MAKER,
} as const;

/** The boundary below B, V, moved; and those below it where they would come out above. */
function withBoundaryOfC(parts: Parts, volts: number): Parts {
  const [a, , c, d, e, f] = parts.design.thresholds;
  return withDesign(parts, { thresholds: [Math.max(a, volts), volts, c, d, e, f] });
}

/** Everything between the boundary of B and this level is taken for a request. */
function withRequestDownTo(parts: Parts, volts: number): Parts {
  const [a, b, , d, e, f] = parts.design.thresholds;
  return withDesign(parts, {
    thresholds: [a, b, volts, Math.min(d, volts), Math.min(e, volts), f],
  });
}

export const controlFaults: readonly Fault[] = [
  {
    ...frame,
    // IEC 61851-1:2017 Table A.4 note c.
    id: 'diode-not-checked',
    parameters: [],
    change: (parts) => withDesign(parts, { diodeRule: 'ignored' }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1.2: within 3 s.
    id: 'short-not-acted-on',
    parameters: [],
    change: (parts) => withDesign(parts, { shortRule: 'ignored' }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1.4.
    id: 'ventilation-not-asked',
    parameters: [],
    impossible: unless(({ sheet }) => !sheet.ventilation, 'ventilation-declared'),
    change: (parts) => withRequestDownTo(parts, 1.5),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1.2, Table A.6: within 100 ms.
    id: 'pilot-acted-on-late',
    parameters: [{ name: 'seconds', unit: 's', min: 0.3, max: 3, default: 1 }],
    change: (parts, { seconds = 0 }) => withTiming(parts, { debounce: seconds }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1, Table A.4.
    id: 'supplies-in-b',
    parameters: [{ name: 'volts', unit: 'V', min: 9.3, max: 10.2, default: 9.6 }],
    change: (parts, { volts = 0 }) => withBoundaryOfC(parts, volts),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 4: within 3 s.
    id: 'misses-request',
    parameters: [{ name: 'volts', unit: 'V', min: 4.6, max: 5.6, default: 5.2 }],
    change: (parts, { volts = 0 }) => withBoundaryOfC(parts, volts),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Tables A.2 and A.7.
    id: 'offer-too-high',
    parameters: [{ name: 'share', unit: 'of a period', min: 0.02, max: 0.2, default: 0.1 }],
    change: (parts, { share = 0 }) => withDesign(parts, { dutyError: share }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Tables A.2 and A.7.
    id: 'offer-too-low',
    parameters: [{ name: 'share', unit: 'of a period', min: 0.02, max: 0.3, default: 0.1 }],
    change: (parts, { share = 0 }) => withDesign(parts, { dutyError: -share }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 6: within 10 s.
    id: 'limit-ignored',
    parameters: [{ name: 'seconds', unit: 's', min: 30, max: 3600, default: 600 }],
    change: (parts, { seconds = 0 }) => withTiming(parts, { limit: seconds }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.311.
    id: 'service-sensor-reversed',
    parameters: [],
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: sensorOnly,
    change: (parts) => withDesign(parts, { serviceSensor: 'reversed' }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.311.
    id: 'service-sensor-misplaced',
    parameters: [],
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: sensorOnly,
    change: (parts) => withDesign(parts, { serviceSensor: 'own circuit' }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.311.
    id: 'service-sensor-past-parting',
    parameters: [],
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: (on) => sensorOnly(on) ?? nextPointOnly(on),
    change: (parts) => withDesign(parts, { serviceSensor: 'past parting' }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.311.
    id: 'service-limit-set-high',
    parameters: [{ name: 'amps', unit: 'A', min: 10, max: 15, default: 12 }],
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: sensorOnly,
    change: (parts, { amps = 0 }) => withDesign(parts, { serviceLimitOver: amps }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 9.2: 3 s at least.
    id: 'restarts-at-once',
    parameters: [{ name: 'seconds', unit: 's', min: 0.1, max: 2, default: 0.2 }],
    change: (parts, { seconds = 0 }) => withTiming(parts, { pause: seconds }),
  },
];
