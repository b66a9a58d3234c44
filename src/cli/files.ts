/** Files named on the command line: read safely, and complained of in one form. */
import { readFileSync, statSync } from 'node:fs';
import type { Problem } from '../scenario/problem.ts';
import { listed } from '../scenario/problem.ts';
import { LARGEST_FILE } from '../scenario/problems.ts';
import { visible } from '../scenario/quoted.ts';
import { inWords } from '../words/problems.ts';

/** Wrong input: what to print on standard error; the program ends with exit code 2. */
export class BadInput extends Error {
  readonly lines: readonly string[];
  constructor(lines: readonly string[]) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}

/** Text of a file, or of standard input for `-`. */
export const readText = (file: string, largest = LARGEST_FILE): string =>
  new TextDecoder().decode(readBytes(file, largest));

/** What a file holds, of up to so many bytes. */
export function readBytes(file: string, largest: number): Uint8Array {
  try {
    if (file !== '-' && statSync(file).size > largest)
      throw new BadInput([`${visible(file)}: larger than ${largest / 1_000_000} MB`]);
    return readFileSync(file === '-' ? 0 : file);
  } catch (error) {
    if (error instanceof BadInput) throw error;
    const code = (error as NodeJS.ErrnoException).code;
    const why =
      code === 'ENOENT'
        ? 'no such file'
        : code === 'EISDIR'
          ? 'a folder, not a file'
          : `cannot be read (${code})`;
    throw new BadInput([`${visible(file)}: ${why}`]);
  }
}

/** `FILE: PATH.IN.FILE: what is wrong`, one line a problem. */
export const problemLines = (file: string, problems: readonly Problem[]): readonly string[] =>
  listed(inWords(problems)).map(({ path, message }) =>
    [visible(file), ...(path === '' ? [] : [path]), message].join(': '),
  );
