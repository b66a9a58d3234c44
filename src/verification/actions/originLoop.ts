/** What the two loop tests on the live side of the origin share: how readings are chosen, and when they agree. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Reading, ReadingOf } from '../../bench/reading.ts';
import type { Line } from '../../laws/conductors.ts';
import type { Ohms, Range } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE } from '../../site/expected.ts';
import type { Site } from '../../site/site.ts';
import { linesOf } from '../../site/site.ts';
import { between, isInside, judgeAll, readingsOf, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import type { Finding, Papers } from '../testAction.ts';

/** Full current: nothing that it could trip is in the way, and it reads finer. */
export const originLoop = (line: Line, to: string): OperationInput => ({
  op: 'measure',
  quantity: 'loop',
  between: [`incoming.${line}`, to],
  current: 'full',
});

/** Readings from every line of the incoming supply to this terminal. */
export const toTerminal = (
  o: Observed,
  { site }: Papers,
  to: string,
  when: When,
): readonly ReadingOf<'loop'>[] =>
  linesOf(site).flatMap((line) => between(readingsOf(o, 'loop', when), `incoming.${line}`, to));

/** Met once every line was measured. */
export function everyLine(
  o: Observed,
  papers: Papers,
  to: string,
  when: When,
  isMet: (r: ReadingOf<'loop'>) => boolean,
): Finding {
  const readings = toTerminal(o, papers, to, when);
  const finding = judgeAll(readings, isMet);
  const whole = linesOf(papers.site).every((line) => between(readings, `incoming.${line}`, to).length > 0);
  return finding === 'met' && !whole ? 'not shown' : finding;
}

/** A loop of the papers with what contacts and the usual loads in parallel make of it, Ω. */
export const aroundLoop = (loop: Ohms): Range => ({
  least: 0.9 * loop - CONTACT_ALLOWANCE,
  greatest: loop + CONTACT_ALLOWANCE,
});

export const near = (r: Reading, range: Partial<Range>): boolean =>
  r.qualifier !== 'unable' && isInside(r, range);

/** Line to neutral by the papers, Ω: on TN-C-S one conductor is neutral and earth in one. */
export const neutralLoop = (site: Site): Ohms =>
  site.earthing === 'TN-C-S' ? site.loopImpedance : site.neutralImpedance;

/** Line to earth by the papers, Ω. */
export const earthLoop = (site: Site): Ohms =>
  site.earthing === 'TT'
    ? (site.electrodeResistance ?? 0) + site.sourceElectrodeResistance + site.neutralImpedance / 2
    : site.loopImpedance;
