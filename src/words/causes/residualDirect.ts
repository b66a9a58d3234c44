/** What each cause of this kind is, where it sits, how it comes about, who is at risk and how it shows. */
import type { CauseWords } from '../causeWords.ts';

export const residualDirect: Readonly<Record<string, CauseWords>> = {
  'residual-dead': {
    where: 'the 30 mA device in the unit',
    cause: 'Its sensor or relay has failed, or its mechanism has seized.',
    hazard: 'Current can flow through a person who touches a live part, and nothing in the unit opens.',
    tells:
      'At 30 mA, and at five times that, nothing opens and no trip is shown. A device that trips late opens at the five-fold current; a cut output wire shows a trip on the display.',
  },
  'residual-slow': {
    where: 'the 30 mA device in the unit',
    cause: 'Its mechanism is worn or stiff.',
    hazard: 'The current through a person lasts longer, and is more likely to stop the heart.',
    tells:
      'The device trips at the right current on the ramp, but at 30 mA its trip time is above 300 ms. Where the device works through the contactor, time C to B as well: if that is within 100 ms, the contactor is quick and the device is slow.',
  },
  'residual-sticks-first': {
    where: 'the mechanism of the 30 mA device in the unit',
    cause:
      'Nobody has pressed its test button for years, so its grease has stiffened. Once it has moved, it moves freely.',
    hazard:
      'The first trip is the one that counts: the current through a person lasts longer, and is more likely to stop the heart.',
    tells:
      'The first trip at 30 mA takes more than 300 ms, and every later one is in time. Write down the first reading, and do not press the test button before it: that frees the mechanism. A slow device is late each time.',
  },
  'standing-leakage': {
    where: 'the mains filter in the unit, from L1 to PE',
    cause: 'A repair has put in a condenser that is far too large.',
    hazard:
      'None to people while PE is sound: the device is close to tripping all the time, so it trips for no reason. If PE is lost, the leakage makes the case live.',
    tells:
      'The leakage adds to the test current, so the device trips at half its rating. Insulation, tested with d.c., reads right, because a condenser passes a.c. alone; a device that has drifted trips early as well, and a clamp meter round the lines tells the two apart.',
  },
  'residual-trips-early': {
    where: 'the 30 mA device in the unit',
    cause: 'Its tripping current has drifted downwards.',
    hazard:
      'None to people: the ordinary leakage of unit and vehicle trips it, and the charge ends for no reason.',
    tells:
      'On the rising a.c. the device trips at 15 mA or less. Standing leakage would add to your current and look the same, so test the insulation: if that is good, the device itself trips early.',
  },
  'residual-trips-late': {
    where: 'the 30 mA device in the unit',
    cause: 'Its tripping current has drifted upwards.',
    hazard: 'A current of 30 mA through a person goes on flowing, and nothing opens.',
    tells:
      'At 30 mA nothing opens, as with a dead device. At five times the rating this device still trips, and a dead one does not.',
  },
  'residual-type-ac': {
    where: 'the 30 mA device in the unit',
    cause: 'A spare of the wrong type was fitted.',
    hazard:
      'A vehicle can leak half-wave and smooth current, which magnetise this device’s core. It may then miss the current through a person.',
    tells:
      'The device trips rightly on a.c., so the a.c. tests show nothing. The inspection does: its mark says type AC. Its core hardly feels half-waves, but in that test the d.c. detector may open in its place and hide the fault.',
  },
  'residual-rated-too-high': {
    where: 'the residual current device in the unit',
    cause: 'A spare of 100 mA was fitted, as it looks the same from outside.',
    hazard:
      'The device acts only above a current that can stop the heart. Whoever touches a live part has no additional protection.',
    tells:
      'At 30 mA nothing opens; at five times that the device trips, but takes more than 40 ms. One that has drifted reads the same; the inspection tells them apart, because this one is marked with a higher rating than the papers have.',
  },
  'upstream-dead': {
    where: 'the residual current device at the circuit’s origin',
    cause: 'Nobody has pressed its test button for years, and its mechanism has seized.',
    hazard:
      'Whoever relies on it has no protection: a person at the outlet, or one who damages the cable to the unit.',
    tells:
      'At its rated current the device at the origin stays closed. If the unit has a device of its own, a test at the outlet trips that one and hides the fault, so test the device at the origin by itself.',
  },
  'upstream-sticks-first': {
    where: 'the mechanism of the residual current device at the circuit’s origin',
    cause:
      'Nobody has pressed its test button for years, so its grease has stiffened. Once it has moved, it moves freely.',
    hazard:
      'The first trip is the one that counts: the current through a person lasts longer, and is more likely to stop the heart.',
    tells:
      'The first trip at the rated current takes more than 300 ms, and every later one is in time. Write down the first reading, and do not press the test button before it. A dead device never trips.',
  },
  'upstream-type-ac': {
    where: 'the residual current device at the circuit’s origin',
    cause: 'The installer fitted the type that was in the van.',
    hazard:
      'A vehicle can leak half-wave and smooth current, which magnetise this device’s core. It may then miss the current through a person.',
    tells:
      'The device trips rightly on a.c., so the a.c. tests show nothing. Compare at the inspection: the papers name type A or B, and the device bears the mark of type AC.',
  },
  'upstream-rated-too-high': {
    where: 'the residual current device at the circuit’s origin',
    cause: 'The installer took a device that protects against fire for one that protects people.',
    hazard:
      'The device acts only above a current that can stop the heart. Whoever relies on it has no additional protection.',
    tells:
      'At the current in the papers the device at the origin stays closed. A dead device reads the same; the inspection tells them apart, because this one is marked with a higher rating than the papers have.',
  },
  'upstream-opens-lines-only': {
    where: 'the residual current device at the circuit’s origin',
    cause: 'A device with a solid neutral was fitted, as it takes up one module less.',
    hazard:
      'After a trip the neutral stays joined to the unit. If the supply’s neutral is live, through a broken PEN or a crossing, so are the unit and the vehicle.',
    tells:
      'The device trips in time and the line goes dead, so the residual tests show nothing. The inspection does: the diagram on the device shows no contact in the neutral.',
  },
  'direct-detector-dead': {
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its supply or its sensor has failed.',
    hazard:
      'Above 6 mA, smooth d.c. magnetises the iron core of a type A device upstream. That device may then miss the current through a person.',
    tells:
      'The detector feels no smooth d.c., so on both ramps nothing opens up to 6 mA, though the a.c. tests still trip. A slow detector fails the ramps as well, but opens in the end at 6 mA at once; one that needs more than 6 mA reads the same as a dead one.',
  },
  'direct-trips-late': {
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its tripping current has drifted upwards.',
    hazard:
      'Above 6 mA, smooth d.c. magnetises the iron core of a type A device upstream. That device may then miss the current through a person.',
    tells:
      'On both ramps nothing opens up to 6 mA. At 6 mA at once this detector never opens, while a slow one opens in the end. No test goes above 6 mA, so a dead detector reads the same.',
  },
  'direct-trips-early': {
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its tripping current has drifted downwards.',
    hazard: 'None to people: healthy vehicles leak a little d.c., so the charge ends for no reason.',
    tells:
      'On both ramps the detector trips below 3 mA, such as at 1.8 mA. On rising a.c. the device trips at its right current, so the detector has drifted and not the device.',
  },
  'direct-slow': {
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'The filter on its sensor was made too heavy.',
    hazard:
      'Until the detector opens, smooth d.c. magnetises the core of a type A device upstream. That device may then miss the current through a person.',
    tells:
      'The ramp has reached 6 mA before the filter lets the detector trip. With 6 mA at once this detector opens after more than 10 s, where one that needs more current never opens.',
  },
  'direct-one-way': {
    where: 'the 6 mA d.c. detector in the unit',
    cause: 'Its sensor has an offset.',
    hazard:
      'A vehicle’s d.c. can leak from either pole of its battery. Current the other way round magnetises a type A device upstream, which may then miss the current through a person.',
    tells:
      'The detector trips rightly on the positive ramp, and on the negative ramp nothing opens up to 6 mA. A dead detector fails both ramps, so always do both.',
  },
  'trips-opens-nothing': {
    where: 'the wire from the unit’s trip to what it should open',
    cause: 'The output wire is off.',
    hazard:
      'The display says tripped, and the outlet is still live. Somebody who believes the display touches it.',
    tells:
      'At 30 mA the display shows a trip, so the sensor works, and the outlet still reads 230 V. A dead device shows no trip. Try C to B: if the outlet goes dead, no pole is welded.',
  },
  'resets-itself': {
    where: 'the control logic, after a trip',
    cause: 'Automatic reset is switched on in the unit’s settings.',
    hazard: 'The leak may still be there, through a person. Each closing starts the shock again.',
    tells:
      'At 30 mA the unit trips in time, and within some 10 s the outlet reads 230 V again with nothing pressed. A unit that forgets its trip closes only after the supply has gone off and on.',
  },
  'trip-forgotten': {
    where: 'the control logic’s memory of a trip',
    cause: 'The unit does not store the trip before its electronics lose their supply.',
    hazard:
      'Whoever switches the supply off and on makes the outlet live again. The leak may still be there, and nobody has looked.',
    tells:
      'After a trip the unit stays off, as it should. In the test of recovery the supply goes off and on, and the outlet goes live with no reset pressed. A unit that resets itself closes with the supply on throughout.',
  },
  'test-button-dead': {
    where: 'the resistor behind the test button',
    cause: 'The resistor is burnt open.',
    hazard:
      'None by itself: the device still trips. But nobody can check it between inspections, so later it can seize unnoticed.',
    tells:
      'The device trips in time at 30 mA, so sensor and mechanism work. Press the button: its resistor passes no current, and nothing opens. A dead device fails both.',
  },
};
