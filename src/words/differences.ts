/** What differs between a unit and its correct twin, how it stands in each, and why, in words. */

import type { PlainValue, PlainWhat, PlainWhy, Value, What, Why } from '../attempt/opened/value.ts';
import type { Sensed } from '../unit/sensed.ts';
import { DRIVE_WORDS, damageText, latchText, levelsText, potentialText, STANDING_WORDS } from './moment.ts';
import { ampsText, mainsText, resistanceText, secondsText, shareText, voltsText } from './quantities.ts';
import { comparedName } from './readings.ts';
import { refusalText } from './refusals.ts';
import { HAPPENING_WORDS, INDICATOR_WORDS, INSPECTED_WORDS, sightText } from './seen.ts';
import { fromLabel, probeText, terminalText } from './terminals.ts';

const WHAT_WORDS: Readonly<Record<PlainWhat, string>> = {
  'supply-return': 'supply’s return conductor',
  'supply-line': 'supply’s line',
  'earthing-conductor': 'earthing conductor',
  electrode: 'earth electrode',
  'electrode-conductor': 'electrode’s clamp and conductor',
  'met-ground-path': 'ground path of the main earthing terminal',
  'circuit-protective': 'circuit’s protective conductor',
  'building-metal': 'metal of the building, beside the protective conductor',
  'shared-load': 'another load on this circuit',
  'other-way': 'another way of the board, which feeds this circuit',
  'pilot-insulation': 'insulation from pilot to PE',
  'pe-pole': 'PE pole',
  'outlet-pe': 'PE from the unit’s bar to the outlet',
  'cable-pe': 'PE of the outlet’s cable',
  'case-bond': 'bond of the exposed metal',
  'pilot-source': 'pilot’s source resistance',
  'pilot-conductor': 'pilot conductor',
  'coding-reader': 'resistor that reads the coding',
  'coding-resistor': 'coding resistor',
  'test-button': 'resistor behind the test button',
  'across-pilot': 'resistor across the pilot',
  'proximity-contact': 'resistance in the proximity contact',
  'path-from-bar': 'path from the PE bar to elsewhere',
  electronics: 'electronics',
  'arrester-from': 'surge arrester conducts from',
  'watching-contact': 'contact that reports the poles',
  'pilot-positive': 'pilot’s positive level',
  'pilot-negative': 'pilot’s negative level',
  'oscillator-frequency': 'pilot’s frequency',
  'b-down-to': 'taken for B down to',
  'c-down-to': 'taken for C down to',
  'd-down-to': 'taken for D down to',
  'low-half': 'low half of the pilot',
  'pilot-near-zero': 'pilot near 0 V',
  offer: 'offer',
  'acts-after': 'acts on a change of the pilot after',
  'closes-after': 'closes after',
  'limit-after': 'follows a limit after',
  'after-trip': 'after a trip',
  'latch-memory': 'what has latched, when the supply comes back',
  pause: 'stays steady before it offers again for',
  'watched-lines': 'watches for the loss of',
  'service-sensor': 'sensor of the service’s current',
  'service-limit': 'limit of the service is set at',
  'cable-coding': 'cable’s coding',
  'over-code': 'current above the cable’s coding',
  'opens-after': 'opens after',
  'lock-motor': 'lock’s motor',
  'lock-feedback': 'lock’s feedback',
  'open-pen-measure': 'open-PEN measure',
  'its-pe-pole': 'its PE pole',
  'open-pen-after': 'open-PEN measure opens after',
  'ac-type': 'a.c. device is of type',
  'ac-from': 'a.c. device begins to act at',
  'ac-later-by': 'a.c. device later than a sound one by',
  'a-trip': 'a trip',
  'dc-from': 'd.c. detector begins to act at',
  'dc-later-by': 'd.c. detector later than a sound one by',
  'dc-feels': 'd.c. detector feels',
  'site-voltage': 'no-load voltage',
  neighbours: 'neighbours’ loads behind the same PEN',
  'breaker-type': 'breaker is of type',
  'breaker-rating': 'breaker is rated',
  'cable-laid': 'cable is laid',
  service: 'service, and what the house asks of it',
  'upstream-type': 'residual device at the origin is of type',
  'upstream-rated': 'residual device at the origin is rated',
  'tester-lead': 'tester’s lead, beyond a sound one',
  'tester-null': 'what the tester’s leads read when they were nulled',
  'tester-battery': 'of the volts that it is made for, the tester’s battery gives',
  'detector-lead': 'lead of the voltage detector',
  'tester-scale': 'of each ohm, the tester shows',
  'upstream-first-later': 'first trip of the residual device at the origin later by',
  'first-later-by': 'first trip of the a.c. device later by',
  sticks: 'opens late',
  'flashes-over': 'gap between line and PE, jumped from',
  'upstream-poles': 'residual device at the origin opens',
  breaker: 'circuit’s breaker',
  upstream: 'residual device at the origin',
  'unit-breaker': 'unit’s own breaker',
  'open-pen-pole': 'PE pole of the open-PEN measure',
  plug: 'plug',
  coil: 'contactor’s coil',
  standing: 'standing in the control',
  'unit-says': 'the unit says',
  damage: 'damage',
  'pilot-drive': 'pilot',
  'pilot-high-for': 'pilot high for',
  'pilot-at-unit': 'pilot at the unit’s own terminal',
  'pilot-at-outlet': 'pilot at the outlet',
  heard: 'heard meanwhile',
  'not-done': 'not done',
  'seen-by-looking': 'seen by looking',
};

export function whatText(what: What): string {
  switch (what.id) {
    case 'pole':
      return `${what.live} pole`;
    case 'circuit-conductor':
      return `circuit’s ${what.of} conductor`;
    case 'circuit-insulation':
      return `circuit’s insulation, ${what.of}`;
    case 'outlet-insulation':
      return `insulation at the outlet, ${what.of}`;
    case 'potential':
      return `${terminalText(what.terminal)}, to true earth`;
    case 'seen':
      return `to be seen: ${INSPECTED_WORDS[what.where]}`;
    case 'reading':
      return what.between === null
        ? comparedName(what.quantity)
        : `${comparedName(what.quantity)}, ${what.between.map((end) => probeText(fromLabel(end))).join(' – ')}`;
    default:
      return WHAT_WORDS[what.id];
  }
}

const VALUE_WORDS: Readonly<Record<PlainValue, string>> = {
  ...STANDING_WORDS,
  read: 'read',
  'not-read': 'not read',
  'looked-at': 'looked at',
  'not-looked-at': 'not looked at',
  'cut-off': 'cut off',
  'for-a-request': 'taken for a request',
  'for-a-short': 'taken for a short',
  'as-meant': 'as meant',
  'open-until-reset': 'stays open until reset',
  'is-kept': 'is kept',
  'is-forgotten': 'is forgotten',
  'every-line': 'every line',
  'own-line-alone': 'the line that feeds it alone',
  'sensor-right': 'round the incoming line, the right way',
  'sensor-reversed': 'round the incoming line, the wrong way',
  'sensor-own-circuit': 'round the unit’s own circuit',
  'sensor-past-parting': 'round this board’s tail alone',
  'holds-and-lets-go': 'holds and lets go',
  'never-lets-go': 'never lets go',
  'never-holds': 'never holds',
  true: 'true',
  'always-held': 'always says held',
  senses: 'senses',
  'senses-nothing': 'senses nothing',
  'opens-with-others': 'opens with the others',
  'stays-closed': 'stays closed',
  opens: 'opens',
  'opens-nothing': 'opens nothing',
  'both-ways': 'both ways round',
  'one-way': 'one way round',
  welded: 'welded',
  'never-closes': 'never closes',
  'follows-coil': 'follows the coil',
  acts: 'acts',
  'does-not-act': 'does not act',
  never: 'never',
  'from-elsewhere': 'comes from another way of the board',
  'from-its-own-way': 'comes from its own way of the board',
  'every-live': 'every live conductor',
  'lines-alone': 'the lines alone',
  'not-stated': 'not stated',
  'nothing-amiss': 'nothing amiss',
  'still-live': 'still live',
  'no-trip': 'no trip',
  'lines-in-order': 'L1 L2 L3',
  'lines-reversed': 'L1 L3 L2',
  done: 'done',
  'parts-in-use': 'parts in use',
  holds: 'holds',
};

export function valueText(value: Value): string {
  switch (value.id) {
    case 'over-gigaohm':
    case 'ohms':
      return resistanceText(value);
    case 'volts':
      return voltsText(value.volts);
    case 'hertz':
      return hertzText(value.hertz);
    case 'seconds':
      return secondsText(value.seconds);
    case 'amps':
      return ampsText(value.amps);
    case 'type':
      return value.type;
    case 'lands-on':
      return `lands on ${value.conductor}`;
    case 'while-bent':
      return `${resistanceText(value.resistance)} while it is bent`;
    case 'bent-or-not':
      return `${resistanceText(value.resistance)}, bent or not`;
    case 'dries-from':
      return `wet: ${resistanceText(value.resistance)} at first, and more as it dries`;
    case 'under-cover':
      return `${resistanceText(value.resistance)} while the cover is on`;
    case 'cover-or-not':
      return `${resistanceText(value.resistance)}, cover on or off`;
    case 'leaks':
      return `passes ${ampsText(value.amps)} at 230 V`;
    case 'one-in':
      return `one time in ${value.count}, by ${secondsText(value.seconds)}`;
    case 'warms':
      return `${resistanceText(value.cold)} cold, and more the warmer the load makes it`;
    case 'across-open':
      return `${resistanceText(value.resistance)} across it when open`;
    case 'offer-off':
      return `${shareText(Math.abs(value.by))} of a period too ${value.by > 0 ? 'high' : 'low'}`;
    case 'closes-again':
      return `closes by itself after ${secondsText(value.after)}`;
    case 'laid':
      return `method ${value.method}, lines of ${value.lineArea}\u202fmm²${value.insulated === 0 ? '' : `, ${value.insulated}\u202fmm of it in thermal insulation`}`;
    case 'service':
      return `${ampsText(value.rating)}, ${ampsText(value.demand)}`;
    case 'neighbours':
      return value.loads.map(({ line, power }) => `${line} ${power}\u202fW`).join(', ');
    case 'found':
      return value.found.map(({ what }) => sightText(what)).join('; ');
    case 'latches':
      return latchText(value.latches);
    case 'damaged':
      return damageText(value.damaged);
    case 'indicator':
      return INDICATOR_WORDS[value.indicator];
    case 'drive':
      return DRIVE_WORDS[value.drive];
    case 'share-of-period':
      return `${(100 * value.share).toFixed(1)}\u202f% of a period`;
    case 'times':
      return value.times === 1 ? 'as much' : `${Number(value.times.toPrecision(3))} times as much`;
    case 'levels':
      return levelsText(value);
    case 'potential':
      return potentialText(value);
    case 'mains':
      return mainsText(value.volts);
    case 'pilot':
      return [
        levelsText(value),
        ...(value.frequency === null ? [] : [hertzText(value.frequency)]),
        ...(value.frequency === null || value.duty === null ? [] : [`high ${shareText(value.duty)}`]),
      ].join(', ');
    case 'trip':
      return `${Number((1000 * value.amps).toPrecision(3))}\u202fmA${value.ms === null ? '' : ` after ${value.ms.toFixed(0)}\u202fms`}`;
    case 'no-reading':
      return `no reading: ${refusalText(value.refusal)}`;
    case 'refused':
      return refusalText(value.refusal);
    case 'sounds':
      return value.heard.length === 0
        ? 'nothing'
        : value.heard
            .map(({ what, after }) => `${HAPPENING_WORDS[what]} after ${secondsText(after)}`)
            .join(', ');
    default:
      return VALUE_WORDS[value.id];
  }
}

const hertzText = (hertz: number): string => `${hertz.toFixed(0)}\u202fHz`;

const WHY_WORDS: Readonly<Record<PlainWhy, string>> = {
  'breaker-curve': 'It opens on more current than its curve allows.',
  'device-sum': 'It opens when the live conductors through it do not sum to nothing.',
  'own-sensing': 'It opens on the unit’s own residual or d.c. sensing.',
  'open-pen-limit': 'It opens when the measure has seen its limit passed for long enough.',
  'driven-not-held': 'The lock is driven, and the plug is not held.',
  'held-not-driven': 'The lock is not driven, and the plug is held.',
  'lock-follows': 'The lock follows the control.',
  'latched-until-cleared': 'What is latched stays until what the unit’s sheet names clears it.',
  'test-voltage': 'A test voltage went where it should not.',
  'control-otherwise':
    'Both controls take the pilot for the same state: permission, a check or a time is other.',
  'pilot-follows-state':
    'What the control puts on the pilot follows from the state it takes the vehicle to be in.',
  'width-offers': 'The width of the high half is what offers current.',
  'voltage-shared':
    'The source behind its resistor and what is joined from pilot to PE share the voltage between them.',
  'lost-on-the-way': 'It is what the unit puts out, less what is lost on the way there and back through PE.',
  'held-faintly': 'Only insulation, a filter or a bleed decides where it stands.',
  'path-to-earth': 'Its path to earth is other here than in the twin.',
  'circuit-brings': 'What the circuit brings to it is other here than in the twin.',
  'same-set-up': 'The same set-up on both, read at the same step: what it meets is other.',
  'moves-are-heard': 'What moves can be heard.',
  'bench-allows': 'What the bench allows depends on how things stand there.',
  'there-to-be-seen': 'It is there to be seen.',
};

export function whyText(why: Why): string {
  switch (why.id) {
    case 'closed-undriven':
      return `The ${why.live} pole is closed though its coil is not driven.`;
    case 'open-though-driven':
      return `The ${why.live} pole is open though its coil is driven.`;
    case 'closed-as-asked':
      return `The ${why.live} pole is closed, as its coil asks; the twin’s has not moved.`;
    case 'closed-driven-here':
      return `The ${why.live} pole is closed: its coil is driven here, and not in the twin.`;
    case 'open-not-driven-here':
      return `The ${why.live} pole is open: its coil is not driven here, and is in the twin.`;
    case 'open-as-asked':
      return `The ${why.live} pole is open, as its coil asks.`;
    case 'closed-to-supply':
      return `The closed ${why.live} pole joins it to the supply.`;
    case 'open-and-tied':
      return `The ${why.live} pole is open, and something beside it still ties this conductor.`;
    case 'bands':
      return `This control takes the pilot for ${bandText(why.unit)}, the twin’s for ${bandText(why.twin)}.`;
    case 'latches':
      return `Standing in this control: ${latchText(why.unit)}; in the twin’s: ${latchText(why.twin)}.`;
    case 'floats': {
      const open =
        why.pole === null ? 'Its path is open:' : `The ${why.pole} pole is open and holds nothing:`;
      return why.tiedTo === null
        ? `${open} it follows whatever a lead joins it to.`
        : `${open} through the leads it follows ${terminalText(why.tiedTo)}.`;
    }
    default:
      return WHY_WORDS[why.id];
  }
}

const bandText = (band: Sensed['pilot'] | null): string =>
  band === null ? 'nothing, having no power' : `state ${band}`;
