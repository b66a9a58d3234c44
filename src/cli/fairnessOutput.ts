/** What `fairness` prints. Names and shapes are the contract's; what stands beside them is ours. */

import { callLimit } from '../fairness/closest.ts';
import type { Fairness } from '../fairness/fairness.ts';
import { minutesOfWay } from '../fairness/fairness.ts';
import { readsTheSame, seenBy } from '../fairness/relations.ts';
import type { Row } from '../fairness/row.ts';
import type { Way } from '../fairness/ways.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import { limitSum, stopWhy } from '../words/actions.ts';
import { causeTitle } from '../words/causeTitles.ts';

/** In place of a cause where nothing is wrong. */
const NOTHING = 'nothing';

export function fairnessOutput(fairness: Fairness, withCauses: boolean) {
  const { dictionary, revealedBy, lookalikes, shortest, cheapest, closest, stopped } = fairness;
  const { scenario, rows } = dictionary;
  const way = (one: Way | null) => ({
    actions: one?.tests ?? [],
    by: one?.by ?? null,
    minutes: one === null ? null : minutesOfWay(scenario, one),
  });
  const isSound = rows.every(({ cause }) => cause.of !== 'own');
  return {
    solvable: fairness.solvable,
    seen: isSound || revealedBy.length > 0,
    toldApart: isSound || (revealedBy.length > 0 && lookalikes.every(({ accepted }) => accepted)),
    revealedBy,
    lookalikes: lookalikes.map(({ causes, faults, splitBy, accepted }) => ({
      cause: causes.length === 0 ? NOTHING : causes.join(' + '),
      title: causes.length === 0 ? 'nothing is wrong' : causes.map(causeTitle).join('; '),
      values: valuesOf(faults),
      splitBy,
      accepted,
    })),
    shortest: shortest?.tests ?? [],
    shortestWay: way(shortest),
    cheapestWay: way(cheapest),
    minutes: fairness.minutes,
    closest: closest && { ...closest, sum: sumOf(fairness) },
    stopped: stopped && { action: stopped.action, why: stopWhy(stopped.action, stopped.line) },
    severity: fairness.severity.map((one) => ({ ...one, title: causeTitle(one.cause) })),
    causesTried: rows.length,
    ...(withCauses ? { causes: causesOf(fairness) } : {}),
  };
}

const valuesOf = (faults: readonly FaultChoice[]): FaultChoice['values'] =>
  Object.assign({}, ...faults.map(({ values }) => values));

const sumOf = ({ closest }: Fairness): string | null =>
  closest === null ? null : limitSum(closest.action, callLimit(closest));

/** Every cause of the dictionary: which tests let it be seen, and which others read the same. */
function causesOf({ dictionary: { rows } }: Fairness) {
  const [sound] = rows as readonly [Row, ...Row[]];
  const name = ({ cause }: Row) => ({
    cause: cause.causes.length === 0 ? NOTHING : cause.causes.join(' + '),
    values: valuesOf(cause.faults),
  });
  return rows.map((row) => ({
    ...name(row),
    of: row.cause.of,
    size: row.cause.size,
    showsBefore: row.sheet === null,
    seenBy: row === sound ? [] : seenBy(row, sound),
    stopped: row.stopped?.action ?? null,
    readsLike: [
      ...new Set(
        rows
          .filter((other) => other !== row && other.cause.causes.join() !== row.cause.causes.join())
          .filter((other) => readsTheSame(row, other))
          .map((other) => name(other).cause),
      ),
    ],
  }));
}
