/**
 * Judgement: the mean of the rates at which what was right was accepted and what was wrong was rejected, so that
 * neither "all is well" nor "all is wrong" earns more than half where something is wrong. Held against what was typed:
 * a misreading costs once.
 */
import type { VerifiedAction } from '../../scenario/verify.ts';
import type { Judged } from '../record/attempt.ts';
import { testLines } from '../record/lines.ts';
import type { Run } from '../record/run.ts';
import { judgedRight, truthOf } from '../record/truth.ts';
import type { Expected, PartMark, Rate } from './counted.ts';
import { mean, shareOf } from './counted.ts';
import type { Occasion } from './occasions.ts';
import { occasionsOf } from './occasions.ts';

interface Item {
  readonly isWrong: boolean;
  readonly isJudgedRightly: boolean;
  /** Of a line: what is rightly said of it. */
  readonly right?: Judged;
}

export interface JudgementSum {
  readonly accepted: Rate;
  readonly rejected: Rate;
}

export interface JudgementMark extends PartMark<JudgementSum> {
  /** Share of what was wrong that was rejected, 0 to 1; 1 where nothing was wrong. */
  readonly rejected: number;
  /** The least share of any answer that was right somewhere: one answer to every line makes it 0. */
  readonly leastOfLines: number;
}

export function judgementMark(run: Run, expected: Expected): JudgementMark {
  const items = expected.counted.flatMap((due) => itemsOf(run, due, expected));
  const [accepted, rejected] = [false, true].map((isWrong) => {
    const own = items.filter((item) => item.isWrong === isWrong);
    return { right: own.filter(({ isJudgedRightly }) => isJudgedRightly).length, of: own.length };
  }) as [Rate, Rate];
  const rates = [accepted, rejected].filter(({ of }) => of > 0);
  return {
    share: mean(rates.map(shareOf)),
    rejected: shareOf(rejected),
    leastOfLines: leastOfLines(items),
    sum: { accepted, rejected },
  };
}

function leastOfLines(items: readonly Item[]): number {
  const answers = new Set(items.map(({ right }) => right));
  const rates = [...answers].flatMap((answer) => {
    const own = items.filter(({ right }) => right === answer);
    return answer === undefined
      ? []
      : [shareOf({ right: own.filter((one) => one.isJudgedRightly).length, of: own.length })];
  });
  return Math.min(1, ...rates);
}

function itemsOf(run: Run, due: VerifiedAction, { asMet, asNow }: Expected): readonly Item[] {
  const occasions = occasionsOf(run, due.action.id);
  if (occasions.length === 0) return missed(run, due);
  return occasions.flatMap((occasion) => {
    const { actions } = occasion.isAsMet ? asMet : asNow;
    const faultless = actions.find(({ action }) => action.id === due.action.id);
    return occasion.judgement === undefined
      ? missed(run, faultless ?? due)
      : judgedItems(run, due, occasion, faultless);
  });
}

/** Not done, or not judged: all that a faultless trainee would have had to judge. */
function missed(run: Run, { action, expectations, limits }: VerifiedAction): readonly Item[] {
  const asked = new Map(testLines(run.scenario, action).map((line) => [line.id, line.right]));
  return [
    ...expectations.flatMap(({ expectation: { id }, finding }) => {
      const right = asked.get(id);
      return right === undefined
        ? []
        : [
            {
              isWrong: finding === 'broken',
              isJudgedRightly: false,
              right: judgedRight({ finding, right }),
            },
          ];
    }),
    ...limits.map(({ pass }) => ({ isWrong: !pass, isJudgedRightly: false })),
  ];
}

function judgedItems(
  run: Run,
  { action }: VerifiedAction,
  { sitting, judgement }: Occasion,
  faultless: VerifiedAction | undefined,
): readonly Item[] {
  const truth = truthOf(run, action, sitting);
  const lines = new Map(judgement?.lines.map(({ id, judged }) => [id, judged]));
  const found = new Map(faultless?.expectations.map(({ expectation, finding }) => [expectation.id, finding]));
  return [
    ...truth.lines.flatMap((line): readonly Item[] => {
      const { id, finding } = line;
      if (finding === null) return [];
      // What was not looked at is not shown; where the test would have shown it, to say so is no judgement.
      const shown = found.get(id) ?? 'not shown';
      if (finding === 'not shown' && shown !== 'not shown')
        return [{ isWrong: shown === 'broken', isJudgedRightly: false }];
      const right = judgedRight(line);
      return [{ isWrong: finding === 'broken', isJudgedRightly: lines.get(id) === right, right }];
    }),
    ...truth.limits.map(({ limit, reading, right }) => ({
      isWrong: right === 'outside',
      isJudgedRightly:
        judgement?.limits.find((one) => one.id === limit.id && one.reading === reading)?.judged === right,
    })),
    ...(faultless?.limits ?? [])
      .filter(({ limit }) => truth.limits.every((one) => one.limit.id !== limit.id))
      .map(({ pass }) => ({ isWrong: !pass, isJudgedRightly: false })),
  ];
}
