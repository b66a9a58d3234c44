/**
 * What is wrong with a file, said once for every problem: where in the file, and what would be right. Turns a schema's
 * complaints into such problems; a text is read before (json.ts).
 */
import * as v from 'valibot';
import type { Problem } from './problem.ts';
import { furtherProblems, listed, MOST_LISTED } from './problem.ts';
import { quoted, shortened } from './quoted.ts';
import { figureIn, meant, meantByTrade } from './tradeNames.ts';
import { namesAt, wantedAt } from './wanted.ts';

export type { Problem } from './problem.ts';

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Largest file that is read, bytes. */
export const LARGEST_FILE = 1_000_000;

export const tooLarge = (largest: number): string =>
  `larger than ${largest / 1_000_000} MB; ${largest === LARGEST_FILE ? 'scenario and attempt files are far smaller' : 'no more is read at once'}`;

/**
 * Lists far longer than any that is read. They are refused before a schema sees them, which complains of every item
 * and takes long over a hundred thousand. The value comes from JSON, so it is no deeper than that may be.
 */
export const longLists = (value: unknown, most: number, path = ''): readonly Problem[] =>
  hasLongList(value, most) ? whichAreLong(value, most, path) : [];

function hasLongList(value: unknown, most: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  if (Array.isArray(value) && value.length > most) return true;
  for (const key in value)
    if (hasLongList((value as Readonly<Record<string, unknown>>)[key], most)) return true;
  return false;
}

function whichAreLong(value: unknown, most: number, path: string): readonly Problem[] {
  if (typeof value !== 'object' || value === null) return [];
  if (!Array.isArray(value))
    return Object.entries(value).flatMap(([key, inner]) =>
      whichAreLong(inner, most, joinPath(path, shortened(key))),
    );
  if (value.length > most) return [{ path, message: `too long: at most ${most} is expected` }];
  return value.flatMap((inner, i) => whichAreLong(inner, most, `${path}[${i}]`));
}

/** A value against a schema: every complaint as a problem with its path. */
export function check<S extends v.GenericSchema>(schema: S, value: unknown): Parsed<v.InferOutput<S>> {
  const result = v.safeParse(schema, value);
  if (result.success) return { ok: true, value: result.output };
  // Words are sought for those alone that are listed: a hostile file has a million.
  const first = result.issues.slice(0, MOST_LISTED).flatMap((issue) => problemsOf(issue, schema));
  return {
    ok: false,
    problems: listed([...first, ...furtherProblems(result.issues.length - MOST_LISTED)]),
  };
}

function problemsOf(issue: v.BaseIssue<unknown>, schema: v.GenericSchema): readonly Problem[] {
  // A union lists what each of its members says; the deepest member is the one that was meant.
  const inner = issue.issues?.filter((other) => (other.path?.length ?? 0) > 0);
  if (issue.type === 'union' && inner !== undefined && inner.length > 0)
    return inner.flatMap((other) =>
      problemsOf(
        { ...other, path: [...(issue.path ?? []), ...(other.path ?? [])] } as v.BaseIssue<unknown>,
        schema,
      ),
    );
  return [{ path: pathOf(issue), message: messageOf(issue, schema) }];
}

function pathOf(issue: v.BaseIssue<unknown>): string {
  return (issue.path ?? []).reduce((path, item) => {
    const key = (item as { key?: unknown }).key;
    return typeof key === 'number' ? `${path}[${key}]` : joinPath(path, shortened(String(key)));
  }, '');
}

const joinPath = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

function messageOf(issue: v.BaseIssue<unknown>, schema: v.GenericSchema): string {
  const { type, kind, received, expected, input } = issue;
  if (type === 'strict_object' && expected === 'never') {
    const last = issue.path?.at(-1) as { key?: unknown } | undefined;
    const name = String(last?.key);
    return `unknown field ${quoted(name)}; ${meant(name, namesAt(schema, issue))}`;
  }
  if (kind === 'validation' && !issue.message.startsWith('Invalid ')) return issue.message;
  if (received === 'undefined') return `missing: ${wantedAt(schema, issue)} is expected`;
  const written = asFileWrites(input, expected ?? '', wantedAt(schema, issue));
  if (kind === 'schema' && written !== null) return written;
  if (kind === 'schema' && typeof input === 'string' && expected?.includes('"')) {
    const names = [...expected.matchAll(/"([^"]+)"/g)].map((match) => match[1] as string);
    return `${quoted(input)} is not known here; ${meant(input, names)}`;
  }
  if (type === 'max_value') return `${received} is too large: ${expected?.replace('<=', 'at most ')}`;
  if (type === 'min_value') return `${received} is too small: ${expected?.replace('>=', 'at least ')}`;
  if (type === 'max_length' || type === 'max_entries')
    return `too long: ${expected?.replace('<=', 'at most ')} is expected`;
  if (type === 'min_length') return `too short: ${expected?.replace('>=', 'at least ')} is expected`;
  if (type === 'integer') return 'a whole number is expected';
  return `${shortened(received)} does not fit: ${wantedAt(schema, issue)} is expected`;
}

/** A figure as a person writes it, where the file wants a bare number in SI units; null where it is none that fits. */
function asFileWrites(input: unknown, expected: string, wanted: string): string | null {
  const choices = /^\((.*)\)$|^(-?[\d.]+)$/.test(expected)
    ? expected.replaceAll(/[()]/g, '').split(' | ')
    : [];
  if (typeof input === 'number') {
    const small = Number((input / 1000).toPrecision(12));
    return choices.includes(String(small)) ? `${input} does not fit: ${input} mA is written ${small}` : null;
  }
  if (typeof input !== 'string') return null;
  const [trade] = meantByTrade(input, choices);
  if (trade !== undefined) return `${quoted(input)} is text: ${trade}, without quotes, is expected`;
  const figure = figureIn(input);
  const isNumber = expected === 'number' || choices.includes(String(figure?.value));
  if (figure === null || !isNumber) return null;
  return `${quoted(input)} is text: ${figure.value}, without quotes or unit, is expected (${wanted})`;
}
