/*
 * For every fault: an installation that suits it, and the test action by which a faultless trainee finds it there, at
 * the least, usual and greatest value of its parameters (one name where they are alike). Written from the facts about
 * each fault, and not from what the bench happens to show.
 */
import type { InstallationName } from './installations.ts';

type Action = string;

export const TELLS: Readonly<
  Record<string, readonly [InstallationName, Action | readonly [Action, Action, Action]]>
> = {
  'pe-not-landed': ['home', 'pe-circuit'],
  'pe-joint': ['home', 'pe-circuit'],
  'pe-undersized': ['home', 'pe-circuit'],
  'borrowed-earth': ['home', 'pe-circuit'],
  'outlet-pe-open': ['home', 'pe-outlet'],
  'outlet-pe-joint': ['home', 'pe-outlet'],
  // Good while it hangs still: shown by bending the tether.
  'tether-pe-moves': ['home', 'pe-outlet'],
  'case-unearthed': ['home', 'pe-outlet'],
  // Ze, with the conductor off, is right.
  'earthing-conductor-loose': ['home', 'pfc'],
  'open-pen-pole-worn': ['home', 'pe-outlet'],
  'electrode-poor': ['rod', 'electrode'],
  'electrode-clamp': ['rod', 'inspect'],
  'earths-joined': ['rod', 'pfc'],

  'line-neutral-crossed': ['home', 'r1r2-polarity'],
  'lines-crossed': ['yard', 'r1r2-polarity'],
  'line-missing': ['yard', 'r1r2-polarity'],
  'line-loss-unnoticed': ['yard', 'lost-line'],
  'neutral-missing': ['home', 'energise'],
  'neutral-joint': ['home', 'loop'],
  'neutral-earth-joined': ['home', 'insulation-circuit'],
  'breaker-too-slow': ['home', 'inspect'],
  // Read in the papers, before anything is measured.
  'breaker-over-cable': ['home', 'papers'],
  'conductors-too-small-for-run': ['home', 'papers'],
  'insulation-not-counted': ['home', 'papers'],
  'protective-too-small': ['home', 'papers'],
  'service-overloaded': ['home', 'papers'],
  'supply-loop-high': ['dairy', 'ze'],
  'voltage-high': ['dairy', 'supply-volts'],
  'voltage-low': ['dairy', 'supply-volts'],
  // With a path to earth that is good enough, the window sees it and has opened PE already: that is not the unit's fault.
  'pen-open': ['home', 'ze'],
  'pen-open-in-street': ['home', 'supply-volts'],
  'open-pen-blind': ['home', 'open-pen'],
  'open-pen-late': ['home', 'open-pen'],
  'open-pen-leaves-earth': ['home', 'open-pen'],

  'line-pole-welded': ['yard', 'poles-open'],
  'line-pole-welded-noticed': ['yard', 'poles-open'],
  'neutral-pole-welded': ['home', 'poles-open'],
  'all-poles-welded': ['home', 'poles-open'],
  // One that takes too long for its own watch has latched before C to B can be timed.
  'opens-slowly': ['home', ['c-to-b', 'c-to-b', 'unplug']],
  'closes-slowly': ['home', 'state-c'],
  'line-pole-stuck-open': ['yard', 'state-c'],
  'neutral-pole-stuck-open': ['home', 'state-c'],
  'contact-resistance': ['yard', 'loop'],
  'bleed-too-strong': ['yard', 'energise'],

  'pilot-source-high': ['home', ['state-c', 'state-b', 'state-b']],
  'pilot-source-low': ['home', ['state-b', 'state-b', 'state-c']],
  'pilot-high-half-weak': ['home', 'energise'],
  'pilot-high-half-strong': ['home', 'energise'],
  'pilot-low-half-weak': ['home', 'state-b'],
  'pilot-frequency': ['home', 'state-b'],
  'pilot-steady': ['home', 'state-b'],
  'pilot-conductor-open': ['home', 'energise'],
  'pilot-contact-dirty': ['home', 'state-c'],
  'pilot-damp': ['home', 'energise'],
  'pilot-shorted': ['home', 'energise'],
  'dummy-left-on-pilot': ['home', 'energise'],

  'diode-not-checked': ['home', 'diode'],
  'short-not-acted-on': ['home', 'pilot-short'],
  'ventilation-not-asked': ['home', 'state-d'],
  'pilot-acted-on-late': ['home', ['c-to-b', 'c-to-b', 'state-c']],
  'supplies-in-b': ['home', 'state-b'],
  'misses-request': ['home', 'state-c'],
  'offer-too-high': ['home', 'state-b'],
  'offer-too-low': ['home', 'c-to-b'],
  'limit-ignored': ['home', 'limit'],
  'service-sensor-reversed': ['dairy', 'limit'],
  'service-sensor-misplaced': ['dairy', 'limit'],
  'restarts-at-once': ['home', 'stop'],

  'coding-ignored': ['yard', 'coding-sizes'],
  'coding-read-too-large': ['yard20', 'state-b'],
  'coding-read-too-small': ['yard', 'coding-sizes'],
  'proximity-contact-dirty': ['yard', 'coding-sizes'],
  'tether-coding-wrong': ['home', 'coding'],
  'over-code-ignored': ['yard', 'coding-in-use'],
  'lock-does-not-engage': ['yard', 'hold'],
  'lock-not-home': ['yard', 'hold'],
  'lock-will-not-release': ['yard', 'release'],

  'residual-dead': ['home', 'residual-rated'],
  'residual-slow': ['home', 'residual-rated'],
  'residual-trips-early': ['home', 'residual-ramp'],
  'residual-trips-late': ['home', 'residual-rated'],
  'residual-type-ac': ['home', 'inspect'],
  'upstream-dead': ['board', 'residual-rated'],
  'upstream-type-ac': ['board', 'inspect'],
  'direct-detector-dead': ['home', 'dc-ramp'],
  'direct-trips-late': ['home', 'dc-ramp'],
  'direct-trips-early': ['home', 'dc-ramp'],
  'direct-slow': ['home', 'dc-ramp'],
  'direct-one-way': ['home', 'dc-ramp'],
  'trips-opens-nothing': ['home', 'residual-rated'],
  'resets-itself': ['home', 'residual-rated'],
  'trip-forgotten': ['home', 'recovery'],
  'test-button-dead': ['home', 'residual-again'],

  'line-pe-insulation-low': ['home', 'insulation-circuit'],
  'neutral-pe-insulation-low': ['home', 'insulation-circuit'],
  'line-neutral-insulation-low': ['home', 'insulation-circuit'],
  'outlet-insulation-low': ['yard', 'insulation-outlet'],
  'tether-insulation-moves': ['home', 'insulation-outlet'],
  'arrester-aged': ['home', 'insulation-unit'],

  'gland-loose': ['home', 'inspect'],
  'enclosure-ip-low': ['home', 'inspect'],
  'connector-cracked': ['home', 'inspect'],
  'lid-spring-broken': ['yard', 'inspect'],
  'tether-strained': ['home', 'inspect'],
  'no-impact-guard': ['home', 'inspect'],
  'terminal-loose': ['home', 'inspect'],
  'labels-missing': ['home', 'inspect'],
};
