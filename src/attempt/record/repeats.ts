/**
 * Which tests of an attempt are due to be repeated, after what the trainee put right and before what is still wrong
 * could be called right; which of them the trainee named, and which were done again.
 */

import { entryNamed, faultsAmong } from '../../faults/catalogue.ts';
import type { Fault } from '../../faults/fault.ts';
import type { Verified } from '../../scenario/verify.ts';
import { actionNamed } from '../../verification/actions.ts';
import type { TestAction } from '../../verification/testAction.ts';
import type { DoneTest, Outcome } from '../../verification/testsToRepeat.ts';
import { testsToRepeat } from '../../verification/testsToRepeat.ts';
import type { Run } from './run.ts';
import type { Sitting } from './sitting.ts';
import { samplesIn, sittingsOf } from './sitting.ts';
import { truthOf } from './truth.ts';
import { countingEntries } from './untimely.ts';

export interface DueRepeats {
  readonly due: readonly string[];
  /** Named or not, done or not: neither costs anything. */
  readonly free: readonly string[];
  /** What the trainee said; null where nothing was asked. */
  readonly named: readonly string[] | null;
  /** Of those due, the ones done since what makes them so was put right. */
  readonly done: readonly string[];
}

/** The faults that the trainee has put right, and those that are still there. */
export function repairedIn({ scenario, world }: Run): {
  readonly repaired: readonly Fault[];
  readonly left: readonly Fault[];
} {
  const left = faultsAmong(world.faults);
  return { repaired: faultsAmong(scenario.faults).filter((fault) => !left.includes(fault)), left };
}

/** `now`: the whole verification of the unit as it is at the end. */
export function repeatsOf(run: Run, now: Verified): DueRepeats {
  const afterRepairs = run.repairs.map(({ entry, what }) => {
    const cause = entryNamed(what);
    return { entry, told: repeatsAfter(run, entry, cause === undefined ? [] : [cause]) };
  });
  // What is still wrong would be put right after the last entry.
  const toCome =
    now.conclusion === 'not sound'
      ? repeatsAfter(run, Infinity, repairedIn(run).left)
      : { due: [], free: [] };
  const isRepeated = (test: string): boolean => {
    const since = afterRepairs.findLast(({ told }) => told.due.includes(test))?.entry;
    return since !== undefined && sittingsOf(run, test).some(({ after }) => after >= since);
  };
  const after = afterRepairs.flatMap(({ told }) => told.due);
  // With something still wrong, what an earlier repair asked for and was done is behind the trainee.
  const settled = now.conclusion === 'not sound' ? after.filter(isRepeated) : [];
  const all = [...new Set([...after, ...toCome.due])];
  const isOptional = (test: string) => actionNamed(test)?.optional === true;
  const due = all.filter(
    (test) => !isOptional(test) && (toCome.due.includes(test) || !settled.includes(test)),
  );
  const free = [...all, ...afterRepairs.flatMap(({ told }) => told.free), ...toCome.free];
  const [conclusion] = countingEntries(run, 'conclusion');
  return {
    due,
    free: [...new Set(free)].filter((test) => !due.includes(test)),
    named: conclusion?.repeat ?? (run.repairs.length > 0 ? [] : null),
    done: due.filter((test) => !toCome.due.includes(test) && isRepeated(test)),
  };
}

function repeatsAfter(run: Run, entry: number, causes: Parameters<typeof testsToRepeat>[2]) {
  return testsToRepeat(run.papers, doneBefore(run, entry), causes);
}

/** Tests done before an entry of the log, in the order in which they were first done, with what came of the last time. */
function doneBefore(run: Run, entry: number): readonly DoneTest[] {
  const before = run.samples.filter((sample) => sample.entry < entry);
  const ids = [...new Set(before.map(({ test }) => test))];
  return ids.flatMap((id) => {
    const action = id === null ? undefined : actionNamed(id);
    if (action === undefined) return [];
    const sitting = sittingsOf(run, action.id).findLast(({ after }) => after < entry);
    return sitting === undefined ? [] : [{ action, outcome: outcomeOf(run, action, sitting) }];
  });
}

function outcomeOf(run: Run, action: TestAction, sitting: Sitting): Outcome {
  const { lines, limits } = truthOf(run, action, sitting);
  const isEmpty = samplesIn(run, sitting).length === 0;
  if (isEmpty || lines.some(({ finding }) => finding === 'broken')) return isEmpty ? 'not shown' : 'failed';
  if (limits.some(({ right }) => right === 'outside')) return 'failed';
  return lines.some(({ finding }) => finding === 'not shown') ? 'not shown' : 'as it should';
}

/** Each test missing and each one needless takes as much off, so that to name all of them earns nothing. */
export function shareNamed({ due, free, named }: DueRepeats): number {
  const said = [...new Set(named ?? [])];
  const missing = due.filter((test) => !said.includes(test)).length;
  const needless = said.filter((test) => !due.includes(test) && !free.includes(test)).length;
  return Math.max(0, 1 - (missing + needless) / Math.max(1, due.length));
}

export const shareDone = ({ due, done }: DueRepeats): number =>
  due.length === 0 ? 1 : done.length / due.length;
