/**
 * What a list entry shows of a scenario to choose from, and what tells it from others. Scenarios are read and checked only
 * when one is begun; those that come with the page are in shelf.ts.
 */

import { shortened } from '../../scenario/quoted.ts';

/** What the list shows of a scenario file; nothing that gives a fault away. */
export interface Offered {
  readonly id: string;
  readonly title: string;
  readonly brief: string;
  readonly rules: string;
  readonly support: 'guided' | 'practice' | 'assessment';
  readonly site: {
    readonly phases: 1 | 3;
    readonly earthing: string;
    readonly house?: unknown;
    readonly nextPoint?: unknown;
  };
  readonly handover?: unknown;
  /** What is told of a job to find what is behind it. */
  readonly symptom?: string | null;
  readonly unit: { readonly outlet: 'tethered' | 'socket'; readonly ratedCurrent: number };
}

/** An entry of the list. */
export interface Entry {
  readonly scenario: Offered;
  /** The file on this device that it was opened from; null for what comes with the page. */
  readonly from: string | null;
}

/** One of a list; a file may have the id of a scenario that comes with the page. */
export const keyOf = ({ scenario: { id }, from }: Entry): string => (from === null ? id : `${id} opened`);

/** What tells an entry from others of the same title; null where there are none. */
export function apartBy({ scenario: { id, title }, from }: Entry, all: readonly Entry[]): string | null {
  if (all.filter(({ scenario }) => scenario.title === title).length < 2) return null;
  return from === null ? id : `${id}, opened from ${shortened(from)}`;
}

/** `single-phase tethered, 32 A, TN-C-S`. */
export function unitLine({ site, unit }: Pick<Offered, 'site' | 'unit'>): string {
  const phases = site.phases === 1 ? 'single-phase' : 'three-phase';
  const outlet = unit.outlet === 'socket' ? 'socket-outlet' : 'tethered';
  return `${phases} ${outlet}, ${unit.ratedCurrent} A, ${site.earthing}`;
}

export const SUPPORT_WORDS = {
  guided: 'guided',
  practice: 'practice',
  assessment: 'assessment',
} as const;
