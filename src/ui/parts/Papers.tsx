/** The installation by its papers, in words: nothing of it was measured. */
import { memo } from 'react';
import type { Run } from '../../attempt/record/run.ts';
import { ownLimitLines } from '../../words/ownLimits.ts';
import { siteLines } from '../../words/papers.ts';
import { EditionNote } from './EditionNote.tsx';
import { SheetLines } from './SheetLines.tsx';
import { Symptom } from './Symptom.tsx';

export const Papers = memo(function Papers({ scenario, papers }: Pick<Run, 'scenario' | 'papers'>) {
  return (
    <section className="stack" aria-labelledby="papers-heading">
      <div className="bar-title">
        <h2 id="papers-heading">Papers</h2>
        <span className="note">lengths, areas, earthing: not measured</span>
      </div>
      {scenario.symptom === null ? null : <Symptom text={scenario.symptom} />}
      <p>{scenario.brief}</p>
      <SheetLines lines={siteLines(papers)} />
      <OwnLimits papers={papers} />
      <EditionNote rules={scenario.rules} />
    </section>
  );
});

/** Limits that whoever set the job puts in the place of the standard's: said before anything is measured. */
function OwnLimits({ papers }: Pick<Run, 'papers'>) {
  const lines = ownLimitLines(papers);
  if (lines.length === 0) return null;
  return (
    <>
      <h3>Values set for this job</h3>
      <SheetLines lines={lines} />
    </>
  );
}
