/**
 * What the opened bench and its differences hand on in place of words: what something is, how it stands, and why it
 * stands so, each an id with its values. Their words stand in src/words/differences.ts.
 */
import type { Damage } from '../../bench/damages.ts';
import type { Truth } from '../../bench/reading.ts';
import type { Quantity } from '../../bench/readings/quantity.ts';
import type { Refusal } from '../../bench/refusal.ts';
import type { Terminal } from '../../bench/terminals.ts';
import type { Happening } from '../../bench/world.ts';
import type { Live } from '../../laws/conductors.ts';
import type { Amps, Duty, Hertz, Ohms, Seconds, Volts } from '../../laws/quantities.ts';
import type { Found } from '../../site/part.ts';
import type { Site } from '../../site/site.ts';
import type { Sensed } from '../../unit/sensed.ts';
import type { Commands } from '../../unit/unitChart.ts';
import type { Halves, Latch } from './moment.ts';
import type { Potential } from './potentials.ts';

/** What differs. */
export type What =
  | { readonly id: PlainWhat }
  | { readonly id: 'pole'; readonly live: Live }
  | { readonly id: 'circuit-conductor' | 'circuit-insulation' | 'outlet-insulation'; readonly of: string }
  | { readonly id: 'potential'; readonly terminal: Terminal }
  | { readonly id: 'seen'; readonly where: Found['where'] }
  | {
      readonly id: 'reading';
      readonly quantity: Quantity;
      readonly between: readonly [string, string] | null;
    };

export type PlainWhat =
  // Parts
  | 'supply-return'
  | 'supply-line'
  | 'earthing-conductor'
  | 'electrode'
  | 'electrode-conductor'
  | 'met-ground-path'
  | 'circuit-protective'
  | 'building-metal'
  | 'shared-load'
  | 'other-way'
  | 'pilot-insulation'
  | 'pe-pole'
  | 'outlet-pe'
  | 'cable-pe'
  | 'case-bond'
  | 'pilot-source'
  | 'pilot-conductor'
  | 'coding-reader'
  | 'coding-resistor'
  | 'test-button'
  | 'across-pilot'
  | 'proximity-contact'
  | 'path-from-bar'
  | 'electronics'
  | 'arrester-from'
  // The hidden design
  | 'watching-contact'
  | 'pilot-positive'
  | 'pilot-negative'
  | 'oscillator-frequency'
  | 'b-down-to'
  | 'c-down-to'
  | 'd-down-to'
  | 'low-half'
  | 'pilot-near-zero'
  | 'offer'
  | 'acts-after'
  | 'closes-after'
  | 'limit-after'
  | 'after-trip'
  | 'latch-memory'
  | 'pause'
  | 'watched-lines'
  | 'service-sensor'
  | 'service-limit'
  | 'cable-coding'
  | 'over-code'
  | 'opens-after'
  | 'lock-motor'
  | 'lock-feedback'
  | 'open-pen-measure'
  | 'its-pe-pole'
  | 'open-pen-after'
  | 'ac-type'
  | 'ac-from'
  | 'ac-later-by'
  | 'a-trip'
  | 'dc-from'
  | 'dc-later-by'
  | 'dc-feels'
  // The site
  | 'site-voltage'
  | 'neighbours'
  | 'breaker-type'
  | 'breaker-rating'
  | 'cable-laid'
  | 'service'
  | 'upstream-type'
  | 'upstream-rated'
  | 'upstream-poles'
  | 'upstream-first-later'
  | 'tester-lead'
  | 'tester-null'
  | 'tester-battery'
  | 'detector-lead'
  | 'tester-scale'
  | 'first-later-by'
  | 'sticks'
  | 'flashes-over'
  // States
  | 'breaker'
  | 'upstream'
  | 'unit-breaker'
  | 'open-pen-pole'
  | 'plug'
  | 'coil'
  | 'standing'
  | 'unit-says'
  | 'damage'
  | 'pilot-drive'
  | 'pilot-high-for'
  | 'pilot-at-unit'
  | 'pilot-at-outlet'
  // What was met
  | 'heard'
  | 'not-done'
  | 'seen-by-looking';

/** How it stands. */
export type Value =
  | { readonly id: PlainValue }
  | Resistance
  | { readonly id: 'volts'; readonly volts: Volts }
  | { readonly id: 'hertz'; readonly hertz: Hertz }
  | { readonly id: 'seconds'; readonly seconds: Seconds }
  | { readonly id: 'amps'; readonly amps: Amps }
  | { readonly id: 'type'; readonly type: string }
  | { readonly id: 'lands-on'; readonly conductor: string }
  | { readonly id: 'while-bent' | 'bent-or-not' | 'across-open'; readonly resistance: Resistance }
  | { readonly id: 'warms'; readonly cold: Resistance }
  | { readonly id: 'dries-from' | 'under-cover' | 'cover-or-not'; readonly resistance: Resistance }
  | { readonly id: 'leaks'; readonly amps: Amps }
  | { readonly id: 'one-in'; readonly count: number; readonly seconds: Seconds }
  /** Share of a period by which the duty is off: above zero too high. */
  | { readonly id: 'offer-off'; readonly by: number }
  | { readonly id: 'closes-again'; readonly after: Seconds }
  | { readonly id: 'laid'; readonly method: string; readonly lineArea: number; readonly insulated: number }
  | { readonly id: 'service'; readonly rating: Amps; readonly demand: Amps }
  | { readonly id: 'neighbours'; readonly loads: Site['neighbours'] }
  | { readonly id: 'found'; readonly found: readonly Found[] }
  | { readonly id: 'latches'; readonly latches: readonly Latch[] }
  | { readonly id: 'damaged'; readonly damaged: readonly Damage[] }
  | { readonly id: 'indicator'; readonly indicator: Commands['indicator'] }
  | { readonly id: 'drive'; readonly drive: Commands['pilot'] }
  | { readonly id: 'share-of-period'; readonly share: Duty }
  | { readonly id: 'times'; readonly times: number }
  | ({ readonly id: 'levels' } & Halves)
  | ({ readonly id: 'potential' } & Potential)
  | { readonly id: 'mains'; readonly volts: Volts }
  | ({ readonly id: 'pilot'; readonly frequency: Hertz | null; readonly duty: Duty | null } & Halves)
  | { readonly id: 'trip'; readonly amps: Amps; readonly ms: number | null }
  | { readonly id: 'no-reading'; readonly refusal: Refusal }
  | { readonly id: 'refused'; readonly refusal: Refusal }
  | {
      readonly id: 'sounds';
      readonly heard: readonly { readonly what: Happening['what']; readonly after: Seconds }[];
    };

/** `over-gigaohm`: insulation as it should be. */
export type Resistance =
  | { readonly id: 'open' | 'over-gigaohm' }
  | { readonly id: 'ohms'; readonly ohms: Ohms };

export type PlainValue =
  | 'none'
  | 'open'
  | 'closed'
  | 'tripped'
  | 'out'
  | 'free'
  | 'held'
  | 'driven'
  | 'not-driven'
  | 'read'
  | 'not-read'
  | 'looked-at'
  | 'not-looked-at'
  | 'cut-off'
  | 'for-a-request'
  | 'for-a-short'
  | 'as-meant'
  | 'open-until-reset'
  | 'is-kept'
  | 'is-forgotten'
  | 'every-line'
  | 'own-line-alone'
  | 'sensor-right'
  | 'sensor-reversed'
  | 'sensor-own-circuit'
  | 'sensor-past-parting'
  | 'holds'
  | 'parts-in-use'
  | 'holds-and-lets-go'
  | 'never-lets-go'
  | 'never-holds'
  | 'true'
  | 'always-held'
  | 'senses'
  | 'senses-nothing'
  | 'opens-with-others'
  | 'stays-closed'
  | 'opens'
  | 'opens-nothing'
  | 'both-ways'
  | 'one-way'
  | 'welded'
  | 'never-closes'
  | 'follows-coil'
  | 'acts'
  | 'does-not-act'
  | 'never'
  | 'from-elsewhere'
  | 'from-its-own-way'
  | 'every-live'
  | 'lines-alone'
  | 'not-stated'
  | 'nothing-amiss'
  | 'still-live'
  | 'no-trip'
  | 'lines-in-order'
  | 'lines-reversed'
  | 'done';

/** Why it stands so: a piece of physics or of logic. */
export type Why =
  | { readonly id: PlainWhy }
  | {
      readonly id:
        | 'closed-undriven'
        | 'open-though-driven'
        | 'closed-as-asked'
        | 'closed-driven-here'
        | 'open-not-driven-here'
        | 'open-as-asked'
        | 'closed-to-supply'
        | 'open-and-tied';
      readonly live: Live;
    }
  | { readonly id: 'bands'; readonly unit: Sensed['pilot'] | null; readonly twin: Sensed['pilot'] | null }
  | { readonly id: 'latches'; readonly unit: readonly Latch[]; readonly twin: readonly Latch[] }
  /** `pole`: the open pole that leaves it so; null: something else in its path. */
  | { readonly id: 'floats'; readonly pole: Live | null; readonly tiedTo: Terminal | null };

export type PlainWhy =
  | 'breaker-curve'
  | 'device-sum'
  | 'own-sensing'
  | 'open-pen-limit'
  | 'driven-not-held'
  | 'held-not-driven'
  | 'lock-follows'
  | 'latched-until-cleared'
  | 'test-voltage'
  | 'control-otherwise'
  | 'pilot-follows-state'
  | 'width-offers'
  | 'voltage-shared'
  | 'lost-on-the-way'
  | 'held-faintly'
  | 'path-to-earth'
  | 'circuit-brings'
  | 'same-set-up'
  | 'moves-are-heard'
  | 'bench-allows'
  | 'there-to-be-seen';

/** From here a path is open for every purpose of a drawing, Ω. A design choice, above any insulation of interest. */
const OPEN_FROM: Ohms = 1e9;

export const resistanceOf = (ohms: Ohms, isInsulation = false): Resistance =>
  ohms < OPEN_FROM ? { id: 'ohms', ohms } : { id: isInsulation ? 'over-gigaohm' : 'open' };

/** What an instrument truly met. */
export function metValue(truth: Truth): Value {
  if ('refused' in truth) return { id: 'no-reading', refusal: truth.refused };
  const { quantity, value, details } = truth;
  switch (quantity) {
    case 'voltage':
      return { id: 'mains', volts: value };
    case 'pilot':
      return {
        id: 'pilot',
        high: details.high ?? value,
        low: details.low ?? value,
        frequency: details.frequency ?? null,
        duty: details.duty ?? null,
      };
    case 'opening-time':
      return value === Infinity ? { id: 'still-live' } : { id: 'seconds', seconds: value };
    case 'residual':
      return details.tripAmps === null
        ? { id: 'no-trip' }
        : { id: 'trip', amps: value, ms: details.tripMs ?? null };
    case 'phase-sequence':
      return { id: value > 0 ? 'lines-in-order' : 'lines-reversed' };
    case 'insulation':
      return resistanceOf(value, true);
    default:
      return resistanceOf(value);
  }
}

/** Whether two values are told alike: of a figure a drawing gives three digits. */
export const sameValue = (a: Value, b: Value): boolean => asTold(a) === asTold(b);
const asTold = (value: Value): string =>
  JSON.stringify(value, (_, x) => (typeof x === 'number' ? x.toPrecision(3) : x));
