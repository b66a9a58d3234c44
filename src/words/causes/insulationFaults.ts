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
  'flash-over-under-lug': {
    where: 'the unit’s supply terminals: a strand of L1 lies close to PE',
    cause: 'A strand was left outside when the core was put into its terminal.',
    hazard:
      'A surge on the mains jumps the gap and leaves a burnt track. The next ones find it easier, until line and PE are joined.',
    tells:
      'At 500 V, unit taken off, L1 to PE reads under 1.0 MΩ, because the voltage jumps the gap. At 250 V with the unit connected it reads well; a damaged cable reads low at both.',
  },
  'outlet-neutral-earth-joined': {
    where: 'the outlet or its cable, N to PE, behind the residual device',
    cause: 'The tether was crushed, or a strand bridges two contacts.',
    hazard:
      'Part of the charging current returns through PE, and the residual device trips as soon as a vehicle draws current. It may also miss part of the current through a person.',
    tells:
      'From the outlet’s contacts, live conductors to PE read 0.00 MΩ. From the supply terminals insulation reads right, as the open contactor lies between; with the circuit’s own neutral damaged, that test reads low.',
  },
  'water-in-connector': {
    where: 'the tether’s connector, L1 to PE',
    cause: 'The connector lay in a puddle. It dries within hours.',
    hazard:
      'As soon as the outlet is supplied, current leaks through the wet connector, or through whoever holds it.',
    tells:
      'From the outlet’s contacts a line to PE reads under 1.0 MΩ, and more each time you come back. Measured from the supply terminals it reads right; a crushed tether keeps its low reading when it is dry.',
  },
  condensation: {
    where: 'inside the unit, on the supply side of its contactor, L1 to PE',
    cause:
      'The night was cold and damp, and the unit’s gland or seal lets air in. It dries as the day warms.',
    hazard:
      'Current leaks to PE and may trip the residual device each morning. Over the years the damp corrodes contacts.',
    tells:
      'With the unit connected, live conductors to PE read under 1.0 MΩ, and more each time you come back. With the unit taken off, the cable reads right; a damaged cable reads low both ways.',
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
