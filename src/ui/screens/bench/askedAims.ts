/**
 * The aims that a job asks about, each with its tests and with what was found out so far, in the trainee's own figures:
 * never whether that is right.
 */
import type { AimId } from '../../../scenario/aims.ts';
import { AIMS, aimOf } from '../../../scenario/aims.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import type { Bench } from '../../flow/bench.ts';
import type { Observation } from '../measure/records.ts';
import { recordText } from '../measure/records.ts';

export interface AskedAim {
  readonly id: AimId;
  readonly tests: readonly TestAction[];
  readonly found: string;
}

const NOT_ASKED = 'not asked yet';
const NOTHING_WRITTEN = 'looked at, nothing written';
/** More than two figures are not taken in beside an aim. */
const FIGURES = 2;

export const askedAims = (bench: Bench, actions: readonly TestAction[]): readonly AskedAim[] =>
  AIMS.map(({ id }) => ({ id, tests: actions.filter((action) => aimOf(action.id) === id) }))
    .filter(({ tests }) => tests.length > 0)
    .map((aim) => ({ ...aim, found: foundIn(bench, aim.id) }));

/** What was written down last about an aim. */
const foundIn = (bench: Bench, aim: AimId): string => found(bench, (test) => aimOf(test) === aim);

/** What was written down last in a test; null where it was not begun. */
export function foundInTest(bench: Bench, id: string): string | null {
  const text = found(bench, (test) => test === id);
  return text === NOT_ASKED ? null : text;
}

function found({ run: { attempt } }: Bench, isOwn: (test: string) => boolean): string {
  const own = attempt.entries.filter((entry) => 'test' in entry && entry.test !== null && isOwn(entry.test));
  const written = own.filter((entry): entry is Observation => entry.kind === 'observation');
  const texts = [...new Set(written.toReversed().map(recordText))];
  if (texts.length > 0) {
    const more = texts.length > FIGURES ? ` and ${texts.length - FIGURES} more` : '';
    return `${texts.slice(0, FIGURES).toReversed().join('; ')}${more}`;
  }
  return own.some(({ kind }) => kind === 'judgement') ? NOTHING_WRITTEN : NOT_ASKED;
}

/** The aim to stand open by itself: that of the test in hand, else of the one done last, else the first. */
export function aimInHand(bench: Bench, aims: readonly AskedAim[], test: string | null): AimId | null {
  const last = bench.run.attempt.entries.findLast((entry) => entry.kind === 'prediction');
  const of = test ?? (last?.kind === 'prediction' ? last.test : null);
  return (of === null ? null : aimOf(of)) ?? aims[0]?.id ?? null;
}
