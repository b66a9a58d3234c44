/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const proximityRetention: Readonly<Record<string, CauseWords>> = {
  'coding-ignored': {
    title: 'Does not go by the cable’s coding',
    where: 'the control logic: any cable, and none, counts as large enough',
    cause: 'The rule is switched off in the unit’s settings or programme.',
    hazard: 'A small cable overheats.',
  },
  'coding-read-too-large': {
    title: 'Takes a cable for a larger one',
    where: 'the resistor against which the unit reads the coding; 1 kΩ when sound',
    cause: 'A drifted part.',
    hazard: 'A small cable overheats.',
  },
  'coding-read-too-small': {
    title: 'Takes a cable for a smaller one',
    where: 'the resistor against which the unit reads the coding; 1 kΩ when sound',
    cause: 'A drifted part.',
    hazard: 'None to people: a slow charge.',
  },
  'proximity-contact-dirty': {
    title: 'Resistance in the socket’s proximity contact',
    where: 'the socket-outlet’s proximity contact',
    cause: 'Corrosion.',
    hazard: 'None to people: a 32 A cable is taken for a smaller one.',
  },
  'tether-coding-wrong': {
    title: 'Wrong coding resistor in the tether’s connector',
    where: 'the connector: as many times the resistance that its rating asks for',
    cause: 'A repair with what was to hand.',
    hazard: 'None to people: the vehicle takes less, or refuses.',
  },
  'lock-does-not-engage': {
    title: 'Plug is not held, and the unit notices',
    where: 'the lock’s motor',
    cause: 'A worn motor.',
    hazard: 'None to people: no charge.',
  },
  'lock-not-home': {
    title: 'Plug is not held, and the unit supplies all the same',
    where: 'the lock’s motor, and the feedback that says it is home',
    cause: 'A bent pin, or a feedback switch that is stuck.',
    hazard: 'The plug comes out live.',
  },
  'lock-will-not-release': {
    title: 'Plug is never let go',
    where: 'the lock’s motor',
    cause: 'Grit, ice, or a fault of the programme.',
    hazard: 'None to people: the cable is trapped.',
  },
  'over-code-ignored': {
    title: 'Goes on supplying a vehicle that draws more than its cable carries',
    where: 'the control logic: the current drawn is not held against the cable’s coding',
    cause: 'A fault of its programme, or a meter that is not read.',
    hazard: 'The cable overheats.',
  },
};
