/** What each cause of this kind is, where it sits, how it comes about, who is at risk and how it shows. */
import type { CauseWords } from '../causeWords.ts';

export const proximityRetention: Readonly<Record<string, CauseWords>> = {
  'coding-ignored': {
    where: 'the control logic: it treats any cable, and a plug with no coding, as large enough',
    cause: 'The rule is switched off in the unit’s settings or programme.',
    hazard:
      'The vehicle draws the unit’s full current through a small cable. The cable overheats, and the breaker is too large to see it.',
    tells:
      'The unit offers every size of cable its full current, and offers it to a plug with no coding resistor as well. A drifted resistor would still refuse the uncoded plug.',
  },
  'coding-read-too-large': {
    where: 'the unit’s 1 kΩ resistor against which it reads the coding',
    cause: 'The resistor has drifted upwards.',
    hazard: 'The unit offers a small cable more current than it can carry. The cable overheats.',
    tells:
      'With too high a resistor the contact’s voltage is too low, which looks like a smaller coding resistor: a 20 A cable is offered 32 A. Try a plug with no coding: this unit refuses it, and one that ignores coding does not.',
  },
  'coding-read-too-small': {
    where: 'the unit’s 1 kΩ resistor against which it reads the coding',
    cause: 'The resistor has drifted downwards.',
    hazard: 'None to people: the unit offers too little, and the vehicle charges slowly or not at all.',
    tells:
      'With too low a resistor the contact’s voltage is too high, which looks like a larger coding resistor. Try each size: this fault shifts the 13 A cable too, while a dirty contact adds the same few ohms to all and shows at 32 and 63 A.',
  },
  'proximity-contact-dirty': {
    where: 'the socket-outlet’s proximity contact (PP)',
    cause: 'Corrosion or dirt lies between pin and sleeve.',
    hazard: 'None to people: the unit takes a 32 A cable for a smaller one, and the vehicle charges slowly.',
    tells:
      'The dirt adds its ohms to the coding resistor, so a 32 A cable (220 Ω) is offered 20 A or less. Try a 13 A cable (1500 Ω): there the same ohms matter little; a drifted resistor in the unit shifts that size too.',
  },
  'tether-coding-wrong': {
    where: 'the connector: its resistor has several times the resistance that the rating asks for',
    cause: 'A repair used the resistor that was to hand.',
    hazard: 'None to people: the vehicle takes the cable for a smaller one and draws less, or refuses.',
    tells:
      'Measure from proximity contact (PP) to PE in the connector: it reads, for one, 680 Ω (20 A) where the marked 32 A needs 220 Ω. The duty is right, because the unit never reads this resistor; a low offer would lower the duty.',
  },
  'over-code-ignored': {
    where: 'the control logic: it does not compare the current drawn with the cable’s coding',
    cause: 'There is a mistake in the programme, or the unit’s meter is not read.',
    hazard: 'The cable carries more than it is made for and overheats. The breaker is too large to see it.',
    tells:
      'Each cable gets the right duty, so the coding is read. Make the stand-in draw more than the coding: the outlet stays live after the time that the sheet gives under “cable’s coding”.',
  },
  'lock-does-not-engage': {
    where: 'the lock’s motor',
    cause: 'The motor is worn and does not drive the pin home.',
    hazard: 'None to people: the outlet stays dead, so the vehicle does not charge.',
    tells:
      'You hear no lock, and the plug comes out at a pull. The lock’s feedback is true, so the contactor stays open when the vehicle asks (C). If the outlet went live all the same, the feedback would be false.',
  },
  'lock-not-home': {
    where: 'the lock’s motor, and the feedback switch that says the pin is home',
    cause: 'The pin is bent, and the feedback switch is stuck at “held”.',
    hazard: 'The plug comes out while current flows. Live contacts part in somebody’s hand, with an arc.',
    tells:
      'The feedback says held, so the contactor closes, and the plug still comes out at a pull. Voltage and pilot are right throughout; only the pull shows the fault.',
  },
  'lock-will-not-release': {
    where: 'the lock’s motor',
    cause: 'Grit or ice blocks the pin, or the programme has a mistake.',
    hazard: 'None to people: the driver cannot take the cable away.',
    tells:
      'End the charge and ask for release: the outlet is dead, and the plug still does not come out. Test for voltage first: while the outlet is live, the lock is right to hold the plug.',
  },
};
