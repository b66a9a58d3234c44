/** What is set out of the ordinary at the stand-in, in words: its symbol alone would be missed. */

import { leakageText, loadText } from '../../words/settings.ts';
import type { Position } from '../flow/position.ts';

export const oddWords = ({ pilot, diode, earth, load, leakage }: Position): readonly string[] =>
  [
    ...(pilot === 'sound' ? [] : [pilot === 'open' ? 'CP open' : 'CP to PE']),
    ...(diode === 'sound' ? [] : ['diode shorted']),
    ...(earth === 'sound' ? [] : ['PE open']),
    ...(load === 0 ? [] : [loadText(load)]),
    ...(leakage === null ? [] : [leakageText(leakage)]),
  ].map((text) => `set: ${text}`);
