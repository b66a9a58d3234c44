/** The ways in which a latched reason may end, as transitions: by hand, by unplugging, or with its cause. */
import { and, not } from 'xstate';
import type { LatchReason } from '../design.ts';
import { inLevel } from './conditions.ts';

export const keep = (reason: LatchReason) => ({ type: 'keep', params: { reason } }) as const;
export const forget = (reason: LatchReason) => ({ type: 'forget', params: { reason } }) as const;
/** It had latched before the supply went. */
export const wasKept = (reason: LatchReason) => ({ type: 'kept', params: { reason } }) as const;

/** The three ways in which a latched reason may end by itself or by hand. A return of supply ends what is not kept. */
export const byReset = (reason: LatchReason, target: string) => ({
  guard: and([
    { type: 'clears by', params: { reason, by: 'reset' } } as const,
    { type: 'pressed', params: { button: 'reset' } } as const,
  ]),
  target,
  actions: forget(reason),
});

/** No vehicle, seen as such: a unit that has just started has seen nothing yet. */
const goneNow = and([inLevel('A'), { type: 'sees band', params: { band: 'A' } } as const]);

export const byStateA = (reason: LatchReason, target: string) => ({
  guard: and([{ type: 'clears by', params: { reason, by: 'state-A' } } as const, goneNow]),
  target,
  actions: forget(reason),
});

export const bySelf = (reason: LatchReason, cause: ReturnType<typeof inLevel>, target: string) => ({
  guard: and([{ type: 'clears by', params: { reason, by: 'self' } } as const, not(cause)]),
  target,
});
