/** The title of every printed page of a debrief: job, rules, bench time, record, and that it is no certificate. */
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import { headOf } from '../../../attempt/record/attempt.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { editionNamed } from '../../../words/sources.ts';
import type { PageTitle } from '../../parts/pageTitle.ts';
import { TRAINING_RECORD } from '../../parts/pageTitle.ts';

export function pageTitleOf({ run }: Debrief): PageTitle {
  const { scenario, attempt, times } = run;
  const trainee = attempt.trainee === undefined ? '' : `${attempt.trainee} · `;
  return {
    first: `${trainee}${scenario.title} · ${editionNamed(scenario.rules)} · bench time ${benchTime(times.at(-1) ?? 0)} · record ${headOf(attempt).toUpperCase()}`,
    second: TRAINING_RECORD,
  };
}
