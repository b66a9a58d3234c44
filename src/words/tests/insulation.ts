/** The words of the tests of the aim `insulation`, which come together. */
import { insulationCircuit } from '../actions/insulationCircuit.ts';
import { insulationOutlet } from '../actions/insulationOutlet.ts';
import { insulationUnit } from '../actions/insulationUnit.ts';
import type { ActionWords } from '../actionWords.ts';

export const insulation: Readonly<Record<string, ActionWords>> = {
  'insulation-circuit': insulationCircuit,
  'insulation-unit': insulationUnit,
  'insulation-outlet': insulationOutlet,
};
