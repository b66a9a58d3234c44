/** The scenarios that come with the page; they come with the list of them, so that the first screen stays small. */
import type { Entry, Offered } from './offered.ts';

const FILES: Readonly<Record<string, Offered>> = import.meta.glob('../../../scenarios/*.json', {
  import: 'default',
  eager: true,
});

/** What the first run leads to: a plain unit at a home, from isolation. */
export const WHOLE_JOB = Object.values(FILES).find(({ id }) => id === 'harbour-mews') as Offered;

export const OFFERED: readonly Offered[] = Object.values(FILES).toSorted(
  (x, y) => x.site.phases - y.site.phases || (x.title < y.title ? -1 : 1),
);

const ENTRIES: readonly Entry[] = OFFERED.map((scenario) => ({ scenario, from: null }));

/** All that is offered, what was opened from files first. */
export const entriesWith = (opened: readonly Entry[]): readonly Entry[] => [...opened, ...ENTRIES];
