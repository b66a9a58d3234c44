/** What `verify --json` prints. Names and shapes are the contract's. */
import type { Verification } from '../scenario/verify.ts';
import { sourceText } from '../verification/sources.ts';
import { limitSum, lineText, stopWhy } from '../words/actions.ts';

export function verifyOutput({ conclusion, stopped, actions }: Verification) {
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
          text: lineText(action.id, e),
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
        sum: limitSum(action.id, limit),
        source: sourceText(limit.source),
      })),
    ),
    readings: actions.flatMap(({ action, run }) =>
      run.samples.flatMap(({ readings }) => readings.map((r) => ({ action: action.id, ...r }))),
    ),
    unsafe: actions.flatMap(({ action, unsafe }) => unsafe.map((u) => ({ action: action.id, ...u }))),
  };
}
