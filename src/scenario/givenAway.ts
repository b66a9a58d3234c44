/**
 * Whether what a trainee reads before the first test tells the answer: title, brief, symptom, the names of the file and
 * the list of tests. It goes by the words of a cause's own id, so that it finds what was written down without thinking;
 * what says the same in other words it does not find.
 */
import { aimOf } from './aims.ts';
import type { Problem } from './problem.ts';
import { quoted } from './quoted.ts';
import type { Scenario } from './scenario.ts';
import { allowedActions } from './scenario.ts';

/** What a text names without telling anything: parts that every site has, and words between. */
const PLAIN = new Set(
  `a acted acts an and another as at back by circuit comes cable conductor customers dead detector does far first for from
  goes held high ignored in is it its keeps left lets line lines low measure more much needs never neutral no not of on
  one only open opens or other out outlet over part pe pilot pole residual set supply than that the through to too unit
  unnoticed waits way when where will with without`.split(/\s+/),
);
/** Letters by which two forms of one word are the same: share, sharing. A design choice. */
const STEM = 4;

const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];
const stemOf = (word: string): string => word.slice(0, STEM);

/** Of a cause's id, what would name it; all of it where that is nothing but plain words. */
function namedBy(cause: string): readonly string[] {
  const words = wordsIn(cause);
  const telling = words.filter((word) => !PLAIN.has(word));
  return (telling.length === 0 ? words : telling).map(stemOf);
}

/** Whether everything that names the cause stands in the text. */
function names(text: string, cause: string): boolean {
  const stems = new Set(wordsIn(text).map(stemOf));
  return namedBy(cause).every((stem) => stems.has(stem));
}

/** So many tests, at the least, belong to another aim than most of a list do: fewer tell where to look. A design choice. */
const LOOK_ELSEWHERE = 2;

/** `fileName`: without its ending, where it is not the scenario's id. */
export function givenAway(scenario: Scenario, fileName: string | null = null): readonly Problem[] {
  const { title, brief, symptom, id } = scenario;
  const texts = { title, brief, symptom, id, 'the name of the file': fileName };
  const told = Object.entries(texts).flatMap(([path, text]) =>
    scenario.faults
      .filter(({ fault }) => text !== null && names(text, fault))
      .map(({ fault }) => ({ path, message: `it tells the answer: it has the words of ${quoted(fault)}` })),
  );
  return [...told, ...listProblems(scenario)];
}

function listProblems(scenario: Scenario): readonly Problem[] {
  if (scenario.task !== 'find') return [];
  const aims = allowedActions(scenario).map(({ id }) => aimOf(id));
  const most = Math.max(0, ...aims.map((aim) => aims.filter((other) => other === aim).length));
  if (aims.length - most >= LOOK_ELSEWHERE) return [];
  return [
    {
      path: 'allowed',
      message: `it tells where to look: of ${aims.length} tests ${most} are of one aim; ${LOOK_ELSEWHERE} of others are expected`,
    },
  ];
}
