/**
 * Faults of the rules that act on the pilot: thresholds, checks, times and the offer itself. Each changes one field
 * of the design; what comes of it follows from the control logic.
 */
import type { Fault } from './fault.ts';
import { LOCK_OFF, PRACTICE, PUT_RIGHT, sensorOnly, TELL_INSTALLER, TELL_MAKER, unless } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withTiming } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'pilot',
  component: 'pilot',
  source: PRACTICE,
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
    id: 'diode-not-checked',
    title: 'Vehicle’s diode not checked before supplying',
    parameters: [],
    where: 'the control logic: the low half of the pilot is not looked at',
    cause: 'The rule is switched off in the unit’s settings or programme.',
    hazard: 'Anything resistive between pilot and PE, water or a finger, can call for supply.',
    change: (parts) => withDesign(parts, { diodeRule: 'ignored' }),
  },
  {
    ...frame,
    id: 'short-not-acted-on',
    title: 'A shorted pilot is taken for a request',
    parameters: [],
    where: 'the control logic: a pilot near 0 V counts as a request',
    cause: 'A fault of its programme.',
    hazard: 'It supplies with nothing to show that PE is there.',
    change: (parts) => withDesign(parts, { shortRule: 'ignored' }),
  },
  {
    ...frame,
    id: 'ventilation-not-asked',
    title: 'Supplies a vehicle that asks for ventilation, where there is none',
    parameters: [],
    where: 'the control logic: state D is taken for state C',
    cause: 'A wrong setting.',
    hazard: 'Gas from an old battery gathers indoors.',
    impossible: unless(({ sheet }) => !sheet.ventilation, 'ventilation is declared here'),
    change: (parts) => withRequestDownTo(parts, 1.5),
  },
  {
    ...frame,
    id: 'pilot-acted-on-late',
    title: 'Changes of the pilot are acted on too late',
    parameters: [{ name: 'seconds', unit: 's', min: 0.3, max: 3, default: 1 }],
    where: 'the filter on the pilot in the control logic',
    cause: 'A filter made too heavy against noise.',
    hazard: 'A vehicle is live while it is unplugged, or stays live with its earth lost.',
    source: 'IEC 61851-1:2017 6.3.1.2, Table A.6: within 100 ms',
    change: (parts, { seconds = 0 }) => withTiming(parts, { debounce: seconds }),
  },
  {
    ...frame,
    id: 'supplies-in-b',
    title: 'Supplies a vehicle that has not asked',
    parameters: [{ name: 'volts', unit: 'V', min: 9.3, max: 10.2, default: 9.6 }],
    where: 'the level of the pilot below which the unit takes it for a request',
    cause: 'The divider that reads the pilot has drifted.',
    hazard: 'The connector is live with no request.',
    change: (parts, { volts = 0 }) => withBoundaryOfC(parts, volts),
  },
  {
    ...frame,
    id: 'misses-request',
    title: 'Does not notice that the vehicle asks',
    parameters: [{ name: 'volts', unit: 'V', min: 4.6, max: 5.6, default: 5.2 }],
    where: 'the level of the pilot below which the unit takes it for a request',
    cause: 'The divider that reads the pilot has drifted.',
    hazard: 'None to people: no charge.',
    change: (parts, { volts = 0 }) => withBoundaryOfC(parts, volts),
  },
  {
    ...frame,
    id: 'offer-too-high',
    title: 'Offers more current than it should',
    parameters: [{ name: 'share', unit: 'of a period', min: 0.02, max: 0.2, default: 0.1 }],
    where: 'the width of the pilot’s high half',
    cause: 'A fault of calibration.',
    hazard: 'Vehicle, cable or circuit carries more than it is made for.',
    source: 'IEC 61851-1:2017 Tables A.2 and A.7',
    change: (parts, { share = 0 }) => withDesign(parts, { dutyError: share }),
  },
  {
    ...frame,
    id: 'offer-too-low',
    title: 'Offers less current than it should',
    parameters: [{ name: 'share', unit: 'of a period', min: 0.02, max: 0.3, default: 0.1 }],
    where: 'the width of the pilot’s high half',
    cause: 'A fault of calibration.',
    hazard: 'None to people: a slow charge.',
    source: 'IEC 61851-1:2017 Tables A.2 and A.7',
    change: (parts, { share = 0 }) => withDesign(parts, { dutyError: -share }),
  },
  {
    ...frame,
    id: 'limit-ignored',
    title: 'Does not follow the site’s limit in time',
    parameters: [{ name: 'seconds', unit: 's', min: 30, max: 3600, default: 600 }],
    where: 'between the site’s load management and the unit',
    cause: 'The bus wire is off, or answers late.',
    hazard: 'The main fuse blows.',
    source: 'IEC 61851-1:2017 Table A.6 sequence 6: within 10 s',
    change: (parts, { seconds = 0 }) => withTiming(parts, { limit: seconds }),
  },
  {
    ...frame,
    id: 'service-sensor-reversed',
    title: 'The sensor on the service is the wrong way round',
    parameters: [],
    where: 'the current sensor on the incoming line, at the board',
    cause: 'It was clipped on facing the wrong way, and import is taken for export.',
    hazard: 'The main fuse blows.',
    source: 'BS 7671:2018+A2:2022 722.311',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: sensorOnly,
    change: (parts) => withDesign(parts, { serviceSensor: 'reversed' }),
  },
  {
    ...frame,
    id: 'service-sensor-misplaced',
    title: 'The sensor on the service is on the wrong conductor',
    parameters: [],
    where: 'the current sensor: round the unit’s own circuit, not the incoming line',
    cause: 'There was more room for it there.',
    hazard: 'The main fuse blows.',
    source: 'BS 7671:2018+A2:2022 722.311',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: sensorOnly,
    change: (parts) => withDesign(parts, { serviceSensor: 'own circuit' }),
  },
  {
    ...frame,
    id: 'restarts-at-once',
    title: 'Offers again too soon after it withdrew its offer',
    parameters: [{ name: 'seconds', unit: 's', min: 0.1, max: 2, default: 0.2 }],
    where: 'the control logic, after the pilot has gone steady',
    cause: 'The pause was left out of its programme.',
    hazard: 'The vehicle is still letting go: contactors open and close under load.',
    source: 'IEC 61851-1:2017 Table A.6 sequence 9.2: 3 s at least',
    change: (parts, { seconds = 0 }) => withTiming(parts, { pause: seconds }),
  },
];
