/** What was really wrong, where, and what was due; told only now. */
import { memo } from 'react';
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import { notFaultsOf } from '../../../attempt/marks/diagnosis.ts';
import type { Showing } from '../../../attempt/marks/showing.ts';
import { causeWords } from '../../../words/causes.ts';
import { causeTitle } from '../../../words/causeTitles.ts';
import { readingTitle } from '../../../words/readings.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { FAMILY_WORDS } from '../../../words/topics.ts';
import { NEXT_WORDS, TELL_WORDS } from '../../../words/verdicts.ts';
import { shownText } from '../../format/figures.ts';
import { Fold } from './Fold.tsx';

export const Truth = memo(function Truth({ told }: { readonly told: Debrief }) {
  const { causes, due, showing, run } = told;
  const designed = run.scenario.task === 'find' && causes.length === 0 ? notFaultsOf(run.scenario) : [];
  return (
    <Fold id="cause-heading" title="The cause">
      {causes.length === 0 ? (
        <p>
          Nothing was wrong with this installation and unit
          {designed.length === 0 ? '' : ': it is as designed'}.
        </p>
      ) : null}
      {[...causes, ...designed].map(({ id, family }) => {
        const { where, cause, hazard, tells } = causeWords(id);
        return (
          <div key={id} className="found">
            <p>
              <strong>{causeTitle(id)}</strong> <span className="note">{FAMILY_WORDS[family]}</span>
            </p>
            <dl className="told">
              <dt>where</dt>
              <dd>{where}</dd>
              <dt>comes from</dt>
              <dd>{cause}</dd>
              {hazard === undefined ? null : (
                <>
                  <dt>at risk</dt>
                  <dd>{hazard}</dd>
                </>
              )}
              <dt>shows by</dt>
              <dd>{tells}</dd>
            </dl>
          </div>
        );
      })}
      {showing === null ? null : <p>{showingText(showing)}</p>}
      {due.next.length === 0 ? null : (
        <dl className="told">
          <dt>next</dt>
          <dd>{[...new Set(due.next)].map((step) => NEXT_WORDS[step]).join(', or ')}</dd>
          <dt>tell</dt>
          <dd>{[...new Set(due.tell)].map((who) => TELL_WORDS[who]).join(', or ')}</dd>
        </dl>
      )}
    </Fold>
  );
});

function showingText({ test, read }: Showing): string {
  const where = `A faultless trainee first meets it in “${testTitle(test)}”`;
  return read === null
    ? `${where}, by what is seen, heard or felt.`
    : `${where}: ${readingTitle(read.met)} reads ${shownText(read.met)}, and on the correct twin ${shownText(read.due)}.`;
}
