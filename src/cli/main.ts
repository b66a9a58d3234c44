/**
 * The command line: the same floors without a screen. Results on standard output, errors on standard error; exit
 * code 1 where `check` finds something wrong or `make` finds no job, 2 for a bad file or a bad call.
 */

import { fairnessOf } from '../fairness/fairness.ts';
import { CATALOGUE } from '../faults/catalogue.ts';
import { nearest } from '../scenario/nearest.ts';
import { quoted, shortened, visible } from '../scenario/quoted.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { allowedActions, benchOf, papersOf } from '../scenario/scenario.ts';
import { parseScenario } from '../scenario/scenarioText.ts';
import { parseScript, playScript } from '../scenario/script.ts';
import { verify } from '../scenario/verify.ts';
import { lineText } from '../words/actions.ts';
import '../words/allTests.ts';
import { causeTitle } from '../words/causeTitles.ts';
import { sourceText } from '../words/sources.ts';
import { testTitle } from '../words/testTitles.ts';
import { check } from './check.ts';
import { fairnessOutput } from './fairnessOutput.ts';
import { BadInput, problemLines, readText } from './files.ts';
import { insideOf } from './inside.ts';
import { make } from './make.ts';
import { markCsv, markFiles } from './mark.ts';
import { playOutput } from './playOutput.ts';
import { quiz } from './quiz.ts';
import { verifyReport } from './report.ts';
import { verifyOutput } from './verifyOutput.ts';

const json = (value: unknown): string => JSON.stringify(value, null, 2);

function scenarioFrom(file: string): Scenario {
  const read = parseScenario(readText(file));
  if (!read.ok) throw new BadInput(problemLines(file, read.problems));
  return read.scenario;
}

/** What goes to standard output and to standard error, and the exit code. */
interface Printed {
  readonly text: string;
  readonly errors?: readonly string[];
  readonly exit?: number;
}

interface Verb {
  readonly usage: string;
  /** Fewest and most words after the verb, options not counted. */
  readonly words: readonly [number, number];
  /** Options that stand alone, and those that take every word up to the next option. */
  readonly options?: readonly string[];
  readonly lists?: readonly string[];
  /** What each of those needs, where it is no file. */
  readonly needs?: string;
  readonly run: (
    words: readonly string[],
    options: readonly string[],
    lists: Readonly<Record<string, readonly string[]>>,
  ) => Printed;
}

const VERBS: Readonly<Record<string, Verb>> = {
  check: {
    usage: 'check FILE…',
    words: [1, 1000],
    run: (files) => check(files),
  },
  play: {
    usage: 'play SCENARIO SCRIPT [--inside]',
    words: [2, 2],
    options: ['--inside'],
    run: ([scenarioFile = '', scriptFile = ''], options) => {
      const scenario = scenarioFrom(scenarioFile);
      const script = parseScript(readText(scriptFile), scenario);
      if (!script.ok) throw new BadInput(problemLines(scriptFile, script.problems));
      const world = benchOf(scenario);
      const { steps, stopped } = playScript(world, script.value, scenario);
      const output = playOutput(steps, stopped);
      return { text: json(options.includes('--inside') ? { ...output, inside: insideOf(world) } : output) };
    },
  },
  actions: {
    usage: 'actions SCENARIO',
    words: [1, 1],
    run: ([file = '']) => {
      const scenario = scenarioFrom(file);
      const papers = papersOf(scenario);
      const actions = allowedActions(scenario).map((action) => ({
        id: action.id,
        title: testTitle(action.id),
        stage: action.stage,
        from: action.from,
        leaves: action.leaves,
        expectations: action.expectations(papers).map((line) => ({
          id: line.id,
          should: line.should,
          text: lineText(action.id, line),
          source: sourceText(line.source),
          points: line.points,
        })),
      }));
      return { text: json(actions) };
    },
  },
  faults: {
    usage: 'faults',
    words: [0, 0],
    run: () => ({
      text: json(
        CATALOGUE.map(({ id, family, kind, parameters }) => ({
          id,
          title: causeTitle(id),
          family,
          kind,
          parameters,
        })),
      ),
    }),
  },
  quiz: {
    usage: 'quiz --count N --seed S [--topic AIM…]',
    words: [0, 0],
    lists: ['--count', '--seed', '--topic'],
    run: (_, __, lists) => ({ text: json(quiz(lists)) }),
  },
  verify: {
    usage: 'verify SCENARIO [--json]',
    words: [1, 1],
    options: ['--json'],
    run: ([file = ''], options) => {
      const scenario = scenarioFrom(file);
      const verification = verify(scenario);
      return {
        text: options.includes('--json')
          ? json(verifyOutput(verification))
          : verifyReport(scenario, verification),
      };
    },
  },
  fairness: {
    usage: 'fairness SCENARIO [--causes]',
    words: [1, 1],
    options: ['--causes', '--json'],
    run: ([file = ''], options) => ({
      text: json(fairnessOutput(fairnessOf(scenarioFrom(file)), options.includes('--causes'))),
    }),
  },
  make: {
    usage: 'make --level 1-3 --seed N [--families FAMILY…] [--minutes M]',
    words: [0, 0],
    lists: ['--level', '--seed', '--families', '--minutes'],
    needs: 'a value after it',
    run: (_, __, lists) => make(lists),
  },
  mark: {
    usage: 'mark ATTEMPT… [--against SCENARIO…] [--csv]',
    words: [1, 10_000],
    options: ['--csv'],
    lists: ['--against'],
    run: (files, options, { '--against': against }) =>
      (options.includes('--csv') ? markCsv : markFiles)(files, against ?? null),
  },
};

const USAGE = ['usage:', ...Object.values(VERBS).map(({ usage }) => `  ${usage}`)];

function run(args: readonly string[]): Printed {
  const [name = '', ...rest] = args;
  const verb = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
  if (verb === undefined)
    throw new BadInput(
      name === '' ? USAGE : [`unknown verb ${quoted(name)}; ${nearest(name, Object.keys(VERBS))}`, ...USAGE],
    );
  const { words, options, lists } = sorted(rest, verb.lists ?? []);
  const wrong = [
    ...options
      .filter((option) => verb.options?.includes(option) !== true)
      .map((option) => `${name}: unknown option ${shortened(option)}`),
    ...Object.entries(lists)
      .filter(([, list]) => list.length === 0)
      .map(([option]) => `${name}: ${option} needs ${verb.needs ?? 'at least one file or folder'}`),
  ];
  if (wrong.length > 0 || words.length < verb.words[0] || words.length > verb.words[1])
    throw new BadInput([...wrong, `usage: ${verb.usage}`]);
  return verb.run(words, options, lists);
}

/** Words before any option that takes a list, options that stand alone, and each list by its option. */
function sorted(rest: readonly string[], listing: readonly string[]) {
  const words: string[] = [];
  const options: string[] = [];
  const lists: Record<string, string[]> = {};
  let into = words;
  for (const word of rest) {
    if (listing.includes(word)) {
      into = lists[word] ?? [];
      lists[word] = into;
    } else if (word.startsWith('--')) options.push(word);
    else into.push(word);
  }
  return { words, options, lists };
}

/**
 * What of a file or of a call reaches a terminal steers it in nothing. The line breaks are our own: within a name they
 * are written out before. JSON stays JSON, since its strings may hold the same escapes.
 */
const printed = (text: string): string => text.split('\n').map(visible).join('\n');

// Whoever reads the output may have seen enough of it, as `head` has: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  const { text, errors = [], exit = 0 } = run(process.argv.slice(2));
  if (text !== '') process.stdout.write(`${printed(text)}\n`);
  if (errors.length > 0) process.stderr.write(`${printed(errors.join('\n'))}\n`);
  process.exitCode = exit;
} catch (error) {
  if (!(error instanceof BadInput)) throw error;
  process.stderr.write(`${error.lines.map(printed).join('\n')}\n`);
  process.exitCode = 2;
}
