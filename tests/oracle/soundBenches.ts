/** Sound installations in the positions that a verification brings them to. */
import { CHARGE, MAKE_DEAD, PLUG_IN } from '../bench/build.ts';
import type { Position } from './benchCircuit.ts';
import { type Bench, done, INSTALLATIONS, type InstallationName, tested } from './installations.ts';

export const livesAt = (at: InstallationName) =>
  at === 'yard' ? (['L1', 'L2', 'L3', 'N'] as const) : (['L1', 'N'] as const);

export const IN_B: Partial<Position> = { plugged: true, state: 'B', pilot: 'oscillating' };
export const supplied = (at: InstallationName): Partial<Position> => ({
  plugged: true,
  state: 'C',
  pilot: 'oscillating',
  poles: livesAt(at),
});
const DEAD = (at: InstallationName): Partial<Position> => ({ openAtOrigin: livesAt(at), pilot: 'dead' });

/** 30 mA of an instrument at 230 V, from a line to PE. */
export const THIRTY = {
  at: 'outlet',
  line: 'L1',
  to: 'PE',
  resistance: 230 / 0.03,
  direct: 0,
  halfWave: 0,
} as const;
export const THIRTY_DRAWN = { line: 'L1', to: 'PE', ohms: 230 / 0.03, direct: 0, halfWave: 0 } as const;

/** Positions that each of the three installations is brought to. */
const everywhere = (at: InstallationName): readonly Bench[] => [
  { name: 'energised, nothing plugged in', at, bring: () => {}, position: {} },
  { name: 'isolated and proved dead', at, bring: done(...MAKE_DEAD), position: DEAD(at) },
  {
    name: 'main switch off, the circuit on behind it',
    at,
    bring: done({ op: 'isolate', at: 'main-switch' }, { op: 'wait', seconds: 2 }),
    position: { mainSwitch: 'off', pilot: 'dead' },
  },
  { name: 'state B', at, bring: done(...PLUG_IN), position: IN_B },
  {
    name: 'supplied, with load and leakage',
    at,
    bring: done(...CHARGE, { op: 'vehicle', load: 16, leakage: { ac: 0.004, dc: 0.001, line: 'L1' } }),
    position: { ...supplied(at), load: 16, leakage: { line: 'L1', ac: 0.004, dc: 0.001 } },
  },
  {
    name: 'PE to the vehicle open, asked for supply',
    at,
    bring: done(...PLUG_IN, { op: 'vehicle', earth: 'open', state: 'C' }, { op: 'wait', seconds: 5 }),
    position: { ...IN_B, state: 'C', pilot: 'steady', vehicleEarthOpen: true },
  },
  {
    name: 'pilot shorted while supplied',
    at,
    bring: done(...CHARGE, { op: 'vehicle', pilot: 'shorted-to-earth' }, { op: 'wait', seconds: 3 }),
    position: { ...IN_B, state: 'C', pilot: 'steady', pilotAt: 'shorted' },
  },
  {
    name: 'unit taken off, energised again',
    at,
    bring: done(...MAKE_DEAD, { op: 'disconnect', what: 'unit' }, { op: 'energise' }),
    position: { unitOff: true, pilot: 'dead' },
  },
  {
    name: 'supplied, 30 mA a.c. of a test',
    at,
    bring: tested(THIRTY, ...CHARGE),
    position: { ...supplied(at), test: THIRTY_DRAWN },
  },
  {
    name: 'supplied, 10 Ω of a loop test',
    at,
    bring: tested({ ...THIRTY, resistance: 10 }, ...CHARGE),
    position: { ...supplied(at), test: { ...THIRTY_DRAWN, ohms: 10 } },
  },
];

/** With neighbours so nearly balanced that the unit has its voltage still. */
export const PEN_BROKEN: Pick<Bench, 'bring' | 'position'> = {
  bring: done({
    op: 'supply',
    pen: 'open',
    neighbours: [
      { line: 'L2', power: 1800 },
      { line: 'L3', power: 1300 },
    ],
  }),
  position: { pen: 'broken', neighbours: { L2: 1800, L3: 1300 } },
};

/** Positions that only one of them knows, or that are the same on all. */
const HERE: readonly Bench[] = [
  {
    name: 'supplied, with load, and the next point charging',
    at: 'home',
    bring: done(...CHARGE, { op: 'vehicle', load: 16 }, { op: 'supply', nextPoint: 32 }),
    position: { ...supplied('home'), load: 16, nextPoint: 32 },
  },
  {
    name: 'main switch off, the next point charging before it',
    at: 'home',
    bring: done(
      { op: 'supply', nextPoint: 32 },
      { op: 'isolate', at: 'main-switch' },
      { op: 'wait', seconds: 2 },
    ),
    position: { mainSwitch: 'off', pilot: 'dead', nextPoint: 32 },
  },
  {
    name: 'supplied, and the next point charging on three lines',
    at: 'yard',
    bring: done(...CHARGE, { op: 'supply', nextPoint: 16 }),
    position: { ...supplied('yard'), nextPoint: 16 },
  },
  {
    name: 'line opened alone',
    at: 'home',
    bring: done({ op: 'isolate', poles: 'line' }, { op: 'wait', seconds: 2 }),
    position: { openAtOrigin: ['L1'], pilot: 'dead' },
  },
  {
    name: 'dead, line linked to PE at the board',
    at: 'home',
    bring: done(...MAKE_DEAD, { op: 'link', between: ['origin.L1', 'origin.PE'] }),
    position: { ...DEAD('home'), linked: ['L1'] },
  },
  {
    name: 'dead, line linked to neutral at the board',
    at: 'home',
    bring: done(...MAKE_DEAD, { op: 'link', between: ['origin.L1', 'origin.N'] }),
    position: { ...DEAD('home'), linkedToNeutral: ['L1'] },
  },
  {
    name: 'earthing conductor off, circuit dead',
    at: 'home',
    bring: done(...MAKE_DEAD, { op: 'disconnect', what: 'earthing-conductor' }),
    position: { ...DEAD('home'), earthingOff: true },
  },
  {
    name: 'earthing conductor off, main switch off',
    at: 'home',
    bring: done(
      ...MAKE_DEAD,
      { op: 'isolate', at: 'main-switch' },
      { op: 'disconnect', what: 'earthing-conductor' },
    ),
    position: { ...DEAD('home'), mainSwitch: 'off', earthingOff: true },
  },
  {
    name: 'diode shorted in B',
    at: 'home',
    bring: done(...PLUG_IN, { op: 'vehicle', diode: 'shorted' }),
    position: { ...IN_B, diodeShorted: true },
  },
  {
    name: 'supplied, 20 mA smooth d.c. of a test',
    at: 'home',
    bring: tested({ ...THIRTY, resistance: null, direct: 0.02 }, ...CHARGE),
    position: { ...supplied('home'), test: { ...THIRTY_DRAWN, ohms: null, direct: 0.02 } },
  },
  {
    name: 'PEN breaks while supplied, with load and neighbours',
    at: 'home',
    bring: done(
      ...CHARGE,
      { op: 'vehicle', load: 10 },
      {
        op: 'supply',
        pen: 'open',
        neighbours: [
          { line: 'L1', power: 2000 },
          { line: 'L2', power: 5200 },
          { line: 'L2', power: 800 },
          { line: 'L3', power: 3500 },
        ],
      },
    ),
    position: {
      ...supplied('home'),
      load: 10,
      pen: 'broken',
      neighbours: { L1: 2000, L2: 6000, L3: 3500 },
    },
  },
  {
    name: 'PEN breaks, with neighbours',
    at: 'island',
    ...PEN_BROKEN,
  },
  {
    name: 'electrode off, circuit dead',
    at: 'island',
    bring: done(...MAKE_DEAD, { op: 'disconnect', what: 'electrode' }),
    position: { ...DEAD('island'), earthingOff: true },
  },
  {
    name: 'the open-PEN measure has opened, PE with it',
    at: 'home',
    bring: done(
      ...CHARGE,
      { op: 'supply', pen: 'open', neighbours: [{ line: 'L2', power: 6000 }] },
      { op: 'wait', seconds: 6 },
    ),
    position: {
      ...IN_B,
      state: 'C',
      pilot: 'steady',
      pen: 'broken',
      neighbours: { L2: 6000 },
      earthPole: 'open',
    },
  },
  {
    name: 'the supply has lost L2, asked for supply',
    at: 'yard',
    bring: done({ op: 'supply', missing: 'L2' }, ...CHARGE),
    position: { ...IN_B, state: 'C', pilot: 'steady', openAtOrigin: ['L2'] },
  },
  {
    name: 'a cable of 20 A in B',
    at: 'yard',
    bring: done({ op: 'vehicle', coding: 20 }, ...PLUG_IN),
    position: { ...IN_B, coding: 20 },
  },
  {
    name: 'plugged in without a coding',
    at: 'yard',
    bring: done({ op: 'vehicle', coding: null }, ...PLUG_IN),
    position: { ...IN_B, coding: null, pilot: 'steady' },
  },
  {
    name: 'supplied, 20 mA half-wave of a test on L3',
    at: 'yard',
    bring: tested({ ...THIRTY, line: 'L3', resistance: null, halfWave: 0.02 }, ...CHARGE),
    position: { ...supplied('yard'), test: { ...THIRTY_DRAWN, line: 'L3', ohms: null, halfWave: 0.02 } },
  },
  {
    name: 'supplied, 10 Ω of a loop test from L2 to N',
    at: 'yard',
    bring: tested({ ...THIRTY, line: 'L2', to: 'N', resistance: 10 }, ...CHARGE),
    position: { ...supplied('yard'), test: { ...THIRTY_DRAWN, line: 'L2', to: 'N', ohms: 10 } },
  },
  {
    name: 'state D, ventilation declared, supplied',
    at: 'cottage',
    bring: done(...PLUG_IN, { op: 'vehicle', state: 'D' }, { op: 'wait', seconds: 3 }),
    position: { ...supplied('cottage'), state: 'D' },
  },
  {
    name: 'electrode off, circuit dead',
    at: 'cottage',
    bring: done(...MAKE_DEAD, { op: 'disconnect', what: 'electrode' }),
    position: { ...DEAD('cottage'), earthingOff: true },
  },
  {
    name: 'pilot let go while supplied',
    at: 'cottage',
    bring: done(...CHARGE, { op: 'vehicle', pilot: 'open' }, { op: 'wait', seconds: 1 }),
    position: { ...IN_B, state: 'C', pilot: 'steady', pilotAt: 'open' },
  },
  {
    name: 'the supply has lost its neutral',
    at: 'cottage',
    bring: done({ op: 'supply', missing: 'N' }),
    position: { openAtOrigin: ['N'], pilot: 'dead' },
  },
  {
    name: '205 V from the supply, charging with load',
    at: 'cottage',
    bring: done(...CHARGE, { op: 'supply', voltage: 205 }, { op: 'vehicle', load: 32 }),
    position: { ...supplied('cottage'), volts: 205, load: 32 },
  },
];

export const SOUND_BENCHES: readonly Bench[] = [...INSTALLATIONS.flatMap(everywhere), ...HERE];
