/** A good file: defaults as the contract has them, warnings for what would teach something false, and the papers. */
import { describe, expect, test } from 'vitest';
import { papersOf } from '../../src/scenario/scenario.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

/** Sites that are wrong as designed: that is what they are there to teach. */
const MEANT_WARNINGS: Readonly<Record<string, readonly string[]>> = {
  'turnpike-cottage': ['site.circuit.residualDevice'],
};

describe.each(scenarioIds)('scenarios/%s.json', (id) => {
  test('parses with no warning but one that is its point, and is named for itself', () => {
    const read = parseScenario(scenarioNamed(id).text);
    expect(read).toMatchObject({ ok: true, scenario: { id } });
    expect(read.ok && read.warnings.map(({ path }) => path)).toEqual(MEANT_WARNINGS[id] ?? []);
  });
});

test('every scenario has an id of its own', () => {
  expect(new Set(scenarioIds.map((id) => scenarioNamed(id).scenario.id)).size).toBe(scenarioIds.length);
});

/** The least that a file may hold. */
const least = {
  format: 1,
  id: 'least',
  title: 'Least',
  brief: 'The least that a file may hold.',
  rules: 'BS 7671:2018+A2:2022',
  clock: '2026-03-10T10:00',
  site: {
    phases: 1,
    earthing: 'TN-S',
    voltage: 230,
    loopImpedance: 0.3,
    circuit: { length: 10, lineArea: 6, protectiveArea: 6, breaker: { type: 'B', rating: 40 } },
  },
  unit: {
    outlet: 'tethered',
    ratedCurrent: 20,
    cable: { length: 5, area: 6, coding: 32 },
    residual: { type: 'A', rated: 0.03, by: 'contactor', direct: 'protective' },
  },
  faults: [],
  allowed: 'all',
  support: 'practice',
  seed: 1,
} as const;

function parsed(file: unknown) {
  const read = parseScenario(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read;
}

describe('what is left out', () => {
  test('is filled in', () => {
    expect(parsed(least).scenario).toMatchObject({
      site: {
        neutralImpedance: 0.3,
        electrodeResistance: null,
        sourceElectrodeResistance: 0.5,
        metEarthResistance: null,
        circuit: {
          breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 2 },
          residualDevice: null,
          parallelEarth: null,
        },
        otherLoads: [],
        neighbours: [],
      },
      unit: {
        setCurrent: 20,
        openPen: 'none',
        surgeArrester: false,
        ventilation: false,
        insulationTestVoltageMax: 250,
        startUp: 8,
        startDelay: 0,
        permission: 'open',
        loadLimit: null,
        holdInB: true,
        diodeCheck: 'before-closing',
        poleBleed: null,
        clearsBy: {
          E: 'state-A',
          F: 'reset',
          diode: 'reset',
          residual: 'reset',
          direct: 'reset',
          openPen: 'reset',
        },
      },
    });
  });

  test('a breaker opens all lives of three phases', () => {
    const { scenario } = parsed({ ...least, site: { ...least.site, phases: 3 } });
    expect(scenario.site.circuit.breaker.poles).toBe(4);
  });

  test('on TT the neutral loop is 0.25 Ω and the earth loop follows from the electrodes', () => {
    const { loopImpedance: _, ...site } = least.site;
    const { scenario } = parsed({ ...least, site: { ...site, earthing: 'TT', electrodeResistance: 80 } });
    expect(scenario.site).toMatchObject({ neutralImpedance: 0.25, sourceElectrodeResistance: 0.5 });
    expect(scenario.site.loopImpedance).toBeCloseTo(80 + 0.5 + 0.125, 9);
  });

  test('a socket’s customer cable is its cable', () => {
    const { cable, ...unit } = least.unit;
    const { scenario } = parsed({ ...least, unit: { ...unit, outlet: 'socket', customerCable: cable } });
    expect(scenario.unit.cable).toEqual(cable);
  });

  test('without a device in the unit its rating and what it opens are null', () => {
    const residualDevice = { type: 'A', rated: 0.03, delay: 'general', poles: 2 };
    const { scenario } = parsed({
      ...least,
      site: { ...least.site, circuit: { ...least.site.circuit, residualDevice } },
      unit: { ...least.unit, residual: { type: null, direct: 'monitoring' } },
    });
    expect(scenario.unit.residual).toEqual({ type: null, rated: null, by: null, direct: 'monitoring' });
  });

  test('“restored” is another word for “self”', () => {
    const { scenario } = parsed({ ...least, unit: { ...least.unit, clearsBy: { E: 'restored' } } });
    expect(scenario.unit.clearsBy).toMatchObject({ E: 'self', F: 'reset' });
  });
});

test('the papers tell a not-fault and keep quiet of a fault', () => {
  const scenario = scenarioNamed('orchard-lane').scenario;
  expect(scenario.faults.map(({ fault }) => fault)).toEqual(['start-delay', 'direct-detector-dead']);
  const { site, sheet } = papersOf(scenario);
  expect(site).toEqual(scenario.site);
  expect(sheet).toEqual({ ...scenario.unit, startDelay: 600 });
});

const TT = {
  ...least.site,
  earthing: 'TT',
  loopImpedance: undefined,
  electrodeResistance: 200,
  circuit: {
    ...least.site.circuit,
    residualDevice: { type: 'A', rated: 0.3, delay: 'S', poles: 2 },
  },
};
const device = (type: string, rated: number) => ({ type, rated, delay: 'general', poles: 2 });
const withDevice = (type: string, rated: number) => ({
  ...least.site,
  circuit: { ...least.site.circuit, residualDevice: device(type, rated) },
});

const WARNINGS: readonly (readonly [string, object, readonly string[]])[] = [
  ['nothing to warn of', {}, []],
  ['set above the breaker', { unit: { ...least.unit, ratedCurrent: 50 } }, ['unit.setCurrent']],
  ['supply out of limits', { site: { ...least.site, voltage: 256 } }, ['site.voltage']],
  ['too much loop for the breaker', { site: { ...least.site, loopImpedance: 0.9 } }, ['site.loopImpedance']],
  ['PME with no open-PEN measure', { site: { ...least.site, earthing: 'TN-C-S' } }, ['unit.openPen']],
  [
    'type AC',
    { unit: { ...least.unit, residual: { ...least.unit.residual, type: 'AC' } } },
    ['unit.residual'],
  ],
  ['type AC upstream', { site: withDevice('AC', 0.1) }, ['unit.residual']],
  [
    'no d.c. detection',
    { unit: { ...least.unit, residual: { ...least.unit.residual, direct: null } } },
    ['unit.residual.direct'],
  ],
  [
    'type B sees d.c.',
    { unit: { ...least.unit, residual: { ...least.unit.residual, type: 'B', direct: null } } },
    [],
  ],
  [
    'no 30 mA device',
    { site: withDevice('A', 0.1), unit: { ...least.unit, residual: { type: null, direct: 'monitoring' } } },
    ['unit.residual'],
  ],
  [
    '30 mA upstream',
    { site: withDevice('A', 0.03), unit: { ...least.unit, residual: { type: null, direct: 'monitoring' } } },
    [],
  ],
  ['TT, RA × IΔn above 50 V', { site: TT }, ['site.electrodeResistance']],
  ['TT, RA × IΔn of 50 V', { site: { ...TT, electrodeResistance: 166 } }, []],
  ['TT without a device', { site: { ...TT, circuit: least.site.circuit } }, ['site.circuit.residualDevice']],
];

describe('poor design only warns', () => {
  test.each(WARNINGS)('%s', (_, change, paths) => {
    expect(parsed({ ...least, ...change }).warnings.map(({ path }) => path)).toEqual(paths);
  });
});
