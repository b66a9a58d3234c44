/** Installations with one fault of the unit, or two: contactor, pilot, proximity. The faults are drawn by hand, too. */
import { CHARGE, PLUG_IN } from '../bench/build.ts';
import { add, element } from './benchCircuit.ts';
import { type Bench, done, fault } from './installations.ts';
import { IN_B, livesAt, supplied } from './soundBenches.ts';

const SWITCHING: readonly Bench[] = [
  {
    name: 'line pole welded, nothing plugged in',
    at: 'home',
    faults: [fault('line-pole-welded', { line: 1 })],
    bring: () => {},
    position: { poles: ['L1'] },
  },
  {
    name: 'every pole welded, in the socket',
    at: 'yard',
    faults: [fault('all-poles-welded')],
    bring: () => {},
    position: { poles: livesAt('yard') },
  },
  {
    name: 'neutral pole welded, nothing plugged in',
    at: 'cottage',
    faults: [fault('neutral-pole-welded')],
    bring: () => {},
    position: { poles: ['N'] },
  },
  {
    name: 'neutral pole never closes and one line too: the load’s neutral is displaced',
    at: 'yard',
    faults: [fault('neutral-pole-stuck-open'), fault('line-pole-stuck-open', { line: 3 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 16 }),
    position: { ...supplied('yard'), poles: ['L1', 'L2'], load: 16 },
  },
  {
    name: 'a pole of 0.8 Ω, loaded',
    at: 'yard',
    faults: [fault('contact-resistance', { line: 2, ohms: 0.8 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 16 }),
    position: { ...supplied('yard'), load: 16 },
    altered: (c) => {
      element(c, 'pole L2').ohms += 0.8;
    },
  },
  {
    name: 'a strong bleed across an open pole',
    at: 'cottage',
    faults: [fault('bleed-too-strong', { line: 1, ohms: 5000 })],
    bring: done(...PLUG_IN),
    position: IN_B,
    altered: (c) => {
      element(c, 'pole L1').ohms = 5000;
    },
  },
];

const PILOT: readonly Bench[] = [
  {
    name: 'pilot’s source of 1.5 kΩ, in B',
    at: 'home',
    faults: [fault('pilot-source-high', { ohms: 1500 })],
    bring: done(...PLUG_IN),
    position: IN_B,
    altered: (c) => {
      element(c, 'pilot source').ohms = 1500;
    },
  },
  {
    name: 'damp across the pilot, supplied',
    at: 'cottage',
    faults: [fault('pilot-damp', { ohms: 12_000 })],
    bring: done(...CHARGE),
    position: supplied('cottage'),
    altered: (c) => {
      element(c, 'end PE/CP').ohms = 12_000;
    },
  },
  {
    name: '1 kΩ in the pilot’s contact, in B',
    at: 'yard',
    faults: [fault('pilot-contact-dirty', { ohms: 1000 })],
    bring: done(...PLUG_IN),
    // With a kilohm more the unit still sees B.
    position: IN_B,
    altered: (c) => {
      element(c, 'pilot wire').ohms += 1000;
    },
  },
  {
    name: 'a dummy vehicle left on the pilot',
    at: 'home',
    faults: [fault('dummy-left-on-pilot')],
    bring: () => {},
    position: { pilot: 'oscillating' },
    altered: (c) => {
      add(c, 'dummy', 'pilot', 'dummy', 2740);
      add(c, 'dummy’s diode', 'dummy', 'bar', 1e9);
      c.oneWays.push({ a: 'dummy', b: 'bar', drop: 0.7 });
    },
  },
  {
    name: 'coding read against the wrong resistor, in B',
    at: 'yard',
    faults: [fault('coding-read-too-large', { ohms: 2900 })],
    bring: done({ op: 'vehicle', coding: 20 }, ...PLUG_IN),
    position: { ...IN_B, coding: 20 },
    altered: (c) => {
      element(c, 'proximity source').ohms = 2900;
    },
  },
];

export const UNIT_BENCHES: readonly Bench[] = [...SWITCHING, ...PILOT];
