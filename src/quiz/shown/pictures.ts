/** What questions on a trace or a drawing show. */
import type { OperationInput } from '../../bench/operation.ts';
import type { SiteId } from '../../scenario/aims.ts';
import CAUSES from './causes.json' with { type: 'json' };
import type { Cause, Shows } from './state.ts';
import { idOf, inState } from './state.ts';

interface Seen {
  readonly test: string;
  /** Where a socket-outlet has another test of it. */
  readonly atSocket?: string;
  readonly left?: readonly OperationInput[];
  readonly causes?: readonly Cause[];
}

/** Just before what is asked for happens. */
const MOMENTS: Readonly<Record<string, Seen>> = {
  'plugs-in': { test: 'state-b', left: inState('A') },
  asks: { test: 'state-c', left: inState('B') },
  'stops-asking': { test: 'c-to-b', left: inState('C') },
  unplugs: { test: 'unplug', left: inState('B') },
  'pilot-to-earth': { test: 'pilot-short', left: inState('C') },
  'pilot-broken': { test: 'pilot-open', left: inState('B') },
};

const LINE_STUCK: Seen = { test: 'state-a', causes: [{ fault: CAUSES.linePoleStuck }] };

const LEADS: Readonly<Record<string, Seen>> = {
  'line-against-earth': LINE_STUCK,
  'neutral-against-earth': { test: 'state-a' },
  pilot: { test: 'state-b', left: inState('B') },
  coding: { test: 'coding', atSocket: 'coding-sizes' },
  loop: { test: 'loop' },
  'neutral-insulation': { test: 'insulation-circuit' },
  'line-insulation': { test: 'insulation-circuit' },
  'sum-of-line-and-earth': { test: 'r1r2-polarity' },
};

const PLACES: Readonly<Record<string, Seen>> = {
  'body-earth': { test: 'pe-outlet' },
  'neutral-return': { test: 'state-c', left: inState('C') },
  'asks-for-power': { test: 'state-c', left: inState('B') },
  'tells-the-cable': { test: 'coding', atSocket: 'coding-sizes' },
  'neutral-floats-up': LINE_STUCK,
};

const seenIn =
  (table: Readonly<Record<string, Seen>>): Shows =>
  ({ values }) => {
    const seen = table[idOf(values, 'what')];
    if (seen === undefined) return null;
    const on = (values.site ?? 'single-tns') as SiteId;
    const { atSocket, test, ...rest } = seen;
    return { ...rest, on, test: on === 'three-socket' ? (atSocket ?? test) : test };
  };

export const pictures: Readonly<Record<string, Shows>> = {
  'trace-of-a-charge': seenIn(MOMENTS),
  'trace-of-a-fault': seenIn(MOMENTS),
  'put-leads': seenIn(LEADS),
  'touch-the-place': seenIn(PLACES),
};
