/** The verb `make`: draws a job that can be solved, and prints its scenario file. */

import type { JobAsked } from '../fairness/make.ts';
import { isLevel, LEVELS, makeJob } from '../fairness/make.ts';
import type { Family } from '../faults/families.ts';
import { FAMILIES } from '../faults/families.ts';
import { GREATEST_SEED } from '../scenario/aims.ts';
import { nearest } from '../scenario/nearest.ts';
import { quoted } from '../scenario/quoted.ts';
import { madeJobWords } from '../words/madeJobs.ts';
import { BadInput } from './files.ts';
import { wholeNumber } from './wholeNumber.ts';

type Lists = Readonly<Record<string, readonly string[]>>;

/** Time that a job of two tests takes at the least, and a day's work. */
const MINUTES = { least: 3, most: 240 } as const;

export function make(lists: Lists): { text: string; errors?: readonly string[]; exit?: number } {
  const asked = askedIn(lists);
  const job = makeJob(asked, madeJobWords);
  if (job !== null)
    return { text: JSON.stringify({ $schema: '../public/scenario.schema.json', ...job }, null, 2) };
  const { level, seed, families, minutes } = asked;
  const which = [
    `level ${level}, seed ${seed}`,
    ...(families.length === 0 ? [] : [`families ${families.join(', ')}`]),
    ...(minutes === null ? [] : [`at most ${minutes} minutes`]),
  ].join(', ');
  return {
    text: '',
    errors: [
      `make: no job was drawn that can be solved (${which}); try another seed, more minutes or more families`,
    ],
    exit: 1,
  };
}

function askedIn(lists: Lists): JobAsked {
  const wrong: string[] = [];
  const number = (option: string, least: number, most: number): number | null => {
    const value = wholeNumber(option, lists[option], least, most);
    if (typeof value === 'number') return value;
    wrong.push(`make: ${value}`);
    return null;
  };
  const level = number('--level', LEVELS[0], LEVELS.at(-1) ?? 0);
  const seed = number('--seed', 0, GREATEST_SEED);
  const minutes = lists['--minutes'] === undefined ? null : number('--minutes', MINUTES.least, MINUTES.most);
  const families = (lists['--families'] ?? [])
    .flatMap((text) => text.split(','))
    .filter((text) => text !== '');
  for (const family of families)
    if (!isFamily(family))
      wrong.push(`make: no family of causes is named ${quoted(family)}; ${nearest(family, FAMILIES)}`);
  if (wrong.length > 0 || level === null || seed === null || !isLevel(level)) throw new BadInput(wrong);
  return { level, seed, minutes, families: families.filter(isFamily) };
}

const isFamily = (text: string): text is Family => (FAMILIES as readonly string[]).includes(text);
