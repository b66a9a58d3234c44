/** What was done before the trainee comes: nothing, all that is not theirs, or a list; signed, and carried out on the unit as it is. */
import { useState } from 'react';
import type { Scenario } from '../../../scenario/scenario.ts';
import { allowedActions, applicableActions } from '../../../scenario/scenario.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import type { JobFile } from './jobFile.ts';
import { withField } from './jobFile.ts';
import { TestTicks } from './TestTicks.tsx';

interface Props {
  readonly file: JobFile;
  readonly scenario: Scenario;
  readonly onChange: (file: JobFile, what?: string) => void;
}

const BY = 'a colleague, this morning';

export function Before({ file, scenario, onChange }: Props) {
  const [isOneByOne, setOneByOne] = useState(false);
  const { handover } = file;
  const applicable = applicableActions(scenario).map(({ id }) => id);
  const allowed = allowedActions(scenario).map(({ id }) => id);
  // “All” would leave nothing for others to have done.
  const listed = (): JobFile =>
    file.allowed === 'all' ? withField(file, ['allowed'], allowed.length === 0 ? applicable : allowed) : file;
  const others = applicable.filter((id) => !allowed.includes(id));
  const set = (done: 'others' | readonly string[]) =>
    onChange(withField(listed(), ['handover'], { ...handover, by: handover?.by ?? BY, done }));
  const done = handover == null || handover.done === 'others' ? others : handover.done;
  const left = handover?.left?.length ?? 0;
  return (
    <div className="stack">
      <Choice
        label="the tests that are not theirs"
        options={[
          ['none', 'are not done'],
          ['others', 'are handed over as done, with their sheet'],
          ['some', 'are handed over as done in part: a list'],
        ]}
        value={handover == null ? 'none' : handover.done === 'others' ? 'others' : 'some'}
        onChange={(value) => {
          if (value === 'none') onChange(withField(file, ['handover'], undefined));
          else if (value === 'others') set('others');
          else set(done);
        }}
      />
      {others.length > 0 ? null : (
        <p className="note">
          All tests are theirs: take some out in “Which tests”, and those can have been done before.
        </p>
      )}
      {handover == null ? null : (
        <TextField
          label="done and signed by"
          maxLength={120}
          value={handover.by}
          onChange={(by) => (by === '' ? undefined : onChange(withField(file, ['handover', 'by'], by), 'by'))}
        />
      )}
      {handover == null || handover.done === 'others' || others.length === 0 ? null : (
        <fieldset className="stack">
          <legend>handed over as done</legend>
          <TestTicks
            tests={others}
            ticked={done}
            isOneByOne={isOneByOne}
            onSet={(tests, isOn) =>
              set(others.filter((id) => (tests.includes(id) ? isOn : done.includes(id))))
            }
          />
          <div className="acts">
            <button type="button" className="plain" onClick={() => setOneByOne(!isOneByOne)}>
              {isOneByOne ? 'by aim' : 'one by one'}
            </button>
          </div>
        </fieldset>
      )}
      <p className="note">
        What is handed over is carried out on the unit as it is, so its sheet may show what is wrong.
        {left === 0
          ? ''
          : ` How the bench was left (${left} ${left === 1 ? 'act' : 'acts'} of the file) stays as it is in the file.`}
      </p>
    </div>
  );
}
