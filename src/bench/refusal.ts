/**
 * Why the bench did not do what it was asked, or an instrument showed no figure: by ids, with what was met where that
 * is told. Their words stand in src/words/refusals.ts.
 */
import type { Never } from '../faults/impossible.ts';
import type { Volts } from '../laws/quantities.ts';
import type { TestedPlace } from './plant.ts';

export type Refusal =
  | {
      readonly id:
        | 'cover-closed'
        | 'not-isolated'
        | 'supply-off'
        | 'plug-held'
        | 'no-such-link'
        | 'no-electrode'
        | 'no-earthing-conductor'
        | 'no-arrester'
        | 'no-next-point'
        | 'fuse-open'
        | 'battery-low'
        | 'no-voltage'
        | 'no-return'
        | 'one-line'
        | 'a-line-dead';
    }
  | { readonly id: 'voltage-on-leads'; readonly volts: Volts }
  | { readonly id: 'not-live'; readonly place: TestedPlace }
  /** A cause that nobody at this bench can put right. */
  | { readonly id: 'never-put-right'; readonly why: Never };

/** A volt more or less on the leads is no other refusal. */
export const sameRefusal = (a: Refusal | null | undefined, b: Refusal | null | undefined): boolean =>
  a?.id === b?.id && whyNever(a) === whyNever(b);

const whyNever = (refusal: Refusal | null | undefined): Never | null =>
  refusal?.id === 'never-put-right' ? refusal.why : null;
