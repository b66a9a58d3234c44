/**
 * Faults of the cable’s coding and of the lock that holds a plug. The unit reads a coding against a resistor of its
 * own, so that a wrong reading is a wrong resistor.
 */
import type { Fault } from './fault.ts';
import { LOCK_OFF, PRACTICE, socketOnly, TELL_MAKER, tetheredOnly } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withPart } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'proximity-retention',
  source: PRACTICE,
  next: LOCK_OFF,
  tell: TELL_MAKER,
} as const;

const withLock = (parts: Parts, change: Partial<Parts['design']['lock']>): Parts =>
  withDesign(parts, { lock: { ...parts.design.lock, ...change } });

const withReference = (parts: Parts, ohms: number): Parts =>
  withPart(parts, 'proximity.source', (part) => ({ ...part, resistance: ohms }));

export const proximityRetentionFaults: readonly Fault[] = [
  {
    ...frame,
    id: 'coding-ignored',
    title: 'Does not go by the cable’s coding',
    component: 'coding',
    parameters: [],
    where: 'the control logic: any cable, and none, counts as large enough',
    cause: 'The rule is switched off in the unit’s settings or programme.',
    hazard: 'A small cable overheats.',
    source: 'IEC 61851-1:2017 6.3.1.6',
    impossible: socketOnly,
    change: (parts) => withDesign(parts, { codingRule: 'ignored' }),
  },
  {
    ...frame,
    id: 'coding-read-too-large',
    title: 'Takes a cable for a larger one',
    component: 'coding',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 2300, max: 3800, default: 2900 }],
    where: 'the resistor against which the unit reads the coding; 1 kΩ when sound',
    cause: 'A drifted part.',
    hazard: 'A small cable overheats.',
    source: 'IEC 61851-1:2017 Table B.2',
    impossible: socketOnly,
    change: (parts, { ohms = 0 }) => withReference(parts, ohms),
  },
  {
    ...frame,
    id: 'coding-read-too-small',
    title: 'Takes a cable for a smaller one',
    component: 'coding',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 250, max: 500, default: 350 }],
    where: 'the resistor against which the unit reads the coding; 1 kΩ when sound',
    cause: 'A drifted part.',
    hazard: 'None to people: a slow charge.',
    source: 'IEC 61851-1:2017 Table B.2',
    impossible: socketOnly,
    change: (parts, { ohms = 0 }) => withReference(parts, ohms),
  },
  {
    ...frame,
    id: 'proximity-contact-dirty',
    title: 'Resistance in the socket’s proximity contact',
    component: 'coding',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 120, max: 400, default: 220 }],
    where: 'the socket-outlet’s proximity contact',
    cause: 'Corrosion.',
    hazard: 'None to people: a 32 A cable is taken for a smaller one.',
    impossible: socketOnly,
    change: (parts, { ohms = 0 }) => {
      const moved = withPart(parts, 'coding.plug', (part) => ({ ...part, a: 'plug.PP' }));
      return {
        ...moved,
        parts: [...moved.parts, { id: 'plug.PP', a: 'socket.PP', b: 'plug.PP', resistance: ohms }],
      };
    },
  },
  {
    ...frame,
    id: 'tether-coding-wrong',
    title: 'Wrong coding resistor in the tether’s connector',
    component: 'outlet',
    parameters: [{ name: 'times', unit: '', min: 2, max: 7, default: 3.1 }],
    where: 'the connector: as many times the resistance that its rating asks for',
    cause: 'A repair with what was to hand.',
    hazard: 'None to people: the vehicle takes less, or refuses.',
    source: 'IEC 61851-1:2017 Table B.2',
    impossible: tetheredOnly,
    change: (parts, { times = 1 }) =>
      withPart(parts, 'coding.end', (part) => ({ ...part, resistance: part.resistance * times })),
  },
  {
    ...frame,
    id: 'over-code-ignored',
    title: 'Goes on supplying a vehicle that draws more than its cable carries',
    component: 'coding',
    parameters: [],
    where: 'the control logic: the current drawn is not held against the cable’s coding',
    cause: 'A fault of its programme, or a meter that is not read.',
    hazard: 'The cable overheats.',
    source: 'IEC 61851-1:2017 Annex B',
    impossible: socketOnly,
    change: (parts) => withDesign(parts, { overCodeRule: 'ignored' }),
  },
  {
    ...frame,
    id: 'lock-does-not-engage',
    title: 'Plug is not held, and the unit notices',
    component: 'lock',
    parameters: [],
    where: 'the lock’s motor',
    cause: 'A worn motor.',
    hazard: 'None to people: no charge.',
    impossible: socketOnly,
    change: (parts) => withLock(parts, { engages: false }),
  },
  {
    ...frame,
    id: 'lock-not-home',
    title: 'Plug is not held, and the unit supplies all the same',
    component: 'lock',
    parameters: [],
    where: 'the lock’s motor, and the feedback that says it is home',
    cause: 'A bent pin, or a feedback switch that is stuck.',
    hazard: 'The plug comes out live.',
    source: 'IEC 61851-1:2017 6.3.2',
    impossible: socketOnly,
    change: (parts) => withLock(parts, { engages: false, feedback: 'always held' }),
  },
  {
    ...frame,
    id: 'lock-will-not-release',
    title: 'Plug is never let go',
    component: 'lock',
    parameters: [],
    where: 'the lock’s motor',
    cause: 'Grit, ice, or a fault of the programme.',
    hazard: 'None to people: the cable is trapped.',
    source: 'IEC 61851-1:2017 Table A.6 sequence 2.1',
    impossible: socketOnly,
    change: (parts) => withLock(parts, { releases: false }),
  },
];
