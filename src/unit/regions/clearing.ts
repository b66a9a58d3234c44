/** The ways in which a latched reason may end, as transitions: by hand, by unplugging, or with its cause. */
import { and, not } from 'xstate';
import type { LatchReason } from '../design.ts';
import { inLevel } from './conditions.ts';

/** The three ways in which a latched reason may end by itself or by hand; a return of supply leaves `powered` altogether. */
export const byReset = (reason: LatchReason, target: string) => ({
  guard: and([
    { type: 'clears by', params: { reason, by: 'reset' } } as const,
    { type: 'pressed', params: { button: 'reset' } } as const,
  ]),
  target,
});

export const byStateA = (reason: LatchReason, target: string) => ({
  guard: and([{ type: 'clears by', params: { reason, by: 'state-A' } } as const, inLevel('A')]),
  target,
});

export const bySelf = (reason: LatchReason, cause: ReturnType<typeof inLevel>, target: string) => ({
  guard: and([{ type: 'clears by', params: { reason, by: 'self' } } as const, not(cause)]),
  target,
});
