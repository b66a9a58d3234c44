/** What the job asks for: the whole verdict, one aim, or what is behind a symptom; each with the tests that it can have. */
import type { AimId } from '../../../scenario/aims.ts';
import { TESTS_OF_FIND } from '../../../scenario/checks.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { allowedActions, applicableActions } from '../../../scenario/scenario.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { Choice } from '../../parts/Choice.tsx';
import type { JobFile } from './jobFile.ts';
import { asAim, asFind, asVerify } from './jobFile.ts';
import { byAim } from './TestTicks.tsx';

interface Props {
  readonly file: JobFile;
  readonly scenario: Scenario;
  /** Tests that show what is wrong, as far as it is known: they are kept first. */
  readonly shows: readonly string[];
  readonly onChange: (file: JobFile) => void;
}

export function Task({ file, scenario, shows, onChange }: Props) {
  const { task = 'verify' } = file;
  const applicable = applicableActions(scenario).map(({ id }) => id);
  const allowed = allowedActions(scenario).map(({ id }) => id);
  const aims = byAim(applicable);
  const one = (id: string) => {
    const aim = aims.find((each) => each.id === id) ?? aims[0];
    if (aim !== undefined) onChange(asAim(file, aim.id, aim.tests));
  };
  return (
    <div className="stack">
      <Choice
        label="they have to find out"
        options={[
          ['verify', 'whether the unit may go into service'],
          ['aim', 'one thing alone: an aim'],
          ['find', 'what is behind a symptom'],
        ]}
        value={task}
        onChange={(next) => {
          if (next === task) return;
          if (next === 'verify') onChange(asVerify(file, allowed, applicable));
          // The aim that what is wrong shows in.
          else if (next === 'aim')
            one(aims.find(({ tests }) => tests.some((test) => shows.includes(test)))?.id ?? '');
          else onChange(asFind(file, enoughOf(allowed, applicable, shows)));
        }}
      />
      {task === 'aim' ? (
        <Choice
          label="the aim"
          options={aims.map(({ id }) => [id, AIM_WORDS[id as AimId].question] as const)}
          value={String(file.aim ?? '')}
          onChange={one}
        />
      ) : null}
      <p className="note">{NOTES[task]}</p>
    </div>
  );
}

const NOTES: Readonly<Record<NonNullable<JobFile['task']>, string>> = {
  verify: 'They do what applies, conclude, and say what next and whom to tell. A pass is stated.',
  aim: 'The tests are those of the aim, and the conclusion is about it alone. No pass is stated.',
  find: `They are told a symptom (in “What they are told”) and choose among ${TESTS_OF_FIND.least} to ${TESTS_OF_FIND.most} tests; any safe way to the cause counts.`,
};

/** Of the tests allowed as many as such a job may have, those first that show what is wrong; filled up where there are fewer. */
function enoughOf(
  allowed: readonly string[],
  applicable: readonly string[],
  shows: readonly string[],
): readonly string[] {
  const { least, most } = TESTS_OF_FIND;
  const first = [...shows.filter((id) => allowed.includes(id)), ...allowed];
  const wanted = [...new Set([...first, ...applicable])];
  const chosen = wanted.slice(0, Math.max(least, Math.min(most, allowed.length)));
  return applicable.filter((id) => chosen.includes(id));
}
