/** The test actions in the order in which they are usually done. Adding one is a file's entry and a line here. */
import { cToB } from './actions/cToB.ts';
import { dcRamp } from './actions/dcRamp.ts';
import { diode } from './actions/diode.ts';
import { insulationCircuit } from './actions/insulationCircuit.ts';
import { insulationOutlet } from './actions/insulationOutlet.ts';
import { isolate } from './actions/isolate.ts';
import { loop } from './actions/loop.ts';
import { peCircuit } from './actions/peCircuit.ts';
import { peOutlet } from './actions/peOutlet.ts';
import { pilotShort } from './actions/pilotShort.ts';
import { proveDead } from './actions/proveDead.ts';
import { residualRamp } from './actions/residualRamp.ts';
import { stateA } from './actions/stateA.ts';
import { stateB } from './actions/stateB.ts';
import { stateC } from './actions/stateC.ts';
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
