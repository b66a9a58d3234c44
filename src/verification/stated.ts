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
import type { Expectation, Papers, StatedFigure, Values } from './testAction.ts';

type End = keyof Range;
const ENDS = ['least', 'greatest'] as const satisfies readonly End[];
const KINDS = { least: 'least', greatest: 'most' } as const;

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
  { own = [] }: Papers,
  test: string,
  source: Source,
  stated: Readonly<Record<Name, Stated>>,
): InForce<Name> {
  const names = Object.keys(stated) as Name[];
  const all = names.flatMap((name) =>
    ENDS.flatMap((end) => {
      const { unit, ofLimit, [end]: usual } = stated[name];
      if (usual === undefined) return [];
      const id = ofLimit ? name : `${name}-${end}`;
      const set = own.find((one) => one.limit === `${test}/${id}`);
      const figure: StatedFigure = { id, kind: KINDS[end], unit, value: set?.value ?? usual, usual };
      return [{ name, end, set, figure, isLimit: ofLimit === true }];
    }),
  );
  const set = all.flatMap((one) => one.set ?? []);
  const states = all.flatMap(({ figure, isLimit }) => (isLimit ? [] : [figure]));
  return {
    ranges: Object.fromEntries(
      names.map((name) => [
        name,
        Object.fromEntries(
          all.flatMap((one) => (one.name === name ? [[one.end, one.figure.value] as const] : [])),
        ),
      ]),
    ) as Record<Name, Partial<Range>>,
    line: {
      values: Object.fromEntries(all.map(({ name, end, figure }) => [`${name}-${end}`, figure.value])),
      source: set.length === 0 ? source : { basis: 'tutor', where: set.map((one) => one.source).join('; ') },
      ...(states.length === 0 ? {} : { states }),
      ...(set.length === 0 ? {} : { own: { why: set.map(({ why }) => why).join(' ') } }),
    },
  };
}

/** Ranges that end before they begin, once both ends are replaced or one of them is: by the name of an end. */
export const upsideDown = (states: readonly StatedFigure[]): readonly string[] =>
  states.flatMap(({ id, value, kind }) => {
    const other = states.find((one) => one.id === id.replace(/-least$/, '-greatest'));
    return kind === 'least' && other !== undefined && other.id !== id && value > other.value
      ? [id, other.id]
      : [];
  });
