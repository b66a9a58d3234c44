/** What is set out of the ordinary at the stand-in, in words: its symbol alone would be missed. */

import { leakageText, loadText } from '../../words/settings.ts';
import type { Position } from '../flow/position.ts';
import { inLines, LETTERING } from './figure.ts';

export const oddWords = ({ pilot, diode, earth, load, leakage }: Position): readonly string[] =>
  [
    ...(pilot === 'sound' ? [] : [pilot === 'open' ? 'CP open' : 'CP to PE']),
    ...(diode === 'sound' ? [] : ['diode shorted']),
    ...(earth === 'sound' ? [] : ['PE open']),
    ...(load === 0 ? [] : [loadText(load)]),
    ...(leakage === null ? [] : [leakageText(leakage)]),
  ].map((text) => `set: ${text}`);

/** The same in lines that fit into so much room; the last says where there is more than that. */
export function oddLines(
  position: Position,
  room: number,
  most = Number.POSITIVE_INFINITY,
): readonly string[] {
  const lines = oddWords(position).flatMap((text) => inLines(text, true, LETTERING, room));
  return lines.length > most ? [...lines.slice(0, most - 1), 'and more set'] : lines;
}
