/** Dead tests: continuity of the protective conductor and insulation, of the circuit and of the outlet. */
import type { Reading } from '../../bench/reading.ts';
import { EQUIPMENT_MINIMUM, EQUIPMENT_TEST_VOLTAGE, minimumInsulation } from '../../laws/insulationLimits.ts';
import type { Ohms } from '../../laws/quantities.ts';
import {
  CONTACT_ALLOWANCE,
  expectedCable,
  expectedCircuitProtective,
  leastCircuitProtective,
} from '../../site/expected.ts';
import { pairsOf } from '../../site/part.ts';
import { linesOf, livesOf } from '../../site/site.ts';
import { between, isInside, judgeAll, off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { CIRCUIT, PRACTICE, wiringRules } from '../sources.ts';
import { continuity, insulation } from '../steps.ts';
import type { Expectation, Limit, Papers, TestAction } from '../testAction.ts';

const ohms = (value: Ohms): string => value.toFixed(value < 0.1 ? 3 : 2);

const continuityOf = (observed: Observed, a: string, b: string): readonly Reading[] =>
  between(readingsOf(observed, 'continuity', off), a, b).filter((r) => r.qualifier !== 'unable');

/**
 * A protective path between two terminals: its sum, that it is not open, and the limit that follows from the sum.
 * `least`: what a declared path in parallel may bring it down to.
 */
function path(a: string, b: string, sum: Ohms, least: Ohms, of: 'unit' | 'circuit', sumText: string) {
  const points: Expectation['points'] = ['protective-conductor'];
  const expectations: readonly Expectation[] = [
    {
      id: 'near-sum',
      should: true,
      text: `reads within ${CONTACT_ALLOWANCE} Ω of its length × mΩ/m`,
      why: `The conductor alone is ${sumText}; more is a joint, less is a path in parallel.`,
      source: wiringRules('643.2.1, with the sum from IEC 60228; the 0.05 Ω is common practice'),
      of,
      points,
      judge: (o) =>
        judgeAll(continuityOf(o, a, b), (r) =>
          isInside(r, { least: least - CONTACT_ALLOWANCE, greatest: sum + CONTACT_ALLOWANCE }),
        ),
    },
    {
      id: 'open',
      should: false,
      text: 'reads open',
      why: 'An open protective conductor leaves everything beyond it unearthed.',
      source: wiringRules('643.2.1'),
      of,
      points,
      judge: (o) => judgeAll(continuityOf(o, a, b), (r) => r.qualifier !== '>' && (r.value ?? 0) < 100),
    },
  ];
  const limit: Limit = {
    id: 'sum',
    text: 'length × mΩ/m and what contacts may add',
    quantity: 'continuity',
    unit: 'Ω',
    limit: sum + CONTACT_ALLOWANCE,
    kind: 'most',
    sum: `${sumText} + ${CONTACT_ALLOWANCE} Ω = ${ohms(sum + CONTACT_ALLOWANCE)} Ω`,
    source: PRACTICE,
    points,
    applies: (r) => between([r], a, b).length > 0,
  };
  return { expectations, limit };
}

const circuitPath = ({ site }: Papers) => {
  const sum = expectedCircuitProtective(site);
  const { length } = site.circuit;
  return path(
    'met',
    'supply.PE',
    sum,
    leastCircuitProtective(site),
    'circuit',
    `${length} m × ${((1000 * sum) / length).toFixed(2)} mΩ/m = ${ohms(sum)} Ω`,
  );
};

export const peCircuit: TestAction = {
  id: 'pe-circuit',
  title: 'Protective conductor, earthing terminal to unit',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  purpose: 'Show that the circuit’s own protective conductor is there and sound as far as the unit.',
  applies: () => true,
  steps: () => [{ op: 'null-leads' }, continuity('met', 'supply.PE')],
  expectations: (papers) => circuitPath(papers).expectations,
  untold: () => [
    {
      id: 'to-outlet',
      text: 'is continuous as far as the outlet',
      why: 'The leads end at the unit’s terminal; the unit and its outlet come beyond.',
      source: CIRCUIT,
    },
  ],
  figures: ({ site }) => [
    {
      id: 'sum',
      text: 'reads about',
      unit: 'Ω',
      value: expectedCircuitProtective(site),
      tolerance: CONTACT_ALLOWANCE,
      why: 'Length × mΩ/m for its area, at 20 °C.',
      source: wiringRules('643.2.1, with IEC 60228'),
    },
  ],
  limits: (papers) => [circuitPath(papers).limit],
  stops: {
    'near-sum': 'the circuit’s protective conductor failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    open: 'the circuit’s protective conductor is open: do not energise (BS 7671 643.1, EAWR reg. 4)',
  },
};

/** The tether belongs to the path; a bare socket-outlet has contacts alone. */
const outletPath = ({ sheet }: Papers) => {
  const tethered = sheet.outlet === 'tethered';
  const sum = tethered ? expectedCable(sheet.cable) : 0;
  return path(
    'supply.PE',
    'outlet.PE',
    sum,
    sum,
    'unit',
    tethered ? `${sheet.cable.length} m of ${sheet.cable.area} mm² = ${ohms(sum)} Ω` : 'contacts alone, 0 Ω',
  );
};

export const peOutlet: TestAction = {
  id: 'pe-outlet',
  title: 'Protective conductor, unit to outlet',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  purpose: 'Show that the unit carries the protective conductor on to the outlet and to its exposed metal.',
  applies: () => true,
  steps: () => [{ op: 'null-leads' }, continuity('supply.PE', 'outlet.PE'), continuity('supply.PE', 'case')],
  expectations: (papers) => [
    ...outletPath(papers).expectations,
    {
      id: 'case',
      should: true,
      text: 'joins its exposed metal to the protective conductor',
      why: 'A fault to the case is cleared only through that joint.',
      source: wiringRules('643.2.1'),
      of: 'unit',
      points: ['protective-conductor'],
      judge: (o) =>
        judgeAll(continuityOf(o, 'supply.PE', 'case'), (r) => isInside(r, { greatest: CONTACT_ALLOWANCE })),
    },
  ],
  untold: () => [
    {
      id: 'to-met',
      text: 'is joined to the main earthing terminal',
      why: 'Both leads are at the unit: this is its own half of the path only.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: (papers) => [outletPath(papers).limit],
  stops: {
    'near-sum': 'the protective conductor to the outlet failed: do not energise (BS 7671 643.1)',
    open: 'the protective conductor to the outlet is open: do not energise (BS 7671 643.1)',
    case: 'exposed metal is not earthed: do not energise (BS 7671 643.1)',
  },
};

const insulationReadings = (observed: Observed): readonly Reading[] =>
  readingsOf(observed, 'insulation', off).filter((r) => r.qualifier !== 'unable');

const toEarth = (r: Reading): boolean => r.between?.some((t) => t.endsWith('.PE')) === true;

/** Table 64 judged on the shown value, as the record will be; the instrument's uncertainty is the limit's business. */
const enough = (least: Ohms) => (r: Reading) => r.qualifier === '>' || (r.value ?? 0) >= least;

function insulationLimit(place: 'supply' | 'outlet', least: Ohms, sum: string, regulation: string): Limit {
  return {
    id: 'insulation',
    text: 'least insulation resistance',
    quantity: 'insulation',
    unit: 'Ω',
    limit: least,
    kind: 'least',
    sum,
    source: wiringRules(regulation),
    points: ['insulation'],
    // At the outlet 643.3.3 asks for live conductors to earth alone: electronics and bleeds lie between lives.
    applies: (r) =>
      r.quantity === 'insulation' &&
      r.between?.[0].startsWith(`${place}.`) === true &&
      (place === 'supply' || toEarth(r)),
  };
}

const TABLE_64 = minimumInsulation(230);

export const insulationCircuit: TestAction = {
  id: 'insulation-circuit',
  title: 'Insulation of the circuit, unit taken off',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  purpose: 'Measure the cable alone, every pair, at 500 V d.c.',
  applies: () => true,
  steps: ({ site, sheet }) => [
    { op: 'disconnect', what: 'unit' },
    ...(sheet.surgeArrester ? [{ op: 'disconnect', what: 'arrester' } as const] : []),
    ...pairsOf([...livesOf(site), 'PE']).map(([x, y]) => insulation(`supply.${x}`, `supply.${y}`, 500)),
    ...(sheet.surgeArrester ? [{ op: 'reconnect', what: 'arrester' } as const] : []),
    { op: 'reconnect', what: 'unit' },
  ],
  expectations: ({ site }) => [
    {
      id: 'lives-to-earth',
      should: false,
      text: 'reads under 1.0 MΩ from any live conductor to PE',
      why: 'Current leaks there in service, and the reading falls with damp.',
      source: wiringRules('643.3, Table 64'),
      of: 'circuit',
      points: ['insulation'],
      judge: (o) => {
        const readings = insulationReadings(o).filter(toEarth);
        if (readings.some((r) => !enough(TABLE_64.minimum)(r))) return 'broken';
        const all = livesOf(site).every((x) => between(readings, `supply.${x}`, 'supply.PE').length > 0);
        return all ? 'met' : 'not shown';
      },
    },
    {
      id: 'between-lives',
      should: true,
      text: 'reads 1.0 MΩ or more between live conductors',
      why: 'With the unit taken off there is nothing between them but insulation.',
      source: wiringRules('643.3, Table 64'),
      of: 'circuit',
      points: ['insulation'],
      judge: (o) =>
        judgeAll(
          insulationReadings(o).filter((r) => !toEarth(r)),
          enough(TABLE_64.minimum),
        ),
    },
  ],
  untold: () => [
    {
      id: 'inside-unit',
      text: 'has sound insulation inside the unit',
      why: 'The unit was taken off for this test.',
      source: wiringRules('643.3.2'),
    },
  ],
  figures: () => [],
  limits: () => [
    insulationLimit(
      'supply',
      TABLE_64.minimum,
      `circuit up to 500 V: ${TABLE_64.testVoltage} V d.c., at least 1.0 MΩ`,
      '643.3, Table 64',
    ),
  ],
  stops: {
    'lives-to-earth': 'insulation to earth failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    'between-lives': 'insulation between live conductors failed: do not energise (BS 7671 643.1)',
  },
};

export const insulationOutlet: TestAction = {
  id: 'insulation-outlet',
  title: 'Insulation at the outlet, contactor open',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  purpose: 'Measure the outlet and its cable at the voltage that the unit’s sheet allows.',
  applies: () => true,
  steps: ({ site, sheet }) => {
    const volts = outletTestVoltage(sheet.insulationTestVoltageMax);
    const lives = livesOf(site).map((x) => `outlet.${x}`);
    return [
      ...linesOf(site).map((x) => insulation(`outlet.${x}`, 'outlet.N', volts)),
      insulation(lives, 'outlet.PE', volts),
    ];
  },
  expectations: ({ sheet }) => [
    {
      id: 'outlet-to-earth',
      should: false,
      text: 'reads under 1.0 MΩ from the outlet’s live conductors to PE',
      why: 'Between outlet and open contactor there is nothing but insulation.',
      source: wiringRules('643.3.3'),
      of: 'unit',
      points: ['insulation'],
      judge: (o) => judgeAll(insulationReadings(o).filter(toEarth), enough(EQUIPMENT_MINIMUM)),
    },
    {
      id: 'outlet-lives',
      should: true,
      text: `reads ${(betweenOutletLives(sheet) / 1e6).toFixed(1)} MΩ or more between line and neutral of the outlet`,
      why:
        sheet.poleBleed === null
          ? 'The contactor’s open poles keep the unit’s electronics out of this measurement.'
          : 'The contactor’s poles are open; what the sheet says bleeds across them is read, twice in series.',
      source: wiringRules('643.3.3'),
      of: 'unit',
      points: ['insulation', 'switching'],
      judge: (o) =>
        judgeAll(
          insulationReadings(o).filter((r) => !toEarth(r)),
          sheet.poleBleed === null
            ? enough(EQUIPMENT_MINIMUM)
            : (r) => isInside(r, { least: betweenOutletLives(sheet) }),
        ),
    },
  ],
  untold: () => [
    {
      id: 'circuit-insulated',
      text: 'has sound insulation in the cable that feeds it',
      why: 'The open contactor cuts the circuit off from these leads.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [
    insulationLimit(
      'outlet',
      EQUIPMENT_MINIMUM,
      `equipment connected: ${EQUIPMENT_TEST_VOLTAGE} V d.c. or as the sheet allows, at least 1.0 MΩ`,
      '643.3.3',
    ),
  ],
  stops: {
    'outlet-to-earth': 'insulation of the outlet failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    'outlet-lives': 'insulation of the outlet failed: do not energise (BS 7671 643.1)',
  },
};

/** Least resistance between two lives of the outlet with both poles open, Ω: a declared bleed lies across each pole. */
const betweenOutletLives = ({ poleBleed }: Papers['sheet']): Ohms =>
  poleBleed === null ? EQUIPMENT_MINIMUM : Math.min(EQUIPMENT_MINIMUM, 2 * poleBleed);

/** The highest of the usual test voltages that neither the sheet nor 643.3.3 forbids, V. */
const outletTestVoltage = (allowed: number): 50 | 100 | 250 =>
  allowed >= EQUIPMENT_TEST_VOLTAGE ? 250 : allowed >= 100 ? 100 : 50;
