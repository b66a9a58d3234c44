/**
 * Faults of the cable’s coding and of the lock that holds a plug. The unit reads a coding against a resistor of its
 * own, so that a wrong reading is a wrong resistor.
 */
import type { Fault } from './fault.ts';
import { LOCK_OFF, socketOnly, TELL_MAKER, tetheredOnly } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withPart } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'proximity-retention',
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
    // IEC 61851-1:2017 6.3.1.6.
    id: 'coding-ignored',
    component: 'coding',
    parameters: [],
    impossible: socketOnly,
    change: (parts) => withDesign(parts, { codingRule: 'ignored' }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table B.2.
    id: 'coding-read-too-large',
    component: 'coding',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 2300, max: 3800, default: 2900 }],
    impossible: socketOnly,
    change: (parts, { ohms = 0 }) => withReference(parts, ohms),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table B.2.
    id: 'coding-read-too-small',
    component: 'coding',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 250, max: 500, default: 350 }],
    impossible: socketOnly,
    change: (parts, { ohms = 0 }) => withReference(parts, ohms),
  },
  {
    ...frame,
    // Common practice, no source.
    id: 'proximity-contact-dirty',
    component: 'coding',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 120, max: 400, default: 220 }],
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
    // IEC 61851-1:2017 Table B.2.
    id: 'tether-coding-wrong',
    component: 'outlet',
    parameters: [{ name: 'times', unit: '', min: 2, max: 7, default: 3.1 }],
    impossible: tetheredOnly,
    change: (parts, { times = 1 }) =>
      withPart(parts, 'coding.end', (part) => ({ ...part, resistance: part.resistance * times })),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Annex B.
    id: 'over-code-ignored',
    component: 'coding',
    parameters: [],
    impossible: socketOnly,
    change: (parts) => withDesign(parts, { overCodeRule: 'ignored' }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.2, Table A.6.
    id: 'lock-does-not-engage',
    component: 'lock',
    parameters: [],
    impossible: socketOnly,
    change: (parts) => withLock(parts, { engages: false }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.2.
    id: 'lock-not-home',
    component: 'lock',
    parameters: [],
    impossible: socketOnly,
    change: (parts) => withLock(parts, { engages: false, feedback: 'always held' }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 2.1.
    id: 'lock-will-not-release',
    component: 'lock',
    parameters: [],
    impossible: socketOnly,
    change: (parts) => withLock(parts, { releases: false }),
  },
];
