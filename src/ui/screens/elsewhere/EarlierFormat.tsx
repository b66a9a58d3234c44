/**
 * An unfinished attempt that an earlier version kept in its own format: to be read and exported. Its log was chained as
 * that version wrote it, so that nothing can be added to it here.
 */
import { navigate } from 'wouter/use-hash-location';
import type { Bench } from '../../flow/bench.ts';
import { ExportButton } from '../../parts/ExportButton.tsx';
import { ToRead } from './ReadOnly.tsx';

export const EarlierFormat = ({ bench }: { readonly bench: Bench }) => (
  <ToRead bench={bench}>
    <p>
      This attempt was begun in an earlier version of the trainer and is not finished. You can read it and
      export it. You cannot go on with it: begin the job again.
    </p>
    <div className="acts">
      <button type="button" className="main" onClick={() => navigate('/')}>
        To the scenarios
      </button>
      <ExportButton attempt={bench.run.attempt} />
    </div>
  </ToRead>
);
