/**
 * What may be wrong with an installation, as rows of a dictionary: nothing, what the scenario has, and every cause of
 * the catalogue that its papers allow, each in its places and at three severities.
 */
import type { FaultChoice } from '../faults/catalogue.ts';
import { CATALOGUE, designsAmong, faultsAmong, whyImpossible, withDefaults } from '../faults/catalogue.ts';
import type { CatalogueEntry, Fault, Parameter, Values } from '../faults/fault.ts';
import { LINE } from '../faults/fault.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { papersOf } from '../scenario/scenario.ts';
import type { Papers } from '../verification/testAction.ts';

/** An end of the parameter's range, which need not be the more visible one, or the value that it usually has. */
export type Size = 'min' | 'usual' | 'max';

export interface Cause {
  /** Catalogue ids of what is wrong; none: nothing is. */
  readonly causes: readonly string[];
  readonly faults: readonly FaultChoice[];
  /** `own`: what the scenario has, at its own size; `part`: one of several that it has. */
  readonly of: 'sound' | 'own' | 'part' | 'catalogue' | 'pair';
  readonly size: Size | null;
}

/** The parameter that makes a cause more or less visible; the number of a line is a place. Null: it has none. */
export const severityOf = ({ parameters }: CatalogueEntry): Parameter | null =>
  parameters.find((parameter) => parameter !== LINE) ?? null;

/** Each of its places once: the values that say on which line it is. */
const placesOf = ({ parameters }: CatalogueEntry, { site }: Papers): readonly Values[] =>
  parameters.includes(LINE) ? Array.from({ length: site.phases }, (_, i) => ({ [LINE.name]: i + 1 })) : [{}];

const sizesOf = (entry: CatalogueEntry): readonly (readonly [Size, Values])[] => {
  const parameter = severityOf(entry);
  if (parameter === null) return [['usual', {}]];
  const { name, min, max } = parameter;
  return [
    ['usual', { [name]: parameter.default }],
    ...(min === parameter.default ? [] : [['min', { [name]: min }] as const]),
    ...(max === parameter.default ? [] : [['max', { [name]: max }] as const]),
  ];
};

/** Every cause that may be on it: usual sizes first, so that the first rows of a dictionary say most. */
export function causesOn(
  scenario: Scenario,
  pairs: readonly (readonly [string, string])[] = [],
): readonly Cause[] {
  const own = ownFaults(scenario);
  const designs = designsAmong(own);
  const others = CATALOGUE.filter((entry) => entry.kind === 'fault').flatMap((entry) =>
    sized(entry, scenario),
  );
  const known = new Set<string>();
  return [
    soundCause,
    ...(own.length === 0 ? [] : [causeOf(own, 'own')]),
    ...(own.length < 2 ? [] : own.map((one) => causeOf([...designs, one], 'part'))),
    ...others.filter(({ size }) => size === 'usual'),
    ...others.filter(({ size }) => size !== 'usual'),
    ...pairs.map((pair) => causeOf([...designs, ...pair.map(usually)], 'pair')),
  ].filter(({ faults }) => {
    const key = keyOf(faults);
    return !known.has(key) && known.add(key);
  });
}

/** The scenario's own, not-faults left out: those stand in the papers, whatever else is wrong. */
export const ownFaults = ({ faults }: Scenario): readonly FaultChoice[] =>
  faults.filter((choice) => faultsAmong([choice]).length > 0);

/** Nothing is wrong. */
export const soundCause: Cause = { causes: [], faults: [], of: 'sound', size: null };

/** The same text for the same causes in the same places at the same sizes. */
export const keyOf = (faults: readonly FaultChoice[]): string =>
  JSON.stringify(faults.map(({ fault, values }) => [fault, Object.entries(values).sort()]));

/** One entry in every place and size that the papers allow. */
export function sized(entry: Fault, scenario: Scenario): readonly Cause[] {
  const papers = papersOf(scenario);
  return placesOf(entry, papers).flatMap((place) =>
    sizesOf(entry).flatMap(([size, values]) => {
      const all = withDefaults(entry, { ...place, ...values });
      return whyImpossible(entry, papers, all) === null ? [besideDesigns(scenario, entry, all, size)] : [];
    }),
  );
}

/**
 * A wrong design stands in the papers: where the scenario has one, every other cause stands beside it; another design
 * would be other papers.
 */
export function besideDesigns(scenario: Scenario, entry: Fault, values: Values, size: Size | null): Cause {
  const designs = entry.alter === undefined ? designsAmong(ownFaults(scenario)) : [];
  return { ...causeOf([...designs, { fault: entry.id, values }], 'catalogue'), size };
}

const causeOf = (faults: readonly FaultChoice[], of: Cause['of']): Cause => ({
  causes: faults.map(({ fault }) => fault),
  faults,
  of,
  size: null,
});

function usually(id: string): FaultChoice {
  const entry = CATALOGUE.find((one) => one.id === id);
  if (entry === undefined) throw new Error(`no cause "${id}" in the catalogue`);
  return { fault: id, values: withDefaults(entry, {}) };
}
