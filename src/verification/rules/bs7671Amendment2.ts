/**
 * BS 7671:2018 with Amendment 2 of 2022, as far as the limits here rest on it. Values come from the laws, which say
 * how each is reckoned; this file says which of them these rules ask for, and where.
 */
import { ELECTRODE_TOUCH_VOLTAGE, greatestElectrode, STABLE_ELECTRODE } from '../../laws/electrode.ts';
import { EQUIPMENT_MINIMUM, EQUIPMENT_TEST_VOLTAGE, minimumInsulation } from '../../laws/insulationLimits.ts';
import { threePhaseProspective } from '../../laws/loop.ts';
import { measuredLoopLimit, NOMINAL_TO_EARTH } from '../../laws/overcurrent.ts';
import { greatestResidualLoop } from '../../laws/residualProtection.ts';
import { LINE_TO_LINE, SUPPLY_VOLTAGE } from '../../laws/supplyLimits.ts';
import { greatestDrop } from '../../laws/voltageDrop.ts';
import type { Remark } from '../sources.ts';
import { fromMemory, PRACTICE, published } from '../sources.ts';
import type { RuleSet } from './ruleSet.ts';

const NAME = 'BS 7671:2018+A2:2022';
const regulation = (number: string, remark?: Remark) => published(`${NAME} ${number}`, remark);
const remembered = (number: string, remark?: Remark) => fromMemory(`${NAME} ${number}`, remark);

export const BS_7671_AMENDMENT_2: RuleSet = {
  name: NAME,
  edition: { inForce: false },
  regulation,
  remembered,
  insulation: {
    circuit: { ...minimumInsulation(NOMINAL_TO_EARTH), source: regulation('643.3, Table 64') },
    equipment: {
      testVoltage: EQUIPMENT_TEST_VOLTAGE,
      minimum: EQUIPMENT_MINIMUM,
      source: regulation('643.3.3'),
    },
  },
  loop: {
    measured: measuredLoopLimit,
    source: regulation('411.4.4, Table 41.3', 'factor-from-guidance-note'),
    byResidual: greatestResidualLoop,
    byResidualSource: remembered('411.4.204, Table 41.5'),
  },
  // What distributors usually declare as the most. Common practice, no source.
  external: { 'TN-S': 0.8, 'TN-C-S': 0.35, TT: null, source: PRACTICE },
  prospective: {
    voltage: NOMINAL_TO_EARTH,
    threePhase: threePhaseProspective(1),
    source: regulation('434.5.1, 643.7.3.201', 'doubling-from-guidance-note'),
    conditionalSource: regulation('434.5.1, 536.4.201', 'with-bs-en-61439-3'),
  },
  electrode: {
    touchVoltage: ELECTRODE_TOUCH_VOLTAGE,
    greatest: greatestElectrode,
    source: regulation('411.5.3, Table 41.5'),
    stable: STABLE_ELECTRODE,
    stableSource: regulation('Table 41.5, note'),
  },
  supply: {
    lineToNeutral: SUPPLY_VOLTAGE,
    lineToLine: LINE_TO_LINE,
    source: published('ESQCR 2002, regulation 27'),
  },
  drop: { greatest: greatestDrop, source: regulation('525.202, Appendix 4') },
  additional: {
    rated: 0.03,
    types: ['A', 'F', 'B'],
    source: regulation('722.531.3.101'),
  },
};
