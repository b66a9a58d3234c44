/**
 * Like readings in one press: the leads as they were put on one pair, and then on others by the same pattern. Each is a
 * reading of its own, in the log as at the bench.
 */
import type { Measurement } from '../../bench/operation.ts';
import type { Terminal } from '../../bench/terminals.ts';
import type { Site } from '../../site/site.ts';
import { linesOf, livesOf } from '../../site/site.ts';

export const SPREADS = ['one', 'lines', 'lives', 'pairs'] as const;
export type Spread = (typeof SPREADS)[number];

export const SPREAD_WORDS: Readonly<Record<Spread, string>> = {
  one: 'this pair',
  lines: 'every line',
  lives: 'every live',
  pairs: 'every pair',
};

/** Those that mean something on a site. */
export const spreadsOn = (site: Site): readonly Spread[] =>
  SPREADS.filter((spread) => spread !== 'lines' || site.phases > 1);

const conductorOf = (terminal: Terminal): string => terminal.split('.')[1] ?? '';
const at = (terminal: Terminal, conductor: string): Terminal => `${terminal.split('.')[0]}.${conductor}`;

/** The measurement, and the others of its pattern; itself alone where its leads are on nothing that has others. */
export function spreadOver(one: Measurement, spread: Spread, site: Site): readonly Measurement[] {
  if (one.quantity === 'residual')
    return spread === 'one' ? [one] : linesOf(site).map((line) => ({ ...one, line }));
  if (!('between' in one) || spread === 'one') return [one];
  const [first, second] = one.between;
  if (typeof first !== 'string' || typeof second !== 'string') return [one];
  const pairs = spread === 'pairs' ? everyPair(first, second, site) : inPlaceOf(first, second, spread, site);
  return pairs.length === 0
    ? [one]
    : pairs.map((between): Measurement => ({ ...one, between: [...between] }));
}

type Pair = readonly [Terminal, Terminal];

/** Of the live conductors and PE at the place where both leads are. */
function everyPair(first: Terminal, second: Terminal, site: Site): readonly Pair[] {
  if (first.split('.')[0] !== second.split('.')[0]) return [];
  const all = [...livesOf(site), 'PE'].map((conductor) => at(first, conductor));
  return all.flatMap((a, i) => all.slice(i + 1).map((b): Pair => [a, b]));
}

/** One end moved from conductor to conductor; both, where both are on the same one, as from one side of a pole to the other. */
function inPlaceOf(first: Terminal, second: Terminal, spread: Spread, site: Site): readonly Pair[] {
  const names: readonly string[] = spread === 'lines' ? linesOf(site) : livesOf(site);
  const [a, b] = [conductorOf(first), conductorOf(second)];
  const moves = names.includes(a) ? a : names.includes(b) ? b : null;
  if (moves === null) return [];
  const move = (terminal: Terminal, to: string) =>
    conductorOf(terminal) === moves ? at(terminal, to) : terminal;
  return names.map((to): Pair => [move(first, to), move(second, to)]).filter(([x, y]) => x !== y);
}
