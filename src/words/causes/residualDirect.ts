/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const residualDirect: Readonly<Record<string, CauseWords>> = {
  'residual-dead': {
    title: 'The unit’s residual current device does not act',
    where: 'the 30 mA device in the unit',
    cause: 'Its sensor or its relay has failed, or it has seized.',
    hazard: 'Nothing protects whoever touches a live part.',
  },
  'residual-slow': {
    title: 'The unit’s residual current device is too slow',
    where: 'the 30 mA device in the unit',
    cause: 'Worn or stiff.',
    hazard: 'A shock lasts too long.',
  },
  'residual-trips-early': {
    title: 'The unit’s residual current device acts at half its rating or less',
    where: 'the 30 mA device in the unit',
    cause: 'Its threshold has drifted.',
    hazard: 'None to people: it trips on ordinary leakage.',
  },
  'residual-trips-late': {
    title: 'The unit’s residual current device needs more than its rating',
    where: 'the 30 mA device in the unit',
    cause: 'Its threshold has drifted.',
    hazard: 'A shock that should end goes on.',
  },
  'residual-type-ac': {
    title: 'The unit’s residual current device is of type AC',
    where: 'the 30 mA device in the unit',
    cause: 'A spare part of the wrong type was fitted.',
    hazard: 'The half-wave and smooth currents of a vehicle blind it.',
  },
  'upstream-dead': {
    title: 'The residual current device at the origin does not act',
    where: 'the residual current device at the circuit’s origin',
    cause: 'It has seized: nobody has pressed its button for years.',
    hazard: 'What relies on it is not protected: a person, or the cable to the unit.',
  },
  'upstream-type-ac': {
    title: 'The residual current device at the origin is of type AC',
    where: 'the residual current device at the circuit’s origin',
    cause: 'It was what lay in the van.',
    hazard: 'The half-wave and smooth currents of a vehicle blind it.',
  },
  'direct-detector-dead': {
    title: 'D.c. detector does not act',
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its supply or its sensor has failed.',
    hazard: 'Smooth d.c. from a vehicle can blind the type A device upstream.',
  },
  'direct-trips-late': {
    title: 'D.c. detector needs more than 6 mA',
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its threshold has drifted.',
    hazard: 'Smooth d.c. from a vehicle can blind the type A device upstream.',
  },
  'direct-trips-early': {
    title: 'D.c. detector acts below 3 mA',
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its threshold has drifted.',
    hazard: 'None to people: it trips on what vehicles may leak.',
  },
  'direct-slow': {
    title: 'D.c. detector is too slow',
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'A filter made too heavy.',
    hazard: 'Smooth d.c. from a vehicle can blind the type A device upstream meanwhile.',
  },
  'direct-one-way': {
    title: 'D.c. detector feels one polarity alone',
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'An offset in its sensor.',
    hazard: 'D.c. the other way round can blind the type A device upstream.',
  },
  'trips-opens-nothing': {
    title: 'A residual trip is shown, and nothing opens',
    where: 'between the unit’s residual current device and what it should open',
    cause: 'The output wire is off.',
    hazard: 'False comfort: the outlet stays live.',
  },
  'resets-itself': {
    title: 'Closes again by itself after a residual trip',
    where: 'the control logic, after a trip',
    cause: 'A wrong setting.',
    hazard: 'A shock comes again and again.',
  },
  'test-button-dead': {
    title: 'The residual current device’s test button does nothing',
    where: 'the resistor behind the test button',
    cause: 'The resistor is burnt.',
    hazard: 'None by itself: the device acts, but nobody can see so between tests.',
  },
  'trip-forgotten': {
    title: 'Closes again after a trip when the supply comes back',
    where: 'the control logic’s memory: what has latched is gone with the supply',
    cause: 'What has latched is not written down before the electronics lose their supply.',
    hazard: 'Whoever switches the supply off and on gives the fault its voltage back, and nobody has looked.',
  },
};
