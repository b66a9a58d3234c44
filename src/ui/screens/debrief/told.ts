/** What each step told, in words: causes left, and what would have left fewer. */
import type { Better, Elimination } from '../../../attempt/opened/elimination.ts';
import type { Lockstep } from '../../../attempt/opened/twin.ts';
import { quantityName } from '../../../words/readings.ts';
import { betweenText } from '../../../words/terminals.ts';

/** What could have been measured with things as they stood at a step, where that would have left fewer. */
export function betterAt({ better }: Elimination, { steps }: Lockstep, step: number): Better | null {
  const here = steps[step];
  if (here === undefined) return null;
  const found = better.find((one) => {
    const there = steps[one.step];
    return one.step >= step && there?.test === here.test && there?.unit.changedAt === here.unit.changedAt;
  });
  return found ?? null;
}

/** The best of one test. */
export const bestOf = ({ better }: Elimination, test: string): Better | null =>
  better.filter((one) => one.test === test).toSorted((x, y) => x.left - y.left)[0] ?? null;

export const betterText = ({ measurement, left }: Better): string =>
  `${measurementText(measurement)} would have left ${left}`;

const measurementText = (measurement: Better['measurement']): string =>
  'between' in measurement
    ? `${measurement.quantity === 'voltage' ? '' : `${quantityName(measurement.quantity)} `}${betweenText(...measurement.between)}`
    : 'the pilot';
