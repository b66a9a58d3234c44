/** The verb `check`: every scenario file's problems and warnings, one line each. */

import { basename } from 'node:path';
import { givenAway } from '../scenario/givenAway.ts';
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
    const read = parseScenario(readText(file));
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
