/** A protective path between two terminals: what it ought to read, and the limit that follows. */
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE } from '../../site/expected.ts';
import { between, isInside, judgeAll, off, readingsOf, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE } from '../sources.ts';
import type { Expectation, Limit, Papers, Values } from '../testAction.ts';

export const continuityOf = (
  observed: Observed,
  a: string,
  b: string,
  when: When = () => true,
): readonly Reading[] =>
  between(
    readingsOf(observed, 'continuity', (setUp, sample) => off(setUp, sample) && when(setUp, sample)),
    a,
    b,
  ).filter((r) => r.qualifier !== 'unable');

/**
 * A protective path between two terminals: its sum, that it is not open, and the limit that follows from the sum.
 * `least`: what a declared path in parallel may bring it down to. `conductor`: how the sum comes about.
 */
export function path(
  papers: Papers,
  [a, b]: readonly [string, string],
  sum: Ohms,
  least: Ohms,
  of: 'unit' | 'circuit',
  conductor: Values,
) {
  const lowest = least - CONTACT_ALLOWANCE;
  const values: Values = { ...conductor, sum, least: lowest, allowance: CONTACT_ALLOWANCE };
  const points: Expectation['points'] = ['protective-conductor'];
  const expectations: readonly Expectation[] = [
    {
      id: 'near-sum',
      should: true,
      values,
      source: rulesFor(papers).regulation('643.2.1', 'sum-with-contacts'),
      of,
      points,
      judge: (o) =>
        judgeAll(continuityOf(o, a, b), (r) =>
          isInside(r, { least: lowest, greatest: sum + CONTACT_ALLOWANCE }),
        ),
    },
    {
      id: 'open',
      should: false,
      source: rulesFor(papers).regulation('643.2.1'),
      of,
      points,
      judge: (o) => judgeAll(continuityOf(o, a, b), (r) => r.qualifier !== '>' && (r.value ?? 0) < 100),
    },
  ];
  const limit: Limit = {
    id: 'sum',
    values,
    quantity: 'continuity',
    unit: 'Ω',
    limit: sum + CONTACT_ALLOWANCE,
    kind: 'most',
    source: PRACTICE,
    points,
    applies: (r) => between([r], a, b).length > 0,
  };
  return { expectations, limit };
}
