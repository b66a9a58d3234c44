/** What of an attempt's file is not to be believed, and what of its log came at the wrong time, in words. */
import type { Doubt } from '../attempt/record/claims.ts';
import type { Untimely } from '../attempt/record/untimely.ts';
import { shortened } from '../scenario/quoted.ts';

export const UNTIMELY_WORDS: Readonly<Record<Untimely['why'], string>> = {
  ended: 'after the conclusion',
  predicted: 'locked after a reading of its test',
  written: 'written before its reading',
  judged: 'judged before anything was done in its test',
};

const AGAINST_WORDS: Readonly<Record<Extract<Doubt, { against: string }>['against'], string>> = {
  replay: 'the replay',
  given: 'the given scenario',
  shipped: 'the one that comes with the program',
};

export function doubtText(doubt: Doubt): string {
  switch (doubt.id) {
    case 'engine':
      return `engine: the file was made by ${shortened(doubt.said)}, this is ${doubt.is}`;
    case 'broken-chain':
      return `entries[${doubt.entry}].hash: does not follow from the entries before it`;
    case 'says-otherwise':
      return `${doubt.path}: the file says ${valueText(doubt.said)}, ${AGAINST_WORDS[doubt.against]} ${valueText(doubt.is)}`;
  }
}

/** A value of a file: cut, and `nothing` where there is none. */
const valueText = (value: unknown): string =>
  value === undefined ? 'nothing' : shortened(JSON.stringify(value));
