/** What is done on the bench, and what is timed, for each row of IEC 61851-1:2017 Table A.6 that a unit has to keep. */
import { expect } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { move, settle } from '../../src/bench/settle.ts';
import type { Happening, World } from '../../src/bench/world.ts';
import { CHARGE, doing, PLUG_IN, read, SHEET, type Wanted } from './build.ts';

const now = (world: World): number => world.timeline.now / 1e6;

/** Seconds from an operation until something is heard, waiting up to a minute; Infinity where it is not. */
export function untilHeard(world: World, operation: OperationInput, what: Happening['what']): number {
  const began = now(world);
  const outcomes = doing(world, operation, { op: 'wait', seconds: 60 });
  const heard = outcomes.flatMap(({ events }) => events).find((event) => event.what === what);
  return heard === undefined ? Infinity : heard.at - began;
}

const opening = (
  world: World,
  of: 'C-to-B' | 'C-to-A' | 'unplug' | 'pilot-short' | 'pilot-open' | 'earth-open',
) => {
  const { value, qualifier } = read(world, { op: 'measure', quantity: 'opening-time', of });
  return qualifier === null ? (value ?? Infinity) - 0.002 : Infinity;
};

/** Seconds until something holds, looked at every 10 ms, a minute at most. */
function until(world: World, holds: () => boolean): number {
  const began = world.timeline.now;
  const passed = () => (world.timeline.now - began) / 1e6;
  while (!holds() && passed() < 60) doing(world, { op: 'wait', seconds: 0.01 });
  return passed();
}

const untilDutyIs = (world: World, amps: number): number =>
  until(world, () => Math.abs(world.plant.duty - amps / 60) < 1e-9);

/** How long the pilot stays steady after it went steady, s. */
const steadyFor = (world: World): number => until(world, () => world.plant.pilot === 'oscillating');

const SOCKET: Wanted = { sheet: { outlet: 'socket' } };
const TETHERED: Wanted = {};
/** 120 Ω from pilot to PE at the vehicle, behind a contact that this site does not use otherwise. */
const SHUNTED: Wanted = {
  parts: (sound) => ({
    ...sound,
    parts: [...sound.parts, { id: 'shunt', a: 'car.CP', b: 'car.PE', resistance: 120, contact: 'electrode' }],
  }),
};

export interface TimingRow {
  readonly sequence: string;
  readonly what: string;
  readonly wanted: Wanted;
  readonly before: readonly OperationInput[];
  readonly measured: (world: World) => number;
  readonly least?: number;
  readonly greatest?: number;
}

export const TIMING_ROWS: readonly TimingRow[] = [
  {
    sequence: '2.1',
    what: 'B to A: socket unlocked',
    wanted: SOCKET,
    before: PLUG_IN,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'A' }, 'plug released'),
    greatest: 5,
  },
  {
    sequence: '2.2',
    what: 'C2 to A, unplugged: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'unplug'),
    greatest: 0.1,
  },
  {
    sequence: '2.2',
    what: 'C2 to A, pilot let go: supply off',
    wanted: SOCKET,
    before: CHARGE,
    measured: (w) => opening(w, 'C-to-A'),
    greatest: 0.1,
  },
  {
    sequence: '2.2',
    what: 'C2 to A, pilot broken: supply off',
    wanted: SOCKET,
    before: CHARGE,
    measured: (w) => opening(w, 'pilot-open'),
    greatest: 0.1,
  },
  {
    sequence: '3.2',
    what: 'C1 to C2: supply on',
    wanted: { sheet: { permission: 'authorise' } },
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'press', button: 'authorise' }, 'contactor closed'),
    greatest: 3,
  },
  {
    sequence: '4',
    what: 'B2 to C2: supply on',
    wanted: SOCKET,
    before: PLUG_IN,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'C' }, 'contactor closed'),
    greatest: 3,
  },
  {
    sequence: '4',
    what: 'B2 to D2 with ventilation: supply on',
    wanted: { sheet: { ventilation: true } },
    before: PLUG_IN,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'D' }, 'contactor closed'),
    greatest: 3,
  },
  {
    sequence: '4',
    what: 'C2 to D2 without ventilation: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'D' }, 'contactor opened'),
    greatest: 3,
  },
  {
    sequence: '6',
    what: 'a lower limit: duty follows',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => {
      doing(w, { op: 'supply', loadLimit: 10 });
      return untilDutyIs(w, 10);
    },
    greatest: 10,
  },
  {
    sequence: '6',
    what: 'a duty that has just changed: stands',
    wanted: TETHERED,
    before: [...CHARGE, { op: 'supply', loadLimit: 20 }],
    measured: (w) => {
      untilDutyIs(w, 20);
      doing(w, { op: 'supply', loadLimit: 10 });
      return untilDutyIs(w, 10);
    },
    least: 5,
    greatest: 10,
  },
  {
    sequence: '8.1',
    what: 'C2 to B2: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'C-to-B'),
    greatest: 0.1,
  },
  {
    sequence: '8.1',
    what: 'D2 to B2: supply off',
    wanted: { sheet: { ventilation: true } },
    before: [...PLUG_IN, { op: 'vehicle', state: 'D' }, { op: 'wait', seconds: 3 }],
    measured: (w) => opening(w, 'C-to-B'),
    greatest: 0.1,
  },
  {
    sequence: '8.2',
    what: 'C1 to B1: supply off',
    wanted: TETHERED,
    before: [...CHARGE, { op: 'press', button: 'stop' }],
    measured: (w) => opening(w, 'C-to-B'),
    greatest: 0.1,
  },
  {
    sequence: '9.2',
    what: 'x2 to x1: no oscillation before',
    wanted: TETHERED,
    before: [...PLUG_IN, { op: 'supply', voltage: 170 }, { op: 'supply', voltage: 236 }],
    measured: steadyFor,
    least: 3,
    greatest: 10,
  },
  {
    sequence: '10.2',
    what: 'a stop that the vehicle ignores: open under load not before',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'press', button: 'stop' }, 'contactor opened'),
    least: 6,
    greatest: 60,
  },
  {
    sequence: '12',
    what: 'C to E: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'pilot-short'),
    greatest: 3,
  },
  {
    sequence: '12',
    what: 'C to E: socket unlocked',
    wanted: SOCKET,
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'vehicle', pilot: 'shorted-to-earth' }, 'plug released'),
    greatest: 30,
  },
  {
    sequence: '12',
    what: 'C to F, the contactor does not close: socket unlocked',
    wanted: {
      ...SOCKET,
      faults: [
        { fault: 'line-pole-stuck-open', values: { line: 1 } },
        { fault: 'neutral-pole-stuck-open', values: {} },
      ],
    },
    before: [...PLUG_IN, { op: 'vehicle', state: 'C' }, { op: 'wait', seconds: 0.5 }],
    measured: (w) => {
      until(w, () => w.plant.pilot === 'negative');
      return until(w, () => w.plant.plugLock === 'free');
    },
    greatest: 30,
  },
  {
    sequence: 'A.3',
    what: 'F that ends with its cause, a contactor slow to open: stands',
    wanted: {
      sheet: { clearsBy: { ...SHEET.clearsBy, F: 'self' } },
      faults: [{ fault: 'opens-slowly', values: { seconds: 0.55 } }],
    },
    before: [...CHARGE, { op: 'vehicle', state: 'B' }],
    measured: (w) => {
      until(w, () => w.plant.pilot === 'negative');
      return until(w, () => w.plant.pilot !== 'negative');
    },
    least: 0.3,
    greatest: 10,
  },
  {
    sequence: 'A.4.9',
    what: '120 Ω from pilot to PE in C: supply off',
    wanted: SHUNTED,
    before: [],
    measured: (w) => {
      move(w, { removed: ['electrode'] });
      doing(w, ...CHARGE);
      expect(w.plant.contactor).toBe('closed');
      move(w, { removed: [] });
      settle(w);
      return until(w, () => w.plant.contactor === 'open');
    },
    greatest: 3,
  },
  {
    sequence: '6.3.1.2',
    what: 'PE to the vehicle lost: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'earth-open'),
    greatest: 0.1,
  },
];
