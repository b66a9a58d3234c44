/** The words of every test action, by its id, and what the page and the command line ask of them. */

import { NO_SUPPLY } from '../verification/noSupply.ts';
import type { Stage, Values } from '../verification/testAction.ts';
import { coding } from './actions/coding.ts';
import { codingSizes } from './actions/codingSizes.ts';
import { cToB } from './actions/cToB.ts';
import { dcRamp } from './actions/dcRamp.ts';
import { dcStep } from './actions/dcStep.ts';
import { diode } from './actions/diode.ts';
import { diodeInC } from './actions/diodeInC.ts';
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
import type { ActionWords, LimitWords, LineWords, Words } from './actionWords.ts';

export const ACTION_WORDS: Readonly<Record<string, ActionWords>> = {
  papers,
  instruments,
  isolate,
  'prove-dead': proveDead,
  inspect,
  'pe-circuit': peCircuit,
  'pe-outlet': peOutlet,
  'r1r2-polarity': r1r2Polarity,
  'insulation-circuit': insulationCircuit,
  'insulation-unit': insulationUnit,
  'insulation-outlet': insulationOutlet,
  'poles-open': polesOpen,
  coding,
  electrode,
  'make-good': makeGood,
  ze,
  pfc,
  'supply-volts': supplyVolts,
  energise,
  'state-a': stateA,
  'state-b': stateB,
  'coding-sizes': codingSizes,
  hold,
  'state-c': stateC,
  'c-to-b': cToB,
  unplug,
  release,
  'state-d': stateD,
  limit,
  sharing,
  loop,
  'volt-drop': voltDrop,
  'residual-origin': residualOrigin,
  'residual-half': residualHalf,
  'residual-rated': residualRated,
  'residual-five': residualFive,
  'residual-ramp': residualRamp,
  'half-wave': halfWave,
  'dc-ramp': dcRamp,
  'dc-step': dcStep,
  'residual-again': residualAgain,
  'open-pen': openPen,
  'pilot-short': pilotShort,
  'pilot-open': pilotOpen,
  diode,
  'diode-in-c': diodeInC,
  'pe-open': peOpen,
  recovery,
  'supply-return': supplyReturn,
  stop,
  'lost-line': lostLine,
  finish,
};

/** Something of a test action that has words. */
interface Worded {
  /** Of a line of another test, that test's id stands before it, with a slash. */
  readonly id: string;
  readonly values?: Values;
}

function among<T>(table: Readonly<Record<string, T>> | undefined, id: string, what: string): T {
  const words = table !== undefined && Object.hasOwn(table, id) ? table[id] : undefined;
  if (words === undefined) throw new Error(`no words for ${what}`);
  return words;
}

const wordsOf = (test: string): ActionWords => among(ACTION_WORDS, test, `the test ${test}`);

const said = (words: Words, values: Values = {}): string =>
  typeof words === 'string' ? words : words(values);

function lineWords(test: string, id: string): LineWords {
  const [own = '', other] = id.split('/').reverse();
  return among(wordsOf(other ?? test).lines, own, `the line ${id} of ${test}`);
}

const figureWords = (test: string, id: string): LineWords =>
  among(wordsOf(test).figures, id, `the figure ${id} of ${test}`);
const limitWords = (test: string, id: string): LimitWords =>
  among(wordsOf(test).limits, id, `the limit ${id} of ${test}`);

export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  'before power': 'before power',
  'with power': 'with power',
  protection: 'protection',
  'fault response': 'fault response',
};

/** A file may name a test that there is not: then its id. */
export const testTitle = (test: string): string =>
  Object.hasOwn(ACTION_WORDS, test) ? wordsOf(test).title : test;
export const testPurpose = (test: string): string => wordsOf(test).purpose;

export const lineText = (test: string, { id, values }: Worded): string =>
  said(lineWords(test, id).text, values);
export const limitText = (test: string, { id, values }: Worded): string =>
  said(limitWords(test, id).text, values);
export const limitSum = (test: string, { id, values }: Worded): string =>
  said(limitWords(test, id).sum, values);

export const adviceText = (test: string, { id, values }: Worded): string =>
  said(among(wordsOf(test).advice, id, `the advice ${id} of ${test}`), values);

/** Said of whichever test found it. */
const WITHOUT_SUPPLY =
  'the unit gives no supply, asked for rightly and after a reset, so what needs a supplied outlet cannot be tested';

/** Why a faultless trainee goes no further when this line of the test is broken. */
export const stopWhy = (test: string, id: string): string =>
  id === NO_SUPPLY ? WITHOUT_SUPPLY : among(wordsOf(test).stops, id, `stopping at ${id} of ${test}`);

export type InWords<T> = T & {
  readonly text: string;
  readonly why: string;
  /** What a faulty unit would show; null where the line is not one to be judged. */
  readonly otherwise: string | null;
};

const inWords = <T extends Worded>(one: T, { text, why, otherwise }: LineWords): InWords<T> => ({
  ...one,
  text: said(text, one.values),
  why: said(why, one.values),
  otherwise: otherwise === undefined ? null : said(otherwise, one.values),
});

/** The line, or the figure, with its words. */
export const lineInWords = <T extends Worded>(test: string, one: T): InWords<T> =>
  inWords(one, lineWords(test, one.id));
export const figureInWords = <T extends Worded>(test: string, one: T): InWords<T> =>
  inWords(one, figureWords(test, one.id));
