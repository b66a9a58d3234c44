/** What `verify --json` prints. Names and shapes are the contract's. */
import { sourceText } from '../verification/sources.ts';
import type { Verification } from './verify.ts';

export function verifyOutput({ conclusion, stopped, actions }: Verification) {
  return {
    conclusion,
    stopped,
    broken: actions.flatMap(({ action, expectations }) =>
      expectations
        .filter(({ finding }) => finding === 'broken')
        .map(({ expectation: e }) => ({
          action: action.id,
          expectation: e.id,
          should: e.should,
          text: e.text,
          why: e.why,
          of: e.of,
          source: sourceText(e.source),
          points: e.points,
        })),
    ),
    limits: actions.flatMap(({ action, limits }) =>
      limits.map(({ limit, reading, value, pass, tooClose }) => ({
        action: action.id,
        quantity: limit.quantity,
        ...(reading.between === undefined ? {} : { between: reading.between }),
        value,
        qualifier: reading.qualifier,
        unit: limit.unit,
        limit: limit.limit,
        pass,
        tooClose,
        sum: limit.sum,
        source: sourceText(limit.source),
      })),
    ),
    advice: actions.flatMap(({ action, advice }) =>
      advice.map(({ id, text, source }) => ({ action: action.id, id, text, source: sourceText(source) })),
    ),
    readings: actions.flatMap(({ action, run }) =>
      run.samples.flatMap(({ readings }) => readings.map((r) => ({ action: action.id, ...r }))),
    ),
    unsafe: actions.flatMap(({ action, unsafe }) => unsafe.map((u) => ({ action: action.id, ...u }))),
  };
}
