/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const supplyWiring: Readonly<Record<string, CauseWords>> = {
  'line-neutral-crossed': {
    title: 'Line and neutral crossed at the unit',
    where: 'the unit’s supply terminals',
    cause: 'The cores were mixed up.',
    hazard: 'The neutral is live behind everything that opens the line alone.',
  },
  'lines-crossed': {
    title: 'Two lines crossed at the unit',
    where: 'the unit’s supply terminals, L2 and L3',
    cause: 'The cores were landed in the order in which they came.',
    hazard: 'Lines are loaded other than planned, and the record of the site is wrong.',
  },
  'line-missing': {
    title: 'A line does not reach the unit',
    where: 'the line core between board and unit',
    cause: 'A loose link, or a core broken in the run.',
    hazard: 'The unit is out of use, or runs on fewer lines than it seems to.',
  },
  'line-loss-unnoticed': {
    title: 'Does not notice that a line is lost',
    where: 'the unit’s sensing of L2 and L3',
    cause: 'The sensing wires of the other lines are off.',
    hazard: 'A vehicle is supplied on fewer lines than it counts on.',
  },
  'neutral-missing': {
    title: 'The neutral does not reach the unit',
    where: 'the neutral core between board and unit',
    cause: 'The core is broken, or was not landed.',
    hazard: 'A unit that seems dead is live inside.',
  },
  'neutral-joint': {
    title: 'Poor joint in the neutral',
    where: 'the neutral core between board and unit',
    cause: 'A terminal was not tightened.',
    hazard: 'Heat, and fire in time.',
  },
  'neutral-earth-joined': {
    title: 'Neutral joined to PE at the unit',
    where: 'a link between N and PE at the unit’s supply terminals',
    cause: 'A well-meant link: the earthing of the site was misread.',
    hazard: 'Load current runs in the protective conductor, and residual devices are blinded.',
  },
  'breaker-too-slow': {
    title: 'Breaker of a slower type than designed',
    where: 'the circuit’s breaker at the board',
    cause: 'It was what lay in the van.',
    hazard: 'An earth fault that the design would clear at once may stay on for seconds.',
  },
  'supply-loop-high': {
    title: 'Loop impedance of the supply far above what was declared',
    where: 'the supply’s return conductor, before the origin',
    cause: 'A long run, or a poor joint in the distributor’s cable.',
    hazard: 'A breaker may not open in time on an earth fault.',
  },
  'voltage-high': {
    title: 'Supply voltage above its limit',
    where: 'the supply',
    cause: 'Local generation, or a transformer tapped too high.',
    hazard: 'Equipment wears early or fails; a unit may lock out, and rightly so.',
  },
  'voltage-low': {
    title: 'Supply voltage below its limit',
    where: 'the supply',
    cause: 'A weak network, or a long shared service.',
    hazard: 'Equipment misbehaves; a unit may lock out, and rightly so.',
  },
};
