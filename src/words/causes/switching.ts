/** What each cause of this kind is, where it sits, how it comes about, who is at risk and which test tells it. */
import type { CauseWords } from '../causeWords.ts';

export const switching: Readonly<Record<string, CauseWords>> = {
  'line-pole-welded': {
    where: 'the contactor; the unit does not read the contact that should report it',
    cause: 'An inrush current has welded the pole, and the sensing wire is off.',
    hazard:
      'The line reaches the connector with nothing plugged in. Whoever touches its contacts gets a shock.',
    tells:
      'Dead, this pole reads near 0 Ω where the sound poles read over-range. With power its line is live at the outlet with nothing plugged in, and yet the display says ready.',
  },
  'line-pole-welded-noticed': {
    where: 'the contactor; the contact that reports it works',
    cause: 'An inrush current has welded the pole.',
    hazard:
      'Nobody can start a charge, but the line reaches the connector all the same. Whoever touches its contacts gets a shock.',
    tells:
      'Dead, this pole reads near 0 Ω, as with any weld. With power its line is live at the outlet and the display shows a fault; if nothing watched the contactor, the display would say ready.',
  },
  'neutral-pole-welded': {
    where: 'the contactor; the unit does not read the contact that should report it',
    cause: 'An inrush current has welded the pole.',
    hazard:
      'The vehicle is never cut off from the neutral. If the neutral is crossed or becomes live, the connector becomes live too.',
    tells:
      'Neutral is near earth potential, so no voltage test at the outlet shows the weld. Only the dead test across every pole does: the neutral pole reads near 0 Ω and the line poles read over-range.',
  },
  'all-poles-welded': {
    where: 'the contactor; the unit does not read the contact that should report it',
    cause: 'A short circuit in a vehicle has welded the poles.',
    hazard:
      'Line and neutral reach the connector with nothing plugged in. Whoever touches its contacts gets a shock, and the unit cannot switch off.',
    tells:
      'Dead, every pole reads near 0 Ω; with a single weld the others read over-range. With power the outlet is live from the first moment, and its voltage stays when a vehicle stops asking.',
  },
  'opens-slowly': {
    where: 'the contactor’s coil and springs',
    cause: 'A spring is weak, or a suppressor keeps the coil’s current up too long.',
    hazard: 'The contacts are still live as the connector is pulled. An arc burns in the driver’s hand.',
    tells:
      'After the vehicle stops asking or is unplugged, the outlet stays live for more than 100 ms. Compare the time to closing: a unit that acts on the pilot late is late there by the same delay, a slow contactor is late only on opening.',
  },
  'sticks-now-and-then': {
    where: 'the contactor; the unit does not read the contact that should report it',
    cause: 'Its contacts are pitted: at one opening in three they hang for some seconds.',
    hazard: 'Somebody who unplugs at such a moment holds live contacts, and draws an arc.',
    tells:
      'Time C to B again and again, and every stop and trip: of three openings one comes seconds late, and the others are in time. One good reading proves little here; a contactor that is slow is late each time.',
  },
  'closes-slowly': {
    where: 'the control logic, before the contactor closes',
    cause: 'The unit’s programme has a fault.',
    hazard: 'Nobody is in danger: the vehicle waits too long and gives up.',
    tells:
      'From the vehicle’s asking (C) to voltage at the outlet takes more than 3 s. The contactor does close and opens in time; a unit that misses the request never closes, and one that acts on the pilot late also opens late.',
  },
  'line-pole-stuck-open': {
    where: 'one line pole of the contactor',
    cause: 'The contact is burnt away.',
    hazard: 'Nobody is in danger: the vehicle gets one line fewer, or nothing on a single-phase unit.',
    tells:
      'When the vehicle asks (C), the contactor sounds but this line brings no voltage to the outlet. R1 + R2 reads right to the unit’s supply terminals, so the core before the unit is whole; a missing line would read over-range there.',
  },
  'neutral-pole-stuck-open': {
    where: 'the neutral pole of the contactor',
    cause: 'The contact is burnt away.',
    hazard:
      'The outlet seems dead from line to neutral, but its line is live to earth. On three phases the neutral drifts, and too high a voltage may destroy the vehicle’s charger.',
    tells:
      'When the vehicle asks (C), line to PE reads 230 V at the outlet and line to neutral does not. The display is lit, so the neutral reaches the unit; with a missing neutral core the display stays dark.',
  },
  'contact-resistance': {
    where: 'one line pole of the contactor',
    cause: 'The contact is pitted.',
    hazard: 'The charging current heats the pole. The inside of the unit chars, and may burn.',
    tells:
      'The pole adds its ohms to the loop at the outlet on this line, to PE and to neutral alike. R1 + R2 ends before the contactor and reads right; a poor PE or neutral joint raises only the loop that returns through it.',
  },
  'bleed-too-strong': {
    where: 'the part across one line pole of the contactor',
    cause: 'A suppressor has failed with too little resistance.',
    hazard: 'More than 3.5 mA flows through whoever touches the connector, though the contactor is open.',
    tells:
      'At switch-on a meter shows voltage on this line of the outlet with nothing plugged in, as a weld does. The dead test across the pole tells them apart: some kilohms read over-range there, a weld reads near 0 Ω.',
  },
};
