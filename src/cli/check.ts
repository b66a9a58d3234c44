/** The verb `check`: every scenario file's problems and warnings, one line each. */

import { basename } from 'node:path';
import { toItsEnd } from '../bench/toItsEnd.ts';
import { LARGEST_GIVING, looksLikeGiving, readingGiving } from '../desk/giving.ts';
import { looksSealed, readSealed } from '../desk/seal.ts';
import { givenAway } from '../scenario/givenAway.ts';
import { parseJson } from '../scenario/json.ts';
import type { Parsed } from '../scenario/problems.ts';
import { visible } from '../scenario/quoted.ts';
import { parseScenario } from '../scenario/scenarioText.ts';
import { verdictWarnings } from '../scenario/tellable.ts';
import { BadInput, problemLines, readText } from './files.ts';

export function check(files: readonly string[]): { text: string; exit: number } {
  const ids = new Map<string, string>();
  const lines: string[] = [];
  let wrong = false;
  for (const file of files) {
    const { problems, warnings } = checkFile(file, ids);
    wrong ||= problems.length > 0;
    lines.push(...problems, ...warnings, ...(problems.length === 0 ? [`${visible(file)}: ok`] : []));
  }
  return { text: lines.join('\n'), exit: wrong ? 1 : 0 };
}

function checkFile(
  file: string,
  ids: Map<string, string>,
): { problems: readonly string[]; warnings: readonly string[] } {
  try {
    const text = readText(file, LARGEST_GIVING);
    const given = checkGiven(file, text);
    if (given !== null) return given;
    const read = parseScenario(text);
    if (!read.ok) return { problems: problemLines(file, read.problems), warnings: [] };
    const { id } = read.scenario;
    const first = ids.get(id);
    ids.set(id, first ?? file);
    const twice = first === undefined ? [] : [`${visible(file)}: id: "${id}" is taken by ${visible(first)}`];
    const name = basename(file, '.json');
    const warnings = [
      ...read.warnings,
      ...verdictWarnings(read.scenario),
      ...givenAway(read.scenario, name === id ? null : name),
    ];
    return { problems: twice, warnings: problemLines(`${file}: warning`, warnings) };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return { problems: error.lines, warnings: [] };
  }
}

/** A giving-out, open or sealed; null where it is none. What is sealed can be looked at no further. */
function checkGiven(file: string, text: string): ReturnType<typeof checkFile> | null {
  const json = parseJson(text, LARGEST_GIVING);
  if (!json.ok) return null;
  const problemsIn = (read: Parsed<unknown>) => ({
    problems: read.ok ? [] : problemLines(file, read.problems),
    warnings: [],
  });
  if (looksSealed(json.value)) return problemsIn(readSealed(json.value));
  return looksLikeGiving(json.value) ? problemsIn(toItsEnd(readingGiving(json.value))) : null;
}
