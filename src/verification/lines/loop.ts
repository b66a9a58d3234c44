/** What test action `loop` ought to show. */
import type { Reading, ReadingOf } from '../../bench/reading.ts';
import { loopImpedance } from '../../laws/loop.ts';
import { greatestLoopImpedance } from '../../laws/overcurrent.ts';
import type { Ohms, Range } from '../../laws/quantities.ts';
import { timeAtLimit } from '../../laws/residualProtection.ts';
import {
  CONTACT_ALLOWANCE,
  expectedCable,
  expectedCircuitLine,
  expectedCircuitProtective,
  leastCircuitProtective,
} from '../../site/expected.ts';
import { answersToTest } from '../actions/loop.ts';
import { inState, isInside, judgeAll, readingsOf, samplesWhen } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, published } from '../sources.ts';
import type { Expectation, Limit, Papers, TestLines, Values } from '../testAction.ts';

/** Loop at the outlet by the papers: external loop, both ways along the circuit, both ways along the cable. */
const loopSum = ({ site, sheet }: Papers): { external: Ohms; circuit: Ohms; cable: Ohms; whole: Ohms } => {
  const external =
    site.earthing === 'TT'
      ? (site.electrodeResistance ?? 0) + site.sourceElectrodeResistance + site.neutralImpedance / 2
      : site.loopImpedance;
  const circuit = expectedCircuitLine(site) + expectedCircuitProtective(site);
  const cable = 2 * expectedCable(sheet.cable);
  return { external, circuit, cable, whole: loopImpedance(external, circuit + cable) };
};

/** Line to neutral at the outlet by the papers, Ω. On TN-C-S one PEN conductor is the return of both loops. */
const neutralSum = ({ site, sheet }: Papers): Ohms =>
  loopImpedance(
    site.earthing === 'TN-C-S' ? site.loopImpedance : site.neutralImpedance,
    2 * expectedCircuitLine(site) + 2 * expectedCable(sheet.cable),
  );

/** By how much other metal in the ground may lower the reading below the electrode's own resistance, Ω. */
const besideElectrode = ({ site }: Papers): Ohms => {
  const { electrodeResistance, metEarthResistance } = site;
  return site.earthing !== 'TT' || electrodeResistance === null || metEarthResistance === null
    ? 0
    : electrodeResistance - 1 / (1 / electrodeResistance + 1 / metEarthResistance);
};

/** Residual coils in the way read as up to so much more by the low-current method, Ω. Common practice, no source. */
const COILS: Ohms = 0.1;

function loopLimit(papers: Papers): Limit {
  const { earthing, circuit } = papers.site;
  const rules = rulesFor(papers);
  const frame = {
    id: 'loop',
    quantity: 'loop',
    unit: 'Ω',
    kind: 'most',
    points: ['protective-conductor', 'supply-wiring'],
    applies: (r: Reading) => r.quantity === 'loop' && r.between?.some((t) => t.endsWith('.PE')) === true,
  } as const;
  if (earthing === 'TT') {
    const rated = circuit.residualDevice?.rated ?? papers.sheet.residual.rated ?? 0.03;
    const limit = rules.electrode.greatest(rated);
    return {
      ...frame,
      limit,
      values: { by: 'electrode', touchVoltage: rules.electrode.touchVoltage, rated, limit },
      source: rules.electrode.source,
    };
  }
  const { breaker, residualDevice, faultProtection } = circuit;
  // The unit's own device never counts: the cable that feeds it lies before it.
  if (faultProtection === 'residual' && residualDevice !== null) {
    const { rated, delay } = residualDevice;
    const limit = rules.loop.byResidual(rated);
    return {
      ...frame,
      limit,
      values: {
        by: delay === 'S' ? 'delayed device' : 'residual device',
        touchVoltage: rules.electrode.touchVoltage,
        rated,
        limit,
        time: timeAtLimit(rated, delay),
      },
      source: rules.loop.byResidualSource,
    };
  }
  const { type, rating } = breaker;
  const limit = rules.loop.measured(type, rating);
  return {
    ...frame,
    limit,
    values: { by: 'breaker', type, rating, limit, table: greatestLoopImpedance(type, rating) },
    source: rules.loop.source,
  };
}

/** 5 % of the true value are a little more than 5 % of a reading that came out low, as a share. */
const GAIN_OF_THE_TRUE = 0.0026;

const loopReadings = (o: Observed, end: 'PE' | 'N'): readonly ReadingOf<'loop'>[] =>
  readingsOf(o, 'loop', inState('C')).filter((r) => r.between?.includes(`outlet.${end}`) === true);

/** What the reading from line to PE may be by the papers, Ω. */
function loopRange(papers: Papers): Range {
  const { whole } = loopSum(papers);
  const beside =
    expectedCircuitProtective(papers.site) - leastCircuitProtective(papers.site) + besideElectrode(papers);
  return {
    least: (whole - beside) * (1 - GAIN_OF_THE_TRUE) - CONTACT_ALLOWANCE,
    greatest: whole + CONTACT_ALLOWANCE + COILS,
  };
}

const neutralGreatest = (papers: Papers): Ohms => neutralSum(papers) + CONTACT_ALLOWANCE + COILS;

const sumValues = (papers: Papers): Values => ({
  ...loopSum(papers),
  electrodes: papers.site.earthing === 'TT',
});

const notTripping: Expectation = {
  id: 'trips',
  should: false,
  source: published('IEC 61008-1', 'no-operation-at-half'),
  of: 'unit',
  points: ['residual-direct', 'insulation'],
  judge: (o) =>
    judgeAll(
      samplesWhen(o, inState('C')).filter((s) =>
        s.readings.some((r) => r.quantity === 'loop' && r.current === 'low' && r.qualifier === null),
      ),
      ({ seen }) => seen.indicator === 'charging',
    ),
};

export const loop: TestLines = {
  expectations: (papers) => [
    {
      id: 'near-sum',
      should: true,
      values: { ...sumValues(papers), ...loopRange(papers) },
      source: rulesFor(papers).regulation('643.7.3', 'sum-from-iec-60228'),
      of: 'circuit',
      points: ['protective-conductor', 'supply-wiring', 'switching'],
      judge: (o) =>
        judgeAll(
          loopReadings(o, 'PE').filter(({ reason }) => reason?.id !== 'no-voltage'),
          (r) => isInside(r, loopRange(papers)),
        ),
    },
    {
      id: 'neutral-near-sum',
      should: true,
      values: { sum: neutralSum(papers), greatest: neutralGreatest(papers) },
      source: rulesFor(papers).regulation('643.7.3', 'sum-from-iec-60228'),
      of: 'circuit',
      points: ['supply-wiring', 'switching'],
      judge: (o) =>
        judgeAll(
          loopReadings(o, 'N').filter(({ reason }) => reason?.id !== 'no-voltage'),
          (r) => isInside(r, { greatest: neutralGreatest(papers) }),
        ),
    },
    {
      id: 'no-return',
      should: false,
      source: CIRCUIT,
      of: 'circuit',
      points: ['protective-conductor'],
      judge: (o) =>
        judgeAll(
          loopReadings(o, 'PE').filter(({ reason }) => reason?.id !== 'no-voltage'),
          (r) => r.qualifier === null,
        ),
    },
    ...(answersToTest(papers) ? [] : [notTripping]),
  ],
  figures: (papers) => [
    {
      id: 'sum',
      values: sumValues(papers),
      unit: 'Ω',
      value: loopSum(papers).whole,
      tolerance: 0.15,
      source: rulesFor(papers).regulation('643.7.3'),
    },
  ],
  limits: (papers) => [loopLimit(papers)],
  stops: ['no-return'],
};
