/**
 * Which part of the installation a small screen shows: the one that the trainee chose, else where the trainee's leads
 * went last in this test, else what the test's stage is about. Never where the leads should go.
 */
import type { Terminal } from '../../bench/terminals.ts';
import type { Stage } from '../../verification/testAction.ts';
import type { Leads } from '../flow/leads.ts';
import { CLAMP, STAKES } from '../flow/leads.ts';
import type { Part } from './layout.ts';
import { partOf } from './layout.ts';

const STAGE_PARTS: Readonly<Record<Stage, Part>> = {
  'before power': 'unit',
  'with power': 'outlet',
  protection: 'outlet',
  'fault response': 'outlet',
};

interface Known {
  /** Of the test in hand, if there is one. */
  readonly stage: Stage | undefined;
  readonly chosen: Part | null;
  /** The terminal that a lead was put on last in this test, or of an instrument whose leads have their own places. */
  readonly last: Terminal | null;
}

export const shownPart = ({ stage, chosen, last }: Known): Part =>
  chosen ?? (last === null ? STAGE_PARTS[stage ?? 'with power'] : partOf(last));

/** Where an instrument's own leads are: one of its terminals. */
export function fixedTerminal(leads: Leads): Terminal | null {
  const [terminal] = leads.flat();
  if (terminal === undefined) return null;
  return terminal === CLAMP || STAKES.some((stake) => stake === terminal) ? 'met' : terminal;
}
