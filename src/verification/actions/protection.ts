/** Protection, with the outlet supplying: loop impedance, residual current rising, smooth d.c. rising. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Reading } from '../../bench/reading.ts';
import { greatestElectrode } from '../../laws/electrode.ts';
import { loopImpedance } from '../../laws/loop.ts';
import { measuredLoopLimit } from '../../laws/overcurrent.ts';
import type { Amps, Ohms, Range } from '../../laws/quantities.ts';
import { alternatingBand, DIRECT_BAND } from '../../laws/residualLimits.ts';
import {
  CONTACT_ALLOWANCE,
  expectedCable,
  expectedCircuitLine,
  expectedCircuitProtective,
  leastCircuitProtective,
} from '../../site/expected.ts';
import { linesOf } from '../../site/site.ts';
import { inState, isInside, judgeAll, outletDead, readingsOf, samplesWhen } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT, pilotStandard, published, wiringRules } from '../sources.ts';
import { loop as loopTest, outletVoltages, waitFor } from '../steps.ts';
import type { Expectation, Finding, Limit, Papers, TestAction } from '../testAction.ts';

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

/** Residual coils in the way read as up to so much more by the low-current method, Ω. Common practice, no source. */
const COILS: Ohms = 0.1;

const sumText = (papers: Papers): string => {
  const { external, circuit, cable, whole } = loopSum(papers);
  return `${external.toFixed(2)} + ${circuit.toFixed(2)} + ${cable.toFixed(2)} = ${whole.toFixed(2)} Ω`;
};

function loopLimit(papers: Papers): Limit {
  const { earthing, circuit } = papers.site;
  const frame = {
    id: 'loop',
    text: 'greatest measured loop impedance',
    quantity: 'loop',
    unit: 'Ω',
    kind: 'most',
    points: ['protective-conductor', 'supply-wiring'],
    applies: (r: Reading) => r.quantity === 'loop' && r.between?.some((t) => t.endsWith('.PE')) === true,
  } as const;
  if (earthing === 'TT') {
    const rated = circuit.residualDevice?.rated ?? papers.sheet.residual.rated ?? 0.03;
    const limit = greatestElectrode(rated);
    return {
      ...frame,
      limit,
      sum: `50 V ÷ ${1000 * rated} mA = ${limit.toFixed(0)} Ω`,
      source: wiringRules('411.5.3, Table 41.5'),
    };
  }
  const { type, rating } = circuit.breaker;
  const limit = measuredLoopLimit(type, rating);
  return {
    ...frame,
    limit,
    sum: `0.8 × the table’s value for ${type}${rating}: ${limit.toFixed(2)} Ω`,
    source: wiringRules('411.4.4, Table 41.3; the 0.8 from Guidance Note 3'),
  };
}

const loopReadings = (o: Observed, end: 'PE' | 'N'): readonly Reading[] =>
  readingsOf(o, 'loop', inState('C')).filter((r) => r.between?.includes(`outlet.${end}`) === true);

export const loop: TestAction = {
  id: 'loop',
  title: 'Loop impedance at the outlet',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Measure the path that a fault current would take, and hold it against what the device needs.',
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    ...outletVoltages(papers),
    ...linesOf(papers.site).map((x) => loopTest(`outlet.${x}`, 'outlet.PE')),
    ...linesOf(papers.site).map((x) => loopTest(`outlet.${x}`, 'outlet.N')),
    ...unplug,
  ],
  expectations: (papers) => [
    {
      id: 'near-sum',
      should: true,
      text: 'reads within 0.15 Ω of Ze, circuit and cable added up',
      why: `By the papers ${sumText(papers)}; coils of a residual device may add some hundredths by the low-current method.`,
      source: wiringRules('643.7.3; the sum from IEC 60228'),
      of: 'circuit',
      points: ['protective-conductor', 'supply-wiring'],
      judge: (o) => {
        const { whole } = loopSum(papers);
        const parallel = expectedCircuitProtective(papers.site) - leastCircuitProtective(papers.site);
        return judgeAll(
          loopReadings(o, 'PE').filter(({ reason }) => reason !== 'no voltage between the leads'),
          (r) =>
            isInside(r, {
              least: whole - parallel - CONTACT_ALLOWANCE,
              greatest: whole + CONTACT_ALLOWANCE + COILS,
            }),
        );
      },
    },
    {
      id: 'no-return',
      should: false,
      text: 'leaves the test current without a return through PE',
      why: 'Then the protective conductor is open somewhere along the loop.',
      source: CIRCUIT,
      of: 'circuit',
      points: ['protective-conductor'],
      judge: (o) =>
        judgeAll(
          loopReadings(o, 'PE').filter(({ reason }) => reason !== 'no voltage between the leads'),
          (r) => r.qualifier === null,
        ),
    },
    {
      id: 'trips',
      should: false,
      text: 'trips on the low-current method',
      why: 'The test current is under half the rating of a 30 mA device.',
      source: published('IEC 61008-1: no operation at half the rated residual current'),
      of: 'unit',
      points: ['residual-direct', 'insulation'],
      judge: (o) =>
        judgeAll(
          samplesWhen(o, inState('C')).filter((s) =>
            s.readings.some((r) => r.quantity === 'loop' && r.current === 'low' && r.qualifier === null),
          ),
          ({ seen }) => seen.indicator === 'charging',
        ),
    },
  ],
  untold: () => [
    {
      id: 'device-acts',
      text: 'disconnects a fault within the time allowed',
      why: 'The loop says that the current would be enough, not that the device acts.',
      source: wiringRules('643.7, 643.8'),
    },
  ],
  figures: (papers) => [
    {
      id: 'sum',
      text: 'reads from line to PE about',
      unit: 'Ω',
      value: loopSum(papers).whole,
      tolerance: 0.15,
      why: `Ze, circuit, cable: ${sumText(papers)}.`,
      source: wiringRules('643.7.3'),
    },
  ],
  limits: (papers) => [loopLimit(papers)],
  stops: { 'no-return': 'the protective conductor is open: isolate; no further test puts current into it' },
};

/** Which device the 30 mA test is about, by the papers. */
function ratedDevice({ site, sheet }: Papers): { rated: Amps; of: 'unit' | 'circuit' } | null {
  if (sheet.residual.type !== null) return { rated: sheet.residual.rated ?? 0.03, of: 'unit' };
  const { residualDevice } = site.circuit;
  return residualDevice === null ? null : { rated: residualDevice.rated, of: 'circuit' };
}

const residualReadings = (o: Observed, waveform: string): readonly Reading[] =>
  readingsOf(o, 'residual', inState('C')).filter(
    (r) => r.waveform === waveform && r.mode === 'ramp' && r.qualifier !== 'unable',
  );

/** Trip current against its band; no trip at all is outside it. */
const tripsWithin = (readings: readonly Reading[], band: Partial<Range>): Finding =>
  judgeAll(readings, (r) => r.qualifier === null && isInside(r, band));

/** Unplugged, reset as the sheet says, and started again where the unit went dark: ready for the next test. */
const readyAgain = ({ site, sheet }: Papers, after: 'residual' | 'direct'): readonly OperationInput[] => [
  ...unplug,
  ...(site.circuit.residualDevice === null ? [] : [{ op: 'reset', what: 'upstream' } as const]),
  { op: 'reset', what: 'unit' },
  ...(sheet.clearsBy[after] === 'supply' ? [{ op: 'reset', what: 'supply' } as const] : []),
  waitFor(sheet.startUp + 2),
];

const rising = (
  line: 'L1' | 'L2' | 'L3',
  waveform: 'sinusoidal' | 'smooth-dc-positive' | 'smooth-dc-negative',
) => ({ op: 'measure', quantity: 'residual', line, waveform, mode: 'ramp' }) satisfies OperationInput;

export const residualRamp: TestAction = {
  id: 'residual-ramp',
  title: 'Residual current rising, a.c.',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Find the current at which the residual device acts, and show that it then stays off.',
  applies: () => true,
  steps: (papers) =>
    linesOf(papers.site).flatMap((line, i) => [
      ...untilSupplied(papers),
      rising(line, 'sinusoidal'),
      ...(i === 0 ? [waitFor(10), ...outletVoltages(papers)] : []),
      ...readyAgain(papers, 'residual'),
    ]),
  expectations: (papers) => {
    const device = ratedDevice(papers);
    const rated = device?.rated ?? 0.03;
    const band = alternatingBand(rated);
    const mA = (amps: Amps) => Math.round(1000 * amps);
    const of = device?.of ?? 'circuit';
    const points: Expectation['points'] = ['residual-direct'];
    return [
      {
        id: 'trips',
        should: true,
        text: `trips by ${mA(band.greatest)} mA`,
        why: 'That is the rated residual current for additional protection.',
        source: published('IEC 61008-1; BS 7671:2018+A2:2022 722.531.3.101'),
        of,
        points,
        judge: (o) => tripsWithin(residualReadings(o, 'sinusoidal'), { greatest: band.greatest }),
      },
      {
        id: 'early',
        should: false,
        text: `trips at ${mA(band.least)} mA or less`,
        why: 'Half the rating is standing leakage that it has to put up with.',
        source: published('IEC 61008-1'),
        of,
        points: ['residual-direct', 'insulation'],
        judge: (o) =>
          judgeAll(
            residualReadings(o, 'sinusoidal'),
            (r) => r.qualifier === '>' || (r.value ?? 0) > band.least,
          ),
      },
      {
        id: 'stays-off',
        should: true,
        text: 'stays off until it is reset',
        why: 'Nothing may close by itself after a residual trip.',
        source: pilotStandard('clause 14, UK note'),
        of,
        points,
        judge: (o) =>
          residualReadings(o, 'sinusoidal').some((r) => r.qualifier === null)
            ? outletDead(papers, o, (setUp, sample) => inState('C')(setUp, sample) && afterTrip(o, sample))
            : 'not shown',
      },
    ];
  },
  untold: () => [
    {
      id: 'direct',
      text: 'acts on smooth d.c.',
      why: 'Only a.c. was applied.',
      source: published('IEC 62955:2018'),
    },
  ],
  figures: () => [],
  limits: (papers) => {
    const rated = ratedDevice(papers)?.rated ?? 0.03;
    return [
      {
        id: 'trip-current',
        text: 'greatest tripping current',
        quantity: 'residual',
        unit: 'A',
        limit: rated,
        kind: 'most',
        sum: `the rating: ${1000 * rated} mA`,
        source: published('IEC 61008-1'),
        points: ['residual-direct'],
        applies: (r) => r.quantity === 'residual' && r.waveform === 'sinusoidal' && r.mode === 'ramp',
      },
    ];
  },
  stops: { trips: 'the residual device does not act: leave off, lock off' },
};

/** Samples that come after a test current has made something trip, and before anything was reset. */
function afterTrip(o: Observed, sample: Observed['samples'][number]): boolean {
  const before = o.samples.slice(0, o.samples.indexOf(sample));
  const tripped = before.findLastIndex(({ readings }) =>
    readings.some((r) => r.quantity === 'residual' && r.qualifier === null),
  );
  const reset = before.findLastIndex(({ operation }) => operation.op === 'reset');
  return tripped >= 0 && reset < tripped;
}

const directExpectation = (sign: 'positive' | 'negative', of: Expectation['of']): Expectation => ({
  id: `trips-${sign}`,
  should: true,
  text: `trips above 3 mA and by 6 mA of ${sign} smooth d.c.`,
  why: 'Above 6 mA a type A device upstream may no longer act; below 3 mA it would be a nuisance.',
  source: published('IEC 62955:2018 9.9.2.1'),
  of,
  points: ['residual-direct'],
  judge: (o) => tripsWithin(residualReadings(o, `smooth-dc-${sign}`), DIRECT_BAND),
});

export const dcRamp: TestAction = {
  id: 'dc-ramp',
  title: 'Smooth d.c. rising, both polarities',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Show that the d.c. detector acts before a device upstream would be blinded.',
  applies: ({ sheet }) => sheet.residual.direct !== null,
  steps: (papers) => [
    ...untilSupplied(papers),
    rising('L1', 'smooth-dc-positive'),
    ...readyAgain(papers, 'direct'),
    ...untilSupplied(papers),
    rising('L1', 'smooth-dc-negative'),
    ...readyAgain(papers, 'direct'),
  ],
  expectations: () => [
    directExpectation('positive', 'unit'),
    directExpectation('negative', 'unit'),
    {
      id: 'early',
      should: false,
      text: 'trips at less than 3 mA',
      why: 'Half the rated d.c. current is what it has to put up with.',
      source: published('IEC 62955:2018 5.3.4'),
      of: 'unit',
      points: ['residual-direct'],
      judge: (o) =>
        judgeAll(
          [...residualReadings(o, 'smooth-dc-positive'), ...residualReadings(o, 'smooth-dc-negative')],
          (r) => r.qualifier === '>' || isInside(r, { least: DIRECT_BAND.least }),
        ),
    },
  ],
  untold: () => [
    {
      id: 'step-time',
      text: 'acts within 10 s when 6 mA come at once',
      why: 'The current rose slowly; a step is a test of its own.',
      source: published('IEC 62955:2018 Table 2'),
    },
  ],
  figures: () => [],
  limits: () => [
    {
      id: 'direct-current',
      text: 'greatest d.c. tripping current',
      quantity: 'residual',
      unit: 'A',
      limit: DIRECT_BAND.greatest,
      kind: 'most',
      sum: 'rated d.c. current: 6 mA',
      source: published('IEC 62955:2018 9.9.2.1'),
      points: ['residual-direct'],
      applies: (r) => r.quantity === 'residual' && r.waveform?.startsWith('smooth') === true,
    },
  ],
  stops: {
    'trips-positive': 'the d.c. detector does not act as it must: leave off, lock off',
    'trips-negative': 'the d.c. detector does not act as it must: leave off, lock off',
  },
};
