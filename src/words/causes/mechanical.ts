/** What each cause of this kind is, where it sits, how it comes about, who is at risk and which test tells it. */
import type { CauseWords } from '../causeWords.ts';

export const mechanical: Readonly<Record<string, CauseWords>> = {
  'gland-loose': {
    where: 'the gland where the supply cable enters the unit',
    cause: 'The gland was never tightened, and the cable pulls at it.',
    hazard:
      'Water runs in along the cable, bridges live parts and corrodes joints. Whoever touches the wet unit may get a shock.',
    tells:
      'No reading shows it while the inside is dry. The inspection does: the gland turns by hand, with a water mark below it; an enclosure of too low an IP rating shows on its plate.',
  },
  'enclosure-ip-low': {
    where: 'the enclosure',
    cause: 'Somebody hung an indoor unit outside.',
    hazard:
      'Rain gets in, bridges live parts and corrodes joints. Whoever touches the wet unit may get a shock.',
    tells:
      'No reading shows it while the inside is dry. The inspection does: compare the plate with the place, as outdoors needs IP44 or better; with a loose gland the plate is right.',
  },
  'connector-cracked': {
    where: 'the tether’s connector',
    cause: 'The connector was dropped and driven over.',
    hazard:
      'While the car charges, fingers reach live contacts through the crack. Water gets in the same way.',
    tells:
      'No reading shows it while the inside is dry. The inspection does: the shell is cracked through and a contact is burnt; water in it would show as low insulation at the outlet.',
  },
  'lid-spring-broken': {
    where: 'the socket-outlet’s lid',
    cause: 'Somebody forced the lid.',
    hazard: 'The lid hangs open. Rain wets the contacts, and a child’s fingers or a tool can get at them.',
    tells:
      'No reading shows it while the contacts are dry. The inspection does: let go of the lid, and it stays open; water in the outlet would show as low insulation there.',
  },
  'tether-strained': {
    where: 'the tether’s entry into the unit',
    cause: 'The clamp of the strain relief is missing.',
    hazard:
      'Every pull on the tether goes into its conductors. If the protective conductor parts first, the vehicle has no earth.',
    tells:
      'No reading shows it while every core is whole. The inspection does: pull gently, and the tether slides out some way; a core that has parted already shows as you bend the tether in the test from unit to outlet.',
  },
  'no-impact-guard': {
    where: 'the unit’s place beside the parking space',
    cause: 'The layout of the bays was changed, and the post was left out.',
    hazard: 'A car that rolls on breaks the unit open. Whoever comes to look can touch live parts.',
    tells:
      'No instrument shows it. The inspection does: the unit stands at bumper height in line with the bay, with no post before it.',
  },
  'house-metal-within-reach': {
    where: 'an outside tap beside the unit, on a metal pipe that is bonded to the house’s earth',
    cause: 'The unit was moved to the other side of the drive after the two earths had been planned.',
    hazard:
      'Whoever holds the tap and touches the vehicle stands between two earths. If the supply’s PEN conductor breaks, or a line touches either, the voltage between them passes through that body.',
    tells:
      'No instrument shows it, for the two earths are apart as they should be. The inspection does: a bonded tap stands within reach of the unit; two earths that are joined by metal read near 0 Ω in the test that holds one against the other.',
  },
  'terminal-loose': {
    where: 'the unit’s supply terminals',
    cause: 'The screw was not tightened to its torque.',
    hazard:
      'The charging current heats the joint for hours. Its insulation chars, and it may set the unit on fire.',
    tells:
      'The cold joint still touches well enough, so no reading changes. The inspection shows it: the screw turns by hand and the sleeve is browned; a poor joint in the neutral or PE adds ohms to a loop.',
  },
  'labels-missing': {
    where: 'the board',
    cause: 'The installer left in a hurry and did not fill in the schedule or fix the notices.',
    hazard: 'Somebody switches off the wrong circuit, believes this one dead, and touches a live part.',
    tells:
      'No instrument shows it. The inspection does: the circuit is not in the board’s schedule, and the six-monthly test notice is missing.',
  },
};
