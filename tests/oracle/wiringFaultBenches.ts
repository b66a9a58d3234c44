/** Installations with one fault of their wiring: protective conductor, supply, insulation. Faults are drawn by hand, too. */
import { CHARGE, designOf, MAKE_DEAD, PLUG_IN } from '../bench/build.ts';
import { add, element, GAP } from './benchCircuit.ts';
import { type Bench, done, fault, tested } from './installations.ts';
import { IN_B, PEN_BROKEN, supplied, THIRTY, THIRTY_DRAWN } from './soundBenches.ts';

const PROTECTIVE: readonly Bench[] = [
  {
    name: 'joint of 5 Ω in the circuit’s PE, 30 mA of a test',
    at: 'home',
    faults: [fault('pe-joint', { ohms: 5 })],
    bring: tested(THIRTY, ...CHARGE),
    position: { ...supplied('home'), test: THIRTY_DRAWN },
    altered: (c) => {
      element(c, 'core PE').ohms += 5;
    },
  },
  {
    name: 'circuit’s PE not connected, supplied',
    at: 'cottage',
    faults: [fault('pe-not-landed')],
    bring: done(...CHARGE),
    position: supplied('cottage'),
    altered: (c) => {
      element(c, 'core PE').ohms = GAP;
    },
  },
  {
    name: 'earth borrowed from steelwork, 30 mA of a test',
    at: 'home',
    faults: [fault('borrowed-earth', { ohms: 4 })],
    bring: tested(THIRTY, ...CHARGE),
    position: { ...supplied('home'), test: THIRTY_DRAWN },
    altered: (c) => {
      element(c, 'core PE').ohms = GAP;
      element(c, 'parallel earth').ohms = 4;
    },
  },
  {
    name: 'circuit’s PE parts under the cover, 2 kΩ, 30 mA of a test',
    at: 'cottage',
    faults: [fault('pe-moves-with-cover', { ohms: 2000 })],
    bring: tested(THIRTY, ...CHARGE),
    position: { ...supplied('cottage'), test: THIRTY_DRAWN },
    altered: (c) => {
      element(c, 'core PE').ohms += 2000;
    },
  },
  {
    name: 'earthing conductor loose, 30 mA of a test',
    at: 'yard',
    faults: [fault('earthing-conductor-loose', { ohms: 8 })],
    bring: tested(THIRTY, ...CHARGE),
    position: { ...supplied('yard'), test: THIRTY_DRAWN },
    altered: (c) => {
      element(c, 'earthing conductor').ohms += 8;
    },
  },
  {
    name: 'PE to the outlet open, in B',
    at: 'yard',
    faults: [fault('outlet-pe-open')],
    bring: done(...PLUG_IN),
    position: { ...IN_B, pilot: 'steady' },
    altered: (c) => {
      element(c, 'outlet PE').ohms = GAP;
    },
  },
  {
    // Not a gap: over one the stand-in's diode carries nanoamperes, at which a real one drops less than 0.7 V.
    name: '2 kΩ in the tether’s PE when it is bent, in B',
    at: 'home',
    faults: [fault('tether-pe-moves', { ohms: 2000 })],
    bring: done(...PLUG_IN, { op: 'flex-cable' }, { op: 'wait', seconds: 1 }),
    position: IN_B,
    altered: (c) => {
      element(c, 'cable PE').ohms += 2000;
    },
  },
  {
    name: 'poor joint to the outlet, 30 mA of a test',
    at: 'cottage',
    faults: [fault('outlet-pe-joint', { ohms: 3 })],
    bring: tested(THIRTY, ...CHARGE),
    position: { ...supplied('cottage'), test: THIRTY_DRAWN },
    altered: (c) => {
      element(c, 'outlet PE').ohms += 3;
    },
  },
  {
    name: 'electrode of 600 Ω, leaking',
    at: 'cottage',
    faults: [fault('electrode-poor', { ohms: 600 })],
    bring: done(...CHARGE, { op: 'vehicle', leakage: { ac: 0.006, dc: 0.002, line: 'L1' } }),
    position: { ...supplied('cottage'), leakage: { line: 'L1', ac: 0.006, dc: 0.002 } },
    altered: (c) => {
      element(c, 'electrode').ohms = 600;
    },
  },
  {
    name: 'electrode’s clamp corroded, leaking',
    at: 'cottage',
    faults: [fault('electrode-clamp', { ohms: 1500 })],
    bring: done(...CHARGE, { op: 'vehicle', leakage: { ac: 0.006, dc: 0, line: 'L1' } }),
    position: { ...supplied('cottage'), leakage: { line: 'L1', ac: 0.006, dc: 0 } },
    altered: (c) => {
      element(c, 'earthing conductor').ohms += 1500;
    },
  },
  {
    name: 'the unit’s earth joined to the supply’s neutral, load and 30 mA of a test',
    at: 'cottage',
    faults: [fault('earths-joined', { ohms: 0.3 })],
    bring: tested(THIRTY, ...CHARGE, { op: 'vehicle', load: 20 }),
    position: { ...supplied('cottage'), load: 20, test: THIRTY_DRAWN },
    altered: (c) => add(c, 'earths joined', 'service.N', 'bar', 0.3),
  },
  {
    name: 'electrode of 600 Ω, leaking',
    at: 'island',
    faults: [fault('electrode-poor', { ohms: 600 })],
    bring: done(...CHARGE, { op: 'vehicle', leakage: { ac: 0.006, dc: 0.002, line: 'L1' } }),
    position: { ...supplied('island'), leakage: { line: 'L1', ac: 0.006, dc: 0.002 } },
    altered: (c) => {
      element(c, 'electrode').ohms = 600;
    },
  },
  {
    name: 'electrode’s clamp corroded, leaking',
    at: 'island',
    faults: [fault('electrode-clamp', { ohms: 1500 })],
    bring: done(...CHARGE, { op: 'vehicle', leakage: { ac: 0.006, dc: 0, line: 'L1' } }),
    position: { ...supplied('island'), leakage: { line: 'L1', ac: 0.006, dc: 0 } },
    altered: (c) => {
      element(c, 'earthing conductor').ohms += 1500;
    },
  },
  {
    name: 'circuit’s PE not connected, supplied',
    at: 'island',
    faults: [fault('pe-not-landed')],
    bring: done(...CHARGE),
    position: supplied('island'),
    altered: (c) => {
      element(c, 'core PE').ohms = GAP;
    },
  },
  {
    name: 'poor joint to the outlet, 30 mA of a test',
    at: 'island',
    faults: [fault('outlet-pe-joint', { ohms: 3 })],
    bring: tested(THIRTY, ...CHARGE),
    position: { ...supplied('island'), test: THIRTY_DRAWN },
    altered: (c) => {
      element(c, 'outlet PE').ohms += 3;
    },
  },
  {
    name: 'the two earths joined, PEN broken, with neighbours',
    at: 'island',
    faults: [fault('earths-joined', { ohms: 0.3 })],
    ...PEN_BROKEN,
    altered: (c) => add(c, 'earths joined', 'house', 'bar', 0.3),
  },
];

const SUPPLY: readonly Bench[] = [
  {
    name: 'line and neutral crossed, in B',
    at: 'home',
    faults: [fault('line-neutral-crossed')],
    bring: done(...PLUG_IN),
    position: IN_B,
    altered: (c) => {
      element(c, 'core L1').b = 'supply.N';
      element(c, 'core N').b = 'supply.L1';
    },
  },
  {
    name: 'L2 and L3 crossed, supplied',
    at: 'yard',
    faults: [fault('lines-crossed')],
    bring: done(...CHARGE),
    position: supplied('yard'),
    altered: (c) => {
      element(c, 'core L2').b = 'supply.L3';
      element(c, 'core L3').b = 'supply.L2';
    },
  },
  {
    name: 'L3 does not reach the unit',
    at: 'yard',
    faults: [fault('line-missing', { line: 3 })],
    bring: done(...PLUG_IN),
    position: { ...IN_B, pilot: 'steady' },
    altered: (c) => {
      element(c, 'core L3').ohms = GAP;
    },
  },
  {
    name: 'neutral does not reach the unit',
    at: 'home',
    faults: [fault('neutral-missing')],
    bring: done({ op: 'wait', seconds: 2 }),
    position: { pilot: 'dead' },
    altered: (c) => {
      element(c, 'core N').ohms = GAP;
    },
  },
  {
    name: 'joint of 1 Ω in the neutral, loaded',
    at: 'cottage',
    faults: [fault('neutral-joint', { ohms: 1 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 20 }),
    position: { ...supplied('cottage'), load: 20 },
    altered: (c) => {
      element(c, 'core N').ohms += 1;
    },
  },
  {
    name: 'neutral joined to PE at the unit, loaded',
    at: 'home',
    faults: [fault('neutral-earth-joined', { ohms: 0.05 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 20 }),
    position: { ...supplied('home'), load: 20 },
    altered: (c) => {
      element(c, 'supply N/PE').ohms = 0.05;
    },
  },
  {
    name: 'supply’s loop high, loaded',
    at: 'home',
    faults: [fault('supply-loop-high', { ohms: 1.2 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 32 }),
    position: { ...supplied('home'), load: 32 },
    altered: (c) => {
      element(c, 'PEN').ohms += 1.2;
    },
  },
  {
    name: 'PEN open, as it is found, with the home’s own load',
    at: 'home',
    faults: [fault('pen-open', { ohms: 100 })],
    bring: () => {},
    // 236 V over 35 Ω of load and 12 Ω of ground: 60 V, which the measure leaves alone.
    position: {},
    altered: (c) => {
      element(c, 'PEN').ohms = GAP;
    },
  },
  {
    name: 'PEN open in the street, neighbours on L2 and L3',
    at: 'home',
    faults: [fault('pen-open-in-street', { watts: 12_000 })],
    bring: () => {},
    // More than 70 V: the measure has opened PE before anybody came.
    position: { earthPole: 'open', neighbours: { L2: 12_000, L3: 12_000 } },
    altered: (c) => {
      element(c, 'PEN').ohms = GAP;
    },
  },
  {
    name: 'neutral borrowed from another circuit, this one isolated',
    at: 'cottage',
    faults: [fault('neutral-borrowed')],
    bring: done(...MAKE_DEAD),
    position: { openAtOrigin: ['L1', 'N'], pilot: 'dead' },
    altered: (c) => {
      element(c, 'core N').a = 'busbar.N';
    },
  },
  {
    name: 'another load of 2 kW on the circuit, supplied with load',
    at: 'yard',
    faults: [fault('circuit-shared', { watts: 2000 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 16 }),
    position: { ...supplied('yard'), load: 16 },
    altered: (c) => add(c, 'shared', 'supply.L1', 'supply.N', 230 ** 2 / 2000),
  },
  {
    name: 'the schedule names another way, which is isolated: the charge goes on',
    at: 'home',
    faults: [fault('schedule-names-other-way')],
    bring: done(...CHARGE, { op: 'vehicle', load: 32 }, { op: 'isolate' }, { op: 'wait', seconds: 2 }),
    position: { ...supplied('home'), load: 32, openAtOrigin: ['L1', 'N'] },
    altered: (c) => {
      for (const x of ['L1', 'N']) {
        element(c, `core ${x}`).a = `other-way.${x}`;
        // As the named way's own poles while they are closed.
        add(c, `other way ${x}`, `busbar.${x}`, `other-way.${x}`, 0.9e-3);
      }
    },
  },
  {
    name: 'line and neutral crossed between meter and board, in B',
    at: 'cottage',
    faults: [fault('tails-crossed')],
    bring: done(...PLUG_IN),
    position: IN_B,
    altered: (c) => {
      element(c, 'transformer L1').b = 'service.N';
      element(c, 'neutral of the supply').b = 'service.L1';
    },
  },
  {
    name: 'line and neutral crossed ahead of the earth’s take-off',
    at: 'home',
    faults: [fault('supply-crossed')],
    bring: () => {},
    // The earth sensing has opened PE long since.
    position: { earthPole: 'open' },
    altered: (c) => {
      element(c, 'transformer L1').b = 'service.N';
      element(c, 'PEN').b = 'service.L1';
    },
  },
  {
    name: 'a joint of the PEN that the home’s own load has warmed',
    at: 'home',
    faults: [fault('pen-joint-warms', { ohms: 20 })],
    bring: () => {},
    position: {},
    altered: (c) => {
      // 20 Ω at 16 A. By hand: the load's 35.267 Ω behind 0.11 Ω of line, 12.5 Ω of ground beside the joint.
      let joint = 0.11;
      for (let i = 0; i < 200; i++) {
        const beside = (12.501 * joint) / (12.501 + joint);
        const through = (236 / (0.11 + 230 ** 2 / 1500 + beside)) * (beside / joint);
        joint = (joint + 0.11 + (20 / 16 ** 2) * through ** 2) / 2;
      }
      element(c, 'PEN').ohms = joint;
    },
  },
  {
    name: 'a terminal that the load has warmed',
    at: 'cottage',
    faults: [fault('terminal-warms', { ohms: 0.5 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 32 }),
    position: { ...supplied('cottage'), load: 32 },
    altered: (c) => {
      const line = element(c, 'core L1');
      const cold = line.ohms + 0.02;
      // By hand: source and the home's load as one source, then round the one loop of cores, contacts, cable and load.
      const ohms = (...names: readonly string[]) =>
        names.reduce((sum, name) => sum + element(c, name).ohms, 0);
      const source = ohms('transformer L1', 'neutral of the supply', 'main switch L1', 'main switch N');
      const home = ohms('load 0');
      const volts = ((element(c, 'transformer L1').drive?.re ?? 0) * home) / (home + source);
      const others =
        (source * home) / (source + home) +
        ohms('board L1', 'board N', 'core N', 'unit L1', 'unit N', 'pole L1', 'pole N') +
        ohms('cable L1', 'cable N', 'vehicle load L1');
      let joint = cold;
      for (let i = 0; i < 200; i++)
        joint = (joint + cold + (0.5 / 32 ** 2) * (volts / (others + joint)) ** 2) / 2;
      line.ohms = joint;
    },
  },
  {
    name: 'voltage low, loaded',
    at: 'yard',
    faults: [fault('voltage-low', { volts: 200 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 32 }),
    position: { ...supplied('yard'), load: 32, volts: 200 },
  },
];

const INSULATION: readonly Bench[] = [
  {
    name: 'L1 to PE of 20 kΩ in the circuit’s cable',
    at: 'cottage',
    faults: [fault('line-pe-insulation-low', { ohms: 20_000 })],
    bring: () => {},
    position: {},
    altered: (c) => {
      element(c, 'supply L1/PE').ohms = 20_000;
    },
  },
  {
    name: 'N to PE of 50 Ω in the circuit’s cable, loaded',
    at: 'cottage',
    faults: [fault('neutral-pe-insulation-low', { ohms: 50 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 32 }),
    position: { ...supplied('cottage'), load: 32 },
    altered: (c) => {
      element(c, 'supply N/PE').ohms = 50;
    },
  },
  {
    name: 'N to PE of 0.5 Ω at the outlet, loaded',
    at: 'cottage',
    faults: [fault('outlet-neutral-earth-joined', { ohms: 0.5 })],
    bring: done(...CHARGE, { op: 'vehicle', load: 0.5 }),
    position: { ...supplied('cottage'), load: 0.5 },
    altered: (c) => {
      element(c, 'socket N/PE').ohms = 0.5;
    },
  },
  {
    name: 'water in the connector after an hour, supplied',
    at: 'cottage',
    faults: [fault('water-in-connector', { ohms: 20_000 })],
    bring: done({ op: 'wait', seconds: 3600 }, ...CHARGE),
    position: supplied('cottage'),
    altered: (c) => {
      // Twelve steps of 1.122.
      element(c, 'end L1/PE').ohms = 20_000 * 1.122 ** 12;
    },
  },
  {
    name: 'condensation in the unit, nothing plugged in',
    at: 'cottage',
    faults: [fault('condensation', { ohms: 100_000 })],
    bring: () => {},
    position: {},
    altered: (c) => {
      element(c, 'filter L1').ohms = 100_000;
    },
  },
  {
    name: 'a filter that leaks 18 mA, nothing plugged in',
    at: 'cottage',
    faults: [fault('standing-leakage', { share: 0.88 })],
    bring: () => {},
    position: {},
    altered: (c) => {
      const { farads = 0 } = element(c, 'filter L1');
      // 0.88 of what trips this unit's device: its pick-up is drawn from the seed of these benches.
      const amps = 0.88 * designOf().residualPickup;
      add(c, 'more filter', 'inner.L1', 'bar', 20e6, { farads: amps / (240 * 2 * Math.PI * 50) - farads });
      element(c, 'filter L1').ohms = 1e9;
    },
  },
  {
    name: 'L1 to PE of 25 kΩ at the outlet, supplied',
    at: 'cottage',
    faults: [fault('outlet-insulation-low', { line: 1, ohms: 25_000 })],
    bring: done(...CHARGE),
    position: supplied('cottage'),
    altered: (c) => {
      element(c, 'socket L1/PE').ohms = 25_000;
    },
  },
];

export const WIRING_BENCHES: readonly Bench[] = [...PROTECTIVE, ...SUPPLY, ...INSULATION];
