/** The test actions in the order in which they are usually done. Adding one is a file's entry and a line here. */
import { insulationCircuit, insulationOutlet, peCircuit, peOutlet } from './actions/dead.ts';
import { isolate, proveDead } from './actions/isolation.ts';
import { dcRamp, loop, residualRamp } from './actions/protection.ts';
import { diode, pilotShort } from './actions/response.ts';
import { cToB, stateA, stateB, stateC } from './actions/states.ts';
import type { TestAction } from './testAction.ts';

export const ACTIONS: readonly TestAction[] = [
  isolate,
  proveDead,
  peCircuit,
  peOutlet,
  insulationCircuit,
  insulationOutlet,
  stateA,
  stateB,
  stateC,
  cToB,
  loop,
  residualRamp,
  dcRamp,
  pilotShort,
  diode,
];

export const actionNamed = (id: string): TestAction | undefined => ACTIONS.find((action) => action.id === id);
