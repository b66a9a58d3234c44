/**
 * A giving-out in the address of the page, behind the #, which no browser sends to a server. It carries of each job only
 * what differs from one that ships, with a hash by which it is known whether the same job came of it.
 */
import { scenarioHash } from '../attempt/record/origin.ts';
import type { Parsed } from '../scenario/problems.ts';
import type { Change } from './difference.ts';
import { changed, changesBetween } from './difference.ts';
import type { Giving } from './giving.ts';
import { forLearners, LARGEST_GIVING } from './giving.ts';
import { packed, unpacked } from './packed.ts';

/** From which on a link is more than somebody sends or a camera reads well, characters: then the file is offered. */
export const LONGEST_LINK = 600;
/** Where in the page it opens. */
export const GIVEN_PATH = '/given/';

/** Of a job: the rung of the giving-out says how much support there is, and where a schema is kept says nothing. */
const SAID_ELSEWHERE = ['support', '$schema'];

/** Letters of the hash of a job that a link carries. */
const HASH = 16;

/** A job by what differs from the shipped one of this id. */
interface Differing {
  readonly of: string;
  readonly set?: readonly Change[];
  readonly sha: string;
}

const idOf = (file: unknown): unknown => (file as { id?: unknown } | null)?.id;

/** A job as a link carries it: by what differs from the shipped one that leaves least to say, or whole. */
function asDiffering(file: object, shipped: readonly object[]): unknown {
  const own = shipped.find((other) => idOf(other) === idOf(file));
  const bases = own === undefined ? shipped : [own];
  const tries: readonly { readonly text: string; readonly value: unknown }[] = [
    file,
    ...bases.map((base): Differing => {
      const set = changesBetween(base, file).filter(([[first = '']]) => !SAID_ELSEWHERE.includes(first));
      const sha = scenarioHash(changed(base, set)).slice(0, HASH);
      return { of: String(idOf(base)), ...(set.length === 0 ? {} : { set }), sha };
    }),
  ].map((value) => ({ text: JSON.stringify(value), value }));
  return tries.reduce((best, one) => (one.text.length < best.text.length ? one : best)).value;
}

/** What a link to it carries, before it is packed: the learner's copy. */
export function linkText(giving: Giving, shipped: readonly object[]): string {
  const { group, jobs, variants, clears, ...rest } = forLearners(giving);
  return JSON.stringify({
    ...rest,
    ...(group === '' ? {} : { group }),
    jobs: jobs.map((job) => asDiffering(job as object, shipped)),
    ...(variants.length === 0 ? {} : { variants }),
    ...(clears ? { clears } : {}),
  });
}

/** The address behind the page's own. */
export const linkTo = (text: string): string => `#${GIVEN_PATH}${packed(text)}`;

/** The text of what an address carries. */
export const textInLink = (letters: string): string | null => unpacked(letters, LARGEST_GIVING);

/** The value with every job whole, for whoever reads it further. Anything else is handed on as it is. */
export function madeWhole(value: unknown, shipped: readonly object[]): Parsed<unknown> {
  const { jobs } = (value ?? {}) as { jobs?: unknown };
  if (!Array.isArray(jobs)) return { ok: true, value };
  const whole: unknown[] = [];
  for (const [i, job] of jobs.entries()) {
    const { of, set = [], sha } = (job ?? {}) as Partial<Differing>;
    if (of === undefined) {
      whole.push(job);
      continue;
    }
    const path = `jobs[${i}]`;
    const base = shipped.find((file) => idOf(file) === of);
    if (base === undefined)
      return {
        ok: false,
        problems: [{ path, message: 'no job of that name comes with this version of the page' }],
      };
    if (!areChanges(set)) return { ok: false, problems: [{ path, message: 'the link is damaged' }] };
    const file = changed(base, set);
    if (scenarioHash(file).slice(0, HASH) !== sha)
      return {
        ok: false,
        problems: [
          {
            path,
            message: 'the job in this version of the page is another one: ask for the giving-out as a file',
          },
        ],
      };
    whole.push(file);
  }
  return { ok: true, value: { ...(value as object), jobs: whole } };
}

const areChanges = (set: unknown): set is readonly Change[] =>
  Array.isArray(set) &&
  set.every(
    (change) =>
      Array.isArray(change) &&
      Array.isArray(change[0]) &&
      change[0].length <= 10 &&
      change[0].every((name) => typeof name === 'string'),
  );
