/** What the first screens ask of the rest of the page, and why something was not opened. */
import type { Rung } from '../../attempt/record/rung.ts';
import type { AimAddress } from '../../scenario/aimAddress.ts';
import type { Problem } from '../../scenario/problems.ts';
import type { About } from '../../store/about.ts';
import type { Offered } from './offered.ts';

/** What the rest of the page, loaded later, is asked to do. */
export type Wish =
  | {
      readonly kind: 'begin';
      readonly offered: Offered;
      readonly rung: Rung;
      readonly trainee: string;
    }
  | { readonly kind: 'begin aim'; readonly address: AimAddress }
  | { readonly kind: 'show'; readonly offered: Offered }
  | { readonly kind: 'open'; readonly file: File }
  | { readonly kind: 'go on'; readonly about: Pick<About, 'id' | 'title' | 'concluded'> }
  | { readonly kind: 'put away'; readonly id: string };

export interface Refused {
  readonly name: string;
  readonly problems: readonly Problem<string>[];
}
