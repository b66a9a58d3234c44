/**
 * What a load or a leakage at the stand-in, or a known load beside it, brings to light. Each figure was worked out by
 * hand from the resistances named beside it; true values are compared, the instruments' own errors left out.
 */
import { describe, expect, test } from 'vitest';
import { voltage } from '../../src/bench/instruments/voltageTools.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import { leadsOn } from '../../src/bench/port.ts';
import { residualThrough } from '../../src/bench/sensors.ts';
import { solve } from '../../src/bench/wiring.ts';
import type { World } from '../../src/bench/world.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import type { UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import { benchWith, CHARGE, doing, PLUG_IN, read, THREE_PHASE, type Wanted } from './build.ts';

const volts = (world: World, a: string, b: string): number => {
  const found = voltage(leadsOn(world, a, b), 'two-pole', world.plant.duty, {});
  return 'refused' in found ? Number.NaN : found.value;
};

const supplied = (wanted: Wanted, ...more: readonly OperationInput[]): World => {
  const world = benchWith(wanted);
  doing(world, ...CHARGE, ...more);
  return world;
};

/**
 * 236 V; line–neutral loop at the origin 0.22 Ω; 18 m of 6 mm², 3.08 mΩ/m (IEC 60228 class 2), both ways 0.1109 Ω;
 * tether 5 m of 6 mm², 3.30 mΩ/m (class 5), both ways 0.0330 Ω; 7 mΩ of contacts in each conductor, 0.014 Ω: 0.378 Ω in
 * all. A load of so many amperes is 230 V / A.
 */
const BARE: Wanted = { site: { otherLoads: [] } };

describe('a joint in the contactor’s line pole drops volts under load (follows from the circuit)', () => {
  // V = 236 · R / (R + 0.378 + joint), and the joint alone I · ohms; off load next to nothing flows in it.
  test.each([
    { ohms: null, load: 0, outlet: 236.0, joint: 0 },
    { ohms: null, load: 20, outlet: 228.5, joint: 0 },
    { ohms: null, load: 32, outlet: 224.2, joint: 0 },
    { ohms: 0.8, load: 0, outlet: 236.0, joint: 0 },
    { ohms: 0.8, load: 10, outlet: 224.5, joint: 7.8 },
    { ohms: 0.8, load: 20, outlet: 214.1, joint: 14.9 },
    { ohms: 0.5, load: 32, outlet: 210.3, joint: 14.6 },
    { ohms: 3, load: 10, outlet: 205.8, joint: 26.8 },
  ])('$ohms Ω, $load A: $outlet V at the outlet, $joint V in the joint', ({ ohms, load, outlet, joint }) => {
    const faults: FaultChoice[] =
      ohms === null ? [] : [{ fault: 'contact-resistance', values: { line: 1, ohms } }];
    const world = supplied({ ...BARE, faults }, { op: 'vehicle', load });
    expect(volts(world, 'outlet.L1', 'outlet.N')).toBeCloseTo(outlet, 0);
    expect(Math.abs(volts(world, 'outlet.L1', 'outlet.N') - outlet)).toBeLessThan(0.1);
    // The pole's own 2 mΩ are in it, too.
    expect(Math.abs(volts(world, 'supply.L1', 'socket.L1') - joint)).toBeLessThan(0.2);
  });
});

describe('volt drop along the circuit, against 5 % of 230 V, 11.5 V (BS 7671:2018+A2:2022 525.1, Appendix 4)', () => {
  test.each([
    // 32 A is 7.19 Ω: 236 / (7.19 + 0.378) = 31.2 A; × 0.1109 Ω = 3.5 V, 1.5 %.
    { length: 18, lineArea: 6 as const, amps: 31.2, drop: 3.5, within: true },
    // 60 m of 4 mm², 4.61 mΩ/m, both ways 0.553 Ω: 236 / (7.19 + 0.820) = 29.5 A; × 0.553 Ω = 16.3 V, 7.1 %.
    { length: 60, lineArea: 4 as const, amps: 29.5, drop: 16.3, within: false },
    // 25 m of 10 mm², 1.83 mΩ/m, both ways 0.0915 Ω: 236 / (7.19 + 0.359) = 31.3 A; × 0.0915 Ω = 2.9 V, 1.2 %.
    { length: 25, lineArea: 10 as const, amps: 31.3, drop: 2.9, within: true },
  ])('$length m of $lineArea mm²: $drop V', ({ length, lineArea, amps, drop, within }) => {
    const world = supplied(
      { site: { otherLoads: [], circuit: { length, lineArea } } },
      { op: 'vehicle', load: 32 },
    );
    const found = volts(world, 'origin.L1', 'origin.N') - volts(world, 'supply.L1', 'supply.N');
    expect(Math.abs(found - drop)).toBeLessThan(0.1);
    expect(found < 11.5).toBe(within);
    expect(volts(world, 'outlet.L1', 'outlet.N') / (230 / 32)).toBeCloseTo(amps, 1);
  });

  test('three lines alike leave nothing in the neutral: half the drop', () => {
    // 0.11 + 18 × 3.08 mΩ + 5 × 3.30 mΩ + 7 mΩ = 0.189 Ω a line: 236 · 7.19 / 7.376 = 230.0 V.
    const world = supplied({ site: { ...THREE_PHASE, otherLoads: [] } }, { op: 'vehicle', load: 32 });
    for (const line of ['L1', 'L2', 'L3'])
      expect(Math.abs(volts(world, `outlet.${line}`, 'outlet.N') - 230.0)).toBeLessThan(0.1);
    expect(volts(world, 'outlet.N', 'outlet.PE')).toBeLessThan(0.1);
  });
});

/** Smooth d.c. that each type bears: A 6 mA, F 10 mA (BS 7671:2018+A2:2022 531.3.3); B acts on it (BS EN 62423). */
describe('a d.c. leakage blinds a device above what its type bears', () => {
  const AT_ORIGIN: Partial<UnitSheet> = {
    residual: { type: null, rated: null, by: null, direct: 'monitoring' },
  };
  const dead: Partial<UnitDesign> = { directPickup: Infinity };
  const upstream = (type: 'A' | 'F' | 'B', design: Partial<UnitDesign> = dead): Wanted => ({
    site: { circuit: { residualDevice: { type, rated: 0.03, delay: 'general', poles: 2 } } },
    sheet: AT_ORIGIN,
    design,
  });
  const inside = (type: 'A' | 'F' | 'B'): Wanted => ({
    sheet: { residual: { type, rated: 0.03, by: 'breaker', direct: null } },
  });
  const leak = (milliamps: number): OperationInput => ({
    op: 'vehicle',
    leakage: { ac: 0, dc: milliamps / 1000, line: 'L1' },
  });
  const rated: OperationInput = {
    op: 'measure',
    quantity: 'residual',
    waveform: 'sinusoidal',
    mode: 'fixed',
    amps: 0.03,
  };

  test.each([
    { where: 'at the origin', wanted: upstream('A'), dc: 0, trips: true },
    { where: 'at the origin', wanted: upstream('A'), dc: 6, trips: true },
    { where: 'at the origin', wanted: upstream('A'), dc: -6, trips: true },
    { where: 'at the origin', wanted: upstream('A'), dc: 7, trips: false },
    { where: 'at the origin', wanted: upstream('A'), dc: -7, trips: false },
    { where: 'at the origin', wanted: upstream('F'), dc: 9, trips: true },
    { where: 'at the origin', wanted: upstream('F'), dc: 11, trips: false },
    { where: 'at the origin', wanted: upstream('B'), dc: 11, trips: true },
    { where: 'inside', wanted: inside('A'), dc: 6, trips: true },
    { where: 'inside', wanted: inside('A'), dc: 7, trips: false },
    { where: 'inside', wanted: inside('F'), dc: 9, trips: true },
  ])('$where, $dc mA: 30 mA a.c. trips it: $trips', ({ wanted, dc, trips }) => {
    const world = supplied(wanted, leak(dc));
    const felt = residualThrough(world.wiring, world.solution, world.installation, 'origin');
    expect(1000 * felt.direct).toBeCloseTo(dc, 1);
    const reading = read(world, rated);
    expect(reading.trippedWhat === 'none').toBe(!trips);
    expect(reading.tripMs === null).toBe(!trips);
  });

  test('a sound detector opens first, and the device upstream stays able', () => {
    // 7 mA is above any pick-up of 3.8 to 5.2 mA: within 10 s at 6 mA and more (IEC 62955:2018 Table 2).
    const world = supplied(upstream('A', {}));
    const [, waited] = doing(world, leak(7), { op: 'wait', seconds: 10 });
    expect(waited?.events.map(({ what }) => what)).toEqual(['contactor opened']);
    expect(world.indicator).toBe('tripped');
    doing(world, leak(0), { op: 'reset', what: 'unit' }, { op: 'wait', seconds: 5 });
    expect(read(world, rated).trippedWhat).toBe('upstream');
  });

  test('and opens again, reset or not, while the leakage is there', () => {
    const world = supplied(upstream('A', {}), leak(7), { op: 'wait', seconds: 10 });
    doing(world, { op: 'reset', what: 'unit' }, { op: 'wait', seconds: 15 });
    expect(world.indicator).toBe('tripped');
    expect(volts(world, 'outlet.L1', 'outlet.PE')).toBeLessThan(5);
  });
});

/**
 * A vehicle's d.c. leakage is rectified mains: without mains there is none, and none where the mains could not drive it
 * (follows from the circuit; a device or an instrument must not feel a current that nothing drives).
 */
describe('a d.c. leakage flows only where the mains can drive it', () => {
  const leaks = { ac: 0, dc: 0.03, line: 'L1' } as const;
  /** None of its devices acts. */
  const still: Wanted = { design: { residualPickup: Infinity, directPickup: Infinity } };
  const felt = (world: World): number =>
    1000 * residualThrough(world.wiring, world.solution, world.installation, 'origin').direct;
  const WELDED: UnitDesign['poles'] = {
    L1: { welded: true },
    L2: { welded: false },
    L3: { welded: false },
    N: { welded: true },
  };

  test('while supplied', () => {
    const world = supplied(still, { op: 'vehicle', leakage: leaks });
    expect(felt(world)).toBeCloseTo(30, 1);
    doing(world, { op: 'vehicle', leakage: { ...leaks, dc: -0.03 } });
    expect(felt(world)).toBeCloseTo(-30, 1);
  });

  test('not behind an open contactor', () => {
    const world = benchWith(still);
    doing(world, ...PLUG_IN, { op: 'vehicle', leakage: leaks });
    expect(world.plant.contactor).toBe('open');
    expect(world.solution.injections).toEqual([]);
    expect(felt(world)).toBeCloseTo(0, 4);
  });

  test('not while isolated, though the contactor’s poles are closed', () => {
    const world = benchWith({ design: { ...still.design, poles: WELDED } });
    doing(world, ...PLUG_IN, { op: 'vehicle', leakage: leaks });
    expect(felt(world)).toBeCloseTo(30, 1);
    doing(world, { op: 'isolate' });
    expect(world.solution.injections).toEqual([]);
    expect(felt(world)).toBeCloseTo(0, 4);
  });

  test.each([
    { voltage: 49, injections: 0 },
    { voltage: 51, injections: 1 },
  ])('under 50 V nothing is rectified (a design choice): $voltage V', ({ voltage, injections }) => {
    const world = benchWith({ design: { ...still.design, poles: WELDED } });
    doing(world, ...PLUG_IN, { op: 'vehicle', leakage: leaks });
    const { wiring, installation, plant } = world;
    expect(solve(wiring, installation, { ...plant, voltage }).injections).toHaveLength(injections);
  });

  // Through 0.1 MΩ and more 236 V drive 2.4 mA at most.
  test('not through a protective conductor that is open', () => {
    const world = supplied(still, { op: 'vehicle', leakage: leaks, earth: 'open' });
    expect(world.solution.injections).toEqual([]);
    expect(felt(world)).toBeCloseTo(0, 4);
  });

  test('not with the plug out, nor where none is set', () => {
    const world = supplied(still, { op: 'vehicle', leakage: leaks }, { op: 'vehicle', plugged: false });
    expect(world.solution.injections).toEqual([]);
    const none = supplied(still, { op: 'vehicle', leakage: { ...leaks, dc: 0 } });
    expect(none.solution.injections).toEqual([]);
  });
});

describe('a standing a.c. leakage adds to a test current (look for it before blaming the device: common practice, no source)', () => {
  const half: OperationInput = {
    op: 'measure',
    quantity: 'residual',
    waveform: 'sinusoidal',
    mode: 'fixed',
    amps: 0.015,
    seconds: 2,
  };
  test.each([
    // The device acts at 22.5 mA. 15 mA alone; 15 + 5 = 20 mA; 15 + 10 = 25 mA.
    { leakage: 0, trips: false },
    { leakage: 5, trips: false },
    { leakage: 10, trips: true },
  ])('$leakage mA beside 15 mA: trips: $trips', ({ leakage, trips }) => {
    const world = supplied(
      { design: { residualPickup: 0.0225 } },
      { op: 'vehicle', leakage: { ac: leakage / 1000, dc: 0, line: 'L1' } },
    );
    expect(read(world, half).trippedWhat).toBe(trips ? 'unit' : 'none');
  });
});

/**
 * 60 A a line for the service. In the house 1500 W at 230 V, 35.3 Ω. With a known load of 40 A, 5.75 Ω, beside it: 4.94 Ω
 * behind a loop of 0.22 Ω, 236 V / 5.16 Ω = 45.7 A, which leaves 14.3 A, in whole amperes 14: a duty of 23.3 %
 * (IEC 61851-1:2017 Table A.7).
 */
describe('the sensor on the service', () => {
  const withSensor = (serviceSensor: UnitDesign['serviceSensor']): World => {
    const world = benchWith({ sheet: { serviceLimit: 60 }, design: { serviceSensor } });
    doing(world, ...PLUG_IN);
    return world;
  };
  const offered = (world: World): number => Math.round(1000 * world.plant.duty) / 10;
  const KNOWN: readonly OperationInput[] = [
    { op: 'supply', siteLoad: 40 },
    { op: 'wait', seconds: 10 },
  ];

  test.each([
    { sensor: 'right', offer: 23.3 },
    // Import taken for export: everything seems to be left.
    { sensor: 'reversed', offer: 53.3 },
    // Round the unit's own circuit it sees no other load.
    { sensor: 'own circuit', offer: 53.3 },
    // On this board's tail it feels what hangs on this board.
    { sensor: 'past parting', offer: 23.3 },
  ] as const)('$sensor: from 53.3 % to $offer % within 10 s', ({ sensor, offer }) => {
    const world = withSensor(sensor);
    expect(offered(world)).toBe(53.3);
    doing(world, ...KNOWN);
    expect(offered(world)).toBe(offer);
  });

  test('steady when less than 6 A is left, and an offer again when the load has gone', () => {
    const world = withSensor('right');
    // 50 A is 4.6 Ω, with the house 4.07 Ω: 236 / 4.29 = 55.0 A leave 5 A.
    doing(world, { op: 'supply', siteLoad: 50 }, { op: 'wait', seconds: 10 });
    expect(world.plant.pilot).toBe('positive');
    doing(world, { op: 'supply', siteLoad: 0 }, { op: 'wait', seconds: 10 });
    expect(offered(world)).toBe(53.3);
  });

  // Loads that leave 6.4 A and 5.6 A of it: 6 A is the least that can be offered, 10 % (Table A.7), and is offered.
  test.each([
    { siteLoad: 48.7, offer: 10 },
    { siteLoad: 49.6, offer: 100 },
  ])('with $siteLoad A beside it: $offer %', ({ siteLoad, offer }) => {
    const world = withSensor('right');
    doing(world, { op: 'supply', siteLoad }, { op: 'wait', seconds: 10 });
    expect(offered(world)).toBe(offer);
  });

  test('takes its own vehicle’s current off, the right way round', () => {
    const world = withSensor('right');
    doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 3 }, ...KNOWN);
    doing(world, { op: 'vehicle', load: 14 }, { op: 'wait', seconds: 10 });
    expect(world.indicator).toBe('charging');
    // The other loads draw a little less at the lower voltage: 14 A still, or 15.
    expect(offered(world)).toBeGreaterThanOrEqual(23.3);
    expect(offered(world)).toBeLessThanOrEqual(25);
  });

  test('reversed, what it lets the vehicle take overloads the service', () => {
    const world = withSensor('reversed');
    doing(world, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 3 }, ...KNOWN);
    doing(world, { op: 'vehicle', load: 32 }, { op: 'wait', seconds: 10 });
    expect(offered(world)).toBe(53.3);
    // 4.94 Ω beside 7.19 + 0.158 Ω: 2.95 Ω behind 0.22 Ω: 236 / 3.17 = 74 A through a service of 60 A.
    const service = (236 - volts(world, 'incoming.L1', 'incoming.N')) / 0.22;
    expect(Math.abs(service - 74.4)).toBeLessThan(0.5);
  });

  test('on three phases the most loaded line decides', () => {
    const world = benchWith({
      site: { ...THREE_PHASE, otherLoads: [{ line: 'L2', power: 9200 }] },
      sheet: { serviceLimit: 60 },
    });
    doing(world, ...PLUG_IN);
    // 9200 W at 230 V is 40 A, 5.75 Ω: 236 / 5.97 = 39.5 A leave 20.5 A on L2: 20 A, 33.3 %.
    expect(offered(world)).toBe(33.3);
  });
});
