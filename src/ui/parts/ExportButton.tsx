/** The attempt as a file: the one way in which anything leaves the device. */
import type { Attempt } from '../../attempt/attempt.ts';
import { makeAttemptText } from '../../attempt/file.ts';

export function ExportButton({ attempt, text }: { readonly attempt: Attempt; readonly text?: string }) {
  return (
    <button
      type="button"
      onClick={() => download(`${nameOf(attempt)}.json`, text ?? makeAttemptText(attempt))}
    >
      Export attempt
    </button>
  );
}

function nameOf({ scenario, trainee }: Attempt): string {
  const id = (scenario as { id?: unknown } | null)?.id;
  const parts = [typeof id === 'string' ? id : 'scenario', trainee ?? '', 'attempt'];
  return parts
    .filter((part) => part !== '')
    .join('-')
    .replaceAll(/[^\p{L}\p{N}-]+/gu, '-');
}

function download(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the file by the time the next task runs.
  setTimeout(() => URL.revokeObjectURL(url));
}
