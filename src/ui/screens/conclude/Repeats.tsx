/** Which tests are repeated after it is put right: every test that was done, to be ticked. */

import type { TestAction } from '../../../verification/testAction.ts';
import { testTitle } from '../../../words/testTitles.ts';

interface Props {
  /** Tests done, in the order in which they were first done. */
  readonly done: readonly TestAction[];
  readonly named: readonly string[];
  readonly onName: (named: readonly string[]) => void;
}

export function Repeats({ done, named, onName }: Props) {
  return (
    <fieldset>
      <legend>
        <h3>After putting it right, which tests are repeated?</h3>
      </legend>
      {done.length === 0 ? <p className="note">No test was done, so there is none to repeat.</p> : null}
      {done.map(({ id }) => (
        <label key={id} className="tick">
          <input
            type="checkbox"
            checked={named.includes(id)}
            onChange={(event) =>
              onName(event.target.checked ? [...named, id] : named.filter((other) => other !== id))
            }
          />
          <span>{testTitle(id)}</span>
        </label>
      ))}
    </fieldset>
  );
}
