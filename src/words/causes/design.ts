/** Wrong designs, which stand in the papers: what each is, where, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const design: Readonly<Record<string, CauseWords>> = {
  'breaker-over-cable': {
    title: 'Breaker rated higher than its cable carries',
    where: 'the papers: the rating of the circuit’s breaker',
    cause: 'The next size up was chosen so that it would not trip.',
    hazard: 'The cable can overheat for hours, and the breaker never opens.',
  },
  'conductors-too-small-for-run': {
    title: 'Conductors too small for the length of the run',
    where: 'the papers: the area of the circuit’s conductors',
    cause: 'The cable was chosen by its current alone.',
    hazard: 'The unit gets too little voltage under load, stops or locks out; the cable runs warm.',
  },
  'insulation-not-counted': {
    title: 'Thermal insulation round the cable not counted',
    where: 'the papers: how the cable is laid',
    cause: 'The wall was insulated by others, and the cable chosen as if it were clipped to it.',
    hazard: 'The cable cannot lose its heat there, and its insulation fails in time.',
  },
  'protective-too-small': {
    title: 'Protective conductor too small for the fault current',
    where: 'the papers: the area of the protective conductor',
    cause: 'Nobody did the sum.',
    hazard: 'It can burn open in a fault, and the case stays live.',
  },
  'service-overloaded': {
    title: 'Service too small for house and unit together',
    where: 'the papers: what house and unit ask of the service',
    cause: 'The unit was counted with diversity, as a cooker is.',
    hazard: 'The service’s fuse and tails run hot for hours, and the fuse may go.',
  },
};
