/**
 * Designs over which a verifier would argue: small files whose verdict, with every line broken, limit failed and advice
 * due, was written by hand from the rule named beside it; and what `check` warns of in each.
 */
import { describe, expect, test } from 'vitest';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { sheetLines, siteLines } from '../../src/words/papers.ts';

interface Design {
  readonly name: string;
  /** The rule, and P: a published row; D: arithmetic of it; M: rests on a value from memory; J: a judgement. */
  readonly source: string;
  readonly site?: Readonly<Record<string, unknown>>;
  readonly circuit?: Readonly<Record<string, unknown>>;
  readonly unit?: Readonly<Record<string, unknown>>;
  readonly faults?: readonly Readonly<Record<string, unknown>>[];
  readonly seed?: number;
  readonly conclusion: 'sound' | 'not sound';
  readonly broken?: readonly string[];
  readonly failed?: readonly string[];
  /** Limits so near the reading that either may come out, by the instrument's own error: no key hangs on a draw. */
  readonly open?: readonly string[];
  readonly advice?: readonly string[];
  /** The fields of which `check` warns. */
  readonly warned?: readonly string[];
}

/** One phase, TN-S, 18 m of 6 mm² clipped direct behind a B40, a tethered unit of 32 A with its own type A device. */
const fileOf = ({ site, circuit, unit, faults = [], seed = 7 }: Design) => ({
  format: 1,
  id: 'a-design',
  title: 'A design',
  brief: 'A design.',
  rules: 'BS 7671:2018+A2:2022',
  clock: '2026-03-10T10:00',
  site: {
    phases: 1,
    earthing: 'TN-S',
    voltage: 236,
    ...(site?.earthing === 'TT' ? {} : { loopImpedance: 0.3 }),
    ...site,
    circuit: {
      length: 18,
      lineArea: 6,
      protectiveArea: 6,
      breaker: { type: 'B', rating: 40 },
      ...circuit,
    },
  },
  unit: {
    outlet: 'tethered',
    ratedCurrent: 32,
    cable: { length: 5, area: 6, coding: 32 },
    residual: { type: 'A', rated: 0.03, by: 'contactor', direct: 'protective' },
    ...unit,
  },
  faults,
  allowed: 'all',
  support: 'practice',
  seed,
});

const B32 = { type: 'B', rating: 32 } as const;
const device = (rated: number, delay: 'general' | 'S' = 'general', poles = 2, type = 'A') => ({
  type,
  rated,
  delay,
  poles,
});
/** The a.c. device stands at the origin alone. */
const AT_THE_ORIGIN = { residual: { type: null, direct: 'monitoring' } };
const rod = (ohms: number) => ({ earthing: 'TT', electrodeResistance: ohms });
const THREE = { phases: 3, loopImpedance: 0.2 };
const FOUR_POLES = { breakingCapacity: 10_000, poles: 4 };

/** W21: 0.70 + 70 m × (1.83 + 7.41) mΩ/m = 1.35 Ω; 230 ÷ 1.35 = 171 A, under the 200 A that open a B40 at once. */
const FAR = { site: { loopImpedance: 0.7 }, circuit: { length: 70, lineArea: 10, protectiveArea: 2.5 } };

const DESIGNS: readonly Design[] = [
  {
    name: 'W1: B40 on 6 mm² clipped direct: 32 ≤ 40 ≤ 46 A',
    source: 'BS 7671:2018+A2:2022 433.1.1, Table 4D2A; P',
    conclusion: 'sound',
  },
  {
    name: 'W2: B63 on 4 mm² armoured in the ground: 63 > 37 A',
    source: 'BS 7671:2018+A2:2022 433.1.1, Table 4D4A; P',
    site: { loopImpedance: 0.15 },
    circuit: { lineArea: 4, protectiveArea: 4, method: 'D', breaker: { type: 'B', rating: 63 } },
    conclusion: 'not sound',
    broken: ['papers: cable-carries'],
    warned: ['site.circuit.breaker.rating'],
  },
  {
    name: 'W3: 6 mm², 35 °C, two bunched, 34.6 A: B32',
    source: 'BS 7671:2018+A2:2022 433.1.1, Tables 4B1, 4C1; D',
    circuit: { ambient: 35, grouped: 2, breaker: B32 },
    conclusion: 'sound',
  },
  {
    name: 'W3: the same, B40',
    source: 'BS 7671:2018+A2:2022 433.1.1, Tables 4B1, 4C1; D',
    circuit: { ambient: 35, grouped: 2 },
    conclusion: 'not sound',
    broken: ['papers: cable-carries'],
    warned: ['site.circuit.breaker.rating'],
  },
  {
    name: 'W4: flat 10 mm² with 4 mm² inside an insulated stud wall, B32: 32.0 A, no margin',
    source: 'BS 7671:2018+A2:2022 433.1.1, Table 4D5; 543.1.3: 553 A for 0.1 s need 1.52 mm²; P',
    circuit: { lineArea: 10, protectiveArea: 4, method: '103', breaker: B32 },
    conclusion: 'sound',
  },
  {
    name: 'W4: flat 6 mm² there, B32: 23.5 A',
    source: 'BS 7671:2018+A2:2022 433.1.1, Table 4D5; P',
    circuit: { method: '103', breaker: B32 },
    conclusion: 'not sound',
    broken: ['papers: cable-carries'],
    warned: ['site.circuit.breaker.rating'],
  },
  {
    name: 'W5: three-phase, armoured 6 mm² in the ground, 38 A: B32',
    source: 'BS 7671:2018+A2:2022 433.1.1, Table 4D4A; P',
    site: THREE,
    circuit: { method: 'D', breaker: { ...B32, ...FOUR_POLES } },
    conclusion: 'sound',
  },
  {
    name: 'W5: the same, B40',
    source: 'BS 7671:2018+A2:2022 433.1.1, Table 4D4A; P',
    site: THREE,
    circuit: { method: 'D', breaker: { type: 'B', rating: 40, ...FOUR_POLES } },
    conclusion: 'not sound',
    broken: ['papers: cable-carries'],
    warned: ['site.circuit.breaker.rating'],
  },
  {
    name: 'W7: 50 m of 6 mm² at 32 A: 11.68 V, 5.08 %',
    source: 'BS 7671:2018+A2:2022 525.202, Appendix 4; D',
    circuit: { length: 50 },
    conclusion: 'not sound',
    broken: ['papers: volts-lost'],
    warned: ['site.circuit.lineArea'],
  },
  {
    name: 'W7: 50 m of 10 mm²: 7.04 V, 3.06 %',
    source: 'BS 7671:2018+A2:2022 525.202, Appendix 4; D',
    circuit: { length: 50, lineArea: 10 },
    conclusion: 'sound',
  },
  {
    name: 'W8: 55 m of 4 mm², B32, 8.42 %: of 216.2 V 196.8 V are left, and the maker asks 190 V',
    source: 'BS 7671:2018+A2:2022 525.1: the product’s own least voltage is met; D',
    circuit: { length: 55, lineArea: 4, protectiveArea: 4, breaker: B32 },
    unit: { leastVoltage: 190 },
    conclusion: 'sound',
  },
  {
    name: 'W8: the same unit asks 200 V',
    source: 'BS 7671:2018+A2:2022 525.1; D',
    circuit: { length: 55, lineArea: 4, protectiveArea: 4, breaker: B32 },
    unit: { leastVoltage: 200 },
    conclusion: 'not sound',
    broken: ['papers: volts-lost'],
    warned: ['site.circuit.lineArea'],
  },
  {
    name: 'W13: B32 of 6 kA, 0.22 Ω, 2.5 mm²: 2.87 mm² by 0.1 s, 1.84 by its energy class',
    source: 'BS 7671:2018+A2:2022 543.1.3; BS EN 60898-1 Annex ZA; M',
    site: { loopImpedance: 0.115 },
    circuit: { length: 10, protectiveArea: 2.5, breaker: B32 },
    conclusion: 'sound',
  },
  {
    name: 'W14: the same of 10 kA: 2.61 mm² by its energy class, 2.5 is not shown to be enough',
    source: 'BS 7671:2018+A2:2022 543.1.3; BS EN 60898-1 Annex ZA; M',
    site: { loopImpedance: 0.115 },
    circuit: { length: 10, protectiveArea: 2.5, breaker: { ...B32, breakingCapacity: 10_000 } },
    conclusion: 'not sound',
    broken: ['papers: stands-fault'],
    warned: ['site.circuit.protectiveArea'],
  },
  {
    name: 'W14: the same with 4 mm²',
    source: 'BS 7671:2018+A2:2022 543.1.3; BS EN 60898-1 Annex ZA; M',
    site: { loopImpedance: 0.115 },
    circuit: { length: 10, protectiveArea: 4, breaker: { ...B32, breakingCapacity: 10_000 } },
    conclusion: 'sound',
  },
  {
    name: 'W16: 3.83 kA at the origin, a 3 kA breaker in a consumer unit declared for 16 kA',
    source:
      'BS 7671:2018+A2:2022 536.4.201; P (in place of 7.67 and 6 kA, since a tester reads their 0.03 Ω to 0.03 Ω)',
    site: { loopImpedance: 0.06 },
    circuit: { breaker: { type: 'B', rating: 40, breakingCapacity: 3000 }, conditionalRating: 16_000 },
    conclusion: 'sound',
  },
  {
    name: 'W16: the same breaker in a box of its own',
    source: 'BS 7671:2018+A2:2022 434.5.1; P. By the tester it is too close to call, by the sum it is not',
    site: { loopImpedance: 0.06 },
    circuit: { breaker: { type: 'B', rating: 40, breakingCapacity: 3000 } },
    conclusion: 'not sound',
    broken: ['papers: breaks-current'],
    open: ['pfc: capacity-neutral', 'pfc: capacity-earth'],
    warned: ['site.circuit.breaker.breakingCapacity'],
  },
  {
    name: 'W16: three phases at 0.040 Ω, 11.5 kA, devices of 10 kA',
    source: 'BS 7671:2018+A2:2022 434.5.1; the doubling from IET Guidance Note 3; P',
    site: { phases: 3, loopImpedance: 0.04 },
    circuit: { breaker: { ...B32, ...FOUR_POLES } },
    conclusion: 'not sound',
    broken: ['papers: breaks-current'],
    open: ['pfc: capacity-neutral', 'pfc: capacity-earth'],
    warned: ['site.circuit.breaker.breakingCapacity'],
  },
  {
    name: 'W17: house 40 A and unit 32 A on a service of 60 A',
    source: 'BS 7671:2018+A2:2022 722.311; D',
    site: { service: { rating: 60, demand: 40 } },
    conclusion: 'not sound',
    broken: ['papers: service-carries'],
    warned: ['site.service'],
  },
  {
    name: 'W17: the same, kept to 60 A by the unit’s own sensor',
    source: 'BS 7671:2018+A2:2022 722.311.201; D',
    site: { service: { rating: 60, demand: 40 } },
    unit: { serviceLimit: 60 },
    conclusion: 'sound',
  },
  {
    name: 'W18: TT, 300 mA S, 240 Ω: 72 V',
    source: 'BS 7671:2018+A2:2022 411.5.3; P (240 in place of 180 Ω, so that no tester doubts it)',
    site: rod(240),
    circuit: { residualDevice: device(0.3, 'S') },
    conclusion: 'not sound',
    // What fails before power is not energised: the loop is not reached.
    broken: ['papers: touch-voltage', 'electrode: too-high'],
    failed: ['electrode: electrode'],
    advice: ['electrode: unstable'],
    warned: ['site.electrodeResistance'],
  },
  {
    name: 'W18: TT, 300 mA S, 150 Ω: 45 V',
    source: 'BS 7671:2018+A2:2022 411.5.3; P',
    site: rod(150),
    circuit: { residualDevice: device(0.3, 'S') },
    conclusion: 'sound',
  },
  {
    name: 'W18: TT, 100 mA S, 450 Ω: 45 V, over 200 Ω: advised',
    source:
      'BS 7671:2018+A2:2022 411.5.3, Table 41.5 note; P (450 in place of 480 Ω, which no tester tells from 500)',
    site: rod(450),
    circuit: { residualDevice: device(0.1, 'S') },
    conclusion: 'sound',
    advice: ['electrode: unstable'],
  },
  {
    name: 'W19: TT, 30 mA, 1500 Ω: 45 V, advised',
    source: 'BS 7671:2018+A2:2022 411.5.3, Table 41.5 note; P',
    site: rod(1500),
    circuit: { residualDevice: device(0.03) },
    unit: AT_THE_ORIGIN,
    conclusion: 'sound',
    advice: ['electrode: unstable'],
  },
  {
    name: 'W19: TT, 30 mA, 1900 Ω: 57 V',
    source: 'BS 7671:2018+A2:2022 411.5.3; P (1900 in place of 1700 Ω, which no tester tells from 1667)',
    site: rod(1900),
    circuit: { residualDevice: device(0.03) },
    unit: AT_THE_ORIGIN,
    conclusion: 'not sound',
    broken: ['papers: touch-voltage', 'electrode: too-high'],
    failed: ['electrode: electrode'],
    advice: ['electrode: unstable'],
    warned: ['site.electrodeResistance'],
  },
  {
    name: 'W21: TN, 1.35 Ω behind a B40, no residual device at the origin',
    source: 'BS 7671:2018+A2:2022 411.4.4, Table 41.3: 0.87 Ω measured; 543.1.3: 5 s; P',
    ...FAR,
    conclusion: 'not sound',
    broken: ['papers: stands-fault'],
    failed: ['loop: loop'],
    warned: ['site.circuit.protectiveArea'],
  },
  {
    name: 'W21: the same, fault protection by 30 mA at the origin: 1667 Ω',
    source: 'BS 7671:2018+A2:2022 411.4.5, Table 41.5; 543.1.3: 171 A for 0.04 s need 0.30 mm²; P',
    site: FAR.site,
    circuit: { ...FAR.circuit, residualDevice: device(0.03), faultProtection: 'residual' },
    unit: AT_THE_ORIGIN,
    conclusion: 'sound',
  },
  {
    name: 'W21: the same with a poor joint in PE: far under 1667 Ω, and found by its sum',
    source: 'BS 7671:2018+A2:2022 526.1, 643.2.1; J',
    site: FAR.site,
    circuit: { ...FAR.circuit, residualDevice: device(0.03), faultProtection: 'residual' },
    unit: AT_THE_ORIGIN,
    faults: [{ fault: 'pe-joint', ohms: 1.2 }],
    conclusion: 'not sound',
    broken: ['pe-circuit: near-sum', 'r1r2-polarity: near-sum'],
    failed: ['pe-circuit: sum'],
  },
  {
    name: 'W22: the same resting on the device inside the unit: the cable that feeds it is not protected',
    source: 'BS 7671:2018+A2:2022 411.4.5; D',
    site: FAR.site,
    circuit: { ...FAR.circuit, faultProtection: 'residual' },
    conclusion: 'not sound',
    broken: ['papers: fault-device', 'papers: stands-fault'],
    failed: ['loop: loop'],
    warned: ['site.circuit.faultProtection', 'site.circuit.protectiveArea'],
  },
  {
    name: 'a solid neutral: the 30 mA device at the origin opens the line alone',
    source: 'BS 7671:2018+A2:2022 722.531.3.101: all live conductors; P',
    circuit: { residualDevice: device(0.03, 'general', 1) },
    unit: AT_THE_ORIGIN,
    conclusion: 'not sound',
    broken: ['papers: additional'],
  },
  {
    name: 'the same beside the unit’s own device, 100 mA S: nothing for persons rests on it',
    source: 'BS 7671:2018+A2:2022 722.531.3.101, 536.4.1.4; P',
    circuit: { residualDevice: device(0.1, 'S', 1) },
    conclusion: 'sound',
  },
  {
    name: 'two points behind one type A: 12 mA of smooth d.c., and not each its own device',
    source: 'BS 7671:2018+A2:2022 531.3.3, 722.531.3.101; P',
    circuit: { residualDevice: device(0.03), points: 2 },
    unit: AT_THE_ORIGIN,
    conclusion: 'not sound',
    broken: ['papers: additional', 'papers: direct-adds'],
    warned: ['site.circuit.points'],
  },
  {
    name: 'two points, each with its own device, behind one type A of 100 mA S',
    source: 'BS 7671:2018+A2:2022 531.3.3; P',
    circuit: { residualDevice: device(0.1, 'S'), points: 2 },
    conclusion: 'not sound',
    broken: ['papers: direct-adds'],
    warned: ['site.circuit.points'],
  },
  {
    name: 'two points, each with its own device, behind one type B of 100 mA S',
    source: 'BS 7671:2018+A2:2022 531.3.3; what type B bears from memory; M',
    circuit: { residualDevice: device(0.1, 'S', 2, 'B'), points: 2 },
    conclusion: 'sound',
  },
  {
    name: 'W23: 100 mA without delay over the unit’s 30 mA: not selective, advised',
    source: 'BS 7671:2018+A2:2022 536.4.1.4; P',
    circuit: { residualDevice: device(0.1) },
    conclusion: 'sound',
    advice: ['papers: not-selective'],
  },
  {
    name: 'armour of 0.02 Ω beside PE, declared: reads 0.015 Ω in place of 0.055',
    source: 'follows from the circuit; D',
    circuit: { parallelEarth: 0.02 },
    conclusion: 'sound',
  },
];

describe('the papers in words tell every part of a design', () => {
  const told = (design: Partial<Design>) => {
    const read = readScenario(fileOf({ name: '', source: '', conclusion: 'sound', ...design }));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const papers = papersOf(read.scenario);
    return [...siteLines(papers), ...sheetLines(papers)].map(({ term, text }) => `${term}: ${text}`);
  };
  const plain = told({});

  test.each([
    [{ circuit: { method: 'A' } }, 'Table 4D2A), method A: in conduit in an insulated wall'],
    [{ circuit: { method: '103' } }, 'flat twin and earth, 70 °C (Table 4D5)'],
    [{ circuit: { cable: 'armoured' } }, 'armoured multicore'],
    [{ circuit: { ambient: 40 } }, 'air of 40 °C'],
    [{ circuit: { grouped: 3 } }, '3 circuits bunched'],
    [{ circuit: { insulated: 500 } }, '500 mm of it wholly in thermal insulation'],
    [{ circuit: { conditionalRating: 16_000 } }, 'declared for 16 kA'],
    [{ circuit: { residualDevice: device(0.1), points: 2 } }, '2 charging points'],
    [
      { circuit: { residualDevice: device(0.03), faultProtection: 'residual' } },
      'fault protection: by the residual',
    ],
    [{ circuit: { parallelEarth: 0.02 } }, '0.02 Ω in parallel'],
    [{ site: { service: { rating: 60, demand: 40 } } }, 'service: 60 A a line; the house asks 40 A'],
    [{ unit: { leastVoltage: 190 } }, 'declared for 190 V'],
  ] satisfies [Partial<Design>, string][])('%o: %s', (design, text) => {
    expect(plain.join('\n')).not.toContain(text);
    expect(told(design).join('\n')).toContain(text);
  });
});

describe('what contradicts itself is refused, by its field', () => {
  test.each([
    [{ circuit: { cable: 'sheathed', method: 'D' } }, 'site.circuit.method'],
    [{ site: THREE, circuit: { method: '100', breaker: { ...B32, ...FOUR_POLES } } }, 'site.circuit.method'],
    [{ circuit: { method: 'D', grouped: 2 } }, 'site.circuit.method'],
    [{ circuit: { points: 2 } }, 'site.circuit.points'],
    [
      { site: rod(80), circuit: { residualDevice: device(0.03), faultProtection: 'residual' } },
      'site.circuit.faultProtection',
    ],
    // A design that is wrong in this way cannot be wrong on a cable of which no table says anything.
    [
      { circuit: { cable: 'flat', method: 'B' }, faults: [{ fault: 'breaker-over-cable' }] },
      'site.circuit.method',
    ],
  ] satisfies [Partial<Design>, string][])('%o: %s', (design, path) => {
    const read = readScenario(fileOf({ name: '', source: '', conclusion: 'sound', ...design }));
    expect(read.ok ? [] : read.problems.map((problem) => problem.path)).toContain(path);
  });
});

test('a right design with a wrong one among its faults is told as wrong, and not warned of', () => {
  const read = readScenario(
    fileOf({ name: '', source: '', conclusion: 'sound', faults: [{ fault: 'breaker-over-cable' }] }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.warnings).toEqual([]);
  // 46 A by Table 4D2A: the next rating above it.
  expect(papersOf(read.scenario).site.circuit.breaker.rating).toBe(50);
});

const idsOf = (list: readonly { readonly action: string; readonly id: string }[]) => [
  ...new Set(list.map(({ action, id }) => `${action}: ${id}`)),
];

describe('designs', () => {
  test('twenty at least, sound ones and others', () => {
    expect(DESIGNS.length).toBeGreaterThanOrEqual(20);
    expect(DESIGNS.filter(({ conclusion }) => conclusion === 'sound').length).toBeGreaterThanOrEqual(10);
  });

  test.each(DESIGNS)('$name: $conclusion ($source)', (design) => {
    const { conclusion, broken = [], failed = [], open = [], advice = [], warned = [] } = design;
    const read = readScenario(fileOf(design));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.warnings.map(({ path }) => path).sort()).toEqual([...warned].sort());
    const { actions, conclusion: found } = verify(read.scenario);
    const [foundBroken, foundFailed, foundAdvice] = [
      actions.flatMap(({ action, expectations }) =>
        expectations
          .filter(({ finding }) => finding === 'broken')
          .map(({ expectation }) => ({ action: action.id, id: expectation.id })),
      ),
      actions.flatMap(({ action, limits }) =>
        limits.filter(({ pass }) => !pass).map(({ limit }) => ({ action: action.id, id: limit.id })),
      ),
      actions.flatMap(({ action, advice: due }) => due.map(({ id }) => ({ action: action.id, id }))),
    ].map(idsOf);
    expect({
      conclusion: found,
      broken: foundBroken?.sort(),
      failed: foundFailed?.filter((id) => !open.includes(id)).sort(),
      advice: foundAdvice,
    }).toEqual({
      conclusion,
      broken: [...broken].sort(),
      failed: [...failed].sort(),
      advice,
    });
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  });
});
