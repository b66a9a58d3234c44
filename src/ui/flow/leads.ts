/**
 * Where the leads of a measurement are, and what putting one on a terminal changes: one state for the drawing and for
 * the lists. Which terminals would be the right ones is not known here.
 */
import type { Terminal } from '../../bench/terminals.ts';
import { isAt, terminalsIn } from '../../bench/terminals.ts';
import type { Site } from '../../site/site.ts';
import { linesOf, livesOf } from '../../site/site.ts';
import type { Happened } from './bench.ts';
import type { MeasurementDraft } from './measurement.ts';
import { hasLeads } from './measurement.ts';
import type { Position } from './position.ts';

/** The end that the next tap puts on a terminal; `joined`: one more terminal under the first lead. */
export const LEAD_ENDS = ['first', 'joined', 'second'] as const;
export type LeadEnd = (typeof LEAD_ENDS)[number];

/** Most terminals under the first lead: three lines and neutral. */
export const MOST_JOINED = 4;

/** Places of the electrode tester's own leads, which are no terminals of the bench. */
export const CLAMP = 'clamp';
export const STAKES = ['stake.1', 'stake.2'] as const;

/** One entry a lead: the terminals that it is on, more than one where they are joined under it. */
export type Leads = readonly (readonly Terminal[])[];

export function leadsOf(draft: MeasurementDraft, site: Site): Leads {
  const { instrument } = draft;
  if (instrument === '' || hasLeads(instrument)) {
    const on = [draft.first, [draft.second]].map((ends) => ends.filter((t) => t !== ''));
    return on.filter((ends) => ends.length > 0);
  }
  switch (instrument) {
    case 'residual':
      return [[`${draft.tested}.${draft.line}`], [`${draft.tested}.PE`]];
    case 'coding':
      return [['outlet.PP'], ['outlet.PE']];
    case 'opening-time':
      return [...livesOf(site).map((x) => [`outlet.${x}`]), ['outlet.PE']];
    case 'phase-sequence':
      return linesOf(site).map((x) => [`${draft.at}.${x}`]);
    case 'electrode':
      return site.earthing === 'TT' ? [[CLAMP], ...STAKES.map((stake) => [stake])] : [];
    default:
      return [['outlet.CP'], ['outlet.PE']];
  }
}

/** Why no lead can be put on a terminal, or null. */
export const outOfReach = (terminal: Terminal, { cover }: Position): string | null =>
  isAt(terminal, 'supply') && cover === 'closed' ? 'behind the cover' : null;

export interface Placed {
  readonly first: MeasurementDraft['first'];
  readonly second: MeasurementDraft['second'];
  /** What the next tap does. */
  readonly next: LeadEnd;
}

type Ends = Pick<MeasurementDraft, 'first' | 'second'>;

/** Terminals that leads were on since this entry of the log, the last first. */
export const touchedSince = (happened: readonly Happened[], since: number): readonly Terminal[] => [
  ...new Set(
    happened
      .filter(({ entry }) => entry > since)
      .flatMap(({ operation: act }) =>
        act.op === 'measure' && 'between' in act ? act.between.flatMap(terminalsIn) : [],
      )
      .toReversed(),
  ),
];

/** Which lead is on a terminal, or null; the first where both are. */
export function leadOn({ first, second }: Ends, terminal: Terminal): LeadEnd | null {
  const place = first.indexOf(terminal);
  if (place === 0) return 'first';
  if (place > 0) return 'joined';
  return second === terminal ? 'second' : null;
}

/** A tap on a terminal: the next lead goes on, or the lead that is there comes off. */
export function tapped(ends: Ends, next: LeadEnd, terminal: Terminal): Placed {
  const there = leadOn(ends, terminal);
  return there === null ? put(ends, next, terminal) : takenOff(ends, there, terminal);
}

function put({ first, second }: Ends, next: LeadEnd, terminal: Terminal): Placed {
  const [main = ''] = first;
  if (next === 'second') return { first, second: terminal, next: 'first' };
  // Nothing can be joined to a lead that is nowhere: it is the first then.
  if (next === 'first' || main === '')
    return { first: [terminal], second, next: next === 'joined' ? 'joined' : 'second' };
  const joined = [...first.filter((t) => t !== ''), terminal];
  return joined.length > MOST_JOINED ? { first, second, next } : { first: joined, second, next };
}

/** Without the lead that is on it; what was joined to a first lead that is taken off moves up. */
export function takenOff({ first, second }: Ends, end: LeadEnd, terminal: Terminal): Placed {
  if (end === 'second') return { first, second: '', next: 'second' };
  const left = first.filter((t) => t !== terminal);
  return { first: left.length === 0 ? [''] : left, second, next: left.length === 0 ? 'first' : 'joined' };
}
