/** The test actions in the order in which they are usually done. */

import { coding } from './actions/coding.ts';
import { codingInUse } from './actions/codingInUse.ts';
import { codingSizes } from './actions/codingSizes.ts';
import { cToB } from './actions/cToB.ts';
import { dcRamp } from './actions/dcRamp.ts';
import { dcStep } from './actions/dcStep.ts';
import { diode } from './actions/diode.ts';
import { diodeInC } from './actions/diodeInC.ts';
import { earthsApart } from './actions/earthsApart.ts';
import { electrode } from './actions/electrode.ts';
import { energise } from './actions/energise.ts';
import { finish } from './actions/finish.ts';
import { halfWave } from './actions/halfWave.ts';
import { hold } from './actions/hold.ts';
import { inspect } from './actions/inspect.ts';
import { instruments } from './actions/instruments.ts';
import { insulationCircuit } from './actions/insulationCircuit.ts';
import { insulationOutlet } from './actions/insulationOutlet.ts';
import { insulationUnit } from './actions/insulationUnit.ts';
import { isolate } from './actions/isolate.ts';
import { limit } from './actions/limit.ts';
import { loop } from './actions/loop.ts';
import { lostLine } from './actions/lostLine.ts';
import { makeGood } from './actions/makeGood.ts';
import { nextPoint } from './actions/nextPoint.ts';
import { openPen } from './actions/openPen.ts';
import { papers } from './actions/papers.ts';
import { peCircuit } from './actions/peCircuit.ts';
import { peOpen } from './actions/peOpen.ts';
import { peOutlet } from './actions/peOutlet.ts';
import { pfc } from './actions/pfc.ts';
import { pilotOpen } from './actions/pilotOpen.ts';
import { pilotShort } from './actions/pilotShort.ts';
import { polesOpen } from './actions/polesOpen.ts';
import { proveDead } from './actions/proveDead.ts';
import { r1r2Polarity } from './actions/r1r2Polarity.ts';
import { recovery } from './actions/recovery.ts';
import { release } from './actions/release.ts';
import { residualAgain } from './actions/residualAgain.ts';
import { residualFive } from './actions/residualFive.ts';
import { residualHalf } from './actions/residualHalf.ts';
import { residualOrigin } from './actions/residualOrigin.ts';
import { residualRamp } from './actions/residualRamp.ts';
import { residualRated } from './actions/residualRated.ts';
import { sharing } from './actions/sharing.ts';
import { stateA } from './actions/stateA.ts';
import { stateB } from './actions/stateB.ts';
import { stateC } from './actions/stateC.ts';
import { stateD } from './actions/stateD.ts';
import { stop } from './actions/stop.ts';
import { supplyReturn } from './actions/supplyReturn.ts';
import { supplyVolts } from './actions/supplyVolts.ts';
import { unplug } from './actions/unplug.ts';
import { voltDrop } from './actions/voltDrop.ts';
import { ze } from './actions/ze.ts';
import { withLines } from './lines.ts';
import type { Procedure, TestAction } from './testAction.ts';

const PROCEDURES: readonly Procedure[] = [
  papers,
  instruments,
  isolate,
  proveDead,
  inspect,
  peCircuit,
  peOutlet,
  r1r2Polarity,
  insulationCircuit,
  insulationUnit,
  insulationOutlet,
  polesOpen,
  coding,
  electrode,
  earthsApart,
  makeGood,
  ze,
  pfc,
  supplyVolts,
  energise,
  stateA,
  stateB,
  codingSizes,
  hold,
  stateC,
  cToB,
  unplug,
  release,
  codingInUse,
  stateD,
  limit,
  nextPoint,
  sharing,
  loop,
  voltDrop,
  residualOrigin,
  residualHalf,
  residualRated,
  residualFive,
  residualRamp,
  halfWave,
  dcRamp,
  dcStep,
  residualAgain,
  openPen,
  pilotShort,
  pilotOpen,
  diode,
  diodeInC,
  peOpen,
  recovery,
  supplyReturn,
  stop,
  lostLine,
  finish,
];

export const ACTIONS: readonly TestAction[] = PROCEDURES.map(withLines);

export const actionNamed = (id: string): TestAction | undefined => ACTIONS.find((action) => action.id === id);
