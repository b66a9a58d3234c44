/** Topics in which lines were wrong, over all concluded attempts, those with the most first. */
import type { WeakTopic } from '../../../attempt/marks/recordSums.ts';
import { topicText } from '../../../words/topics.ts';

export function WeakTopics({ topics }: { readonly topics: readonly WeakTopic[] }) {
  return (
    <section className="stack" aria-labelledby="weak-heading">
      <h2 id="weak-heading">Weak topics</h2>
      {topics.length === 0 ? (
        <p className="note">Topics of lines that you got wrong stand here once an attempt is concluded.</p>
      ) : (
        <table>
          <caption className="unseen">Lines that were wrong, by topic</caption>
          <thead>
            <tr>
              <th scope="col">topic</th>
              <th scope="col">predicted wrong</th>
              <th scope="col">judged wrong</th>
            </tr>
          </thead>
          <tbody>
            {topics.map(({ topic, predicted, predictedWrong, judged, judgedWrong, attempts }) => (
              <tr key={topic}>
                <th scope="row">
                  {topicText(topic)}
                  <br />
                  <span className="note">
                    in {attempts} {attempts === 1 ? 'attempt' : 'attempts'}
                  </span>
                </th>
                <td>{predicted === 0 ? '–' : `${predictedWrong} of ${predicted}`}</td>
                <td>{judged === 0 ? '–' : `${judgedWrong} of ${judged}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
