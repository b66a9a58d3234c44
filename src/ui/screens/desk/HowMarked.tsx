/** How marks are made, on one page, for a tutor who has to defend each and a trainee who asks. */
import type { UnsafeId } from '../../../bench/unsafe.ts';
import { UNSAFE_ACTS } from '../../../bench/unsafe.ts';
import type { PartName } from '../../../scenario/tasks.ts';
import { weightsOf } from '../../../scenario/tasks.ts';
import { GATES_TEXT, HURDLES_TEXT, MARKED_PARTS, NEVER_COSTS } from '../../../words/marksPage.ts';
import { UNSAFE_ACT_WORDS } from '../../../words/unsafeActs.ts';
import { Scroll } from '../../parts/Scroll.tsx';
import { Reading } from '../Reading.tsx';

const WHOLE = weightsOf('verify');
const FIND = weightsOf('find');
const CRITICAL = (Object.keys(UNSAFE_ACTS) as UnsafeId[]).filter((id) => UNSAFE_ACTS[id].critical);

export function HowMarked() {
  return (
    <Reading title="How marks are made" about="the same for everybody, from the log alone">
      <section className="stack prose" aria-labelledby="by-replay">
        <h2 id="by-replay">By doing it once more</h2>
        <p>
          An attempt is a log of what was done, typed and judged. Marks are never read from a file: the log is
          acted out again on the same unit, and each part is worked out from what came of it. The same log
          gives the same marks on every device. Each mark shows its sum, and each sum leads to its lines.
        </p>
        <p>
          A tutor marks against the job that was given out. Where a handed-in file says something else, what
          was given out decides, and the difference is named.
        </p>
      </section>
      <section className="stack" aria-labelledby="parts">
        <h2 id="parts">Six parts, 100 points</h2>
        <Scroll name="the parts of the marks">
          <table>
            <thead>
              <tr>
                <th scope="col">part</th>
                <th scope="col">points</th>
                <th scope="col">to find a cause</th>
                <th scope="col">how it is worked out</th>
              </tr>
            </thead>
            <tbody>
              {(Object.keys(MARKED_PARTS) as PartName[]).map((part) => {
                const { name, asks, sum } = MARKED_PARTS[part];
                return (
                  <tr key={part}>
                    <th scope="row">{name}</th>
                    <td>{WHOLE[part]}</td>
                    <td>{FIND[part]}</td>
                    <td>
                      <strong>{asks}</strong> {sum}
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </Scroll>
        <p className="note">
          A job may weigh the parts otherwise, and says so. What was given, as in guided work, is not marked.
        </p>
      </section>
      <section className="stack prose" aria-labelledby="passed">
        <h2 id="passed">Passed, or not yet</h2>
        <p>Passed means 70 points, or what the job says, and each of these:</p>
        <ul>
          {HURDLES_TEXT.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
        <p>Two things mean “not yet” whatever the points are:</p>
        <ul>
          {GATES_TEXT.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
        <p>A tutor may set a gate aside, with a reason; both are shown beside the mark.</p>
      </section>
      <section className="stack prose" aria-labelledby="never">
        <h2 id="never">What never costs anything</h2>
        <ul>
          {NEVER_COSTS.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
      <section className="stack prose" aria-labelledby="critical">
        <h2 id="critical">Critical acts</h2>
        <ul>
          {CRITICAL.map((id) => (
            <li key={id}>
              {UNSAFE_ACT_WORDS[id].act}. <span className="note">{UNSAFE_ACT_WORDS[id].why}</span>
            </li>
          ))}
        </ul>
      </section>
      <p className="prose">
        One job is practice: a grade needs about ten, on different sites. This is training; it makes nobody
        competent on real equipment, and no mark here is a certificate.
      </p>
    </Reading>
  );
}
