/** What varies in a question, drawn by kind, seed and name. */
import { drawer, inDrawnOrder } from '../bench/draw.ts';
import { roundTo } from '../bench/readings/scale.ts';
import type { Dice } from './question.ts';

export function diceFor(kind: string, seed: number): Dice {
  const draw = drawer(seed);
  const share = (name: string) => draw(`question ${kind} ${name}`);
  return {
    pick: (name, among) => among[Math.floor(share(name) * among.length)] ?? among[0],
    figure: (name, least, greatest, step) => {
      const steps = Math.round((greatest - least) / step);
      return roundTo(least + step * Math.floor(share(name) * (steps + 1)), step);
    },
    shuffle: (name, things) => inDrawnOrder(things, (_, i) => share(`${name} ${i}`)),
  };
}
