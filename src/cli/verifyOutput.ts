/** What `verify --json` prints. Names and shapes are the contract's. */

import { pairOf } from '../bench/reading.ts';
import type { Verified } from '../scenario/verify.ts';
import { adviceText, limitSum, lineInWords, stopWhy } from '../words/actions.ts';
import { readingInWords } from '../words/refusals.ts';
import { sourceText } from '../words/sources.ts';
import { unsafeInWords } from '../words/unsafeActs.ts';

export function verifyOutput({ conclusion, stopped, actions }: Verified) {
  return {
    conclusion,
    stopped: stopped && { action: stopped.action, why: stopWhy(stopped.action, stopped.line) },
    broken: actions.flatMap(({ action, expectations }) =>
      expectations
        .filter(({ finding }) => finding === 'broken')
        .map(({ expectation: e }) => ({
          action: action.id,
          expectation: e.id,
          should: e.should,
          text: lineInWords(action.id, e).text,
          why: lineInWords(action.id, e).why,
          of: e.of,
          source: sourceText(e.source),
          points: e.points,
        })),
    ),
    limits: actions.flatMap(({ action, limits }) =>
      limits.map(({ limit, reading, value, pass, tooClose }) => ({
        action: action.id,
        id: limit.id,
        quantity: limit.quantity,
        ...(pairOf(reading) === undefined ? {} : { between: pairOf(reading) }),
        value,
        qualifier: reading.qualifier,
        unit: limit.unit,
        limit: limit.limit,
        pass,
        tooClose,
        sum: limitSum(action.id, limit),
        source: sourceText(limit.source),
      })),
    ),
    advice: actions.flatMap(({ action, advice }) =>
      advice.map((one) => ({
        action: action.id,
        id: one.id,
        text: adviceText(action.id, one),
        source: sourceText(one.source),
      })),
    ),
    readings: actions.flatMap(({ action, run }) =>
      run.samples.flatMap(({ readings }) =>
        readings.map((r) => ({ action: action.id, ...readingInWords(r) })),
      ),
    ),
    unsafe: actions.flatMap(({ action, unsafe }) =>
      unsafe.map((u) => ({ action: action.id, ...unsafeInWords(u) })),
    ),
  };
}
