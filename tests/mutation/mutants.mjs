// Lists the mutants of a floor and draws among them. A mutant is known by what it changes, not by where it stands, so
// that an edit elsewhere leaves the draw, and the reasons given for survivors, as they were.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { root } from '../../src/cli/installed.mjs';

/** Another seed draws other mutants. */
const SEED = 'charge-point-trainer 1';
const MOST_DRAWN = 300;
/** Of a long piece of code only the beginning is shown. */
const LONGEST_SHOWN = 70;

const silent = { debug() {}, info() {}, isDebugEnabled: () => false, warn: console.error };

/** Every mutant of a floor: where it stands, its name for the draw and for the list of reasons, and what it changes. */
export async function mutantsOf(floor) {
  const files = readdirSync(join(root, 'src', floor), { recursive: true })
    .filter((name) => name.endsWith('.ts'))
    .sort()
    .map((name) => {
      const path = join(root, 'src', floor, name);
      return { name: path, content: readFileSync(path, 'utf8'), mutate: true };
    });
  const options = { plugins: null, excludedMutations: [], ignorers: [] };
  const { mutants } = await new Instrumenter(silent).instrument(files, options);
  const contents = new Map(files.map(({ name, content }) => [name, content.split('\n')]));
  const seen = new Map();
  return mutants.map((mutant) => {
    const described = describe(mutant, contents.get(mutant.fileName));
    const { file, text, change } = described;
    const alike = `${file}: ${text}: ${change}`;
    const nth = (seen.get(alike) ?? 0) + 1;
    seen.set(alike, nth);
    return { ...described, place: placeOf(mutant), name: nth === 1 ? alike : `${alike} (${nth})` };
  });
}

/** By which a mutant is found again in a run: file, location and replacement. Lines and columns count from `first`. */
export function placeOf({ fileName, location: { start, end }, replacement }, first = 0) {
  const at = [start.line, start.column, end.line, end.column].map((place) => place - first);
  return JSON.stringify([relative(root, fileName), ...at, replacement]);
}

/** At most 300 of them, the same ones as long as the code is the same. */
export function draw(mutants) {
  const lot = ({ name }) => createHash('sha256').update(`${SEED} ${name}`).digest('hex');
  return mutants
    .map((mutant) => ({ mutant, lot: lot(mutant) }))
    .sort((a, b) => (a.lot < b.lot ? -1 : 1))
    .slice(0, MOST_DRAWN)
    .map(({ mutant }) => mutant);
}

function describe({ fileName, location: { start, end }, replacement }, lines) {
  const was = lines
    .slice(start.line, end.line + 1)
    .map((line, at, { length }) => line.slice(0, at === length - 1 ? end.column : undefined))
    .map((line, at) => line.slice(at === 0 ? start.column : 0))
    .join(' ');
  return {
    file: relative(root, fileName).replaceAll('\\', '/'),
    line: start.line + 1,
    text: shown(lines[start.line]),
    change: `${shown(was)} → ${shown(replacement)}`,
  };
}

function shown(code) {
  const line = code.trim().replace(/\s+/g, ' ');
  return line.length > LONGEST_SHOWN ? `${line.slice(0, LONGEST_SHOWN)}…` : line;
}
