/** What each cause of this kind is, where it sits, how it comes about, who is at risk and how it shows. */
import type { CauseWords } from '../causeWords.ts';

export const pilotFaults: Readonly<Record<string, CauseWords>> = {
  'pilot-source-high': {
    where: 'the 1 kΩ resistor in the unit’s pilot output',
    cause: 'A wrong resistor is fitted or has aged, or a joint inside the unit adds resistance.',
    hazard:
      'The unit mistakes one state for another: it takes a request (C) for a call for ventilation (D) and refuses it.',
    tells:
      'With nothing plugged in no current flows, so the pilot reads 12 V. The vehicle’s resistor draws current through the high resistance, so connected (B) and asks (C) read low; a weak supply would read low with nothing plugged in as well.',
  },
  'pilot-source-low': {
    where: 'the 1 kΩ resistor in the unit’s pilot output',
    cause: 'A wrong resistor is fitted, or one of two in series is shorted.',
    hazard:
      'The pilot stays too high when the vehicle asks (C). The unit can take the request for connected (B), and the driver gets no charge.',
    tells:
      'With nothing plugged in no current flows, so the pilot reads 12 V. Too little is dropped when a vehicle draws current, so connected (B) and asks (C) read high; too strong a supply would read high with nothing plugged in as well.',
  },
  'pilot-high-half-weak': {
    where: 'the positive supply of the pilot, inside the unit',
    cause: 'The positive supply that feeds the pilot is failing.',
    hazard:
      'At a wrong voltage the unit mistakes one state for another. It then fails to charge, or closes the contactor for a vehicle that has not asked.',
    tells:
      'The pilot reads low even with nothing plugged in, such as 10.8 V for 12 V. In connected (B) the negative peak still reads −12 V; damp between pilot and PE would pull that peak down too.',
  },
  'pilot-high-half-strong': {
    where: 'the positive supply of the pilot, inside the unit',
    cause: 'The regulator of the pilot’s positive supply is failing.',
    hazard:
      'The pilot stays too high when the vehicle asks (C). The unit can miss the request, and the vehicle can refuse the pilot.',
    tells:
      'The pilot reads high even with nothing plugged in, such as 13.4 V for 12 V. With too low a source resistance it would read 12 V there, and high only once a vehicle is connected (B).',
  },
  'pilot-low-half-weak': {
    where: 'the negative supply of the pilot, inside the unit',
    cause: 'The negative supply that feeds the pilot is failing, or the stage that drives it.',
    hazard:
      'The unit judges the vehicle’s diode by the negative peak. It can refuse a sound vehicle, and its check of the diode can no longer be relied on.',
    tells:
      'In connected (B) the negative peak reads too little, such as −10.2 V for −12 V, and the positive peak is right. Damp between pilot and PE pulls both peaks down, and the positive one shows it with nothing plugged in.',
  },
  'pilot-frequency': {
    where: 'the pilot’s oscillator, inside the unit',
    cause: 'The clock that sets the 1 kHz has drifted.',
    hazard: 'None to people: the vehicle can refuse the pilot, and the driver gets no charge.',
    tells:
      'In connected (B) the pilot reads a frequency such as 950 Hz for 1 kHz. Both peaks and the duty are right, so supply, resistors and offer are sound.',
  },
  'pilot-steady': {
    where: 'the pilot’s output stage: it takes both halves from the positive supply',
    cause: 'The half of the output stage that drives the pilot negative has failed.',
    hazard: 'None to people: a steady pilot offers no current, so the vehicle never charges.',
    tells:
      'In connected (B) the pilot reads a steady 9 V, as it does while a unit waits for permission, hours or a delay. Authorise and override: a unit that waits begins to oscillate, and this one stays steady.',
  },
  'pilot-conductor-open': {
    where: 'between the unit’s pilot output and the outlet’s pilot contact',
    cause: 'A contact pin was pushed back, or the conductor has come off.',
    hazard: 'None to people: the pilot cannot reach the vehicle, so the unit never finds one.',
    tells:
      'The unit sees its own 12 V and shows ready, but the pilot reads about 0 V at the outlet. Plug in: the unit behaves as if nothing were there. A pilot shorted to PE also reads about 0 V, but then the unit never sees 12 V.',
  },
  'pilot-contact-dirty': {
    where: 'the outlet’s pilot contact',
    cause: 'Corrosion or dirt lies between pin and sleeve.',
    hazard:
      'None to people at first: unit and vehicle see different voltages, so the supply drops out or never starts.',
    tells:
      'The added resistance drops volts on the way, so the vehicle’s end reads low once current flows, most of all when it asks (C). The unit’s end is higher: with enough resistance it stays at connected (B), where too high a source resistance can make it see D.',
  },
  'pilot-damp': {
    where: 'between pilot and PE at the far end of the tether, or at the socket-outlet',
    cause: 'Water has got into the connector or the socket-outlet.',
    hazard:
      'The water loads the pilot as a vehicle does. The unit sees a vehicle that is not there, or mistakes the state of one that is.',
    tells:
      'The pilot reads under 12 V with nothing plugged in. Water conducts both ways, so the negative peak is pulled down too; a dummy vehicle with its diode, or a weak positive supply, leaves that peak at −12 V.',
  },
  'pilot-shorted': {
    where: 'between pilot and PE at the outlet or in its cable',
    cause: 'A cable is crushed, or a strand lies between two contacts.',
    hazard: 'None to people: the unit sees about 0 V and refuses, so the driver gets no charge.',
    tells:
      'The pilot reads about 0 V at the outlet with nothing plugged in, and the unit sees the same. With an open pilot conductor the outlet also reads 0 V, but the unit sees 12 V and behaves as if nothing were plugged in.',
  },
  'dummy-left-on-pilot': {
    where: 'a resistor of 2.74 kΩ with a diode from the pilot to PE, inside the unit',
    cause: 'A test dummy was left in after commissioning.',
    hazard:
      'The unit never sees an empty outlet, so a pulled plug or a lost PE does not end the session. A real vehicle beside the dummy can look like a request, and the outlet goes live.',
    tells:
      'The pilot reads about 9 V with nothing plugged in, as with a vehicle. Plug in: two resistors side by side bring the pilot to about 7 V, where a sound unit holds 9 V. Damp would pull the negative peak down too; the dummy’s diode leaves it at −12 V.',
  },
};
