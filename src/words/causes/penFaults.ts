/** What each cause of this kind is, where it sits, how it comes about, who is at risk and which test tells it. */
import type { CauseWords } from '../causeWords.ts';

export const penFaults: Readonly<Record<string, CauseWords>> = {
  'pen-open': {
    where:
      'the joint of the service cable; the setting is the resistance from the main earthing terminal to the ground',
    cause: 'A corroded joint has parted.',
    hazard:
      'Load current has no neutral to return by, so it lifts the earthing terminal. The vehicle’s body and every earthed part stand at a dangerous voltage.',
    tells:
      'The distributor’s earth has no way back to the source, so Ze gives no reading; with everything connected, the loop at the origin reads ohms to tens of ohms through the ground. A high supply loop still gives a Ze, and a loose main earthing conductor leaves Ze right.',
  },
  'pen-open-in-street': {
    where: 'the distributor’s main, beyond the neighbours; the setting is their load on each other line',
    cause: 'The main in the street is broken.',
    hazard:
      'The neighbours’ loads pull the neutral sideways. The voltage to it may rise until equipment burns, and every earthed part and the vehicle’s body become live.',
    tells:
      'The neutral shifts, so line to neutral at the origin leaves its limits, and the earthing terminal shows tens of volts to true earth. A supply that is merely high or low leaves the earthing terminal near true earth.',
  },
  'pen-open-sideways': {
    where: 'the distributor’s main, beyond a neighbour whose load is on another line',
    cause: 'The main in the street is broken, and the loads left on it pull the neutral to one side.',
    hazard:
      'Every earthed part and the vehicle’s body stand at more than 70 V to the ground. A measure that watches line to neutral does not open, because that voltage hardly changes.',
    tells:
      'Ze gives no reading. Line to neutral stays inside its limits, as the neutral has moved at right angles to it; only the voltage from the earthing terminal to a remote rod shows tens of volts. With neighbours on two lines, line to neutral leaves its limits too.',
  },
  'pen-joint-warms': {
    where: 'a joint of the supply’s PEN conductor; the setting is what it adds at 16 A',
    cause: 'A corroded joint warms under load and loosens. It closes again as it cools.',
    hazard:
      'Under load the earthing terminal and the vehicle’s body rise from the ground’s potential for as long as the load lasts. One day the joint stays open.',
    tells:
      'Ze is measured with everything switched off, so the joint is cold and Ze reads right. Switch on a load of 10 A: line to neutral at the origin falls by far more than the loop explains. A loop that is simply high shows in Ze.',
  },
  'open-pen-blind': {
    where: 'the measure’s sensing inside the unit',
    cause: 'The sensing has failed, or its electrode was never connected.',
    hazard:
      'If the supply’s PEN breaks, the vehicle’s body becomes live and stays so for whoever touches it.',
    tells:
      'No reading changes while the supply is sound. In the test of the open-PEN measure the outlet stays live and the contactor never opens; a late measure opens after some more seconds.',
  },
  'open-pen-late': {
    where: 'the measure’s timer inside the unit',
    cause: 'The timer’s programme has a fault.',
    hazard:
      'If the supply’s PEN breaks, the vehicle’s body stays live for longer than 5 s. Whoever touches it then gets a long shock.',
    tells:
      'In the test of the open-PEN measure, time from the start of the disturbance to the contactor’s sound: it comes after more than 5 s. Wait on before you call the measure dead, as a blind one never opens.',
  },
  'open-pen-leaves-earth': {
    where: 'the measure’s PE pole inside the unit',
    cause: 'A device that opens only line and neutral was fitted, or the PE pole is stuck.',
    hazard:
      'If the supply’s PEN breaks, PE itself becomes live. The vehicle’s body stays joined to it, though charging has stopped.',
    tells:
      'The contactor opens in time, so the outlet’s lines go dead and all looks well. During the disturbance, measure between the earthing terminal and PE at the outlet: about 0 V shows that the two are still joined.',
  },
};
