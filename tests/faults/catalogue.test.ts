/**
 * The catalogue: every fault breaks what points to its family and is found by the action that should find it, whatever
 * its size; a not-fault breaks none, and the papers tell it. Neither changes what the other may change.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { COMPONENTS } from '../../src/faults/components.ts';
import { FAMILIES, type Family } from '../../src/faults/families.ts';
import type { CatalogueEntry, Values } from '../../src/faults/fault.ts';
import { benchOf, papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import type { InstallationName } from './installations.ts';
import { INSTALLATION_NAMES, scenarioOn, settingOn, settingsOf } from './installations.ts';
import { TELLS } from './tells.ts';

const FAULTS = CATALOGUE.filter(({ kind }) => kind === 'fault');
const NOT_FAULTS = CATALOGUE.filter(({ kind }) => kind === 'not-fault');

const isDesign = (entry: CatalogueEntry): boolean => entry.kind === 'fault' && entry.alter !== undefined;

const isPossible = (entry: CatalogueEntry, on: InstallationName, values: Values): boolean =>
  (entry.impossible?.(settingOn(on), values) ?? null) === null;

/** Which actions broke an expectation or failed a limit that points to this family, and which broke anything. */
function findings(scenario: ReturnType<typeof scenarioOn>, family: Family) {
  const verification = verify(scenario, { everything: true });
  const found = verification.actions.flatMap(({ action, expectations, limits }) => [
    ...expectations
      .filter(({ finding }) => finding === 'broken')
      .map(({ expectation }) => ({ action: action.id, points: expectation.points })),
    ...limits.filter(({ pass }) => !pass).map(({ limit }) => ({ action: action.id, points: limit.points })),
  ]);
  return {
    verification,
    all: found.map(({ action }) => action),
    ofFamily: found.filter(({ points }) => points.includes(family)).map(({ action }) => action),
  };
}

describe('what an entry is', () => {
  test('enough of them, over every family, each id once', () => {
    expect(FAULTS.length).toBeGreaterThanOrEqual(130);
    expect(NOT_FAULTS.length).toBeGreaterThanOrEqual(18);
    for (const family of FAMILIES)
      expect(FAULTS.filter((fault) => fault.family === family).length, family).toBeGreaterThan(1);
    expect(new Set(CATALOGUE.map(({ id }) => id)).size).toBe(CATALOGUE.length);
  });

  test.each(CATALOGUE)('$id has sensible parameters and can be somewhere', (entry) => {
    for (const { min, max, default: usual } of entry.parameters) {
      expect(min).toBeLessThan(max);
      expect(usual).toBeGreaterThanOrEqual(min);
      expect(usual).toBeLessThanOrEqual(max);
    }
    const values = settingsOf(entry).map(([, each]) => each);
    for (const each of values)
      expect(INSTALLATION_NAMES.some((name) => isPossible(entry, name, each))).toBe(true);
  });

  test('no other code knows an id', () => {
    const files = readdirSync('src', { recursive: true, withFileTypes: true }).filter(
      (entry) =>
        entry.isFile() &&
        /\.tsx?$/.test(entry.name) &&
        // Where they are made, and where they are worded.
        !/faults$|words.causes$/.test(entry.parentPath) &&
        entry.name !== 'causeTitles.ts',
    );
    expect(files.length).toBeGreaterThan(100);
    for (const { parentPath, name } of files) {
      const text = readFileSync(join(parentPath, name), 'utf8');
      for (const { id } of CATALOGUE)
        expect(text.includes(`'${id}'`), `${parentPath}/${name} names ${id}`).toBe(false);
    }
  });
});

describe('the installations of these tests are sound', () => {
  test.each(INSTALLATION_NAMES)('%s', (name) => {
    const { verification, all } = findings(scenarioOn(name), 'pilot');
    expect(all).toEqual([]);
    expect(verification.conclusion).toBe('sound');
  });
});

const shown = FAULTS.flatMap((entry) => {
  const tell = TELLS[entry.id];
  if (tell === undefined) throw new Error(`no tell is written for ${entry.id}`);
  const [on, by] = tell;
  return settingsOf(entry).map(([end, values], i) => ({
    entry,
    on,
    end,
    action: typeof by === 'string' ? by : (by[i] ?? ''),
    scenario: scenarioOn(on, [{ fault: entry.id, values }]),
    values,
  }));
});

describe('a fault', () => {
  test.each(shown)('$entry.id, $end, on $on: found by $action', ({ entry, on, action, scenario, values }) => {
    expect(isPossible(entry, on, values)).toBe(true);
    expect(actionNamed(action), `${action} is no test action`).toBeDefined();
    // The papers tell nothing of it, and the unit's own copy of its sheet neither; a wrong design is what they tell.
    const { site, sheet } = papersOf(scenario);
    const world = benchOf(scenario);
    if (isDesign(entry)) expect(world.installation.site).toEqual(site);
    const right = { site: scenario.site, sheet: scenario.unit };
    if (isDesign(entry)) expect({ site, sheet }).not.toEqual(right);
    else expect({ site, sheet }).toEqual(right);
    expect(world.installation.design.sheet).toEqual(sheet);
    const { mains, high, low } = world.solution.planes;
    for (const plane of [mains.re, mains.im, high, low]) expect(plane.every(Number.isFinite)).toBe(true);

    const { verification, ofFamily } = findings(scenario, entry.family);
    expect(ofFamily).toContain(action);
    // What fails of a tester or a detector tells nothing of the unit.
    const isOwn = COMPONENTS[entry.component] === 'in hand';
    expect(verification.conclusion).toBe(isOwn ? 'could not finish' : 'not sound');
  });

  test('no tell is left over', () => {
    expect(Object.keys(TELLS).sort()).toEqual(FAULTS.map(({ id }) => id).sort());
  });
});

/** One of each kind of site, where the entry can be and has not been looked at. */
const elsewhere = FAULTS.flatMap((entry) =>
  (['home', 'yard', 'rod'] as const)
    .filter((name) => name !== TELLS[entry.id]?.[0])
    .flatMap((name) => {
      const values = Object.fromEntries(entry.parameters.map((p) => [p.name, p.default]));
      return isPossible(entry, name, values)
        ? [{ entry, name, scenario: scenarioOn(name, [{ fault: entry.id, values }]) }]
        : [];
    }),
);

describe('a fault on another kind of site breaks something of its family too', () => {
  test.each(elsewhere)('$entry.id on $name', ({ entry, scenario }) => {
    const { verification, ofFamily } = findings(scenario, entry.family);
    expect(ofFamily.length).toBeGreaterThan(0);
    expect(verification.actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  });
});

/** The usual value on every installation, the ends where it can be first. */
const told = NOT_FAULTS.flatMap((entry) =>
  settingsOf(entry).flatMap(([end, values]) =>
    INSTALLATION_NAMES.filter((name) => isPossible(entry, name, values))
      .slice(0, end === 'min' || end === 'max' ? 1 : INSTALLATION_NAMES.length)
      .map((name) => ({ entry, end, name, scenario: scenarioOn(name, [{ fault: entry.id, values }]) })),
  ),
);

describe('a not-fault breaks nothing, and its parts are those of the papers', () => {
  test.each(told)('$entry.id, $end, on $name', ({ entry, scenario }) => {
    const { verification, all } = findings(scenario, entry.family);
    expect(all).toEqual([]);
    expect(verification.conclusion).toBe('sound');
    const { site, sheet } = papersOf(scenario);
    const { installation } = benchOf(scenario);
    expect(installation.site).toEqual(site);
    expect(installation.design.sheet).toEqual(sheet);
  });

  test.each(NOT_FAULTS)('$id stands in the papers', (entry) => {
    const values = Object.fromEntries(entry.parameters.map((p) => [p.name, p.default]));
    const differs = INSTALLATION_NAMES.filter((name) => isPossible(entry, name, values)).some((name) => {
      const scenario = scenarioOn(name, [{ fault: entry.id, values }]);
      // Ventilation has to be declared before it can be refused.
      const declared = { ...scenario, unit: { ...scenario.unit, ventilation: true } };
      const { site, sheet } = papersOf(declared);
      return JSON.stringify([site, sheet]) !== JSON.stringify([declared.site, declared.unit]);
    });
    expect(differs).toBe(true);
  });
});
