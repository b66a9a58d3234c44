/** Faults of residual-current and smooth-d.c. detection. */
import type { Fault } from './fault.ts';

export const residualDirectFaults: readonly Fault[] = [
  {
    id: 'direct-detector-dead',
    kind: 'fault',
    title: 'D.c. detector does not act',
    family: 'residual-direct',
    parameters: [],
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its supply or its sensor has failed.',
    hazard: 'Smooth d.c. from a vehicle can blind the type A device upstream.',
    source: 'common practice, no source',
    next: 'isolate, lock off and label',
    tell: ['the maker or supplier of the unit', 'the client'],
    impossible: ({ direct }) => (direct === null ? 'this unit has no d.c. detector' : null),
    change: (parts) => ({ ...parts, design: { ...parts.design, directPickup: Infinity } }),
  },
];
