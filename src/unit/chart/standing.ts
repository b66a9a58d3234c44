/** What the compiled chart goes by: where it stands, and what comes to it. */
import type { UnitContext } from '../regions/setup.ts';
import type { UnitEvent } from '../sensed.ts';

/** An event from outside, or the end of one of the chart's own timers, by its id. */
export type ChartEvent = UnitEvent | { readonly type: `xstate.after.${string}` };

/** One state of the whole chart: plain data that nobody changes. */
export interface Standing {
  /** 1 for every node that it is in, by the node's place in document order. */
  readonly active: Uint8Array;
  readonly context: UnitContext;
}
