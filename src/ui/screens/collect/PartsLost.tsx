/** Each part with its sum, and below it, unfolded, every answer that it was lost by, with reading and source. */
import { Fragment, useMemo } from 'react';
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import type { PartName } from '../../../scenario/tasks.ts';
import type { AskedAbout } from '../../../words/asked.ts';
import { causeTitle } from '../../../words/causeTitles.ts';
import { HURDLE_WORDS, sumText } from '../../../words/sums.ts';
import { lostIn, lostTitle } from './lost.ts';

interface Props {
  readonly told: Debrief;
  readonly onShow: (test: string, about: AskedAbout) => void;
}

export function PartsLost({ told, onShow }: Props) {
  const { marks } = told;
  const lost = useMemo(() => lostIn(told), [told]);
  return (
    <section className="stack" aria-labelledby="parts-heading">
      <h2 id="parts-heading">Marks by part</h2>
      {(Object.keys(marks.parts) as PartName[]).map((part) => {
        const own = lost.filter((item) => item.part === part);
        const sum = `${marks.parts[part]} of ${marks.weights[part]}: ${sumText(marks, part)}`;
        const more = wholeText(told, part);
        return own.length === 0 && more === null ? (
          <p key={part}>
            <strong>{part}</strong> {sum}
          </p>
        ) : (
          <details key={part} className="debrief-test">
            <summary>
              <span>
                <strong>{part}</strong> {sum}
              </span>
            </summary>
            {more === null ? null : <p>{more}</p>}
            <ul className="lost-items">
              {own.map((item) => (
                <li key={item.key}>
                  <strong>{lostTitle(item)}.</strong> {item.line}
                  <br />
                  said <strong>{item.said}</strong>, true: <strong>{item.truth}</strong>
                  {item.read.length === 0 ? null : (
                    <>
                      <br />
                      read:{' '}
                      {item.read.map((text, i) => (
                        <Fragment key={text}>
                          {i === 0 ? '' : '; '}
                          {text}
                        </Fragment>
                      ))}
                    </>
                  )}
                  {item.source === null ? null : (
                    <>
                      <br />
                      <span className="note">{item.source}</span>
                    </>
                  )}
                  <div className="acts">
                    <button
                      type="button"
                      onClick={() =>
                        onShow(item.test, { what: 'line', part, test: lostTitle(item), line: item.line })
                      }
                    >
                      At that moment <span className="unseen">{item.line}</span>
                    </button>
                  </div>
                </li>
              ))}
            </ul>
          </details>
        );
      })}
      {marks.hurdles.length === 0 ? null : (
        <ul className="choices">
          {marks.hurdles.map((hurdle) => (
            <li key={hurdle}>Not yet: {HURDLE_WORDS[hurdle]}.</li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** What is true of a part that is about the whole job; null of the others. */
export function wholeText({ run, causes }: Debrief, part: PartName): string | null {
  const conclusion = run.attempt.entries.find(({ kind }) => kind === 'conclusion');
  if (conclusion?.kind !== 'conclusion') return null;
  if (part === 'diagnosis') {
    const said =
      conclusion.cause === null
        ? 'no cause'
        : conclusion.cause === 'nothing'
          ? 'nothing wrong'
          : causeTitle(conclusion.cause);
    const truth =
      causes.length === 0 ? 'nothing is wrong' : causes.map(({ id }) => causeTitle(id)).join('; ');
    return `Named: ${said}. True: ${truth}.`;
  }
  return part === 'reasons' && conclusion.because !== '' ? `In their words: “${conclusion.because}”` : null;
}
