/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const protectiveConductor: Readonly<Record<string, CauseWords>> = {
  'pe-not-landed': {
    title: 'Circuit’s protective conductor not connected',
    where: 'between the board’s earth bar and the unit’s PE terminal',
    cause: 'The core was left folded back, or missed at the bar.',
    hazard:
      'Case and vehicle are unearthed, and no residual device sees a fault until somebody touches them.',
  },
  'pe-joint': {
    title: 'Poor joint in the circuit’s protective conductor',
    where: 'the PE terminal on the supply side of the unit',
    cause: 'The screw is on the insulation, or was not tightened.',
    hazard: 'Heat in the joint, and touch voltage while a fault is cleared too late.',
  },
  'pe-undersized': {
    title: 'Protective conductor smaller than designed',
    where: 'the whole run from board to unit: 1.5 mm² instead of what the papers say',
    cause: 'A cable with a reduced earth core was taken.',
    hazard: 'It can burn through in a fault before the breaker opens.',
  },
  'borrowed-earth': {
    title: 'Earth borrowed from pipe or steelwork',
    where: 'the unit’s PE bar is joined to metal of the building; the circuit’s own conductor is broken',
    cause: 'The core broke and no other was to hand.',
    hazard: 'The earth is lost when the pipe or the steel is altered.',
  },
  'outlet-pe-open': {
    title: 'Protective conductor open between unit and outlet',
    where: 'between the unit’s PE bar and the outlet’s or tether’s PE contact',
    cause: 'A terminal inside the unit was not tightened, or the tether’s core has parted.',
    hazard: 'The unit finds no vehicle; whoever bypasses that leaves the vehicle unearthed.',
  },
  'outlet-pe-joint': {
    title: 'Poor joint in the protective conductor to the outlet',
    where: 'between the unit’s PE bar and the outlet’s PE contact',
    cause: 'A poor crimp, or a corroded contact.',
    hazard: 'Touch voltage on the vehicle during a fault.',
  },
  'tether-pe-moves': {
    title: 'Tether’s protective conductor parts when bent',
    where: 'the PE core of the tether, where it enters the connector',
    cause: 'It was driven over, or hangs without strain relief.',
    hazard: 'The vehicle loses its earth for moments.',
  },
  'case-unearthed': {
    title: 'Exposed metal of the unit not joined to PE',
    where: 'between the unit’s PE bar and its metal case',
    cause: 'The case’s own bonding lead was left off after the front came back on.',
    hazard: 'A fault to the case is never cleared: the metal stays live.',
  },
  'earthing-conductor-loose': {
    title: 'Main earthing conductor loose',
    where: 'between the distributor’s earth and the main earthing terminal',
    cause: 'The terminal was disturbed when the meter was changed.',
    hazard: 'Touch voltage on every exposed part of the installation during a fault.',
  },
  'open-pen-pole-worn': {
    title: 'PE pole of the open-PEN measure has high resistance',
    where: 'the pole in the protective conductor inside the unit',
    cause: 'Worn by many operations.',
    hazard: 'Touch voltage on case and vehicle during a fault.',
  },
  'electrode-poor': {
    title: 'Earth electrode of too high a resistance',
    where: 'the installation’s own electrode',
    cause: 'A short rod, rock, or clay that has dried and shrunk.',
    hazard: 'A residual device may trip late or not at all.',
  },
  'electrode-clamp': {
    title: 'Corroded clamp on the earth electrode',
    where: 'between the electrode and its conductor',
    cause: 'No inspection pit: water stands on the clamp.',
    hazard: 'A residual device may trip late or not at all.',
  },
  'earths-joined': {
    title: 'The unit’s earth is joined to the supply’s neutral',
    where: 'from the unit’s PE bar to metal that the distributor’s neutral earths',
    cause: 'An armour is earthed at both ends, or a fence runs next door.',
    hazard: 'A broken neutral of the supply puts its voltage on the vehicle.',
  },
};
