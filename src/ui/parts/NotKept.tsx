/** That what is being done is not kept, why, what that means, and the way to keep it all the same. */
import { useContext } from 'react';
import type { Attempt } from '../../attempt/record/attempt.ts';
import { WHY_NOT_KEPT } from '../../words/keeping.ts';
import { KeepProblemOfAttempt } from '../flow/attemptContext.ts';
import { ExportButton } from './ExportButton.tsx';

export function NotKept({ attempt }: { readonly attempt: Attempt }) {
  const problem = useContext(KeepProblemOfAttempt);
  return (
    <div className="acts whole" role="alert">
      <p className="error">
        <strong>Not kept on this device.</strong> {WHY_NOT_KEPT[problem ?? 'refused']} If you close this page,
        what you did since is lost unless you export it.
      </p>
      <ExportButton attempt={attempt} />
    </div>
  );
}
