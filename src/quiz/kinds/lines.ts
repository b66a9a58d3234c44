/** Questions made of what the tests say of a correct unit: each line with its right answer, and which test tells it. */
import type { AimId } from '../../scenario/aims.ts';
import { AIMS, aimOf, SITES } from '../../scenario/aims.ts';
import type { TestAction } from '../../verification/testAction.ts';
import { inOrder } from '../asking.ts';
import type { Kind } from '../question.ts';
import type { Stated } from './stated.ts';
import { about, drawOne, statedOn } from './stated.ts';

const valuesOf = ({ site, action, line }: Stated) => ({ site, test: action.id, subject: line.subject });

const EVERY_AIM: readonly AimId[] = AIMS.map(({ id }) => id);

/** Should, should not, or not to be told by this test: one of each as likely, where the aim has it. */
const correctUnit: Kind = {
  id: 'correct-unit',
  topics: EVERY_AIM,
  ask: (dice, topic) => {
    const ofTopic = ({ action }: Stated): boolean => aimOf(action.id) === topic;
    const [first] = dice
      .shuffle('right', ['should', 'should-not', 'cant-tell'] as const)
      .filter((right) =>
        SITES.some((site) => statedOn(site).some((one) => ofTopic(one) && one.line.right === right)),
      );
    const one = drawOne(dice, (candidate) => ofTopic(candidate) && candidate.line.right === first);
    return {
      way: 'three-answers',
      values: valuesOf(one),
      about: about(one),
      source: one.line.source,
      answer: one.line.right,
    };
  },
};

/** Which test tells what another cannot; the topic is that of the test that does. */
const whichTest: Kind = {
  id: 'which-test',
  topics: [
    'earth',
    'insulation',
    'wiring',
    'supply',
    'outlet-dead',
    'offer',
    'lets-go',
    'clears',
    'leakage',
    'refuses',
  ],
  ask: (dice, topic) => {
    const isOfTopic = ({ id }: TestAction): boolean => aimOf(id) === topic;
    const one = drawOne(dice, ({ toldBy }) => toldBy.some(isOfTopic));
    const [telling] = dice.shuffle('telling', one.toldBy.filter(isOfTopic));
    if (telling === undefined) throw new Error('no test tells it');
    const ofSite = [...new Set(statedOn(one.site).map(({ action }) => action))];
    const others = ofSite.filter((action) => action !== one.action && !one.toldBy.includes(action));
    const choices = [telling, ...dice.shuffle('others', others).slice(0, 3)];
    return inOrder({
      values: valuesOf(one),
      about: about(one),
      source: one.line.source,
      answer: telling.id,
      choices: dice.shuffle('choices', choices).map(({ id }) => ({ id })),
    });
  },
};

const FEWEST_BESIDES = 2;

/** Which of these a correct unit does not do: one line of that kind among those that it should. */
const mustBeAbsent: Kind = {
  id: 'must-be-absent',
  // Of insulation there are too few lines to choose among.
  topics: EVERY_AIM.filter((aim) => aim !== 'insulation'),
  ask: (dice, topic) => {
    const isOfTopic = ({ action }: Stated): boolean => aimOf(action.id) === topic;
    /** Lines of what should be, about the same: the unit, the circuit or the tester. */
    const besides = ({ site, line }: Stated): readonly Stated[] =>
      statedOn(site).filter(
        (other, i, all) =>
          isOfTopic(other) &&
          other.line.right === 'should' &&
          other.line.subject === line.subject &&
          // Several tests may say the same.
          all.findIndex((one) => isOfTopic(one) && one.line.id === other.line.id) === i,
      );
    const one = drawOne(
      dice,
      (candidate) =>
        isOfTopic(candidate) &&
        candidate.line.right === 'should-not' &&
        besides(candidate).length >= FEWEST_BESIDES,
    );
    const shown = [one, ...dice.shuffle('others', besides(one)).slice(0, 3)];
    return inOrder({
      values: valuesOf(one),
      source: one.line.source,
      answer: `${one.action.id}/${one.line.id}`,
      choices: dice
        .shuffle('choices', shown)
        .map((each) => ({ id: `${each.action.id}/${each.line.id}`, about: about(each) })),
    });
  },
};

export const LINE_KINDS: readonly Kind[] = [correctUnit, whichTest, mustBeAbsent];
