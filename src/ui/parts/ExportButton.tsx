/** The attempt as a file, at any time. */
import type { Attempt } from '../../attempt/record/attempt.ts';
import { makeAttemptText } from '../../attempt/record/fileText.ts';
import { download, fileNameOf } from './download.ts';

export function ExportButton({ attempt }: { readonly attempt: Attempt }) {
  return (
    <button type="button" onClick={() => download(fileNameOf(attempt, 'attempt'), makeAttemptText(attempt))}>
      Export attempt
    </button>
  );
}
