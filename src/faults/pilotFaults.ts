/** Faults of the pilot circuit and of the rules that act on it. */
import type { Fault } from './fault.ts';

export const pilotFaults: readonly Fault[] = [
  {
    id: 'diode-not-checked',
    kind: 'fault',
    title: 'Vehicle’s diode not checked before supplying',
    family: 'pilot',
    parameters: [],
    where: 'the control logic: the low half of the pilot is not looked at',
    cause: 'The rule is switched off in the unit’s settings or programme.',
    hazard: 'Anything resistive between pilot and PE, water or a finger, can call for supply.',
    source: 'common practice, no source',
    next: 'isolate, lock off and label',
    tell: ['the maker or supplier of the unit', 'the client'],
    change: (parts) => ({ ...parts, design: { ...parts.design, diodeRule: 'ignored' } }),
  },
];
