/** Where the group is weak, how sure and how right, and how hard each line was, with how far that may be off. */
import type { Class, Item } from '../../../desk/class.ts';
import type { Row } from '../../../desk/collect.ts';
import { ENOUGH_TO_TELL } from '../../../desk/items.ts';
import { lineText } from '../../../words/actions.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { SURE_SHARES, SURE_WORDS } from '../../../words/answers.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { topicText } from '../../../words/topics.ts';
import { Scroll } from '../../parts/Scroll.tsx';
import { Fold } from '../debrief/Fold.tsx';
import { PartsTable } from './PartsTable.tsx';

/** The hardest are looked at; nobody reads five hundred. */
const HARDEST = 40;

interface Props {
  readonly made: Class;
  readonly placeOf: (row: Row) => number;
}

export function Figures({ made, placeOf }: Props) {
  const { aims, topics, sureness, items, passedOver, leftOut } = made;
  return (
    <>
      <Fold id="parts-heading" title="Marks by part" inSummary>
        <PartsTable made={made} placeOf={placeOf} />
      </Fold>
      <Fold id="weak-heading" title="Where the group is weak">
        <ul className="choices">
          {aims
            .toSorted((x, y) => x.right / x.of - y.right / y.of)
            .map(({ aim, right, of }) => (
              <li key={aim}>
                <strong>{AIM_WORDS[aim].question}</strong> {right} of {of} tests wholly right
              </li>
            ))}
        </ul>
        {topics.length === 0 ? null : (
          <p>
            Most wrong lines:{' '}
            {topics
              .slice(0, 3)
              .map(
                ({ topic, predictedWrong, judgedWrong, attempts }) =>
                  `${topicText(topic)} (${predictedWrong + judgedWrong}, in ${attempts} ${attempts === 1 ? 'attempt' : 'attempts'})`,
              )
              .join('; ')}
            .
          </p>
        )}
        {passedOver.length < 2 ? null : (
          <ul className="choices">
            {passedOver.slice(1, 6).map(({ line, by, of, job }) => (
              <li key={`${job} ${line.test} ${line.id}`}>
                Passed over by {by} of {of}: {testTitle(line.test)}, {lineText(line.test, line)}
              </li>
            ))}
          </ul>
        )}
        {leftOut.length < 2 ? null : (
          <ul className="choices">
            {leftOut.slice(1, 6).map(({ test, by, of }) => (
              <li key={test}>
                Left out by {by} of {of}: {testTitle(test)}
              </li>
            ))}
          </ul>
        )}
      </Fold>
      <Fold id="sure-heading" title="How sure, how right">
        <ul className="choices">
          {sureness.map(({ sure, right, of, share }) => (
            <li key={sure}>
              <strong>{SURE_WORDS[sure]}</strong> (means {SURE_SHARES[sure]}):{' '}
              {share === null ? 'not used' : `right ${right} of ${of}, ${Math.round(100 * share)} %`}
            </li>
          ))}
        </ul>
      </Fold>
      <Fold id="items-heading" title="How hard each line was">
        <p className="note prose">
          Share that judged the line rightly, and the range in which nineteen in twenty such groups would lie.
          From {ENOUGH_TO_TELL} answers on also whether those who did well otherwise got it right more often
          (−1 to 1; below 0.2 look at the line, below 0 look for a mistake in it).
        </p>
        <Scroll name="How hard each line was">
          <table className="figures">
            <caption className="unseen">How hard each line was, the hardest first</caption>
            <thead>
              <tr>
                <th scope="col">test and line</th>
                <th scope="col">right</th>
                <th scope="col">range</th>
                <th scope="col">tells good from weak</th>
              </tr>
            </thead>
            <tbody>
              {items.slice(0, HARDEST).map((item) => (
                <ItemRow key={`${item.job} ${item.line.test} ${item.line.id}`} item={item} />
              ))}
            </tbody>
          </table>
        </Scroll>
        {items.length <= HARDEST ? null : (
          <p className="note">
            The {HARDEST} hardest of {items.length}.
          </p>
        )}
      </Fold>
    </>
  );
}

function ItemRow({ item: { job, line, share, discrimination } }: { readonly item: Item }) {
  const percent = (of: number) => Math.round(100 * of);
  return (
    <tr>
      <th scope="row">
        {testTitle(line.test)}: {lineText(line.test, line)} <span className="note">{job}</span>
      </th>
      <td>
        {share.right} of {share.of}
      </td>
      <td>
        {percent(share.from)} to {percent(share.to)} %
      </td>
      <td>
        {discrimination === null
          ? share.of < ENOUGH_TO_TELL
            ? 'too few to say'
            : 'all alike'
          : discrimination.toFixed(2).replace('-', '−')}
      </td>
    </tr>
  );
}
