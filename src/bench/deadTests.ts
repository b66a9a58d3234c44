/**
 * What a dead test teaches. A reading that fails stands until every path that it joined has passed since, by whatever
 * joining of terminals or nulling of leads, at no lower test voltage. A reading that can be nothing else but low tells
 * neither way.
 */
import { minimumInsulation } from '../laws/insulationLimits.ts';
import type { Ohms } from '../laws/quantities.ts';
import { CONTACT_ALLOWANCE, expectedCable, expectedCircuitProtective, leastApart } from '../site/expected.ts';
import { opensEarthUnpowered } from '../unit/design.ts';
import type { DeadFailure, FailedTest, Knowledge } from './knowledge.ts';
import type { Measurement } from './operation.ts';
import { isNeutralOpened } from './plant.ts';
import type { Reading } from './reading.ts';
import type { Probe, Terminal } from './terminals.ts';
import { isAt, isEarth, labelOf, onEarth, onPilot, terminalsBetween, terminalsIn } from './terminals.ts';
import type { World } from './world.ts';

export function learn(world: World, measurement: Measurement, reading: Reading): Knowledge {
  const { knowledge } = world;
  const told = toldBy(world, measurement, reading);
  if (told === null) return knowledge;
  const { paths, failure, volts, isOpen } = told;
  const failedTests =
    failure === null
      ? knowledge.failedTests.flatMap((test) => after(test, paths, volts))
      : [...knowledge.failedTests, { why: failure, isOpen, volts, left: paths }];
  const earthShown =
    failure === null && measurement.quantity === 'continuity'
      ? [...new Set([...knowledge.earthShown, ...paths])]
      : knowledge.earthShown;
  return { ...knowledge, failedTests, earthShown };
}

/** What is left of a failed test once these paths have passed. */
function after(test: FailedTest, passed: readonly string[], volts: number): readonly FailedTest[] {
  if (volts < test.volts) return [test];
  const left = test.left.filter((path) => !passed.includes(path));
  return left.length === 0 ? [] : [{ ...test, left }];
}

interface Told {
  readonly paths: readonly string[];
  /** Null where they passed. */
  readonly failure: DeadFailure | null;
  readonly volts: number;
  readonly isOpen: boolean;
}

/** Null where the reading tells neither way. */
function toldBy(world: World, measurement: Measurement, reading: Reading): Told | null {
  if (reading.qualifier === 'unable' || !('between' in measurement)) return null;
  // Both leads on one terminal is a look at the leads, not a test of anything.
  if (labelOf(measurement.between[0]) === labelOf(measurement.between[1])) return null;
  if (measurement.quantity === 'continuity') return continuity(world, measurement.between, reading);
  return measurement.quantity === 'insulation' ? insulation(world, measurement, reading) : null;
}

function insulation(
  world: World,
  { between, volts }: Extract<Measurement, { quantity: 'insulation' }>,
  reading: Reading,
): Told | null {
  const canBeNothingElse = [isThroughElectronics, isThroughOtherLoads, isJoinedAtSource, isLinked];
  if (onPilot(between) || canBeNothingElse.some((is) => is(world, between))) return null;
  const { minimum } = minimumInsulation(230);
  const failure = reading.value !== null && reading.value < minimum ? 'insulation-low' : null;
  const [first, second] = between.map((probe) => [...new Set(terminalsIn(probe).map(conductorOf))]);
  const pairs = (first ?? []).flatMap((x) => (second ?? []).map((y) => [x, y].sort().join(' – ')));
  // With the unit joined its own insulation is measured too: what passes without it says nothing of that.
  const withUnit = world.plant.removed.includes('unit') ? [] : pairs.map((pair) => `${pair}, unit joined`);
  return {
    paths: failure === null ? [...pairs, ...withUnit] : withUnit.length > 0 ? withUnit : pairs,
    failure,
    volts,
    isOpen: false,
  };
}

/** One circuit from the board to the unit's supply terminals, whatever is measured at either end; PE is one conductor. */
const conductorOf = (terminal: Terminal): string =>
  isEarth(terminal) ? 'PE' : terminal.replace(/^(origin|supply)\./, 'circuit ').replace('.', ' ');

/**
 * Between live conductors through connected electronics a low reading is no fault (BS 7671 643.3.3); a declared bleed
 * brings the electronics to the outlet.
 */
export const isThroughElectronics = (
  { plant, installation }: World,
  between: readonly [Probe, Probe],
): boolean =>
  !plant.removed.includes('unit') &&
  !onEarth(between) &&
  (installation.design.sheet.poleBleed !== null || terminalsBetween(between).some((t) => !isAt(t, 'outlet')));

/** Off by the main switch alone, the circuit’s lives are joined through whatever the other circuits supply. */
const isThroughOtherLoads = ({ plant }: World, between: readonly [Probe, Probe]): boolean =>
  plant.isolated.length === 0 &&
  !onEarth(between) &&
  terminalsBetween(between).some((t) => !isAt(t, 'outlet'));

/** The neutral is joined to earth at the source: with its pole closed nothing but that is read. */
const isJoinedAtSource = ({ plant }: World, between: readonly [Probe, Probe]): boolean =>
  onEarth(between) &&
  terminalsBetween(between).some(
    (t) => t === 'incoming.N' || ((t === 'origin.N' || t === 'supply.N') && !isNeutralOpened(plant)),
  );

/** Through a temporary link of the trainee's own. */
const isLinked = ({ plant }: World, between: readonly [Probe, Probe]): boolean => {
  const [first = [], second = []] = between.map((probe) => terminalsIn(probe).map(conductorOf));
  const joins = (a: string, b: string) =>
    plant.links.some((link) => [a, b].sort().join() === link.split('-').map(circuitEnd).sort().join());
  return first.some((a) => second.some((b) => joins(a, b)));
};
const circuitEnd = (x: string): string => (x === 'PE' ? x : `circuit ${x}`);

/** A protective conductor that reads this much or more is as good as open, Ω. A design choice. */
const AS_GOOD_AS_OPEN: Ohms = 100;

/** Along the protective conductor, from the board on: what lies between one terminal and the next. */
const ALONG = ['board', 'circuit', 'cable'] as const;
const STANDS_AT: Readonly<Record<Terminal, number>> = {
  met: 0,
  'origin.PE': 1,
  'supply.PE': 2,
  case: 2,
  'outlet.PE': 3,
};

/** The circuit's own earth held against the house's: metal between them brings the house's voltage to the vehicle. */
function earths({ installation: { site } }: World, reading: Reading): Told {
  const most = (reading.value ?? Infinity) + (reading.uncertainty ?? 0);
  return {
    paths: ['PE met–house'],
    failure: most < leastApart(site) ? 'earths-together' : null,
    volts: 0,
    isOpen: false,
  };
}

function continuity(world: World, between: readonly [Probe, Probe], reading: Reading): Told | null {
  if (between.includes('met') && between.includes('house')) return earths(world, reading);
  const ends = between.map((probe) => (typeof probe === 'string' ? STANDS_AT[probe] : undefined));
  const [a, b] = ends;
  if (a === undefined || b === undefined) return null;
  const [from, to] = [Math.min(a, b), Math.max(a, b)];
  // The case hangs on the supply terminal by a bond of its own.
  const bond = between.filter((probe) => probe === 'case').length === 1 ? ['PE bond of the case'] : [];
  const paths = [...ALONG.slice(from, to).map((part) => `PE of the ${part}`), ...bond];
  if (paths.length === 0) return null;
  const isOpen = reading.qualifier === '>' || (reading.value ?? 0) >= AS_GOOD_AS_OPEN;
  if (throughOpenPole(world, to, bond.length > 0, isOpen)) return null;
  const failure = isOpen ? 'protective-open' : aboveItsSum(world, from, to, reading);
  return { paths, failure, volts: 0, isOpen: failure !== null && isOpen };
}

/**
 * A PE pole of an open-PEN measure that stands open, because its sheet says that it does without power, or because the
 * measure had opened it, which the unit's display said: nothing is shown of the conductor either way.
 */
function throughOpenPole(
  { installation, plant }: World,
  to: number,
  toCase: boolean,
  isOpen: boolean,
): boolean {
  const toOutlet = to === STANDS_AT['outlet.PE'];
  if (opensEarthUnpowered(installation.design.sheet)) return toOutlet;
  return isOpen && plant.earthPole === 'open' && (toOutlet || toCase);
}

function aboveItsSum(world: World, from: number, to: number, reading: Reading): DeadFailure | null {
  const { site, design } = world.installation;
  const hasCable = design.sheet.outlet === 'tethered' || world.plant.standIn.plugged;
  const parts: readonly Ohms[] = [
    0,
    expectedCircuitProtective(site),
    hasCable ? expectedCable(design.sheet.cable) : 0,
  ];
  const expected = parts.slice(from, to).reduce((sum, part) => sum + part, 0);
  const least = (reading.value ?? 0) - (reading.uncertainty ?? 0);
  return least > expected + CONTACT_ALLOWANCE ? 'protective-above-sum' : null;
}
