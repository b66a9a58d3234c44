/** The lines of the tests of the aim `insulation`, which come together. */
import { insulationCircuit } from '../lines/insulationCircuit.ts';
import { insulationOutlet } from '../lines/insulationOutlet.ts';
import { insulationUnit } from '../lines/insulationUnit.ts';
import type { TestLines } from '../testAction.ts';

export const insulation: Readonly<Record<string, TestLines>> = {
  'insulation-circuit': insulationCircuit,
  'insulation-unit': insulationUnit,
  'insulation-outlet': insulationOutlet,
};
