/** What of a job differs from one that ships, as changes that a link carries; and the job made of them again. */

/** A value at a path; a path alone: what stands there is taken away. */
export type Change = readonly [path: readonly string[], value: unknown] | readonly [path: readonly string[]];

const isTree = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The changes that make `to` of `from`; a list is changed as a whole. */
export function changesBetween(from: unknown, to: unknown, path: readonly string[] = []): readonly Change[] {
  if (isTree(from) && isTree(to))
    return [...new Set([...Object.keys(from), ...Object.keys(to)])].flatMap((name) =>
      Object.hasOwn(to, name)
        ? changesBetween(Object.hasOwn(from, name) ? from[name] : undefined, to[name], [...path, name])
        : [[[...path, name]] as const],
    );
  return JSON.stringify(from) === JSON.stringify(to) ? [] : [[path, to]];
}

/** `from` with these changes made. A name that objects have from their kind is one of their own here. */
export const changed = (from: unknown, changes: readonly Change[]): unknown =>
  changes.reduce<unknown>((value, change) => changedAt(value, change[0], change), from);

function changedAt(value: unknown, path: readonly string[], change: Change): unknown {
  const [name, ...rest] = path;
  if (name === undefined) return change[1];
  const entries = Object.entries(isTree(value) ? value : {});
  const before = entries.find(([own]) => own === name)?.[1];
  if (rest.length === 0 && change.length === 1)
    return Object.fromEntries(entries.filter(([own]) => own !== name));
  const after = changedAt(before, rest, change);
  return Object.fromEntries(
    entries.some(([own]) => own === name)
      ? entries.map(([own, old]) => [own, own === name ? after : old])
      : [...entries, [name, after]],
  );
}
