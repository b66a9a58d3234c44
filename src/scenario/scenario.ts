/**
 * A scenario: what it is once its file has been read (readScenario.ts), the papers that the trainee may see, and the bench that it
 * stands for, with its faults or as its sound twin.
 */

import { assembling } from '../bench/assemble.ts';
import { drawer } from '../bench/draw.ts';
import { fork } from '../bench/fork.ts';
import { operation } from '../bench/operation.ts';
import { Recent } from '../bench/recent.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import { filled } from '../bench/usual.ts';
import type { Onlooker, World } from '../bench/world.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import { asMeant, asTold, faultsAmong } from '../faults/catalogue.ts';
import type { Parts } from '../faults/parts.ts';
import { soundParts } from '../faults/parts.ts';
import type { Site } from '../site/site.ts';
import type { Clearing, LatchReason, UnitSheet } from '../unit/design.ts';
import { OVER_CODE, soundDesign } from '../unit/design.ts';
import { ACTIONS } from '../verification/actions.ts';
import type { Papers, TestAction } from '../verification/testAction.ts';
import type { HandedOver } from './handover.ts';
import { carryingOutHandover } from './handover.ts';
import type { Handover, ScenarioFile, ScenarioInput } from './schema.ts';
import type { PartName } from './tasks.ts';
import { weightsOf } from './tasks.ts';
import { BREAKER, CIRCUIT, FILE, HANDOVER, HOUSE, MARKING, NEXT_POINT, SITE, UNIT } from './usual.ts';

export interface Scenario extends Omit<ScenarioFile, '$schema' | 'site' | 'unit' | 'faults' | 'marking'> {
  readonly site: Site;
  readonly unit: UnitSheet;
  readonly faults: readonly FaultChoice[];
  readonly marking: Omit<ScenarioFile['marking'], 'weights'> & {
    readonly weights: Readonly<Record<PartName, number>>;
  };
}

/** What each latched reason waits for unless the sheet says otherwise (contract). */
export const USUAL_CLEARING: Readonly<Record<LatchReason, Clearing>> = {
  E: 'state-A',
  F: 'reset',
  diode: 'reset',
  residual: 'reset',
  direct: 'reset',
  openPen: 'reset',
};

/** The scenario in a file that was read before (readScenario.ts), as those have been that come with the page. */
export const scenarioIn = (file: unknown): Scenario => toScenario(filledIn(file as ScenarioInput));

/** With what a file leaves out, as the schema reads it. */
export function filledIn(file: ScenarioInput): ScenarioFile {
  const { site, unit, marking = FILE.marking, handover = FILE.handover } = file;
  const { circuit, house, nextPoint } = site;
  return {
    ...filled(FILE, file),
    site: {
      ...filled(SITE, site),
      ...(house && { house: filled(HOUSE, house) }),
      ...(nextPoint && { nextPoint: filled(NEXT_POINT, nextPoint) }),
      circuit: { ...filled(CIRCUIT, circuit), breaker: filled(BREAKER, circuit.breaker) },
    },
    unit: { ...filled(UNIT, unit), overCode: filled(OVER_CODE, unit.overCode ?? UNIT.overCode) },
    marking: filled(MARKING, marking),
    handover: handover && {
      ...handover,
      left: (handover.left ?? HANDOVER.left).map(operation),
    },
  } as ScenarioFile;
}

/** What hangs on other fields is filled in too. */
export function toScenario(file: ScenarioFile): Scenario {
  const { $schema: _schema, site, unit, faults, marking, ...rest } = file;
  return {
    ...rest,
    marking: { ...marking, weights: weightsOf(file.task, marking.weights) },
    site: toSite(site),
    unit: toSheet(unit),
    faults: faults.map(({ fault, ...values }) => ({ fault, values: values as FaultChoice['values'] })),
  };
}

function toSite(site: ScenarioFile['site']): Site {
  const lives = site.phases + 1;
  const isTT = site.earthing === 'TT';
  const neutralImpedance = site.neutralImpedance ?? (isTT ? 0.25 : (site.loopImpedance ?? 0.25));
  return {
    ...site,
    loopImpedance:
      site.loopImpedance ??
      (site.electrodeResistance ?? 0) + site.sourceElectrodeResistance + neutralImpedance / 2,
    neutralImpedance,
    circuit: {
      ...site.circuit,
      breaker: { ...site.circuit.breaker, poles: site.circuit.breaker.poles ?? lives },
    },
  };
}

function toSheet(unit: ScenarioFile['unit']): UnitSheet {
  const { cable, customerCable, ...rest } = { cable: null, customerCable: null, ...unit };
  const clearsBy = Object.fromEntries(
    Object.entries(unit.clearsBy).flatMap(([reason, by]) =>
      by === undefined ? [] : [[reason, by === 'restored' ? 'self' : by]],
    ),
  );
  return {
    ...rest,
    cable: (cable ?? customerCable) as UnitSheet['cable'],
    setCurrent: unit.setCurrent ?? unit.ratedCurrent,
    residual: {
      type: unit.residual.type,
      rated: unit.residual.rated ?? null,
      by: unit.residual.by ?? null,
      direct: unit.residual.direct,
    },
    clearsBy: { ...USUAL_CLEARING, ...clearsBy },
  };
}

/**
 * What the trainee may read: design data and the unit's sheet. It tells a not-fault and a wrong design, and never
 * another fault. With other faults than the scenario's own, the papers of an installation that has those.
 */
export function papersOf(scenario: Scenario, faults: readonly FaultChoice[] = scenario.faults): Papers {
  if (faults !== scenario.faults) return papersWith(scenario, faults);
  const before = ownPapers.get(scenario);
  if (before !== undefined) return before;
  const papers = papersWith(scenario, faults);
  ownPapers.set(scenario, papers);
  return papers;
}

const ownPapers = new WeakMap<Scenario, Papers>();

function papersWith(
  { site, unit, faults: own, rules, own: limits }: Scenario,
  faults: readonly FaultChoice[],
): Papers {
  const papers = {
    ...asTold(asMeant({ site, sheet: unit }, own), faults.filter(isFault)),
    rules,
    ...(limits.length === 0 ? {} : { own: limits }),
  };
  return knownPapers.of(JSON.stringify(papers), () => papers);
}

/** What says the same is one object, so that what tests say on it serves all who go by it. */
const knownPapers = new Recent<string, Papers>(20);

const isFault = (choice: FaultChoice): boolean => faultsAmong([choice]).length > 0;

/** The papers with a right design in them. */
export const rightPapers = ({ site, unit, faults, rules }: Scenario): Papers => ({
  ...asMeant({ site, sheet: unit }, faults),
  rules,
});

/** The installation as it ought to be: what the scenario's is held against. */
export function soundPartsOf(scenario: Scenario): Parts {
  const { site, sheet } = rightPapers(scenario);
  const { seed } = scenario;
  return knownSound.of(JSON.stringify([site, sheet, seed]), () =>
    soundParts(site, soundDesign(sheet, drawer(seed))),
  );
}

/** One installation is one object, so that what was worked out for it serves all its benches. */
const knownSound = new Recent<string, Parts>(4);

/** The bench as the trainee finds it; with other faults than its own, or none, for a twin. */
export const benchOf = (scenario: Scenario, faults: readonly FaultChoice[] = scenario.faults): World =>
  beginningOf(scenario, faults).world;

export interface Beginning {
  readonly world: World;
  /** What others did and recorded on it before; null where nothing was handed over. */
  readonly handedOver: HandedOver | null;
}

/** The bench as the trainee finds it, with the sheet of what was done before. */
export const beginningOf = (scenario: Scenario, faults?: readonly FaultChoice[]): Beginning =>
  toItsEnd(beginning(scenario, faults));

/** Benches as they were found, by what is on them: nobody works on these. Each has its wiring, of some megabytes at most. */
const found = new Recent<string, Beginning>(4);

const texts = new WeakMap<Scenario, string>();
/** A few kilobytes each. */
const keyByText = new Recent<string, string>(200);
let keysGiven = 0;

/** A short name for all that a scenario holds: two that hold the same have one, and a scenario never changes. */
export function keyOf(scenario: Scenario): string {
  let text = texts.get(scenario);
  if (text === undefined) {
    text = JSON.stringify(scenario);
    texts.set(scenario, text);
  }
  return keyByText.of(text, () => String(keysGiven++));
}

/**
 * The same in pieces, one an operation that was done before. Whoever asks gets a fork of his own, so that what was
 * carried out once, for whatever reason, serves all.
 */
export function* beginning(
  scenario: Scenario,
  faults: readonly FaultChoice[] = scenario.faults,
  onlooker: Onlooker | null = null,
): Generator<null, Beginning> {
  // An onlooker sees what is carried out: it is done anew before him.
  if (onlooker !== null) return yield* finding(scenario, faults, onlooker);
  const key = `${keyOf(scenario)} ${JSON.stringify(faults)}`;
  const before = found.get(key) ?? found.set(key, yield* finding(scenario, faults, null));
  return { ...before, world: fork(before.world) };
}

function* finding(
  scenario: Scenario,
  faults: readonly FaultChoice[],
  onlooker: Onlooker | null,
): Generator<null, Beginning> {
  const sound = soundPartsOf(scenario);
  yield null;
  const world = yield* assembling(sound, faults, scenario.seed, scenario.clock);
  world.onlooker = onlooker;
  const { handover } = scenario;
  if (handover === null) return { world, handedOver: null };
  yield null;
  const actions = handedOverActions(scenario, handover);
  const papers = papersOf(scenario, faults);
  return { world, handedOver: yield* carryingOutHandover(world, handover, actions, papers) };
}

const handedOverActions = (scenario: Scenario, { done }: Handover): readonly TestAction[] =>
  applicableActions(scenario).filter(({ id }) =>
    done === 'others' ? scenario.allowed !== 'all' && !scenario.allowed.includes(id) : done.includes(id),
  );

/** Test actions that the scenario allows and its papers give anything to test for, in order. */
export function allowedActions(scenario: Scenario): readonly TestAction[] {
  return applicableActions(scenario).filter(
    ({ id }) => scenario.allowed === 'all' || scenario.allowed.includes(id),
  );
}

export function applicableActions(scenario: Scenario): readonly TestAction[] {
  const before = applicable.get(scenario);
  if (before !== undefined) return before;
  const papers = papersOf(scenario);
  const actions = ACTIONS.filter((action) => action.applies(papers));
  applicable.set(scenario, actions);
  return actions;
}

const applicable = new WeakMap<Scenario, readonly TestAction[]>();
