/** What is wrong with a draft, at the field of the desk in which a tutor mends it. */
import type { Problem } from '../../../scenario/problem.ts';
import type { Field } from './fields.ts';
import { clockFields, markFields } from './fields.ts';
import type { JobFile } from './jobFile.ts';
import { siteFields } from './siteFields.ts';
import { unitFields } from './unitFields.ts';

/** What stands in a line or a fold of its own. */
const PARTS: Readonly<Record<string, string>> = {
  faults: 'What is wrong',
  accept: 'What is accepted as the cause',
  allowed: 'Which tests',
  task: 'The task',
  aim: 'The task',
  title: 'What they are told',
  brief: 'What they are told',
  symptom: 'What they are told',
  handover: 'What was done before',
  own: 'A limit or value of your own',
  marking: 'Marks, clock and seed',
};

/** Where there is no such field, the place in the file is named. */
export function atTheirFields(problems: readonly Problem[], file: JobFile): readonly Problem[] {
  const fields: readonly Field[] = [
    ...[...siteFields(file), ...unitFields(file)].flatMap((group) => group.fields),
    ...markFields(file),
    ...clockFields,
  ];
  return problems.map((problem) => ({
    ...problem,
    path: labelOf(problem.path, fields) ?? partOf(problem.path),
  }));
}

/** The field itself, or else one that it is part of, or one that is part of it. */
const labelOf = (path: string, fields: readonly Field[]): string | undefined =>
  (
    fields.find(({ at }) => at === path) ??
    fields.find(({ at }) => path.startsWith(`${at}.`)) ??
    fields.find(({ at }) => at.startsWith(`${path}.`))
  )?.label;

const partOf = (path: string): string => PARTS[/^[a-z]*/i.exec(path)?.[0] ?? ''] ?? path;
