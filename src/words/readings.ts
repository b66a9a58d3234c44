/**
 * What is measured in the trade's words, by quantity: names, titles of readings, and the keys that take them. It says what
 * the trainee set, never what should have been set.
 */
import type { Measurement, MeasurementOf } from '../bench/operation.ts';
import type { Reading, ReadingOf } from '../bench/reading.ts';
import { pairOf } from '../bench/reading.ts';
import type { Quantity } from '../bench/readings/quantity.ts';
import { terminalsIn } from '../bench/terminals.ts';
import { betweenText, conductorOf, fromLabel, PLACE_WORDS, placeOf } from './terminals.ts';

export const WAVEFORM_WORDS = {
  sinusoidal: 'a.c.',
  'half-wave-positive': 'half-wave, positive',
  'half-wave-negative': 'half-wave, negative',
  'smooth-dc-positive': 'smooth d.c., positive',
  'smooth-dc-negative': 'smooth d.c., negative',
} as const;

export const OPENING_WORDS = {
  'C-to-B': 'from C to B',
  'C-to-A': 'from C to A',
  unplug: 'from unplugging',
  'pilot-short': 'from CP shorted to PE',
  'pilot-open': 'from CP open',
  'earth-open': 'from PE open at the stand-in',
  'proximity-lost': 'from PP open at the plug',
} as const;

interface Words<Q extends Quantity> {
  readonly name: string;
  /** What of it is compared with the correct twin. */
  readonly compared: string;
  /** What a reading is of: instrument, setting, leads. */
  readonly title: (reading: ReadingOf<Q>) => string;
  /** The verb with its object, for the key that takes it, and where the leads go. */
  readonly apply: (m: MeasurementOf<Q>) => string;
  readonly where: (m: MeasurementOf<Q>) => string;
}

const leadsText = (reading: Reading): string => {
  const pair = pairOf(reading);
  return pair === undefined ? '' : betweenText(fromLabel(pair[0]), fromLabel(pair[1]));
};
const byLeads = ({ between }: MeasurementOf<'continuity' | 'insulation' | 'voltage' | 'loop'>): string =>
  ` ${betweenText(...between)}`;

const WORDS: { readonly [Q in Quantity]: Words<Q> } = {
  continuity: {
    name: 'continuity',
    compared: 'continuity',
    title: (reading) => `continuity, ${leadsText(reading)}`,
    apply: () => 'Apply the continuity tester',
    where: byLeads,
  },
  insulation: {
    name: 'insulation resistance',
    compared: 'insulation',
    title: (reading) => `insulation, ${reading.volts ?? ''} V, ${leadsText(reading)}`,
    apply: ({ volts }) => `Apply ${volts} V`,
    where: byLeads,
  },
  voltage: {
    name: 'voltage',
    compared: 'voltage',
    title: (reading) => `${reading.tool === 'meter' ? 'meter' : 'two-pole detector'}, ${leadsText(reading)}`,
    apply: ({ tool }) => `Apply the ${tool === 'meter' ? 'meter' : 'detector'}`,
    where: byLeads,
  },
  pilot: {
    name: 'pilot against time',
    compared: 'pilot',
    title: () => 'pilot against time, CP–PE at the outlet',
    apply: () => 'Apply the pilot instrument',
    where: () => ' CP–PE at the outlet',
  },
  coding: {
    name: 'proximity coding',
    compared: 'coding',
    title: (reading) => `proximity coding, ${leadsText(reading)}`,
    apply: () => 'Apply the ohmmeter',
    where: () => ' PP–PE at the outlet',
  },
  loop: {
    name: 'loop',
    compared: 'loop',
    title: (reading) => `loop, ${reading.current === 'full' ? 'full' : 'low'} current, ${leadsText(reading)}`,
    apply: () => 'Apply the loop test',
    where: byLeads,
  },
  residual: {
    name: 'residual current',
    compared: 'residual current at which it trips',
    title: ({ line = '', waveform = 'sinusoidal', mode, place = 'outlet' }) =>
      `residual current, ${WAVEFORM_WORDS[waveform]}, ${mode === 'ramp' ? 'rising' : 'fixed'}, ${line}–PE at the ${PLACE_WORDS[place] ?? place}`,
    apply: ({ waveform, mode, amps }) => {
      const wave = WAVEFORM_WORDS[waveform];
      if (mode === 'ramp') return `Apply rising ${wave}`;
      const set = amps === undefined ? 'the rated current' : `${Number((1000 * amps).toPrecision(6))} mA`;
      return `Apply ${set}, ${wave},`;
    },
    where: ({ line, at }) => ` ${line}–PE at the ${PLACE_WORDS[at] ?? at}`,
  },
  'opening-time': {
    name: 'opening time',
    compared: 'time until the outlet is dead',
    title: ({ of = 'C-to-B' }) => `opening time, ${OPENING_WORDS[of]}`,
    apply: () => 'Apply the change',
    where: ({ of }) => ` ${OPENING_WORDS[of]}`,
  },
  electrode: {
    name: 'earth electrode, three stakes',
    compared: 'earth electrode',
    title: () => 'earth electrode, three stakes',
    apply: () => 'Apply the electrode test',
    where: () => ', electrode to stakes',
  },
  'phase-sequence': {
    name: 'order of the lines',
    compared: 'order of the lines',
    title: ({ place = 'outlet' }) => `order of the lines at the ${PLACE_WORDS[place] ?? ''}`,
    apply: () => 'Apply the sequence test',
    where: ({ at }) => ` L1 L2 L3 at the ${PLACE_WORDS[at]}`,
  },
};

export const quantityName = (quantity: Quantity): string => WORDS[quantity].name;
export const comparedName = (quantity: Quantity): string => WORDS[quantity].compared;

/** Those of a quantity that whoever asks has a reading or a measurement of. */
const wordsOf = (quantity: Quantity) => WORDS[quantity] as Words<Quantity>;

/** For the head of its entry. */
export const readingTitle = (reading: Reading): string => wordsOf(reading.quantity).title(reading);

/** What goes where. */
export const applyText = (m: Measurement): string => {
  const words = wordsOf(m.quantity);
  return `${words.apply(m)}${words.where(m)}`;
};

/** On a button, under the line that names both leads: where they are at two places, they are not named once more. */
export const applyKey = (m: Measurement): string => {
  const isApart = 'between' in m && placeOf(m.between.flatMap(terminalsIn)) === null;
  return isApart ? wordsOf(m.quantity).apply(m) : applyText(m);
};

/** The two conductors of a pair at one place, and that place. */
export const pairText = (reading: Reading): string => (pairOf(reading) ?? []).map(conductorOf).join('–');
export const placeText = (reading: Reading | undefined): string =>
  PLACE_WORDS[(reading && pairOf(reading)?.[0].split('.')[0]) ?? ''] ?? '';
