/** Attempts of a class of simulated trainees at a job that was given out, as each of them would hand it in. */
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Attempt, Noted } from '../../src/attempt/record/attempt.ts';
import { appended } from '../../src/attempt/record/attempt.ts';
import type { ReadGiving } from '../../src/desk/giving.ts';
import { labelsOf } from '../../src/desk/giving.ts';
import { attemptBySkill, SKILLS } from '../helpers/skills.ts';

const LABELS = ['ash', 'elm', 'oak', 'fir', 'yew', 'bay', 'box', 'hop', 'ivy', 'lime'];
/** `ash-01`, `elm-02`, … */
export const labelOf = (i: number): string =>
  `${LABELS[i % LABELS.length]}-${String(i + 1).padStart(2, '0')}`;

/** The same log, chained under these labels; everybody takes their own time. */
function under(attempt: Attempt, labels: Partial<Attempt>, pace: number): Attempt {
  return attempt.entries.reduce<Attempt>(
    (log, { hash: _, at, wall: __, ...noted }, i) => appended(log, noted as Noted, at, pace * (i + 1)),
    { ...attempt, ...labels, entries: [] },
  );
}

/** The same work by somebody else, as far as the file says. */
export const labelled = (attempt: Attempt, trainee: string): Attempt =>
  under(attempt, { trainee }, (attempt.entries[0]?.wall ?? 0) || 1);

/** So many attempts at its first job, by trainees of three skills in turn. */
export function handedIn(giving: ReadGiving, count: number): readonly Attempt[] {
  const { file, scenario } = giving.jobs[0] as ReadGiving['jobs'][number];
  return Array.from({ length: count }, (_, i) => {
    const skill = SKILLS[i % SKILLS.length] as (typeof SKILLS)[number];
    const worked = attemptBySkill(scenario, file, skill, i);
    const attempt = under(worked, { ...labelsOf(giving.giving), trainee: labelOf(i) }, 900 + 37 * i);
    return { ...attempt, marks: mark(scenario, attempt) };
  });
}
