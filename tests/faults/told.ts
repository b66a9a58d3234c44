/*
 * What the words on each fault say of tests, tied to tests that there are: a phrase of those words, the test action that
 * it speaks of, and whether that test breaks a line or limit with the fault at its usual severity, or with another
 * cause that the words hold beside it.
 */

export interface Told {
  readonly says: string;
  readonly test: string;
  readonly shows: boolean;
  /** The cause that it is said of; left out, the fault itself. */
  readonly of?: string;
}

const shows = (says: string, test: string, of?: string): Told => ({
  says,
  test,
  shows: true,
  ...(of === undefined ? {} : { of }),
});
const right = (says: string, test: string, of?: string): Told => ({ ...shows(says, test, of), shows: false });
const seen = (says: string): readonly Told[] => [shows(says, 'inspect')];

export const TOLD: Readonly<Record<string, readonly Told[]>> = {
  'pe-not-landed': [
    shows('from the earthing terminal to the unit', 'pe-circuit'),
    right('from the unit to the outlet still reads near 0 Ω', 'pe-outlet'),
  ],
  'pe-joint': [
    shows('earthing terminal to unit reads above', 'pe-circuit'),
    shows('A loop test at the outlet confirms it', 'loop'),
  ],
  'pe-moves-with-cover': [
    right('The dead test is done with the cover off', 'pe-circuit'),
    shows('line to PE does not read 230 V', 'state-c'),
    shows('a loop test finds no return', 'loop'),
    shows('A core that is not connected', 'pe-circuit', 'pe-not-landed'),
  ],
  'pe-undersized': [
    shows('earthing terminal to unit reads what', 'pe-circuit'),
    shows('A poor joint can read the same', 'pe-circuit', 'pe-joint'),
  ],
  'borrowed-earth': [
    shows('earthing terminal to unit reads the ohms of the metal', 'pe-circuit'),
    shows('A poor joint reads the same there', 'pe-circuit', 'pe-joint'),
    shows('In the test of the open-PEN measure', 'open-pen'),
    right('In the test of the open-PEN measure', 'open-pen', 'pe-joint'),
  ],
  'outlet-pe-open': [
    shows('Unit to outlet reads over-range', 'pe-outlet'),
    right('earthing terminal to unit', 'pe-circuit'),
    right('but then PE reads right', 'pe-outlet', 'pilot-conductor-open'),
    shows('an open pilot conductor does the same', 'state-b', 'pilot-conductor-open'),
  ],
  'outlet-pe-joint': [
    shows('the path from unit to outlet', 'pe-outlet'),
    shows('the loop from line to PE at the outlet', 'loop'),
    right('Earthing terminal to unit', 'pe-circuit'),
  ],
  'tether-pe-moves': [shows('during that test: the reading jumps', 'pe-outlet')],
  'case-unearthed': [
    shows('PE terminal to its case reads over-range', 'pe-outlet'),
    right('A loop test at the outlet does not show it', 'loop'),
  ],
  'earthing-conductor-loose': [
    right('Ze reads right', 'ze'),
    shows('At the origin with everything connected', 'pfc'),
    shows('a poor supply shows in Ze already', 'ze', 'supply-loop-high'),
  ],
  'bonding-missing': [
    right('the tests of PE and of the loop read right', 'pe-circuit'),
    right('the tests of PE and of the loop read right', 'loop'),
    shows('The inspection finds the cut conductor', 'inspect'),
    shows('a loose main earthing conductor would raise', 'pfc', 'earthing-conductor-loose'),
  ],
  'open-pen-pole-worn': [
    shows('the outlet and mostly the case read high together', 'pe-outlet'),
    shows('a loop test at the outlet shows the extra ohms', 'loop'),
  ],
  'electrode-poor': [
    shows('The electrode, measured alone, reads', 'electrode'),
    shows('line to PE of every loop rises', 'loop'),
    shows('A corroded clamp raises the loops as well', 'loop', 'electrode-clamp'),
    right('leaves the electrode’s own reading', 'electrode', 'electrode-clamp'),
  ],
  'electrode-clamp': [
    shows('The inspection finds', 'inspect'),
    shows('line to PE of every loop', 'loop'),
    right('the electrode, measured alone at the rod', 'electrode'),
    shows('a rod that is poor itself reads high there', 'electrode', 'electrode-poor'),
  ],
  'earths-joined': [
    shows('line to earth at the origin', 'pfc'),
    right('The electrode, measured alone, still reads', 'electrode'),
    shows('the test that holds one against the other reads near 0 Ω', 'earths-apart'),
  ],

  'line-neutral-crossed': [
    shows('the unit’s line terminal reads open', 'r1r2-polarity'),
    shows('A broken line also reads open', 'r1r2-polarity', 'line-missing'),
  ],
  'lines-crossed': [
    shows('L3 terminal reads R1 + R2', 'r1r2-polarity'),
    shows('reverse rotation', 'state-c'),
  ],
  'line-missing': [
    shows('R1 + R2 reads over-range', 'r1r2-polarity'),
    right('so R1 + R2 reads right there', 'r1r2-polarity', 'line-pole-stuck-open'),
  ],
  'line-loss-unnoticed': [
    right('Every reading is right while', 'state-c'),
    shows('Switch off a line', 'lost-line'),
  ],
  'neutral-missing': [
    shows('the display stays dark at switch-on', 'energise'),
    right('The supply at the origin is right', 'supply-volts'),
    right('R1 + R2 reads right', 'r1r2-polarity'),
    shows('the display is dark too', 'energise', 'line-missing'),
    shows('but R1 + R2 reads over-range', 'r1r2-polarity', 'line-missing'),
  ],
  'neutral-joint': [
    shows('a loop test at the outlet reads high', 'loop'),
    shows('A worn line pole raises both', 'loop', 'contact-resistance'),
    shows('a poor PE joint raises line to PE only', 'loop', 'pe-joint'),
  ],
  'terminal-warms': [
    right('R1 + R2 and the loop read right', 'r1r2-polarity'),
    right('R1 + R2 and the loop read right', 'loop'),
    shows('far more volts are lost', 'volt-drop'),
    shows('the inspection finds the terminal browned', 'inspect'),
    shows('a worn pole raises the loop', 'loop', 'contact-resistance'),
  ],
  'neutral-earth-joined': [shows('reads 0.00 MΩ from neutral to PE', 'insulation-circuit')],
  'neutral-borrowed': [
    shows('in the test of R1 + R2', 'r1r2-polarity'),
    shows('0.00 MΩ in that of the insulation', 'insulation-circuit'),
    shows('A link of neutral and PE at the unit reads the same', 'r1r2-polarity', 'neutral-earth-joined'),
  ],
  'circuit-shared': [
    shows('with line and PE linked at the origin', 'r1r2-polarity'),
    shows('Insulation of the circuit, unit taken off', 'insulation-circuit'),
  ],
  'schedule-names-other-way': [
    shows('the display stays lit', 'isolate'),
    shows('the unit’s supply terminals prove live', 'prove-dead'),
  ],
  'breaker-too-slow': [
    shows('The inspection finds the marking', 'inspect'),
    right('No reading changes', 'loop'),
  ],
  'breaker-rated-too-high': [
    right('No reading changes', 'loop'),
    shows('The inspection finds the marking', 'inspect'),
    right('In a wrong design', 'inspect', 'breaker-over-cable'),
  ],
  'breaker-rated-too-low': [
    shows('The inspection finds the marking', 'inspect'),
    right('A short load does not trip it', 'volt-drop'),
  ],
  'supply-loop-high': [
    shows('Ze reads above its papers', 'ze'),
    shows('every loop behind the origin', 'loop'),
    right('A loose main earthing conductor leaves Ze right', 'ze', 'earthing-conductor-loose'),
    shows('with the PEN open, Ze gives no reading', 'ze', 'pen-open'),
  ],
  'tails-crossed': [
    shows('neutral to earth reads 230 V', 'supply-volts'),
    shows('Ze gives no reading from the line', 'ze'),
    right('Every dead test is right', 'r1r2-polarity'),
    right('Every dead test is right', 'insulation-circuit'),
    shows('one crossed at the unit would show in R1 + R2', 'r1r2-polarity', 'line-neutral-crossed'),
  ],
  'supply-crossed': [
    right('Ze is right', 'ze'),
    shows('Only the voltage from the earthing terminal to a remote rod shows it', 'supply-volts'),
    shows('With an open PEN, Ze gives no reading', 'ze', 'pen-open'),
  ],
  'voltage-high': [
    shows('Line to neutral at the origin reads above 253 V', 'supply-volts'),
    shows('With an open PEN', 'supply-volts', 'pen-open'),
  ],
  'voltage-low': [
    shows('Line to neutral at the origin reads below 216 V', 'supply-volts'),
    right('A poor joint in the circuit', 'supply-volts', 'neutral-joint'),
  ],
  'breaker-over-cable': [shows('In the papers', 'papers')],
  'set-above-breaker': [
    shows('In the papers', 'papers'),
    right('The offer in connected (B) agrees', 'state-b'),
    shows('with a wrong calibration it would offer more', 'state-b', 'offer-too-high'),
  ],
  'set-above-cable': [
    shows('In the papers', 'papers'),
    right('Measured R1 + R2 agrees', 'r1r2-polarity'),
    shows('a bad joint would make it higher', 'r1r2-polarity', 'pe-joint'),
  ],
  'conductors-too-small-for-run': [
    shows('from length, area and current in the papers', 'papers'),
    right('Measured R1 + R2 agrees', 'r1r2-polarity'),
    shows('with a bad joint it would be higher', 'r1r2-polarity', 'pe-joint'),
  ],
  'insulation-not-counted': [
    shows('In the papers', 'papers'),
    right('the conductors are right when cold', 'r1r2-polarity'),
  ],
  'protective-too-small': [
    shows('clearing time in the papers', 'papers'),
    right('Its measured resistance agrees', 'pe-circuit'),
    shows('one fitted smaller than they say would read higher', 'pe-circuit', 'pe-undersized'),
  ],
  'service-overloaded': [shows('set current in the papers', 'papers')],
  'service-limit-above-rating': [shows('against the line “service” in the papers', 'papers')],
  'pen-open': [
    shows('Ze gives no reading', 'ze'),
    shows('the loop at the origin', 'pfc'),
    right('a loose main earthing conductor leaves Ze right', 'ze', 'earthing-conductor-loose'),
  ],
  'pen-open-in-street': [shows('line to neutral at the origin leaves its limits', 'supply-volts')],
  'pen-open-sideways': [
    shows('Ze gives no reading', 'ze'),
    shows('only the voltage from the earthing terminal to a remote rod', 'supply-volts'),
    shows(
      'With neighbours on two lines, line to neutral leaves its limits',
      'supply-volts',
      'pen-open-in-street',
    ),
  ],
  'pen-joint-warms': [
    right('Ze reads right', 'ze'),
    shows('Switch on a load of 10 A', 'supply-volts'),
    shows('A loop that is simply high shows in Ze', 'ze', 'supply-loop-high'),
  ],
  'open-pen-blind': [
    shows('In the test of the open-PEN measure', 'open-pen'),
    right('No reading changes while the supply is sound', 'state-c'),
  ],
  'open-pen-late': [shows('In the test of the open-PEN measure', 'open-pen')],
  'open-pen-leaves-earth': [shows('During the disturbance', 'open-pen')],

  'line-pole-welded': [
    shows('this pole reads near 0 Ω', 'poles-open'),
    shows('live at the outlet with nothing plugged in', 'energise'),
  ],
  'line-pole-welded-noticed': [
    shows('this pole reads near 0 Ω', 'poles-open'),
    shows('the display shows a fault', 'energise'),
  ],
  'neutral-pole-welded': [
    shows('Only the dead test across every pole', 'poles-open'),
    right('no voltage test at the outlet shows', 'energise'),
  ],
  'all-poles-welded': [
    shows('every pole reads near 0 Ω', 'poles-open'),
    shows('live from the first moment', 'energise'),
    shows('when a vehicle stops asking', 'c-to-b'),
  ],
  'opens-slowly': [
    shows('After the vehicle stops asking', 'c-to-b'),
    shows('or is unplugged', 'unplug'),
    right('Compare the time to closing', 'state-c'),
  ],
  'sticks-now-and-then': [
    shows('every stop and trip', 'stop'),
    shows('every stop and trip', 'residual-rated'),
    shows('a contactor that is slow', 'c-to-b', 'opens-slowly'),
  ],
  'closes-slowly': [
    shows('takes more than 3 s', 'state-c'),
    right('opens in time', 'c-to-b'),
    shows('a unit that misses the request never closes', 'state-c', 'misses-request'),
    shows('also opens late', 'c-to-b', 'pilot-acted-on-late'),
  ],
  'line-pole-stuck-open': [
    shows('this line brings no voltage', 'state-c'),
    right('R1 + R2 reads right', 'r1r2-polarity'),
    shows('a missing line would read over-range there', 'r1r2-polarity', 'line-missing'),
  ],
  'neutral-pole-stuck-open': [
    shows('line to neutral does not', 'state-c'),
    right('The display is lit', 'energise'),
    shows('the display stays dark', 'energise', 'neutral-missing'),
  ],
  'contact-resistance': [
    shows('to the loop at the outlet', 'loop'),
    right('R1 + R2 ends before the contactor', 'r1r2-polarity'),
    shows('a poor PE or neutral joint', 'loop', 'neutral-joint'),
  ],
  'bleed-too-strong': [
    shows('At switch-on a meter shows voltage', 'energise'),
    right('The dead test across the pole', 'poles-open'),
    shows('a weld reads near 0 Ω', 'poles-open', 'line-pole-welded'),
  ],

  'pilot-source-high': [
    right('the pilot reads 12 V', 'energise'),
    shows('connected (B)', 'state-b'),
    shows('asks (C) read low', 'state-c'),
    shows('a weak supply would read low with nothing plugged in', 'energise', 'pilot-high-half-weak'),
  ],
  'pilot-source-low': [
    right('the pilot reads 12 V', 'energise'),
    shows('connected (B)', 'state-b'),
    shows('asks (C) read high', 'state-c'),
    shows('too strong a supply would read high', 'energise', 'pilot-high-half-strong'),
  ],
  'pilot-high-half-weak': [
    shows('low even with nothing plugged in', 'energise'),
    shows('damp between pilot and PE would pull that peak down', 'state-b', 'pilot-damp'),
  ],
  'pilot-high-half-strong': [
    shows('high even with nothing plugged in', 'energise'),
    right('With too low a source resistance it would read 12 V', 'energise', 'pilot-source-low'),
  ],
  'pilot-low-half-weak': [
    shows('In connected (B) the negative peak reads too little', 'state-b'),
    right('the positive peak is right', 'energise'),
    shows('the positive one shows it with nothing plugged in', 'energise', 'pilot-damp'),
  ],
  'pilot-frequency': [
    shows('In connected (B) the pilot reads a frequency', 'state-b'),
    right('supply, resistors and offer are sound', 'state-c'),
  ],
  'pilot-steady': [shows('In connected (B) the pilot reads a steady 9 V', 'state-b')],
  'pilot-conductor-open': [
    shows('the pilot reads about 0 V at the outlet', 'energise'),
    shows('A pilot shorted to PE also reads about 0 V', 'energise', 'pilot-shorted'),
  ],
  'pilot-contact-dirty': [
    shows('most of all when it asks (C)', 'state-c'),
    right('once current flows', 'energise'),
  ],
  'pilot-damp': [
    shows('under 12 V with nothing plugged in', 'energise'),
    shows('the negative peak is pulled down too', 'state-b'),
    shows('a dummy vehicle with its diode', 'energise', 'dummy-left-on-pilot'),
  ],
  'pilot-shorted': [
    shows('about 0 V at the outlet with nothing plugged in', 'energise'),
    shows('With an open pilot conductor', 'energise', 'pilot-conductor-open'),
  ],
  'dummy-left-on-pilot': [
    shows('about 9 V with nothing plugged in', 'energise'),
    shows('where a sound unit holds 9 V', 'state-b'),
  ],

  'diode-not-checked': [
    right('With a sound vehicle everything is right', 'state-c'),
    shows('Short the stand-in’s diode', 'diode'),
  ],
  'short-not-acted-on': [
    shows('Short the pilot to PE while supplying', 'pilot-short'),
    right('(C to B): if that is in time', 'c-to-b'),
  ],
  'ventilation-not-asked': [shows('Ask for ventilation (D)', 'state-d')],
  'pilot-acted-on-late': [shows('(C to B)', 'c-to-b'), right('An emergency stop', 'stop')],
  'supplies-in-b': [
    shows('In connected (B)', 'state-b'),
    right('Unplug: the outlet goes dead', 'unplug'),
    shows('a welded pole stays live', 'energise', 'line-pole-welded'),
  ],
  'misses-request': [
    shows('The vehicle asks (C)', 'state-c'),
    right('the pilot reads 6 V', 'state-b'),
    shows('with permission missing the pilot would be steady', 'state-b', 'pilot-steady'),
  ],
  'offer-too-high': [
    shows('too high in connected (B)', 'state-b'),
    shows('by the same points at every limit', 'limit'),
    shows('wrong with small cables only', 'coding-sizes', 'coding-ignored'),
  ],
  'offer-too-low': [shows('The duty reads too low', 'c-to-b')],
  'limit-ignored': [
    shows('Lower the site’s limit', 'limit'),
    right('in connected (B) already', 'state-b'),
    shows('With a wrong calibration', 'state-b', 'offer-too-high'),
  ],
  'service-sensor-reversed': [
    shows('Switch on a known load', 'limit'),
    shows('A sensor on the wrong conductor shows the same', 'limit', 'service-sensor-misplaced'),
  ],
  'service-sensor-misplaced': [
    shows('Switch on a known load', 'limit'),
    shows('A sensor the wrong way round shows the same', 'limit', 'service-sensor-reversed'),
  ],
  'service-sensor-past-parting': [
    shows('Let the next point charge', 'next-point'),
    right('a known load on this board lowers it', 'limit'),
    shows('does not answer the known load either', 'limit', 'service-sensor-reversed'),
  ],
  'service-limit-set-high': [
    shows('Switch on a known load', 'limit'),
    shows('does not answer at all', 'limit', 'service-sensor-reversed'),
  ],
  'restarts-at-once': [shows('Stop the charge and reset at once', 'stop')],

  'coding-ignored': [shows('The unit offers every size of cable', 'coding-sizes')],
  'coding-read-too-large': [
    shows('a 20 A cable is offered 32 A', 'state-b'),
    shows('one that ignores coding does not', 'coding-sizes', 'coding-ignored'),
  ],
  'coding-read-too-small': [
    shows('Try each size', 'coding-sizes'),
    shows('a dirty contact', 'coding-sizes', 'proximity-contact-dirty'),
  ],
  'proximity-contact-dirty': [
    shows('Try a 13 A cable', 'coding-sizes'),
    shows('a drifted resistor', 'coding-sizes', 'coding-read-too-small'),
  ],
  'tether-coding-wrong': [
    shows('Measure from proximity contact (PP) to PE', 'coding'),
    right('The duty is right', 'state-b'),
    shows('a low offer would lower the duty', 'c-to-b', 'offer-too-low'),
  ],
  'over-code-ignored': [
    right('Each cable gets the right duty', 'state-b'),
    shows('draw more than the coding', 'coding-in-use'),
  ],
  'lock-does-not-engage': [
    shows('the plug comes out at a pull', 'hold'),
    shows('the contactor stays open when the vehicle asks (C)', 'state-c'),
  ],
  'lock-not-home': [shows('comes out at a pull', 'hold'), right('Voltage and pilot are right', 'energise')],
  'lock-will-not-release': [shows('End the charge and ask for release', 'release')],

  'residual-dead': [
    shows('At 30 mA', 'residual-rated'),
    shows('at five times that', 'residual-five'),
    right('A device that trips late opens at the five-fold current', 'residual-five', 'residual-trips-late'),
  ],
  'residual-slow': [
    right('at the right current on the ramp', 'residual-ramp'),
    shows('its trip time is above 300 ms', 'residual-rated'),
    right('time C to B as well', 'c-to-b'),
  ],
  'residual-sticks-first': [
    shows('The first trip at 30 mA takes more than 300 ms', 'residual-rated'),
    shows('A slow device is late each time', 'residual-rated', 'residual-slow'),
  ],
  'standing-leakage': [
    shows('the device trips at half its rating', 'residual-half'),
    right('Insulation, tested with d.c., reads right', 'insulation-unit'),
    shows('a device that has drifted trips early as well', 'residual-half', 'residual-trips-early'),
  ],
  'residual-trips-early': [
    shows('On the rising a.c.', 'residual-ramp'),
    right('test the insulation', 'insulation-circuit'),
    right('test the insulation', 'insulation-outlet'),
  ],
  'residual-trips-late': [
    shows('At 30 mA nothing opens', 'residual-rated'),
    right('At five times the rating this device still trips', 'residual-five'),
    shows('a dead one does not', 'residual-five', 'residual-dead'),
  ],
  'residual-type-ac': [
    right('trips rightly on a.c.', 'residual-rated'),
    shows('The inspection does', 'inspect'),
    right('in that test the d.c. detector may open', 'half-wave'),
  ],
  'residual-rated-too-high': [
    shows('At 30 mA nothing opens', 'residual-rated'),
    shows('at five times that the device trips', 'residual-five'),
    shows('One that has drifted reads the same', 'residual-rated', 'residual-trips-late'),
    shows('the inspection tells them apart', 'inspect'),
    right('the inspection tells them apart', 'inspect', 'residual-trips-late'),
  ],
  'upstream-dead': [shows('At its rated current the device at the origin stays closed', 'residual-rated')],
  'upstream-sticks-first': [
    shows('The first trip at the rated current', 'residual-rated'),
    shows('A dead device never trips', 'residual-rated', 'upstream-dead'),
  ],
  'upstream-type-ac': [
    right('trips rightly on a.c.', 'residual-rated'),
    shows('Compare at the inspection', 'inspect'),
  ],
  'upstream-rated-too-high': [
    shows('At the current in the papers', 'residual-rated'),
    shows('A dead device reads the same', 'residual-rated', 'upstream-dead'),
    shows('the inspection tells them apart', 'inspect'),
    right('the inspection tells them apart', 'inspect', 'upstream-dead'),
  ],
  'upstream-opens-lines-only': [
    right('the residual tests show nothing', 'residual-rated'),
    shows('The inspection does', 'inspect'),
  ],
  'direct-detector-dead': [
    shows('on both ramps nothing opens', 'dc-ramp'),
    right('the a.c. tests still trip', 'residual-rated'),
    shows('but opens in the end at 6 mA at once', 'dc-step', 'direct-slow'),
  ],
  'direct-trips-late': [shows('On both ramps nothing opens', 'dc-ramp'), shows('At 6 mA at once', 'dc-step')],
  'direct-trips-early': [
    shows('On both ramps', 'dc-ramp'),
    right('On rising a.c. the device trips at its right current', 'residual-ramp'),
  ],
  'direct-slow': [shows('The ramp has reached 6 mA', 'dc-ramp'), shows('With 6 mA at once', 'dc-step')],
  'direct-one-way': [
    shows('on the negative ramp nothing opens', 'dc-ramp'),
    shows('A dead detector fails both ramps', 'dc-ramp', 'direct-detector-dead'),
  ],
  'trips-opens-nothing': [
    shows('At 30 mA the display shows a trip', 'residual-rated'),
    right('Try C to B', 'c-to-b'),
  ],
  'resets-itself': [
    shows('At 30 mA the unit trips in time', 'residual-rated'),
    shows('A unit that forgets its trip', 'recovery', 'trip-forgotten'),
  ],
  'trip-forgotten': [
    right('After a trip the unit stays off', 'residual-rated'),
    shows('In the test of recovery', 'recovery'),
    shows('A unit that resets itself', 'residual-rated', 'resets-itself'),
  ],
  'test-button-dead': [
    right('trips in time at 30 mA', 'residual-rated'),
    shows('Press the button', 'residual-again'),
    shows('A dead device fails both', 'residual-rated', 'residual-dead'),
  ],

  'line-pe-insulation-low': [
    shows('With the unit taken off', 'insulation-circuit'),
    shows('With the unit connected', 'insulation-unit'),
  ],
  'neutral-pe-insulation-low': [
    shows('With the unit taken off', 'insulation-circuit'),
    shows('a link of neutral and PE reads near 0 Ω', 'insulation-circuit', 'neutral-earth-joined'),
  ],
  'line-neutral-insulation-low': [
    shows('With the unit taken off', 'insulation-circuit'),
    right('it cannot show this leak', 'insulation-unit'),
  ],
  'flash-over-under-lug': [
    shows('At 500 V, unit taken off', 'insulation-circuit'),
    right('At 250 V with the unit connected', 'insulation-unit'),
    shows('a damaged cable reads low at both', 'insulation-unit', 'line-pe-insulation-low'),
  ],
  'outlet-neutral-earth-joined': [
    shows('From the outlet’s contacts', 'insulation-outlet'),
    right('From the supply terminals insulation reads right', 'insulation-circuit'),
    shows('with the circuit’s own neutral damaged', 'insulation-circuit', 'neutral-pe-insulation-low'),
  ],
  'water-in-connector': [
    shows('From the outlet’s contacts', 'insulation-outlet'),
    right('Measured from the supply terminals', 'insulation-unit'),
    shows('a crushed tether', 'insulation-outlet', 'outlet-insulation-low'),
  ],
  condensation: [
    shows('With the unit connected', 'insulation-unit'),
    right('With the unit taken off', 'insulation-circuit'),
    shows('a damaged cable reads low both ways', 'insulation-circuit', 'line-pe-insulation-low'),
  ],
  'outlet-insulation-low': [
    shows('From the outlet’s contacts', 'insulation-outlet'),
    right('Measured from the supply terminals it reads well', 'insulation-unit'),
    shows('only while you bend it', 'insulation-outlet', 'tether-insulation-moves'),
  ],
  'tether-insulation-moves': [shows('Bend the tether at the connector', 'insulation-outlet')],
  'arrester-aged': [
    shows('insulation with the unit connected reads low', 'insulation-unit'),
    right('With unit and arrester taken off the circuit reads well', 'insulation-circuit'),
    shows('a damaged cable reads low both ways', 'insulation-circuit', 'line-pe-insulation-low'),
    shows('a damaged cable reads low both ways', 'insulation-unit', 'line-pe-insulation-low'),
  ],

  'tester-lead-broken': [shows('With both leads on one terminal the tester reads over-range', 'instruments')],
  'tester-does-not-null': [
    shows('both leads on one terminal still read', 'instruments'),
    right('A poor joint in a conductor would not show', 'instruments', 'pe-joint'),
  ],
  'tester-battery-flat': [shows('the tester gives no reading', 'instruments')],
  'detector-lead-parts': [
    shows('stays dark on it afterwards, in the test that proves it dead', 'prove-dead'),
  ],
  'tester-out-of-calibration': [shows('On the known resistor of 1 Ω', 'instruments')],

  'gland-loose': seen('The inspection does'),
  'enclosure-ip-low': seen('The inspection does'),
  'connector-cracked': seen('The inspection does'),
  'lid-spring-broken': seen('The inspection does'),
  'tether-strained': [
    ...seen('The inspection does'),
    shows('in the test from unit to outlet', 'pe-outlet', 'tether-pe-moves'),
  ],
  'house-metal-within-reach': [
    ...seen('The inspection does'),
    right('No instrument shows it', 'earths-apart'),
    shows('read near 0 Ω in the test that holds one against the other', 'earths-apart', 'earths-joined'),
  ],
  'no-impact-guard': seen('The inspection does'),
  'terminal-loose': [
    ...seen('The inspection shows it'),
    right('no reading changes', 'loop'),
    shows('adds ohms to a loop', 'loop', 'neutral-joint'),
  ],
  'labels-missing': seen('The inspection does'),
};
