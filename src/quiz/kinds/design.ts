/** Questions on whether the design in the papers is right: what a cable carries as it is laid, which breaker fits, which sum is not right. */
import { roundTo } from '../../bench/readings/scale.ts';
import { AMBIENTS, currentCarrying, usualCable } from '../../laws/currentCarrying.ts';
import { prospectiveCurrent } from '../../laws/loop.ts';
import { BREAKER_RATINGS, measuredLoopLimit } from '../../laws/overcurrent.ts';
import { greatestDrop, voltageDrop } from '../../laws/voltageDrop.ts';
import { fromMemory, published } from '../../verification/sources.ts';
import { figure, inOrder } from '../asking.ts';
import type { Dice, Kind } from '../question.ts';

const RULES = 'BS 7671:2018+A2:2022';

function drawLaid(dice: Dice) {
  const method = dice.pick('method', ['B', 'C', '100', '102']);
  const area = dice.pick('area', [4, 6, 10]);
  return currentCarrying({
    cable: usualCable(method),
    method,
    area,
    loaded: 2,
    ambient: dice.pick('ambient', AMBIENTS as readonly [25, 30, 35, 40, 45, 50]),
    grouped: dice.pick('grouped', [1, 1, 2, 3]),
    insulated: 0,
  });
}

const carriedCurrent: Kind = {
  id: 'carried-current',
  topics: ['design'],
  ask: (dice) => {
    const { tabled, ambient, grouped, amps } = drawLaid(dice);
    return figure({
      values: { tabled, ambient, grouped },
      source: published(`${RULES} Appendix 4 section 5`),
      unit: 'A',
      answer: roundTo(amps, 0.1),
      tolerance: 0.2,
      mistakes: {
        'factors-forgotten': tabled,
        'grouping-forgotten': tabled * ambient,
        'air-forgotten': tabled * grouped,
        'over-not-times': tabled / (ambient * grouped),
      },
    });
  },
};

/** The least rating that the load asks for, where the cable carries no larger one: exactly one of those shown fits. */
const breakerFits: Kind = {
  id: 'breaker-fits',
  topics: ['design'],
  ask: (dice) => {
    const load = dice.pick('load', [16, 20, 32]);
    const at = BREAKER_RATINGS.findIndex((rating) => rating >= load);
    const [fits = 0, next = 0] = BREAKER_RATINGS.slice(at);
    const carries = roundTo(fits + dice.figure('beyond', 0.5, next - fits - 0.5, 0.5), 0.1);
    // From none to two below it are shown: its place among them says nothing.
    const first = at - dice.pick('below', [0, 1, 2]);
    return inOrder({
      values: { load, carries },
      source: published(`${RULES} 433.1.1`),
      answer: String(fits),
      choices: BREAKER_RATINGS.slice(first, first + 4).map((rating) => ({ id: String(rating) })),
    });
  },
};

const SUMS = ['cable', 'drop', 'clears', 'breaks'] as const;

/** Four sums of one set of papers, of which one at most is not right. */
const designWrong: Kind = {
  id: 'design-wrong',
  topics: ['design'],
  ask: (dice) => {
    const wrong = dice.pick('wrong', [...SUMS, 'none'] as const);
    const rating = dice.pick('rating', [32, 40]);
    const area = 6;
    const carries =
      wrong === 'cable'
        ? rating - dice.figure('short', 2, 6, 0.5)
        : rating + dice.figure('spare', 1, 12, 0.5);
    const each = voltageDrop({ area, phases: 1, amps: 32, length: 1 });
    const longest = greatestDrop(1) / each;
    const length = Math.round(
      longest *
        (wrong === 'drop' ? dice.figure('long', 1.15, 1.5, 0.05) : dice.figure('run', 0.2, 0.8, 0.05)),
    );
    const limit = measuredLoopLimit('B', rating);
    const loop = roundTo(
      limit *
        (wrong === 'clears' ? dice.figure('high', 1.15, 1.8, 0.05) : dice.figure('loop', 0.35, 0.8, 0.05)),
      0.01,
    );
    const capacity = 6000;
    const origin = wrong === 'breaks' ? 0.03 : dice.figure('origin', 0.08, 0.3, 0.01);
    return inOrder({
      values: {
        rating,
        carries: roundTo(carries, 0.1),
        length,
        drop: roundTo(length * each, 0.1),
        most: greatestDrop(1),
        loop,
        limit,
        capacity,
        origin,
        prospective: Math.round(prospectiveCurrent(origin)),
      },
      source: fromMemory(`${RULES} 433.1.1, 525, 411.4 and 434.5.1`),
      answer: wrong,
      choices: [...SUMS, 'none'].map((id) => ({ id })),
    });
  },
};

export const DESIGN_KINDS: readonly Kind[] = [carriedCurrent, breakerFits, designWrong];
