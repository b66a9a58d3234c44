/** What each rung of support asks of the trainee, and why another one is suggested, where one is chosen. */
import type { Suggestion } from '../attempt/marks/suggestedRung.ts';
import type { Rung } from '../attempt/record/rung.ts';
import { RUNG_NAMES } from './rungs.ts';

/** Of the worked run, which nobody is marked on. */
export const SHOWN_NAME = 'watched';

export const RUNG_MORE: Readonly<Record<Rung | 0, string>> = {
  0: 'a worked run, step by step; nothing is marked',
  1: 'you are told what a correct unit does; you do, read and judge',
  2: 'you say of every line what a correct unit does',
  3: 'ten lines: you find those that this test tells',
  4: 'every line asked; nothing is told until the end',
};

export function suggestionText({ rung, why }: Suggestion): string {
  const to = `“${RUNG_NAMES[rung]}”`;
  switch (why) {
    case 'two good ones':
      return `Your last two went well, both 80 or more with no critical act: try ${to}.`;
    case 'a critical act':
      return `There was a critical act in your last one: ${to} gives you more to go by.`;
    case 'under half':
      return `Your last one came to less than half: ${to} gives you more to go by.`;
    case 'stay':
      return `Your last one was on ${to}: stay there.`;
  }
}
