/** Faults of the contactor and of what watches it. */
import type { Line } from '../laws/conductors.ts';
import type { Fault } from './fault.ts';

export const switchingFaults: readonly Fault[] = [
  {
    id: 'line-pole-welded',
    kind: 'fault',
    title: 'Line pole of the contactor welded, not noticed by the unit',
    family: 'switching',
    parameters: [{ name: 'line', unit: '', min: 1, max: 3, default: 1 }],
    where: 'the contactor; the contact that should report it is not read',
    cause: 'Inrush has welded the pole, and the sensing wire is off.',
    hazard: 'The connector is live with nothing plugged in.',
    source: 'common practice, no source',
    next: 'isolate, lock off and label',
    tell: ['the maker or supplier of the unit', 'the client'],
    impossible: ({ phases }, { line = 1 }) =>
      !Number.isInteger(line)
        ? 'line is 1, 2 or 3'
        : line > phases
          ? 'this site has one line: line is 1'
          : null,
    change: (parts, { line = 1 }) => {
      const pole = `L${line}` as Line;
      const { design } = parts;
      return {
        ...parts,
        design: {
          ...design,
          poles: { ...design.poles, [pole]: { welded: true } },
          weldCheck: 'none',
        },
      };
    },
  },
];
