/** The vehicle stand-in's settings that are out of the ordinary, in words. */
import type { StandIn } from '../bench/standIn.ts';

/** Empty where pilot, diode and PE are sound. */
export const faultsSet = ({
  pilot,
  diode,
  earth,
}: Pick<StandIn, 'pilot' | 'diode' | 'earth'>): readonly string[] => [
  ...(pilot === 'sound' ? [] : [pilot === 'open' ? 'CP open' : 'CP shorted to PE']),
  ...(diode === 'sound' ? [] : ['diode shorted']),
  ...(earth === 'sound' ? [] : ['PE open']),
];
