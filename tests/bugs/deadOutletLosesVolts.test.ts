/** The 230 V between origin and an outlet that was never supplied were taken for volts lost in the circuit. */
import { expect, test } from 'vitest';
import { actionNamed } from '../../src/verification/actions.ts';
import { judgeExpectations } from '../../src/verification/assess.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import { benchWith, SHEET, SITE } from '../bench/build.ts';

const voltDrop = actionNamed('volt-drop') as TestAction;

test('a dead outlet shows nothing of the circuit', () => {
  const world = benchWith({ faults: [{ fault: 'misses-request', values: {} }] });
  const papers = { site: SITE, sheet: SHEET };
  const judged = judgeExpectations(voltDrop, papers, carryOut(world, voltDrop, papers));
  expect(judged.map(({ finding }) => finding)).toEqual(['not shown', 'not shown']);
});
