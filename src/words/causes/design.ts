/** Wrong designs, which stand in the papers: what each is, where, how it comes about, who is at risk and how it shows. */
import type { CauseWords } from '../causeWords.ts';

export const design: Readonly<Record<string, CauseWords>> = {
  'breaker-over-cable': {
    where: 'the papers: the rating of the circuit’s breaker',
    cause: 'The designer chose the next size up so that the breaker would not trip.',
    hazard:
      'An overload flows that heats the cable for hours, and the breaker does not open. The cable’s insulation fails, and it can start a fire.',
    tells:
      'No reading shows it. In the papers, compare the breaker’s rating with what the cable carries as it is laid: the rating is higher. The breaker fitted is the one in the papers; if they differed, the work would be wrong and not the design.',
  },
  'set-above-breaker': {
    where: 'the papers: the unit’s set current and the rating of its breaker',
    cause: 'The unit was left at the setting it came with, on a circuit with a smaller breaker.',
    hazard:
      'None to people: the breaker warms under the charging current and trips after minutes or hours. Somebody may then fit a larger breaker that the cable does not carry.',
    tells:
      'In the papers the unit’s set current is higher than the breaker’s rating. The offer in connected (B) agrees with the sheet, so the unit does what it is set to; with a wrong calibration it would offer more than its setting.',
  },
  'set-above-cable': {
    where: 'the papers: the area of the circuit’s conductors and the unit’s set current',
    cause: 'An old circuit was used again, and nobody compared its cable with what the unit takes.',
    hazard:
      'The charging current alone overheats the cable for hours, without any overload. Its insulation fails, and it can start a fire.',
    tells:
      'In the papers the cable carries less than the unit’s set current, and so less than its breaker. Measured R1 + R2 agrees with the papers; a bad joint would make it higher than they say.',
  },
  'conductors-too-small-for-run': {
    where: 'the papers: the area of the circuit’s conductors',
    cause: 'The designer chose the cable by its current, and did not work out its volt drop.',
    hazard:
      'None to people at first: too little voltage reaches the unit under load, so it stops or locks out. The cable runs warm.',
    tells:
      'Work out the volt drop from length, area and current in the papers: it is over the limit. Measured R1 + R2 agrees with the papers; with a bad joint it would be higher than they say.',
  },
  'insulation-not-counted': {
    where: 'the papers: how the cable is laid',
    cause: 'Others insulated the wall. The designer chose the cable as if it were clipped to the surface.',
    hazard:
      'The cable cannot lose its heat inside the insulation. It overheats at a current that the breaker allows, and can start a fire.',
    tells:
      'No reading shows it, for the conductors are right when cold. In the papers, look for the length inside insulation, and reduce what the cable carries: it falls below the breaker’s rating.',
  },
  'protective-too-small': {
    where: 'the papers: the area of the protective conductor',
    cause: 'Nobody worked out the heat of a fault (the adiabatic sum).',
    hazard:
      'An earth fault heats the conductor until it burns open. The case then stays live for whoever touches it.',
    tells:
      'Work out the least area from fault current and clearing time in the papers: the conductor is smaller. Its measured resistance agrees with the papers; one fitted smaller than they say would read higher.',
  },
  'service-overloaded': {
    where: 'the papers: what house and unit ask of the service',
    cause: 'The unit was counted with diversity, like a cooker, but it draws full current for hours.',
    hazard: 'The service’s fuse and tails run hot for hours. The fuse can blow, or its holder can burn.',
    tells:
      'No reading on an idle site shows it. Add the house’s demand and the unit’s set current in the papers: the sum is over the service’s rating. No load limit and no service sensor on the sheet brings it down.',
  },
  'service-limit-above-rating': {
    where: 'the papers: the limit that the unit keeps the service to',
    cause: 'Whoever set the unit took the limit from another fuse, or from the rating of the meter’s tails.',
    hazard: 'The unit gives way too late. The service’s fuse runs hot for hours, and can blow.',
    tells:
      'The unit keeps to its limit, so no reading shows it. Hold the sheet’s line “service sensor” against the line “service” in the papers: the limit is above the rating.',
  },
};
