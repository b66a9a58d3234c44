/** The declared voltage ends at 253 V at the supply terminals, and there alone (ESQCR 2002, regulation 27). */
import { describe, expect, test } from 'vitest';
import { operation } from '../../src/bench/operation.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { judgeExpectations } from '../../src/verification/assess.ts';
import { observe } from '../../src/verification/observed.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import { benchWith } from '../bench/build.ts';
import { scenarioOf } from '../scenario/build.ts';

const supplyVolts = actionNamed('supply-volts') as TestAction;

const site = { earthing: 'TN-S' } as const;
const papers = papersOf(scenarioOf({ site }));

/** What is said of this voltage, shown by a tester of 1 % + 1 V at the origin's incoming side. */
function findingOf(shown: number) {
  const between: [string, string] = ['incoming.L1', 'incoming.N'];
  const { sample } = observe(benchWith({ site }), operation({ op: 'measure', quantity: 'voltage', between }));
  const readings = sample.readings.map((one) => ({ ...one, value: shown, uncertainty: 1 + shown / 100 }));
  return judgeExpectations(supplyVolts, papers, { samples: [{ ...sample, readings }] }).find(
    ({ expectation }) => expectation.id === 'line-to-neutral',
  )?.finding;
}

describe('at the supply terminals', () => {
  // 253 V, the tester's 3.6 V and its last digit: 258 V is the first that leaves no doubt.
  test.each([
    [252, 'met'],
    [254, 'met'],
    [257, 'met'],
    [258, 'broken'],
    [260, 'broken'],
    // 216.2 V, 3.1 V and a digit.
    [213, 'met'],
    [211, 'broken'],
  ])('%d V: %s', (shown, finding) => {
    expect(findingOf(shown)).toBe(finding);
  });
});

describe('at the unit', () => {
  test.each([252, 254, 258, 264])(
    '%d V is held against nothing: what is wrong is the supply, if anything',
    (voltage) => {
      const { actions } = verify(scenarioOf({ site: { ...site, voltage } }), { everything: true });
      const broken = actions.filter(
        ({ expectations, limits }) =>
          expectations.some(({ finding }) => finding === 'broken') || limits.some(({ pass }) => !pass),
      );
      expect(broken.map(({ action }) => action.id)).toEqual(voltage >= 258 ? ['supply-volts'] : []);
    },
  );

  // Its own window is another thing: BS 7671:2018+A1:2020 722.411.4.1(iv), 207 to 253 V at the unit, from memory.
  test('but opens by its window, and then it is the supply that is named', () => {
    const { conclusion, stopped } = verify(
      scenarioOf({ site: { voltage: 256 }, sheet: { openPen: 'voltage-window' } }),
    );
    expect([conclusion, stopped]).toEqual(['not sound', { action: 'supply-volts', line: 'unit-window' }]);
  });
});
