/** Every fault breaks an expectation that points to its family; a not-fault breaks none and its sheet tells it. */
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import type { CatalogueEntry, Values } from '../../src/faults/fault.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { OUTLETS } from '../../src/unit/design.ts';
import { SHEET, SITE, THREE_PHASE, type Wanted } from '../bench/build.ts';
import { scenarioOf } from '../scenario/build.ts';

/** Every parameter at the least, usual and greatest value. */
const settingsOf = ({ parameters }: CatalogueEntry): readonly (readonly [string, Values])[] =>
  parameters.length === 0
    ? [['as it is', {}]]
    : (['min', 'default', 'max'] as const).map((end) => [
        end,
        Object.fromEntries(parameters.map((parameter) => [parameter.name, parameter[end]])),
      ]);

/** A loop low enough that the sites themselves are good. */
const sites: readonly (readonly [1 | 3, NonNullable<Wanted['site']>])[] = [
  [1, {}],
  [3, { ...THREE_PHASE, loopImpedance: 0.12, neutralImpedance: 0.12 }],
];
const RESIDUALS = [
  ['contactor', SHEET.residual],
  ['breaker', { ...SHEET.residual, by: 'breaker' }],
  ['upstream', { type: null, rated: null, by: null, direct: 'monitoring' }],
] as const;

const cases = CATALOGUE.flatMap((entry) =>
  settingsOf(entry).flatMap(([end, values]) =>
    sites.flatMap(([phases, site]) =>
      OUTLETS.flatMap((outlet) =>
        RESIDUALS.map(([device, residual]) => ({
          entry,
          name: `${entry.id} (${end}), ${phases} phase, ${outlet}, 30 mA by ${device}`,
          phases,
          scenario: scenarioOf({
            site:
              device === 'upstream'
                ? {
                    ...site,
                    circuit: {
                      ...site.circuit,
                      residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: phases + 1 },
                    },
                  }
                : site,
            sheet: { outlet, residual },
            faults: [{ fault: entry.id, values }],
          }),
          values,
        })),
      ),
    ),
  ),
);

const brokenIn = (scenario: Parameters<typeof verify>[0]) =>
  verify(scenario).actions.flatMap(({ expectations }) =>
    expectations.filter(({ finding }) => finding === 'broken').map(({ expectation }) => expectation),
  );

const possible = cases.filter(
  ({ entry, phases, values }) =>
    entry.kind === 'not-fault' ||
    (entry.impossible?.({ phases, direct: 'protective' }, values) ?? null) === null,
);

describe('a fault breaks what points to its family', () => {
  test.each(possible.filter(({ entry }) => entry.kind === 'fault'))('$name', ({ entry, scenario }) => {
    const broken = brokenIn(scenario);
    expect(broken.length).toBeGreaterThan(0);
    expect(broken.some(({ points }) => points.includes(entry.family))).toBe(true);
    expect(verify(scenario).conclusion).toBe('not sound');
  });
});

describe('a not-fault breaks nothing, and the sheet tells it', () => {
  test.each(possible.filter(({ entry }) => entry.kind === 'not-fault'))('$name', ({ scenario, values }) => {
    expect(brokenIn(scenario)).toEqual([]);
    expect(verify(scenario).conclusion).toBe('sound');
    expect(papersOf(scenario).sheet.startDelay).toBe(values.seconds);
    expect(scenario.unit.startDelay).toBe(0);
  });
});

test('the sheet never tells a fault', () => {
  for (const { scenario, entry } of possible)
    if (entry.kind === 'fault')
      expect(papersOf(scenario)).toEqual({ site: scenario.site, sheet: scenario.unit });
});

test('the site of these tests is a good one', () => {
  expect(SITE.loopImpedance).toBeLessThan(0.3);
  for (const [, site] of sites) expect(verify(scenarioOf({ site })).conclusion).toBe('sound');
});
