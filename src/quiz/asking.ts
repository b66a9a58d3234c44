/** Small parts that questions of many kinds are put together from. */
import type { Source } from '../verification/sources.ts';
import type { Values } from '../verification/testAction.ts';
import type {
  AboutLine,
  AskedUnit,
  Choice,
  ChoiceAsked,
  Dice,
  FigureAsked,
  Mistake,
  PilotPicture,
} from './question.ts';

interface FigureParts {
  readonly values: Values;
  readonly source: Source;
  readonly unit: AskedUnit;
  readonly answer: number;
  readonly tolerance: number;
  readonly picture?: PilotPicture;
  /** What misconceptions arrive at, by their ids. */
  readonly mistakes: Readonly<Record<string, number>>;
}

/** Misconceptions that happen to arrive at the right figure, at none, or at that of one before them say nothing and are left out. */
export function figure({ mistakes, ...asked }: FigureParts): FigureAsked {
  const { answer, tolerance } = asked;
  const told: Mistake[] = [];
  for (const [id, value] of Object.entries(mistakes))
    if (
      Number.isFinite(value) &&
      Math.abs(value - answer) > 2 * tolerance &&
      told.every((other) => Math.abs(other.value - value) > tolerance)
    )
      told.push({ id, value });
  return { way: 'figure', ...asked, mistakes: told };
}

interface ChoiceParts {
  readonly values: Values;
  readonly source: Source;
  readonly about?: AboutLine;
  readonly answer: string;
  readonly choices: readonly Choice[];
}

/** Choices in the order given: where they have one of their own. */
export const inOrder = (parts: ChoiceParts): ChoiceAsked => ({ way: 'choice', ...parts });

/** Choices in an order that says nothing of the answer. */
export const shuffled = (dice: Dice, parts: ChoiceParts): ChoiceAsked =>
  inOrder({ ...parts, choices: dice.shuffle('choices', parts.choices) });
