/** What a tutor reads of a job while it is made: whether it is fair, in plain words. */
import { TYPED_UNITS } from '../bench/readings/display.ts';
import { RULES } from '../bench/readings/quantities.ts';
import type { Quantity } from '../bench/readings/quantity.ts';
import type { FairnessView } from '../fairness/view.ts';
import { aimOf } from '../scenario/aims.ts';
import { AIM_WORDS } from './aims.ts';
import { amountText, THIN, three } from './amounts.ts';

import { testTitle } from './testTitles.ts';

/** A figure of a display, by its name there and what it was read of: with as many digits as the instrument shows. */
export function readText(value: number, name: string, of: string): string {
  if (name === 'tripMs') return amountText(value / 1000, 's');
  if (name === 'duty') return `${three(100 * value)}${THIN}%`;
  if (name === 'frequency') return amountText(value, 'Hz');
  if (name === 'heard') return amountText(value, 's');
  const [quantity = ''] = of.split(' ');
  const { unit, decimals } = RULES[quantity as Quantity].display(Math.abs(value), {});
  return `${(value / TYPED_UNITS[unit]).toFixed(decimals).replace('-', '−')}${unit === '' ? '' : THIN}${unit}`;
}

/** `at A, at B and at C`, four at most. */
export function testsText(tests: readonly string[]): string {
  const named = tests.slice(0, MOST_NAMED).map((test) => `“${testTitle(test)}”`);
  const more = tests.length - named.length;
  const all = more > 0 ? [...named, `${more} more`] : named;
  return all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
}

const MOST_NAMED = 3;

export interface Answer {
  readonly is: 'yes' | 'no' | 'nothing is wrong' | 'as far as any test can';
  readonly more: string;
}

export function seenAnswer({ isSound, revealedBy, wouldShow }: FairnessView): Answer {
  if (isSound)
    return { is: 'nothing is wrong', more: 'the trainee has to find out that every test is in order' };
  if (revealedBy.length > 0) return { is: 'yes', more: `at ${testsText(revealedBy)}` };
  return {
    is: 'no',
    more:
      wouldShow.length > 0
        ? 'no test that is allowed shows it'
        : 'it is too slight: no test shows it at this size',
  };
}

export function apartAnswer({ isSound, revealedBy, lookalikes, solvable }: FairnessView): Answer | null {
  if (isSound || revealedBy.length === 0) return null;
  const open = lookalikes.filter(({ accepted }) => !accepted);
  const others = (count: number) => `${count} ${count === 1 ? 'other reads' : 'others read'} the same`;
  if (lookalikes.length === 0) return { is: 'yes', more: 'no other cause reads the same' };
  if (open.length === 0)
    return {
      is: 'yes',
      more: `${others(lookalikes.length)}, and you accept ${lookalikes.length === 1 ? 'it' : 'them'}`,
    };
  if (solvable)
    return {
      is: 'as far as any test can',
      more: `${others(open.length)} in every test there is: either name counts in full`,
    };
  return { is: 'no', more: others(open.length) };
}

const FOUND_WORDS: Readonly<Record<NonNullable<FairnessView['found']>, Answer>> = {
  'before power': { is: 'yes', more: 'before power' },
  'with power': { is: 'yes', more: 'with the power on, by safe steps' },
  harm: { is: 'no', more: 'the shortest way has a critical act in it' },
};

export const harmAnswer = ({ found }: FairnessView): Answer | null =>
  found === null ? null : FOUND_WORDS[found];

/** `Is the earth there? Protective conductor, …`. */
export function aimAndTest(test: string): string {
  const aim = aimOf(test);
  return `${aim === null ? '' : `${AIM_WORDS[aim].question} `}${testTitle(test)}`;
}

/** All that would count as the cause once they are accepted. */
export function acceptText(lookalikes: FairnessView['lookalikes']): string {
  const count = lookalikes.filter(({ causes }) => causes.length > 0).length + 1;
  return count === 2 ? 'either of the two' : `any of the ${count}`;
}
