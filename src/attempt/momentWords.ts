/** An opened moment in words: what the drawing letters on its parts and what its table says of them. */
import type { Truth } from '../bench/reading.ts';
import {
  insulationText,
  mainsText,
  ohmsText,
  pilotText,
  positionsText,
  secondsText,
  shareText,
} from './inWords.ts';
import type { Halves, Moment } from './moment.ts';
import type { Potential } from './potentials.ts';

const PLACES: Readonly<Record<string, string>> = {
  incoming: 'on the live side of the origin',
  origin: 'at the origin',
  supply: 'at the unit’s supply terminals',
  outlet: 'at the outlet',
};
const SINGLE: Readonly<Record<string, string>> = {
  met: 'main earthing terminal',
  case: 'exposed metal',
  earth: 'remote rod',
  earthing: 'distributor’s earth',
};

/** A terminal, or several joined by ` + `, those at one place together. */
export function terminalWords(label: string): string {
  const terminals = label.split(' + ');
  const places = new Set(terminals.map((terminal) => terminal.split('.')[0] ?? ''));
  const [only = ''] = places;
  if (places.size > 1) return terminals.map(terminalWords).join(' joined to ');
  const conductors = terminals.map((terminal) => terminal.split('.')[1] ?? '').join(' + ');
  return conductors === '' ? (SINGLE[only] ?? only) : `${conductors} ${PLACES[only] ?? only}`;
}

/** Where a conductor stands against true earth. */
export const potentialText = ({ volts, hold, tiedTo }: Potential): string =>
  hold === 'firm'
    ? mainsText(volts)
    : tiedTo !== null
      ? `${mainsText(volts)}, floating`
      : hold === 'faint'
        ? `${mainsText(volts)}, faint`
        : 'floating';

/** Levels closer than this are drawn as one, V: the pilot instrument's uncertainty. */
export const PILOT_ALIKE = 0.1;

/** Both halves, or the one level where they are the same. */
export const levelsText = ({ high, low }: Halves): string =>
  Math.abs(high - low) < PILOT_ALIKE ? pilotText(high) : `${pilotText(high)} / ${pilotText(low)}`;

export const driveText = ({ pilot: { drive } }: Moment): string =>
  ({
    unpowered: 'no pilot',
    positive: 'pilot steady',
    oscillating: 'pilot oscillates',
    negative: 'pilot steady, negative',
  })[drive];

export const latchText = ({ latches }: Moment): string =>
  latches.length === 0 ? 'nothing' : latches.join(', ');

/** The true value of what an instrument met. */
export function truthText(truth: Truth): string {
  if ('refused' in truth) return `no reading: ${truth.refused}`;
  const { quantity, value, details } = truth;
  switch (quantity) {
    case 'voltage':
      return mainsText(value);
    case 'pilot':
      return [
        levelsText({ high: details.high ?? value, low: details.low ?? value }),
        ...(details.frequency == null ? [] : [`${details.frequency.toFixed(0)}\u202fHz`]),
        ...(details.frequency == null || details.duty == null ? [] : [`high ${shareText(details.duty)}`]),
      ].join(', ');
    case 'opening-time':
      return value === Infinity ? 'still live' : secondsText(value);
    case 'residual':
      return details.tripAmps === null ? 'no trip' : tripText(value, details.tripMs);
    case 'phase-sequence':
      return value > 0 ? 'L1 L2 L3' : 'L1 L3 L2';
    case 'insulation':
      return insulationText(value);
    default:
      return ohmsText(value);
  }
}

const tripText = (amps: number, ms: number | null | undefined): string =>
  `${Number((1000 * amps).toPrecision(3))}\u202fmA${ms === null || ms === undefined ? '' : ` after ${ms.toFixed(0)}\u202fms`}`;

export interface Fact {
  readonly what: string;
  readonly text: string;
}

/** Everything that the drawing of one side shows, line by line. */
export function factsOf(moment: Moment): readonly Fact[] {
  const { pilot, breaker, upstream, unitBreaker, earthPole, lock, damaged } = moment;
  const outlet = Object.entries(moment.volts);
  return [
    { what: 'origin', text: positionsText(moment.origin) },
    ...(breaker === 'closed' ? [] : [{ what: 'circuit’s breaker', text: breaker }]),
    ...(upstream === null ? [] : [{ what: 'residual device at the origin', text: upstream }]),
    ...(moment.unit === 'connected' ? [] : [{ what: 'unit’s conductors', text: moment.unit }]),
    ...(unitBreaker === null ? [] : [{ what: 'unit’s own breaker', text: unitBreaker }]),
    { what: 'contactor’s poles', text: positionsText(moment.poles) },
    { what: 'contactor’s coil', text: moment.coil },
    ...(earthPole === null ? [] : [{ what: 'PE pole of the open-PEN measure', text: earthPole }]),
    { what: 'control', text: driveText(moment) },
    { what: 'pilot at the unit’s own terminal', text: levelsText(pilot.atUnit) },
    { what: 'pilot at the outlet', text: levelsText(pilot.atOutlet) },
    { what: 'the unit says', text: moment.indicator },
    { what: 'standing in the control', text: latchText(moment) },
    ...(lock === null ? [] : [{ what: 'lock’s motor', text: lock }]),
    { what: 'plug', text: moment.plug },
    ...(damaged.length === 0 ? [] : [{ what: 'damaged by a test', text: damaged.join(', ') }]),
    ...outlet.map(([terminal, potential]) => ({
      what: `${terminalWords(terminal)}, to true earth`,
      text: potentialText(potential),
    })),
  ];
}
