/** The vehicle stand-in in words: its state, and its settings that are out of the ordinary. */
import type { StandIn } from '../bench/standIn.ts';

type Set = Pick<StandIn, 'state' | 'pilot' | 'diode' | 'earth'>;

/** Empty where pilot, diode and PE are sound. */
export const faultsSet = ({ pilot, diode, earth }: Omit<Set, 'state'>): readonly string[] => [
  ...(pilot === 'sound' ? [] : [pilot === 'open' ? 'CP open' : 'CP shorted to PE']),
  ...(diode === 'sound' ? [] : ['diode shorted']),
  ...(earth === 'sound' ? [] : ['PE open']),
];

/** What it presents, such as `state C, CP open`. */
export const presentsText = (standIn: Set): string =>
  [`state ${standIn.state}`, ...faultsSet(standIn)].join(', ');
