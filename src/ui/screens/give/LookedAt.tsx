/** What a learner will see, for the tutor who looks first: with what the papers of each job say. */
import type { ReadGiving } from '../../../desk/giving.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { papersOf } from '../../../scenario/scenario.ts';
import { ownLimitLines } from '../../../words/ownLimits.ts';
import { sheetLines, siteLines } from '../../../words/papers.ts';
import { SheetLines } from '../../parts/SheetLines.tsx';
import { GivenCard } from './GivenCard.tsx';

export const LookedAt = ({ read }: { readonly read: ReadGiving }) => (
  <GivenCard
    read={read}
    beside={(at) => {
      const job = read.jobs[at];
      return job === undefined ? null : (
        <PapersSeen scenario={job.scenario} isVaried={read.giving.variants.length > 0} />
      );
    }}
  />
);

interface Props {
  readonly scenario: Scenario;
  /** Each gets figures of their own, which differ from these. */
  readonly isVaried: boolean;
}

/** What learners read in the papers and on the unit's sheet, before anything is measured. */
function PapersSeen({ scenario, isVaried }: Props) {
  const papers = papersOf(scenario);
  return (
    <details className="whole-row">
      <summary>
        Papers and sheet <span className="unseen">of {scenario.title}</span>
      </summary>
      <div className="stack">
        {isVaried ? (
          <p className="note">In each variant Ze or electrode, and lengths of run and cable, are others.</p>
        ) : null}
        <SheetLines lines={[...siteLines(papers), ...ownLimitLines(papers), ...sheetLines(papers)]} />
      </div>
    </details>
  );
}
