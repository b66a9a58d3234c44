/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const penFaults: Readonly<Record<string, CauseWords>> = {
  'pen-open': {
    title: 'The service’s PEN conductor is open',
    where: 'the joint of the service cable; the parameter is the ground path of the main earthing terminal',
    cause: 'A corroded joint has parted.',
    hazard: 'Every earthed part, the vehicle among them, stands at a dangerous voltage.',
  },
  'pen-open-in-street': {
    title: 'The PEN conductor is open in the street, with neighbours on it',
    where: 'the distributor’s main, beyond the neighbours; the parameter is their load on each other line',
    cause: 'A broken main.',
    hazard: 'Voltage rises until things burn, and every earthed part is live.',
  },
  'open-pen-blind': {
    title: 'Open-PEN measure does not act',
    where: 'the measure’s sensing inside the unit',
    cause: 'Its sensing has failed, or its electrode was never connected.',
    hazard: 'With the supply’s PEN broken the vehicle’s body is live.',
  },
  'open-pen-late': {
    title: 'Open-PEN measure acts too late',
    where: 'the measure’s timer inside the unit',
    cause: 'A fault of its programme.',
    hazard: 'A long shock from the vehicle’s body.',
  },
  'open-pen-leaves-earth': {
    title: 'Open-PEN measure leaves the protective conductor closed',
    where: 'the measure’s PE pole inside the unit',
    cause: 'A device that opens line and neutral alone was fitted, or its PE pole is stuck.',
    hazard: 'The vehicle’s body stays joined to a broken earth.',
  },
};
