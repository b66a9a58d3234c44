/** A text, or bytes, as a file for this device: the one way in which anything leaves the page. */
import type { Attempt } from '../../attempt/record/attempt.ts';

/** Hands the file to the browser. Whether the browser then writes it, no page is told. Throws where it takes none. */
export function download(
  name: string,
  content: string | Uint8Array<ArrayBuffer>,
  type = 'application/json',
): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the file by the time the next task runs.
  setTimeout(() => URL.revokeObjectURL(url));
}

/** `harbour-mews-Ann-attempt.json`; `what` is the last word. */
export function fileNameOf({ scenario, trainee }: Attempt, what: string): string {
  const id = (scenario as { id?: unknown } | null)?.id;
  const parts = [typeof id === 'string' ? id : 'scenario', trainee ?? '', what];
  const name = parts.filter((part) => part !== '').join('-');
  return `${name.replaceAll(/[^\p{L}\p{N}-]+/gu, '-')}.json`;
}
