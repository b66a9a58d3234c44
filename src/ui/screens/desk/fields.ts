/** What of a job’s file can be changed below the fold: each field with its place in the file, its name in the trade, and its range. */
import { PARTS, weightsOf } from '../../../scenario/tasks.ts';
import type { JobFile } from './jobFile.ts';
import { fieldOf, withField } from './jobFile.ts';

interface Place {
  /** Its path in the file, as what is wrong with a file names it. */
  readonly at: string;
  /** Undefined where the file says nothing of it and nothing usual stands for it. */
  readonly read: (file: JobFile) => unknown;
  /** Undefined takes it out. */
  readonly write: (file: JobFile, value: unknown) => JobFile;
}

interface Common extends Place {
  readonly label: string;
}

export interface Figure extends Common {
  readonly kind: 'figure';
  readonly unit: string;
  readonly least: number;
  readonly greatest: number;
  /** What an empty field means; where nothing is said of it, a figure is expected. */
  readonly empty?: string | undefined;
  readonly isWhole?: true;
}

export interface OneOf extends Common {
  readonly kind: 'one of';
  readonly options: readonly (readonly [text: string, value: unknown])[];
}

/** A day with its hour and minute. */
export interface Moment extends Common {
  readonly kind: 'moment';
}

export type Field = Figure | OneOf | Moment;

export interface FieldGroup {
  readonly title: string;
  readonly fields: readonly Field[];
}

/** `usual`: what stands for it where the file leaves it out. */
export function placed(at: string, usual?: unknown): Place {
  const path = at.split('.');
  return {
    at,
    read: (file) => fieldOf(file, path) ?? usual,
    write: (file, value) => withField(file, path, value),
  };
}

/** A figure that the file holds in another unit than the trade says it in, `times` as large. */
export function scaled(place: Place, times: number): Place {
  const by = (value: unknown, factor: number) =>
    typeof value === 'number' ? Number((value * factor).toPrecision(12)) : value;
  return {
    at: place.at,
    read: (file) => by(place.read(file), times),
    write: (file, value) => place.write(file, by(value, 1 / times)),
  };
}

/** Null, where it is chosen, leaves it out. */
export const orLeftOut = (place: Place): Place => ({
  ...place,
  write: (file, value) => place.write(file, value ?? undefined),
});

/** Whether the file says anything of it at all; `first` is what it says once it does. */
export const said = (place: Place, first: unknown): Place => ({
  at: place.at,
  read: (file) => place.read(file) != null,
  write: (file, value) => place.write(file, value === true ? first : undefined),
});

export const figure = (
  place: Place,
  label: string,
  unit: string,
  [least, greatest]: readonly [number, number],
  empty?: string,
): Figure => ({ kind: 'figure', ...place, label, unit, least, greatest, empty });

export const oneOf = (place: Place, label: string, options: OneOf['options']): OneOf => ({
  kind: 'one of',
  ...place,
  label,
  options,
});

export const each = (list: readonly (string | number)[], unit = ''): OneOf['options'] =>
  list.map((one) => [unit === '' ? `${one}` : `${one} ${unit}`, one]);

/** By the file’s words for them, in the order of `words`. */
export const worded = (words: Readonly<Record<string, string>>): OneOf['options'] =>
  Object.entries(words).map(([value, text]) => [text, value]);

export const yesOrNo = (yes: string, no: string): OneOf['options'] => [
  [no, false],
  [yes, true],
];

const PART_WORDS: Readonly<Record<keyof typeof PARTS, string>> = {
  prediction: 'prediction',
  observation: 'observation',
  judgement: 'judgement',
  record: 'record',
  diagnosis: 'diagnosis',
  reasons: 'reasons for the verdict',
};

export const markFields = ({ task = 'verify' }: JobFile): readonly Field[] => [
  ...(Object.keys(PARTS) as (keyof typeof PARTS)[]).map((part) =>
    figure(placed(`marking.weights.${part}`, weightsOf(task)[part]), PART_WORDS[part], 'points', [0, 100]),
  ),
  figure(placed('marking.pass', 70), 'passed from', 'points', [0, 100]),
];

export const clockFields: readonly Field[] = [
  { kind: 'moment', ...placed('clock'), label: 'day and time when they begin' },
  { ...figure(placed('seed'), 'seed of the instruments’ errors', '', [0, 2_147_483_647]), isWhole: true },
];
