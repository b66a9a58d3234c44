/**
 * What is wrong with a file, said once for every problem: where in the file, and what would be right. Reads JSON
 * text safely (size, depth, hostile keys) and turns a schema's complaints into such problems.
 */
import { closest, distance } from 'fastest-levenshtein';
import * as v from 'valibot';
import { namesAt, wantedAt } from './wanted.ts';

export interface Problem {
  /** Path in the file, as `site.circuit.length`; empty for the file as a whole. */
  readonly path: string;
  readonly message: string;
}

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const failed = (message: string, path = ''): Parsed<never> => ({ ok: false, problems: [{ path, message }] });

/** Largest file that is read, bytes. */
export const LARGEST_FILE = 1_000_000;
const DEEPEST = 40;

export const tooLarge = (largest: number): string =>
  `larger than ${largest / 1_000_000} MB; ${largest === LARGEST_FILE ? 'scenario and attempt files are far smaller' : 'no more is read at once'}`;

/** JSON text as a value, up to so many characters; nothing in it is ever executed. */
export function parseJson(text: string, largest = LARGEST_FILE): Parsed<unknown> {
  if (text.length > largest) return failed(tooLarge(largest));
  const deepAt = tooDeepAt(text);
  if (deepAt !== null) return failed(`nested deeper than ${DEEPEST} levels at ${placeIn(text, deepAt)}`);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return failed(syntaxMessage(text, error));
  }
  const problems = hostileKeys(value, '');
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value };
}

/** Where brackets nest too deep, strings left out; null if nowhere. */
function tooDeepAt(text: string): number | null {
  let depth = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inString) {
      if (c === '\\') i += 1;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') {
      depth += 1;
      if (depth > DEEPEST) return i;
    } else if (c === '}' || c === ']') depth -= 1;
  }
  return null;
}

function placeIn(text: string, position: number): string {
  const before = text.slice(0, position).split('\n');
  return `line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
}

function syntaxMessage(text: string, error: unknown): string {
  const position = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1];
  const where = position === undefined ? '' : ` at ${placeIn(text, Number(position))}`;
  if (text.trim() === '') return 'empty: a JSON object is expected';
  return `not JSON${where}${/\bNaN\b|\bInfinity\b/.test(text) ? ' (NaN and Infinity are no JSON numbers)' : ''}`;
}

/** A key that could reach an object's prototype is refused wherever it stands. */
function hostileKeys(value: unknown, path: string): readonly Problem[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((key) => {
    const here = Array.isArray(value) ? `${path}[${key}]` : joinPath(path, key);
    if (key === '__proto__') return [{ path: here, message: 'this name is not allowed' }];
    return hostileKeys((value as Record<string, unknown>)[key], here);
  });
}

const joinPath = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** The valid names nearest to one that is not, for a message. */
export function nearest(name: string, valid: readonly string[]): string {
  if (valid.length === 0) return '';
  const best = closest(name, [...valid]);
  const apart = distance(name, best);
  const near = apart <= Math.max(3, name.length / 2) && apart < Math.max(name.length, best.length);
  return near ? `did you mean "${best}"?` : `one of: ${valid.join(', ')}`;
}

/** A value against a schema: every complaint as a problem with its path. */
export function check<S extends v.GenericSchema>(schema: S, value: unknown): Parsed<v.InferOutput<S>> {
  const result = v.safeParse(schema, value);
  if (result.success) return { ok: true, value: result.output };
  return { ok: false, problems: result.issues.flatMap((issue) => problemsOf(issue, schema)) };
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
    return typeof key === 'number' ? `${path}[${key}]` : joinPath(path, String(key));
  }, '');
}

function messageOf(issue: v.BaseIssue<unknown>, schema: v.GenericSchema): string {
  const { type, kind, received, expected, input } = issue;
  if (type === 'strict_object' && expected === 'never') {
    const last = issue.path?.at(-1) as { key?: unknown; input?: object } | undefined;
    const name = String(last?.key);
    return `unknown field "${name}"; ${nearest(name, namesAt(schema, issue))}`;
  }
  if (received === 'undefined') return `missing: ${wantedAt(schema, issue)} is expected`;
  if (kind === 'schema' && typeof input === 'string' && expected?.includes('"')) {
    const names = [...expected.matchAll(/"([^"]+)"/g)].map((match) => match[1] as string);
    return `"${input}" is not known here; ${nearest(input, names)}`;
  }
  if (type === 'max_value') return `${received} is too large: ${expected?.replace('<=', 'at most ')}`;
  if (type === 'min_value') return `${received} is too small: ${expected?.replace('>=', 'at least ')}`;
  if (type === 'max_length') return `too long: ${expected?.replace('<=', 'at most ')} is expected`;
  if (type === 'min_length') return `too short: ${expected?.replace('>=', 'at least ')} is expected`;
  if (kind === 'validation') return issue.message;
  return `${shortened(received)} does not fit: ${wantedAt(schema, issue)} is expected`;
}

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);
