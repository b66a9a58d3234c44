/**
 * Keys to whether shipped jobs can be solved, written by hand from each scenario's papers and fault: what the tests show
 * of it, what reads the same, the shortest way. `rivals` are the causes that somebody might take for it, which the quick
 * test tries; `npm run soak` tries the whole catalogue, and must come to the same but for
 * the ways of jobs in which nothing is wrong, which have more to rule out then.
 */
export interface Key {
  readonly id: string;
  readonly why: readonly string[];
  readonly rivals: readonly string[];
  readonly revealedBy: readonly string[];
  readonly lookalikes: readonly string[];
  readonly shortest: readonly string[];
}

export const KEYS: readonly Key[] = [
  {
    id: 'mill-race',
    why: [
      '1.8 Ω more in the circuit PE: 1.98 Ω where 0.18 Ω belong, in R2 and in R1 + R2. Then the work stops.',
      'A borrowed earth joins the unit to another circuit’s PE; at about 2 Ω of it the same figure is read, and nothing that is dead tells whose copper it is.',
      'An open PE reads beyond the range, a thinner conductor 0.3 Ω at most; the tether’s PE is another test.',
    ],
    rivals: ['borrowed-earth', 'pe-undersized', 'pe-open', 'outlet-pe-joint', 'case-unearthed'],
    revealedBy: ['pe-circuit', 'r1r2-polarity'],
    lookalikes: ['borrowed-earth'],
    shortest: ['pe-circuit'],
  },
  {
    id: 'orchard-lane',
    why: [
      'The d.c. detector never acts: the ramp of smooth d.c. to 6 mA goes to its end, and the trainee stops there.',
      'One that acts at 7 mA or above goes to the end of the same ramp, and one that takes 12 s or more does so too.',
      'One that is blind to one polarity acts in the other half of the same test.',
    ],
    rivals: ['direct-trips-late', 'direct-slow', 'direct-one-way', 'direct-trips-early', 'residual-dead'],
    revealedBy: ['dc-ramp'],
    lookalikes: ['direct-trips-late', 'direct-slow'],
    shortest: ['dc-ramp'],
  },
  {
    id: 'bakery-lane',
    why: [
      'The detector acts on positive smooth d.c. and not on negative: only the ramp tries both.',
      'Dead, late or slow it would fail with both polarities.',
    ],
    rivals: [
      'direct-detector-dead',
      'direct-trips-late',
      'direct-slow',
      'residual-trips-late',
      'residual-dead',
    ],
    revealedBy: ['dc-ramp'],
    lookalikes: [],
    shortest: ['dc-ramp'],
  },
  {
    id: 'glebe-close',
    why: [
      'The neutral pole stays closed: nothing shows at any live voltage. Dead, outlet N to supply N is 0 Ω where an open contact belongs, and so the insulation of the outlet is that of the supply’s neutral.',
      'A welded line pole, or all of them, joins other pairs.',
    ],
    rivals: ['line-pole-welded', 'line-pole-welded-noticed', 'all-poles-welded', 'neutral-pole-stuck-open'],
    revealedBy: ['insulation-outlet', 'poles-open'],
    lookalikes: [],
    shortest: ['poles-open'],
  },
  {
    id: 'station-yard',
    why: [
      'Whatever cable is put in, the unit offers its 32 A; one without a resistor is even supplied. The test of cable sizes alone puts others in than the customer’s own of 32 A.',
      'A coding misread makes one size into another, and refuses a plug without a resistor.',
    ],
    rivals: ['coding-read-too-large', 'coding-read-too-small', 'proximity-contact-dirty', 'offer-too-high'],
    revealedBy: ['coding-sizes'],
    lookalikes: [],
    shortest: ['coding-sizes'],
  },
  {
    id: 'sailmakers-yard',
    why: [
      '1.5 kΩ of a 13 A cable reads as 517 Ω, a cable of 20 A: the wrong offer shows with other cables than the customer’s alone.',
      'Ignored coding would offer 32 A for each and supply a plug without a resistor; read too small it would offer too little.',
      'Taken for a 20 A cable, a 13 A one may carry 18 A, which is not cut off in use either.',
    ],
    rivals: [
      'coding-ignored',
      'coding-read-too-small',
      'proximity-contact-dirty',
      'offer-too-high',
      'over-code-ignored',
    ],
    revealedBy: ['coding-sizes', 'coding-in-use'],
    lookalikes: [],
    shortest: ['coding-sizes'],
  },
  {
    id: 'tannery-wharf',
    why: [
      'The bolt never goes home, and its feedback says that it does: no lock is heard before the contactor, and pulled, the plug comes out live. The trainee stops there.',
      'The test of cable sizes comes before and asks for supply too: there no bolt is heard either.',
    ],
    rivals: ['lock-will-not-release', 'coding-ignored', 'line-pole-stuck-open'],
    revealedBy: ['coding-sizes', 'hold'],
    lookalikes: [],
    shortest: ['hold'],
  },
  {
    id: 'fen-barn',
    why: [
      '16 A are set, and the sheet says so: nothing is wrong, and a job in which nothing is wrong can be solved.',
      'What these rivals would show stands on the sheet that was handed over: nothing is left to tell.',
    ],
    rivals: ['pe-joint', 'offer-too-high', 'direct-detector-dead'],
    revealedBy: [],
    lookalikes: [],
    shortest: [],
  },
  {
    id: 'harbour-mews',
    why: [
      'Nothing is wrong: the way has to rule out what is tried. A loose gland shows by looking alone.',
      'A contactor that takes 0.15 s or more to open prolongs every trip through it; of the tests that time one that at five times the rating takes fewest taps (19; the ramp 22).',
    ],
    rivals: ['gland-loose', 'opens-slowly'],
    revealedBy: [],
    lookalikes: [],
    shortest: ['inspect', 'residual-five'],
  },
  {
    id: 'find-stackyard',
    why: [
      'Metal joins the unit’s PE bar to the house’s earth: 0.2 Ω and the circuit PE’s 0.03 Ω from one earthing terminal to the other, where the soil round a rod of 62 Ω belongs.',
      'The rod by itself is right, and so is the circuit’s PE. The trainee stops before power, where both loops would show it too.',
      'A poor rod or clamp reads more between the earths and never less; bonded metal within reach is seen and joins nothing.',
    ],
    rivals: ['electrode-poor', 'electrode-clamp', 'house-metal-within-reach', 'pe-joint', 'borrowed-earth'],
    revealedBy: ['earths-apart'],
    lookalikes: [],
    shortest: ['earths-apart'],
  },
  {
    id: 'granary-mews',
    why: [
      'The sensor feels this board and not the next point: only where that charges does the offer stay too high.',
      'Reversed or round the unit’s own circuit it would not answer a known load on this board either; set too high it would answer both, too late.',
    ],
    rivals: [
      'service-sensor-reversed',
      'service-sensor-misplaced',
      'service-limit-set-high',
      'limit-ignored',
      'offer-too-high',
    ],
    revealedBy: ['next-point'],
    lookalikes: [],
    shortest: ['limit', 'next-point'],
  },
];
