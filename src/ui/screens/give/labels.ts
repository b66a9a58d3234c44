/** The labels of a group as a tutor types them: one a line, or with commas between. */
import { MOST_LABELS } from '../../../desk/giving.ts';
import { plainWord } from '../../../desk/heldBy.ts';

/** As a label may be in an attempt. */
const LONGEST_LABEL = 60;

export interface Labels {
  /** Each once, and none that no attempt could have. */
  readonly listed: readonly string[];
  /** Why not all that is typed can be a label; null: it can. */
  readonly error: string | null;
}

export function labelsIn(text: string): Labels {
  const typed = text
    .split(/[\n,;]/)
    .map((label) => label.trim())
    .filter((label) => label !== '');
  const fit = typed.filter(({ length }) => length <= LONGEST_LABEL);
  const listed = [...new Map(fit.map((label) => [plainWord(label), label])).values()];
  const tooLong = typed.find(({ length }) => length > LONGEST_LABEL);
  return {
    listed,
    error:
      listed.length > MOST_LABELS
        ? `At most ${MOST_LABELS} labels are dealt out to; these are ${listed.length}.`
        : tooLong === undefined
          ? null
          : `“${tooLong.slice(0, LONGEST_LABEL)}…” is longer than a label may be (${LONGEST_LABEL} characters).`,
  };
}
