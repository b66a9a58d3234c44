/** Every line of every test on each kind of site, with its right answer: what questions made of lines are drawn from. */
import type { Line } from '../../attempt/record/lines.ts';
import { testLines } from '../../attempt/record/lines.ts';
import type { SiteId } from '../../scenario/aims.ts';
import { SITES } from '../../scenario/aims.ts';
import { ACTIONS } from '../../verification/actions.ts';
import type { TestAction } from '../../verification/testAction.ts';
import type { AboutLine, Dice } from '../question.ts';
import { askedSite } from '../site.ts';

/** A line of a test on one kind of site, whose papers it speaks of. */
export interface Stated {
  readonly site: SiteId;
  readonly action: TestAction;
  readonly line: Line;
  /** The tests of this site that do tell it, where its own cannot. */
  readonly toldBy: readonly TestAction[];
}

const stated = new Map<SiteId, readonly Stated[]>();

/** Every line of every test on this kind of site; worked out once. */
export function statedOn(site: SiteId): readonly Stated[] {
  const before = stated.get(site);
  if (before !== undefined) return before;
  const { scenario, papers } = askedSite(site);
  const tests = ACTIONS.filter(({ applies }) => applies(papers));
  const all = tests.flatMap((action) =>
    testLines(scenario, action).map((line): Stated => {
      const toldBy = tests.filter(({ id }) => line.toldBy.includes(id));
      return { site, action, line, toldBy };
    }),
  );
  stated.set(site, all);
  return all;
}

export function drawOne(dice: Dice, wanted: (one: Stated) => boolean): Stated {
  for (const site of dice.shuffle('site', SITES)) {
    const [one] = dice.shuffle('line', statedOn(site).filter(wanted));
    if (one !== undefined) return one;
  }
  throw new Error('no line to ask about');
}

export const about = ({ action, line: { id, values } }: Stated): AboutLine => ({
  test: action.id,
  id,
  values,
});
