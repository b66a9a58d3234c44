/** What each cause of this kind is, where it sits, how it comes about, who is at risk and which test tells it. */
import type { CauseWords } from '../causeWords.ts';

export const protectiveConductor: Readonly<Record<string, CauseWords>> = {
  'pe-not-landed': {
    where: 'between the board’s earth bar and the unit’s PE terminal',
    cause: 'The installer left the core folded back, or missed it at the bar.',
    hazard:
      'The case and the vehicle have no earth. A live core that touches them makes them live, and nothing trips until somebody is shocked.',
    tells:
      'No test current gets from the earthing terminal to the unit, so that path reads over-range. The path from the unit to the outlet still reads near 0 Ω, so the break is in the circuit.',
  },
  'pe-joint': {
    where: 'the PE terminal on the supply side of the unit',
    cause: 'The screw is clamped on the insulation, or was not tightened.',
    hazard:
      'A fault current heats the joint. The breaker opens too late, and until then the case and the vehicle stand at a voltage.',
    tells:
      'The joint adds its ohms to the circuit’s protective conductor, so earthing terminal to unit reads above length × mΩ/m. A loop test at the outlet confirms it: line to PE reads high, line to neutral reads right.',
  },
  'pe-moves-with-cover': {
    where: 'the PE terminal on the supply side of the unit: the cover presses on the core',
    cause: 'The core is too long and was folded under the cover. Its screw holds the insulation.',
    hazard:
      'With the cover on, the case and the vehicle have no earth. A live core that touches them makes them live, and nothing trips until somebody is shocked.',
    tells:
      'The dead test is done with the cover off: the core hangs free, touches, and reads right. With the cover on and the outlet supplied, line to PE does not read 230 V and a loop test finds no return. A core that is not connected shows in the dead test already.',
  },
  'pe-undersized': {
    where: 'the whole run from board to unit: 1.5 mm² instead of the area in the papers',
    cause: 'The installer took a cable with a reduced earth core.',
    hazard:
      'A fault current can burn the core through before the breaker opens. The case and the vehicle then have no earth.',
    tells:
      'A thinner core has more ohms for each metre, so earthing terminal to unit reads what the same length of 1.5 mm² makes. A poor joint can read the same: look at the core’s size, because a remade joint changes nothing here.',
  },
  'borrowed-earth': {
    where: 'the unit’s PE bar is joined to metal of the building; the circuit’s own conductor is broken',
    cause: 'The circuit’s core broke, and somebody used the nearest metal as an earth.',
    hazard:
      'A plumber or a builder who alters the pipe or the steel takes the earth away. The case and the vehicle then become live in a fault.',
    tells:
      'The test current returns through the building’s metal, so earthing terminal to unit reads the ohms of the metal instead of length × mΩ/m. A poor joint reads the same there. In the test of the open-PEN measure the metal still joins the unit to the earthing terminal once the measure has opened; without such a measure, look for the lead from the unit’s PE bar to the metal.',
  },
  'outlet-pe-open': {
    where: 'between the unit’s PE bar and the outlet’s or tether’s PE contact',
    cause: 'A terminal inside the unit was not tightened, or the tether’s core has parted.',
    hazard:
      'The pilot returns through PE, so the unit finds no vehicle. If somebody bypasses that, a fault makes the vehicle’s body live.',
    tells:
      'Unit to outlet reads over-range, though earthing terminal to unit and the unit’s case read right. When a vehicle is plugged in, the display stays at ready; an open pilot conductor does the same, but then PE reads right.',
  },
  'outlet-pe-joint': {
    where: 'between the unit’s PE bar and the outlet’s PE contact',
    cause: 'A crimp was badly made, or a contact has corroded.',
    hazard:
      'While a fault current flows, volts drop across the joint. Whoever touches the vehicle meets them.',
    tells:
      'The joint adds its ohms to the path from unit to outlet, and to the loop from line to PE at the outlet. Earthing terminal to unit and the unit’s case read right, so the joint lies behind the PE bar.',
  },
  'tether-pe-moves': {
    where: 'the PE core of the tether, where it enters the connector',
    cause: 'A car drove over the tether, or it hangs without strain relief.',
    hazard:
      'As the cable moves, the vehicle loses its earth for moments. A fault at such a moment makes its body live.',
    tells:
      'The broken ends touch while the tether lies still, so unit to outlet reads right. Bend the tether at the connector during that test: the reading jumps, and a poor joint inside the unit would keep still.',
  },
  'case-unearthed': {
    where: 'between the unit’s PE terminal and its metal case',
    cause: 'Somebody took the front off and left the case’s bonding lead off afterwards.',
    hazard:
      'A live core that touches the case makes it live. No current flows to earth, so nothing trips until somebody touches the metal.',
    tells:
      'The unit’s PE terminal to its case reads over-range, though the outlet reads right. A loop test at the outlet does not show it, since its current never passes the case.',
  },
  'earthing-conductor-loose': {
    where: 'between the distributor’s earth and the main earthing terminal',
    cause: 'The terminal was disturbed when the meter was changed.',
    hazard:
      'In a fault anywhere on the site, every earthed case rises to a voltage, and the breaker may open too late.',
    tells:
      'Ze is measured with this conductor off, so Ze reads right. At the origin with everything connected, line to earth reads high and line to neutral reads right; a poor supply shows in Ze already.',
  },
  'bonding-missing': {
    where: 'between the main earthing terminal and the metal pipes of the building',
    cause: 'A plumber put in a new length of pipe and left the bonding conductor off.',
    hazard:
      'In a fault the earthed cases rise to a voltage and the pipes do not. Whoever touches both gets the difference.',
    tells:
      'The circuit’s own conductors are sound, so the tests of PE and of the loop read right. The inspection finds the cut conductor at the pipe; a loose main earthing conductor would raise the loop at the origin.',
  },
  'open-pen-pole-worn': {
    where: 'the pole in the protective conductor inside the unit',
    cause: 'Many operations have worn the contact.',
    hazard:
      'While a fault current flows, volts drop across the pole. Whoever touches the vehicle meets them, and the breaker may open too late.',
    tells:
      'The pole adds its ohms from the unit’s PE terminal to everything behind it, so the outlet and mostly the case read high together. With a poor joint at the outlet the case reads right; if the pole stands open without power, a loop test at the outlet shows the extra ohms.',
  },
  'electrode-poor': {
    where: 'the installation’s own electrode',
    cause: 'The rod is short, stands in rock, or stands in clay that has dried and shrunk.',
    hazard:
      'Too little fault current flows through the soil. The residual device trips late or never, and the case stays live for whoever touches it.',
    tells:
      'The electrode, measured alone, reads hundreds of ohms above its papers, and line to PE of every loop rises with it. A corroded clamp raises the loops as well, but leaves the electrode’s own reading as in its papers.',
  },
  'electrode-clamp': {
    where: 'between the electrode and its conductor',
    cause: 'There is no inspection pit, so water stands on the clamp.',
    hazard:
      'Too little fault current gets through the clamp. The residual device trips late or never, and the case stays live for whoever touches it.',
    tells:
      'The inspection finds green corrosion on the clamp. The clamp adds its ohms to line to PE of every loop, as a poor rod does; the electrode, measured alone at the rod, reads as in its papers, and a rod that is poor itself reads high there too.',
  },
  'earths-joined': {
    where: 'from the unit’s PE bar to metal that the distributor’s neutral earths',
    cause: 'A cable’s armour is earthed at both ends, or a fence runs on to the next house.',
    hazard:
      'If the supply’s neutral breaks, load current lifts it to a dangerous voltage. The joined metal brings that voltage to the vehicle’s body.',
    tells:
      'The test current returns through metal instead of soil, so line to earth at the origin reads almost as low as line to neutral. The electrode, measured alone, still reads as in its papers; a very good electrode would read low there as well. Where the house has another earth than the circuit, the test that holds one against the other reads near 0 Ω before power.',
  },
};
