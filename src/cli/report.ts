/** A verification in words, for reading in a terminal. */

import type { AnyReading } from '../bench/reading.ts';
import { pairOf } from '../bench/reading.ts';
import { visible } from '../scenario/quoted.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Verified, VerifiedAction } from '../scenario/verify.ts';
import { adviceText, limitSum, lineText, stopWhy } from '../words/actions.ts';
import { refusalText } from '../words/refusals.ts';
import { editionNamed, sourceText } from '../words/sources.ts';
import { testTitle } from '../words/testTitles.ts';
import { unsafeActText } from '../words/unsafeActs.ts';

export function verifyReport({ title, rules }: Scenario, verification: Verified): string {
  const { conclusion, stopped, actions } = verification;
  return [
    `${visible(title)}: ${conclusion}`,
    `rules: ${editionNamed(rules)}. Training only; no certificate.`,
    ...(stopped === null
      ? []
      : [`stopped after ${stopped.action}: ${stopWhy(stopped.action, stopped.line)}`]),
    ...actions.flatMap(actionLines),
  ].join('\n');
}

function actionLines({
  action,
  run,
  expectations,
  limits,
  advice,
  unsafe,
}: VerifiedAction): readonly string[] {
  return [
    '',
    testTitle(action.id),
    ...run.samples.flatMap(({ readings }) => readings.map((r) => `  ${describe(r)}`)),
    ...expectations
      .filter(({ finding }) => finding !== 'met')
      .map(
        ({ expectation: e, finding }) =>
          `  ${finding}: ${e.should ? 'should' : 'should not'}: ${lineText(action.id, e)} [${sourceText(e.source)}]`,
      ),
    ...limits.map(
      ({ limit, pass, tooClose }) =>
        `  ${tooClose ? 'too close' : pass ? 'within' : 'outside'}: ${limitSum(action.id, limit)} [${sourceText(limit.source)}]`,
    ),
    ...advice.map((one) => `  advised: ${adviceText(action.id, one)} [${sourceText(one.source)}]`),
    ...unsafe.map(({ id }) => `  unsafe: ${unsafeActText(id)}`),
  ];
}

function describe(r: AnyReading): string {
  const where = pairOf(r)?.join(' to ') ?? r.line ?? '';
  const what =
    r.reason !== undefined
      ? `unable: ${refusalText(r.reason)}`
      : `${r.qualifier ?? ''}${r.value ?? r.limit} ${r.unit}`;
  const more = r.tripMs == null ? '' : `, in ${r.tripMs} ms, tripped: ${r.trippedWhat}`;
  return `${r.quantity} ${where} ${what}${more}`.replaceAll('  ', ' ');
}
