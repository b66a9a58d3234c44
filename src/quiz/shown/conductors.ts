/** What questions on conductors, earth and loops show. */
import { measuredLoopLimit } from '../../laws/overcurrent.ts';
import type { Ohms } from '../../laws/quantities.ts';
import type { ScenarioFile } from '../../scenario/schema.ts';
import type { Values } from '../../verification/testAction.ts';
import CAUSES from './causes.json' with { type: 'json' };
import type { Cause, ShownState, Shows } from './state.ts';
import { figureOf, idOf, lengthOf, perMetre, tetherPerMetre } from './state.ts';

type Circuit = ScenarioFile['site']['circuit'];
type Area = Circuit['lineArea'];

const runOf = (values: Values) => ({
  length: figureOf(values, 'length'),
  lineArea: figureOf(values, 'line') as Area,
  protectiveArea: figureOf(values, 'protective') as Area,
});

/** What has to lie beside a conductor so that both together read so much less, Ω; null where nothing could. */
const beside = (own: Ohms, less: Ohms): Ohms | null => (own > less ? (own * (own - less)) / less : null);

/** A joint that adds so much, or a path beside it that takes as much away; nothing where the figures are alike. */
function partedFrom(sum: Ohms, read: Ohms, protective: Ohms): Pick<ShownState, 'causes' | 'circuit'> | null {
  const off = Number((read - sum).toFixed(3));
  if (off >= JOINT) return { causes: [{ fault: CAUSES.jointInProtective, ohms: off } satisfies Cause] };
  if (off >= -CLOSE) return {};
  const path = beside(protective, -off);
  return path === null || path < LEAST_PATH ? null : { circuit: { parallelEarth: Number(path.toFixed(4)) } };
}

/** What a scenario may have beside a conductor, Ω. */
const LEAST_PATH: Ohms = 0.001;
/** The smallest joint of the catalogue, and what contacts and leads make of a sum anyway, Ω. */
const JOINT: Ohms = 0.3;
const CLOSE: Ohms = 0.02;

const loopOf = (ohms: Ohms) => ({ loopImpedance: ohms, neutralImpedance: ohms });

/** A loop that comes to so much at the connector of a tether of one metre. */
function loopThatReads(read: Ohms): ShownState {
  const tether = tetherPerMetre(6);
  const external = Number((0.55 * (read - tether)).toFixed(3));
  return {
    test: 'loop',
    on: 'single-tns',
    site: loopOf(external),
    circuit: {
      lineArea: 6,
      protectiveArea: 6,
      length: lengthOf(read - tether - external, perMetre(6, 6)),
    },
    unit: { cable: { length: 1, area: 6, coding: 32 } },
  };
}

const breakerOf = (values: Values) => {
  const rating = figureOf(values, 'rating') as Circuit['breaker']['rating'];
  const type = idOf(values, 'type') as Circuit['breaker']['type'];
  return {
    breaker: { type, rating, breakingCapacity: 6000, poles: 2 as const },
    amps: Math.min(32, rating),
  };
};

const withBreaker = (values: Values, read: Ohms): ShownState => {
  const { breaker, amps } = breakerOf(values);
  const loop = loopThatReads(read);
  return {
    ...loop,
    circuit: { ...loop.circuit, breaker },
    unit: { ...loop.unit, ratedCurrent: amps },
  };
};

export const conductors: Readonly<Record<string, Shows>> = {
  'protective-ohms': ({ values }) => {
    const protectiveArea = figureOf(values, 'protective') as Area;
    const lineArea = Math.max(6, protectiveArea) as Area;
    const length = figureOf(values, 'length');
    return { test: 'pe-circuit', on: 'single-tns', circuit: { length, lineArea, protectiveArea } };
  },
  'line-and-protective': ({ values }) => ({
    test: 'r1r2-polarity',
    on: 'single-tns',
    circuit: runOf(values),
  }),
  'sum-judged': ({ values }) => {
    const run = runOf(values);
    const sum = figureOf(values, 'sum');
    // Of both conductors, what the protective one has.
    const protective = (run.length * perMetre(run.protectiveArea, run.protectiveArea)) / 2;
    const parted = partedFrom(sum, figureOf(values, 'read'), protective);
    return parted === null
      ? null
      : {
          test: 'r1r2-polarity',
          on: 'single-tns',
          ...parted,
          circuit: { ...run, ...parted.circuit },
        };
  },
  'electrode-limit': ({ values }) => ({
    test: 'electrode',
    on: 'single-tt',
    circuit: {
      residualDevice: {
        type: 'A',
        rated: (figureOf(values, 'milliamps') / 1000) as 0.03,
        delay: 'general',
        poles: 2,
      },
    },
  }),
  'electrode-touch': ({ values }) => ({
    test: 'electrode',
    on: 'single-tt',
    site: { electrodeResistance: figureOf(values, 'ohms') },
  }),
  'loop-of-parts': ({ values }) => ({
    test: 'loop',
    on: 'single-tns',
    site: loopOf(figureOf(values, 'external')),
    circuit: {
      lineArea: 6,
      protectiveArea: 6,
      length: lengthOf(figureOf(values, 'fixed'), perMetre(6, 6)),
    },
    unit: {
      cable: { length: lengthOf(figureOf(values, 'tether'), tetherPerMetre(6)), area: 6, coding: 32 },
    },
  }),
  'loop-limit': ({ values }) => {
    const { breaker } = breakerOf(values);
    return withBreaker(values, 0.7 * measuredLoopLimit(breaker.type, breaker.rating));
  },
  'loop-judged': ({ values }) => withBreaker(values, figureOf(values, 'read')),
  'prospective-current': ({ values }) => ({
    test: 'pfc',
    on: 'single-tns',
    site: loopOf(figureOf(values, 'ohms')),
  }),
  'prospective-three-phases': ({ values }) => ({
    test: 'pfc',
    on: 'three-socket',
    site: loopOf(Number((230 / figureOf(values, 'single')).toFixed(4))),
  }),
  'breaking-capacity': ({ values }) => ({
    test: 'pfc',
    on: 'single-tns',
    site: loopOf(figureOf(values, 'ohms')),
    circuit: {
      breaker: { type: 'B', rating: 32, breakingCapacity: figureOf(values, 'capacity'), poles: 2 },
    },
  }),
  'supply-voltage': ({ values }) => ({
    test: 'supply-volts',
    on: 'single-tns',
    site: { voltage: figureOf(values, 'volts') },
  }),
  'volt-drop': ({ values }) => {
    const area = figureOf(values, 'area') as Area;
    return {
      test: 'volt-drop',
      on: 'single-tns',
      circuit: { length: figureOf(values, 'length'), lineArea: area, protectiveArea: area },
      unit: { ratedCurrent: figureOf(values, 'amps') },
    };
  },
  'loop-beside-its-sum': ({ values }) => {
    const external = figureOf(values, 'external');
    const fixed = figureOf(values, 'fixed');
    const each = perMetre(6, 2.5);
    const length = lengthOf(fixed, each);
    const protective = length * (each - perMetre(6, 6) / 2);
    const parted = partedFrom(external + fixed, figureOf(values, 'read'), protective);
    return parted === null
      ? null
      : {
          test: 'loop',
          on: 'single-tns',
          ...parted,
          site: loopOf(external),
          circuit: { length, lineArea: 6, protectiveArea: 2.5, ...parted.circuit },
          // As short as a tether may be: the question has none.
          unit: { cable: { length: 0.5, area: 16, coding: 32 } },
        };
  },
};
