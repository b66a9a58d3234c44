/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const pilotFaults: Readonly<Record<string, CauseWords>> = {
  'pilot-source-high': {
    title: 'Pilot’s source resistance too high',
    where: 'the pilot’s output inside the unit',
    cause: 'A wrong or aged part, or a poor joint on the unit’s side.',
    hazard: 'States are mistaken for each other.',
  },
  'pilot-source-low': {
    title: 'Pilot’s source resistance too low',
    where: 'the pilot’s output inside the unit',
    cause: 'A wrong part, or one of two in series shorted.',
    hazard: 'States are mistaken for each other.',
  },
  'pilot-high-half-weak': {
    title: 'Pilot’s positive level too low',
    where: 'the positive supply of the pilot',
    cause: 'A failing supply rail.',
    hazard: 'States are mistaken for each other.',
  },
  'pilot-high-half-strong': {
    title: 'Pilot’s positive level too high',
    where: 'the positive supply of the pilot',
    cause: 'A failing regulator.',
    hazard: 'States are mistaken for each other.',
  },
  'pilot-low-half-weak': {
    title: 'Pilot’s negative level too weak',
    where: 'the negative supply of the pilot',
    cause: 'A failing supply rail or driver.',
    hazard: 'The check of the vehicle’s diode fails, or means nothing.',
  },
  'pilot-frequency': {
    title: 'Pilot oscillates at the wrong frequency',
    where: 'the pilot’s oscillator',
    cause: 'A clock that has drifted.',
    hazard: 'None to people: a vehicle refuses beyond 5 %.',
  },
  'pilot-steady': {
    title: 'Pilot never oscillates',
    where: 'the pilot’s output stage: both halves come from the positive supply',
    cause: 'One half of the output stage has failed.',
    hazard: 'None to people: the vehicle gets no offer.',
  },
  'pilot-conductor-open': {
    title: 'Pilot conductor open',
    where: 'between the unit and the outlet’s pilot contact',
    cause: 'A pin was pushed back.',
    hazard: 'None to people: the unit never finds a vehicle.',
  },
  'pilot-contact-dirty': {
    title: 'Resistance in the pilot conductor',
    where: 'the outlet’s pilot contact',
    cause: 'Corrosion.',
    hazard: 'Supply drops out; unit and vehicle see different states.',
  },
  'pilot-damp': {
    title: 'Damp across the pilot',
    where: 'between pilot and PE at the far end of the cable, or at the socket-outlet',
    cause: 'Water in the connector.',
    hazard: 'The unit sees a vehicle that is not there, or misses one.',
  },
  'pilot-shorted': {
    title: 'Pilot shorted to PE',
    where: 'between pilot and PE at the outlet or in its cable',
    cause: 'A crushed cable, or a strand between two contacts.',
    hazard: 'None to people: the unit refuses.',
  },
  'dummy-left-on-pilot': {
    title: 'A dummy vehicle left on the pilot inside the unit',
    where: 'a resistor of 2.74 kΩ from the pilot to PE, inside the unit',
    cause: 'A jig was left in after commissioning.',
    hazard: 'The vehicle’s loss of PE goes unnoticed.',
  },
};
