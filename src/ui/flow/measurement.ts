/**
 * A measurement being prepared: which instrument, how it is set, where its leads are. Becomes an operation once
 * nothing is missing; what is missing is said by the name of its field. Nothing here says what would be right.
 */

import type { Measurement, MeasurementOf, OperationInput } from '../../bench/operation.ts';
import { operation } from '../../bench/operation.ts';
import { GREATEST_TEST_CURRENT, WAVEFORMS } from '../../bench/readings/choices.ts';
import type { Terminal } from '../../bench/terminals.ts';
import { terminalsIn } from '../../bench/terminals.ts';
import type { Site } from '../../site/site.ts';
import { typedNumber } from '../format/figures.ts';
import type { Happened } from './bench.ts';
import type { Spread } from './spread.ts';
import { SPREADS, spreadOver } from './spread.ts';

export const INSTRUMENT_CHOICES = [
  ['two-pole', 'two-pole detector, voltage'],
  ['meter', 'meter 10 MΩ, voltage'],
  ['continuity', 'continuity'],
  ['insulation', 'insulation'],
  ['pilot', 'pilot against time'],
  ['coding', 'proximity coding'],
  ['loop', 'loop'],
  ['residual', 'residual current'],
  ['opening-time', 'opening time'],
  ['electrode', 'earth electrode, three stakes'],
  ['phase-sequence', 'order of the lines'],
] as const;
export type InstrumentChoice = (typeof INSTRUMENT_CHOICES)[number][0];

export const instrumentWords = (instrument: InstrumentChoice | ''): string =>
  INSTRUMENT_CHOICES.find(([name]) => name === instrument)?.[1] ?? '';

export const TEST_VOLTS = ['50', '100', '250', '500', '1000'] as const;

export { WAVEFORMS };

export interface MeasurementDraft {
  readonly instrument: InstrumentChoice | '';
  /** One terminal, or several joined; '' where none is chosen yet. */
  readonly first: readonly (Terminal | '')[];
  readonly second: Terminal | '';
  readonly volts: string;
  readonly current: 'low' | 'full';
  readonly line: string;
  readonly waveform: string;
  readonly mode: 'ramp' | 'fixed';
  readonly milliamps: string;
  readonly seconds: string;
  readonly of: string;
  /** Where a residual test current flows. */
  readonly tested: MeasurementOf<'residual'>['at'];
  /** Where the order of the lines is looked at. */
  readonly at: MeasurementOf<'phase-sequence'>['at'];
  /** On which pairs or lines besides. */
  readonly spread: Spread;
}

/** The field under which it is kept with the attempt's place. */
export const MEASURING_FIELD = 'measure';

const NOTHING: MeasurementDraft = {
  instrument: '',
  first: [''],
  second: '',
  volts: '',
  current: 'low',
  line: 'L1',
  waveform: 'sinusoidal',
  mode: 'ramp',
  milliamps: '',
  seconds: '',
  of: 'C-to-B',
  tested: 'outlet',
  at: 'outlet',
  spread: 'one',
};

export const hasLeads = (instrument: InstrumentChoice | ''): boolean =>
  ['two-pole', 'meter', 'continuity', 'insulation', 'loop'].includes(instrument);

/** As the trainee's own last measurements left the instruments and leads. */
export function lastDraft(happened: readonly Happened[]): MeasurementDraft {
  return happened.reduce<MeasurementDraft>(
    (draft, { operation: what }) => (what.op === 'measure' ? after(draft, what) : draft),
    NOTHING,
  );
}

/** With instrument, settings and leads as they are after a measurement. */
export function after(draft: MeasurementDraft, m: Measurement): MeasurementDraft {
  const instrument: InstrumentChoice = m.quantity === 'voltage' ? m.tool : m.quantity;
  const leads =
    'between' in m
      ? { first: terminalsIn(m.between[0]), second: terminalsIn(m.between[1])[0] ?? ('' as const) }
      : {};
  const settings =
    m.quantity === 'insulation'
      ? { volts: String(m.volts) }
      : m.quantity === 'loop'
        ? { current: m.current }
        : m.quantity === 'residual'
          ? {
              tested: m.at,
              line: m.line,
              waveform: m.waveform,
              mode: m.mode,
              milliamps: m.amps === undefined ? '' : String(Number((1000 * m.amps).toPrecision(6))),
              seconds: m.seconds === undefined ? '' : String(m.seconds),
            }
          : m.quantity === 'opening-time'
            ? { of: m.of }
            : m.quantity === 'phase-sequence'
              ? { at: m.at }
              : {};
  return { ...draft, ...leads, ...settings, instrument };
}

export type Prepared =
  | { readonly ok: true; readonly measurement: Measurement }
  | { readonly ok: false; readonly missing: string };

export function prepared(draft: MeasurementDraft): Prepared {
  const missing = missingIn(draft);
  if (missing !== null) return { ok: false, missing };
  const input = { op: 'measure', ...settingsOf(draft) } as OperationInput;
  return { ok: true, measurement: operation(input) as Measurement };
}

/** What a draft would read, in the order in which it is taken; nothing while something is missing. */
export function readingsOf(draft: MeasurementDraft, site: Site): readonly Measurement[] {
  const ready = prepared(draft);
  return ready.ok ? spreadOver(ready.measurement, draft.spread, site) : [];
}

/** As it was set for readings that were taken in one press; where they are no pattern, as for the last of them. */
export function draftOf(
  taken: readonly Measurement[],
  before: MeasurementDraft,
  site: Site,
): MeasurementDraft {
  const [first] = taken;
  if (first === undefined) return before;
  const wanted = JSON.stringify(taken);
  const pattern = SPREADS.map((spread) => ({ ...after(before, first), spread })).find(
    (draft) => JSON.stringify(readingsOf(draft, site)) === wanted,
  );
  return pattern ?? { ...taken.reduce(after, before), spread: 'one' };
}

/** What only looks at the circuit, and puts no voltage or current of its own on it. */
const LOOKS = ['two-pole', 'meter', 'pilot', 'phase-sequence'] as const satisfies readonly InstrumentChoice[];
export const onlyLooks = (instrument: InstrumentChoice | ''): boolean =>
  LOOKS.some((one) => one === instrument);

function missingIn(draft: MeasurementDraft): string | null {
  if (draft.instrument === '') return 'Choose an instrument.';
  if (hasLeads(draft.instrument)) {
    if (draft.first.includes('') || draft.second === '') return 'Put both leads on a terminal.';
    // Both leads on one terminal is how they are joined to be looked at.
    if (new Set(draft.first).size < draft.first.length) return 'A terminal can take a lead only once.';
  }
  if (draft.instrument === 'insulation' && draft.volts === '') return 'Choose a test voltage.';
  if (draft.instrument === 'residual' && draft.mode === 'fixed' && draft.milliamps.trim() !== '') {
    const milliamps = typedNumber(draft.milliamps);
    if (milliamps === null || milliamps < 1 || milliamps > 1000 * GREATEST_TEST_CURRENT)
      return `A fixed current is 1 to ${1000 * GREATEST_TEST_CURRENT} mA; left empty it is the rating.`;
  }
  if (draft.instrument === 'residual' && draft.mode === 'fixed' && draft.seconds.trim() !== '') {
    const seconds = typedNumber(draft.seconds);
    if (seconds === null || seconds < 0.01 || seconds > 60)
      return 'A fixed current is held for up to 60 s; left empty it is the usual time.';
  }
  return null;
}

function settingsOf(draft: MeasurementDraft): Record<string, unknown> {
  const [only] = draft.first;
  const between = [draft.first.length === 1 ? only : draft.first, draft.second];
  switch (draft.instrument) {
    case 'two-pole':
    case 'meter':
      return { quantity: 'voltage', between, tool: draft.instrument };
    case 'insulation':
      return { quantity: 'insulation', between, volts: Number(draft.volts) };
    case 'loop':
      return { quantity: 'loop', between, current: draft.current };
    case 'continuity':
      return { quantity: 'continuity', between };
    case 'residual': {
      const milliamps = typedNumber(draft.milliamps);
      const amps = draft.mode === 'fixed' && milliamps !== null ? { amps: milliamps / 1000 } : {};
      const held = typedNumber(draft.seconds);
      const seconds = draft.mode === 'fixed' && held !== null ? { seconds: held } : {};
      return {
        quantity: 'residual',
        at: draft.tested,
        line: draft.line,
        waveform: draft.waveform,
        mode: draft.mode,
        ...amps,
        ...seconds,
      };
    }
    case 'opening-time':
      return { quantity: 'opening-time', of: draft.of };
    case 'phase-sequence':
      return { quantity: 'phase-sequence', at: draft.at };
    default:
      return { quantity: draft.instrument };
  }
}
