/** What is often taken for a fault and is none: each is written in the unit's sheet. */
import type { NotFault } from './fault.ts';

export const notFaults: readonly NotFault[] = [
  {
    id: 'start-delay',
    kind: 'not-fault',
    title: 'Random start delay',
    family: 'supply-wiring',
    parameters: [{ name: 'seconds', unit: 's', min: 1, max: 1800, default: 600 }],
    where: 'the control logic, before an offer',
    cause: 'Units for private use wait a random time before supply starts, unless overridden.',
    hazard: 'None.',
    source: 'SI 2021/1467 reg. 11',
    alter: (sheet, { seconds = 0 }) => ({ ...sheet, startDelay: seconds }),
  },
];
