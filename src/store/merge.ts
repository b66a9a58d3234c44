/**
 * Where an attempt that comes from a file belongs among those kept here. Two logs with the same first entry are of
 * the same attempt: the longer one is kept where one continues the other, both where they went separate ways.
 */
import type { Written } from '../attempt/record/written.ts';
import { continues } from './continues.ts';

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

export function freeId(wanted: string, ids: readonly string[]): string {
  const taken = new Set(ids);
  let id = wanted;
  for (let number = 2; taken.has(id); number++) id = `${wanted}-${number}`;
  return id;
}
