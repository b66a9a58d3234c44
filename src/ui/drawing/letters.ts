/** What stands in an instrument's ring: the quantity that it reads, in the trade's letters. */
import type { InstrumentChoice } from '../flow/measurement.ts';

/** Both tools for voltage read volts; a pilot's ring holds its wave instead. */
export const LETTERS: Readonly<Record<InstrumentChoice | 'voltage', string>> = {
  'two-pole': 'V',
  meter: 'V',
  voltage: 'V',
  continuity: 'Ω',
  insulation: 'MΩ',
  pilot: '',
  coding: 'Ω',
  loop: 'Z',
  residual: 'IΔ',
  'opening-time': 't',
  electrode: 'RA',
  'phase-sequence': '3~',
};
