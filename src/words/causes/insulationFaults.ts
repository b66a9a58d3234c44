/** What each cause of this kind is, where it sits, how it comes about, who is at risk and which test tells it. */
import type { CauseWords } from '../causeWords.ts';

export const insulationFaults: Readonly<Record<string, CauseWords>> = {
  'line-pe-insulation-low': {
    where: 'the cable between origin and unit, L1 to PE',
    cause: 'A nail or a staple went through the cable, or something crushed it.',
    hazard:
      'Current leaks from the line to PE and heats the spot: fire, and a shock if PE is lost. Damp and time make it worse.',
    tells:
      'With the unit taken off, L1 to PE reads under 1.0 MΩ and the other pairs read well. With the unit connected all live conductors are joined, so that test reads low too, but cannot tell which one leaks.',
  },
  'neutral-pe-insulation-low': {
    where: 'the cable between origin and unit, N to PE',
    cause: 'A nail or a staple went through the cable, or something crushed it.',
    hazard:
      'Part of the load current returns through PE instead of the neutral. Residual devices trip without a fault, or miss one.',
    tells:
      'With the unit taken off, N to PE reads under 1.0 MΩ and the other pairs read well. If it reads 0.00 MΩ, use a continuity tester: a link of neutral and PE reads near 0 Ω, damaged insulation reads far more.',
  },
  'line-neutral-insulation-low': {
    where: 'the cable between origin and unit, L1 to N',
    cause: 'Something crushed the cable, or a box on the way is damp.',
    hazard:
      'Current leaks from line to neutral and heats the spot until it burns. No residual device sees it, as nothing flows to earth.',
    tells:
      'With the unit taken off, L1 to N reads under 1.0 MΩ and both read well to PE. Once the unit is connected, the live conductors are joined for the test, and it cannot show this leak.',
  },
  'outlet-insulation-low': {
    where: 'the outlet or its cable, behind the contactor',
    cause: 'A car drove over it, or water stands in it.',
    hazard:
      'As soon as the outlet is supplied, current leaks to PE, or through whoever holds the wet connector.',
    tells:
      'From the outlet’s contacts, a line to PE reads under 1.0 MΩ. Measured from the supply terminals it reads well, as the open contactor lies between; a tether that is cracked reads low only while you bend it.',
  },
  'tether-insulation-moves': {
    where: 'the tether, L1 to PE, where it enters the connector',
    cause: 'The insulation of the core has cracked.',
    hazard:
      'When a driver moves the supplied tether, current leaks from the line to PE, or through the driver’s hand.',
    tells:
      'The crack is closed while the tether lies still, so L1 to PE at the outlet reads well. Bend the tether at the connector during that test: the reading drops under 1.0 MΩ; water in the connector reads low without bending.',
  },
  'arrester-aged': {
    where: 'the arrester on L1 in the unit, which now conducts from too low a voltage',
    cause: 'Many surges have worn it.',
    hazard: 'It conducts at mains voltage, heats up and may burn.',
    tells:
      'A test voltage of 250 V makes the aged arrester conduct, so insulation with the unit connected reads low to PE. With unit and arrester taken off the circuit reads well, so the cable is good; a damaged cable reads low both ways.',
  },
};
