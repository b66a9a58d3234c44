/**
 * Where an attempt that comes from a file belongs among those kept here. Two logs with the same first entry are of
 * the same attempt: the longer one is kept where one continues the other, both where they went separate ways.
 */
import canonicalize from 'canonicalize';
import type { Written } from '../attempt/record/written.ts';

export interface Identified {
  readonly id: string;
  readonly attempt: Written;
}

export type Belongs =
  | { readonly as: 'kept already'; readonly id: string }
  | { readonly as: 'longer'; readonly id: string }
  | { readonly as: 'another'; readonly id: string };

/** `kept`: those with the same first entry, or the same id. An id that is taken gets a number behind it. */
export function belongs(incoming: Identified, kept: readonly Identified[]): Belongs {
  const same = kept.filter((one) => isSame(one, incoming));
  const containing = same.find(({ attempt }) => continues(attempt, incoming.attempt));
  if (containing !== undefined) return { as: 'kept already', id: containing.id };
  const continued = same.find(({ attempt }) => continues(incoming.attempt, attempt));
  if (continued !== undefined) return { as: 'longer', id: continued.id };
  return {
    as: 'another',
    id: freeId(
      incoming.id,
      kept.map(({ id }) => id),
    ),
  };
}

/** A log without an entry is told by its id alone. */
function isSame(x: Identified, y: Identified): boolean {
  const [first, other] = [x.attempt.entries[0]?.hash, y.attempt.entries[0]?.hash];
  return first === undefined || other === undefined ? x.id === y.id : first === other;
}

/**
 * Whether the log begins with the whole of the other: by what stands in it, not by the hashes it claims. Where both are
 * whole and claim different marks, neither stands for the other: one of them was altered.
 */
export const continues = (longer: Written, shorter: Written): boolean =>
  longer.entries.length >= shorter.entries.length &&
  !(longer.entries.length === shorter.entries.length && claimOtherwise(longer, shorter)) &&
  text(longer.scenario) === text(shorter.scenario) &&
  text(longer.entries.slice(0, shorter.entries.length)) === text(shorter.entries);

const claimOtherwise = (x: Written, y: Written): boolean =>
  x.marks !== undefined && y.marks !== undefined && text(x.marks) !== text(y.marks);

const text = (value: unknown): string => canonicalize(value) ?? '';

export function freeId(wanted: string, ids: readonly string[]): string {
  const taken = new Set(ids);
  let id = wanted;
  for (let number = 2; taken.has(id); number++) id = `${wanted}-${number}`;
  return id;
}
