/**
 * Figures that a line states by itself, beside the limits that readings are held against. Those that a local code or a
 * maker may rightly put otherwise have a name, by which whoever set the job replaces them (`own` of the file): the
 * pilot's peaks and frequency, the time from losing the pilot or the coding to a dead outlet (that of the test's limit),
 * the supply's voltages, and when a plug comes free.
 *
 * Out of reach on purpose:
 * - what tells live from dead (50 V, 60 V d.c. 5 s after switching off, the proving unit), what an emergency stop or an
 *   open PEN allows (0.5 s; 5 s, 70 V), and every line after which work stops (`stops`): somebody would be hurt by a
 *   weaker one. Where a limit beside such a line is replaced, the line keeps the figure of the standard.
 * - what follows from papers or sheet (sums of conductors and loops, the offer, the start-up): those are changed.
 * - times for which other tests wait before they look (3 s to supply, 10 s to follow a limit): with another one they
 *   would show nothing.
 */
import type { Range } from '../laws/quantities.ts';
import type { Source } from './sources.ts';
import type { Expectation, OwnLimit, Papers, StatedFigure, Values } from './testAction.ts';

/** The usual range, in the unit's own size. `ofLimit`: it is that of the limit of this name, which replaces it. */
interface Stated extends Partial<Range> {
  readonly unit: StatedFigure['unit'];
  readonly ofLimit?: true;
}

interface InForce<Name extends string> {
  readonly ranges: Readonly<Record<Name, Partial<Range>>>;
  /** What of it the line holds: `NAME-least` and `NAME-greatest` among its values. */
  readonly line: Pick<Expectation, 'source' | 'states' | 'own'> & { readonly values: Values };
}

/**
 * The ranges that a line of this test states, as they are in force on these papers: each end is that of the standard, or
 * what stands in its place under `TEST/NAME-least` or `TEST/NAME-greatest`.
 */
export function stating<Name extends string>(
  { own: replaced = [] }: Papers,
  test: string,
  source: Source,
  stated: Readonly<Record<Name, Stated>>,
): InForce<Name> {
  const ranges: Record<string, Partial<Range>> = {};
  const values: Record<string, number> = {};
  const states: StatedFigure[] = [];
  const set: OwnLimit[] = [];
  for (const [name, { unit, ofLimit, ...ends }] of Object.entries<Stated>(stated)) {
    const range: Record<string, number> = {};
    for (const [end, usual] of Object.entries(ends)) {
      const id = ofLimit ? name : `${name}-${end}`;
      const one = replaced.find(({ limit }) => limit === `${test}/${id}`);
      const value = one?.value ?? usual;
      if (one) set.push(one);
      if (!ofLimit) states.push({ id, unit, usual });
      values[`${name}-${end}`] = value;
      range[end] = value;
    }
    ranges[name] = range;
  }
  const line = { values, states, source };
  const all = ranges as Record<Name, Partial<Range>>;
  if (set.length === 0) return { ranges: all, line };
  const where = set.map((one) => one.source).join('; ');
  const own = { why: set.map(({ why }) => why).join(' ') };
  return { ranges: all, line: { ...line, source: { basis: 'tutor', where }, own } };
}
