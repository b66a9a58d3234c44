/**
 * What stands in fields that are not yet in the log, by the name of the field: kept with the attempt's place, so that
 * a half-typed figure is there again when the page was closed. What a field makes of its text is its own business.
 */
import type { Run } from '../../attempt/record/run.ts';

export interface Fields {
  /** What was kept under this name, if it has the shape of what the field begins with. */
  readonly kept: <T>(name: string, first: T, allowed: readonly string[] | undefined) => T;
  readonly put: (name: string, value: unknown) => void;
  readonly forget: (isForgotten: (name: string) => boolean) => void;
  readonly all: () => Readonly<Record<string, unknown>>;
}

/** `onPut` is told after every change that a person made. */
export function fieldsFrom(before: Readonly<Record<string, unknown>>, onPut: () => void): Fields {
  const values = new Map(Object.entries(before));
  return {
    kept: (name, first, allowed) => {
      const value = values.get(name);
      return isLike(first, value, allowed) ? value : first;
    },
    put: (name, value) => {
      values.set(name, value);
      onPut();
    },
    forget: (isForgotten) => {
      for (const name of values.keys()) if (isForgotten(name)) values.delete(name);
    },
    all: () => Object.fromEntries(values),
  };
}

/**
 * Whether a kept value can stand in a field's place: text or nothing, a list of texts, or named texts with at least
 * the names of `first`. Where only some texts are allowed, no other.
 */
function isLike<T>(first: T, value: unknown, allowed: readonly string[] | undefined): value is T {
  const isText = (x: unknown) => typeof x === 'string' && (allowed === undefined || allowed.includes(x));
  if (typeof first === 'string' || first === null)
    return isText(value) || (first === null && value === null) || (typeof first === 'string' && value === '');
  if (Array.isArray(first)) return Array.isArray(value) && value.every(isText);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  const own = value as Readonly<Record<string, unknown>>;
  return (
    Object.entries(own).every(
      ([name, x]) => isText(x) || isTexts((first as Record<string, unknown>)[name], x),
    ) && Object.keys(first as object).every((name) => name in own)
  );
}

const isTexts = (first: unknown, value: unknown): boolean =>
  Array.isArray(first) && Array.isArray(value) && value.every((x) => typeof x === 'string');

/** Name of the fields in which a reading is written down; the readings of one act have one. */
export const readingField = ({ at }: { readonly at: number }): string => `reading ${at}:`;

/** Fields of the conclusion outlive a return to the tests. */
export const CONCLUDE = 'conclude ';
/** So do those of the whole job: how somebody likes to work. All others go with the test they belong to. */
export const OF_JOB = 'job ';

const outlivesTest = (name: string): boolean => name.startsWith(CONCLUDE) || name.startsWith(OF_JOB);

type Sent =
  | { readonly type: 'note'; readonly note: { readonly kind: string; readonly reading?: number } }
  | { readonly type: string };

/** What is done with by what was sent to the attempt's flow. */
export function forgetAfter(fields: Fields, sent: Sent, { readings }: Run): void {
  if ('note' in sent && sent.note.kind === 'observation') {
    const written = readings[sent.note.reading ?? -1];
    if (written !== undefined) fields.forget((name) => name.startsWith(readingField(written.reading)));
  }
  if (sent.type === 'choose' || sent.type === 'judged') fields.forget((name) => !outlivesTest(name));
  if (sent.type === 'go on') fields.forget((name) => name === 'stop reason');
  if (sent.type === 'concluded') fields.forget(() => true);
}
