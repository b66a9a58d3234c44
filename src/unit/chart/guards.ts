/** The chart's guards as functions of a state and an event. */
import { and, not, or, stateIn } from 'xstate';
import { unitChart } from '../unitChart.ts';
import type { ChartEvent, Standing } from './standing.ts';

/** What a guard is asked about: a state and an event. */
export interface Question extends Standing {
  readonly event: ChartEvent;
}

export type Guard = (question: Question) => boolean;

type Named = (question: Question, params: unknown) => boolean;

/** What the library's own guards are made of. */
export interface BuiltIn {
  readonly check?: unknown;
  readonly guards?: readonly unknown[];
  readonly stateValue?: string;
}
export const [AND, OR, NOT, STATE_IN] = [and([]), or([]), not(''), stateIn('')].map(
  (guard) => (guard as unknown as BuiltIn).check,
);

/** Throws Error for a guard that is neither one of the unit's by name nor made of them by and, or, not and stateIn. */
export function guardOf(guard: unknown): Guard {
  if (typeof guard === 'string') return named(guard, undefined);
  if (typeof guard === 'object') {
    const { type, params } = guard as { type: string; params: unknown };
    return named(type, params);
  }
  const { check, guards = [], stateValue = '' } = guard as BuiltIn;
  if (check === STATE_IN && stateValue.startsWith('#')) {
    const { order } = unitChart().getStateNodeById(stateValue);
    return ({ active }) => active[order] === 1;
  }
  const parts = guards.map(guardOf);
  if (check === AND) return (question) => !anyIs(false, parts, question);
  if (check === OR) return (question) => anyIs(true, parts, question);
  if (check === NOT) return (question) => anyIs(false, parts, question);
  throw new Error('a guard of the chart is of no known kind');
}

/** A loop: these are asked more often than anything else on the bench. */
function anyIs(answer: boolean, parts: readonly Guard[], question: Question): boolean {
  for (let i = 0; i < parts.length; i++) if ((parts[i] as Guard)(question) === answer) return true;
  return false;
}

function named(name: string, params: unknown): Guard {
  const guard = (unitChart().implementations.guards as unknown as Record<string, Named | undefined>)[name];
  if (guard === undefined) throw new Error(`the chart has no guard "${name}"`);
  return (question) => guard(question, params);
}
