/** A tutor's job as its file holds it, and every change of it as a function from one file to the next. */
import INSTALLATIONS from '../../../scenario/aimSites.json' with { type: 'json' };
import type { SiteId } from '../../../scenario/aims.ts';
import type { ScenarioInput } from '../../../scenario/schema.ts';
import { weightsOf } from '../../../scenario/tasks.ts';
import type { OwnLimit } from '../../../verification/testAction.ts';
import type { Offered } from '../offered.ts';

export interface FaultLine {
  readonly fault: string;
  readonly [parameter: string]: number | string;
}

/** What this screen reads and changes of a file; whatever else it holds is kept. */
export interface JobFile extends Offered {
  readonly format: 1;
  readonly site: ScenarioInput['site'];
  readonly unit: ScenarioInput['unit'];
  readonly clock: string;
  readonly task?: 'verify' | 'aim' | 'find';
  readonly aim?: string | null;
  readonly faults: readonly FaultLine[];
  readonly accept?: readonly string[];
  readonly own?: readonly OwnLimit[];
  readonly allowed: 'all' | readonly string[];
  readonly marking?: {
    readonly weights?: Readonly<Record<string, number>>;
    readonly pass?: number;
    readonly setAside?: readonly { readonly gate: string; readonly reason: string }[];
  };
  readonly handover?: {
    readonly by: string;
    readonly done: 'others' | readonly string[];
    readonly left?: readonly unknown[];
  } | null;
  readonly seed: number;
}

const SCHEMA = '../public/scenario.schema.json';

/** From blank: nothing wrong, all tests, on a kind of site. */
export const blankFile = (site: SiteId): JobFile =>
  ({
    ...{ $schema: SCHEMA },
    format: 1,
    id: 'new-job',
    title: 'New job',
    brief: 'A new unit, first verification. The owner moves in on Friday.',
    ...INSTALLATIONS[site],
    clock: '2026-05-12T10:00',
    faults: [],
    allowed: 'all',
    support: 'practice',
    seed: 1,
  }) as JobFile;

/** Under a name of its own: one that comes with the page is known by its content. */
export const asOwn = (file: JobFile): JobFile => ({
  ...file,
  id: file.id.endsWith('-changed') ? file.id : `${file.id.slice(0, 50)}-changed`,
});

export const withFaultsSet = (file: JobFile, faults: readonly FaultLine[]): JobFile => ({
  ...without(file, 'accept'),
  faults,
});

export const withFault = (file: JobFile, at: number, fault: FaultLine): JobFile =>
  withFaultsSet(file, [...file.faults.slice(0, at), fault, ...file.faults.slice(at + 1)]);

/** One value of one fault; what is accepted beside it stays. */
export const withValue = (file: JobFile, at: number, name: string, value: number): JobFile => ({
  ...file,
  faults: file.faults.map((line, i) => (i === at ? { ...line, [name]: value } : line)),
});

/** All that apply are allowed where every one of them is. */
export const withAllowed = (
  file: JobFile,
  allowed: readonly string[],
  applicable: readonly string[],
): JobFile => ({
  ...withoutDone(file, allowed),
  allowed:
    applicable.every((id) => allowed.includes(id)) &&
    (file.task ?? 'verify') === 'verify' &&
    file.handover == null
      ? 'all'
      : applicable.filter((id) => allowed.includes(id)),
});

/** What is theirs to do was not done before. */
function withoutDone(file: JobFile, theirs: readonly string[]): JobFile {
  const { handover } = file;
  if (handover == null || handover.done === 'others') return file;
  const done = handover.done.filter((id) => !theirs.includes(id));
  return withField(
    file,
    done.length === 0 ? ['handover'] : ['handover', 'done'],
    done.length === 0 ? undefined : done,
  );
}

/** Points that come to 100 with this task; those that do not are left to the usual ones. */
function weighedAs(file: JobFile, task: NonNullable<JobFile['task']>): JobFile {
  const sum = Object.values(weightsOf(task, file.marking?.weights ?? {})).reduce((all, one) => all + one, 0);
  return Math.abs(sum - 100) < 1e-6 ? file : withField(file, ['marking', 'weights'], undefined);
}

/** The whole verdict, with the tests that are allowed now. */
export const asVerify = (file: JobFile, allowed: readonly string[], applicable: readonly string[]): JobFile =>
  withAllowed(
    weighedAs(without(without(without(file, 'task'), 'aim'), 'symptom'), 'verify'),
    allowed,
    applicable,
  );

/** One aim, with all of its tests. */
export const asAim = (file: JobFile, aim: string, tests: readonly string[]): JobFile =>
  weighedAs(
    { ...withAllowed(without({ ...file, task: 'aim', aim }, 'symptom'), tests, tests), allowed: tests },
    'aim',
  );

const SYMPTOM = 'It does not charge the car as it should.';

/** What is behind a symptom, by these tests. */
export const asFind = (file: JobFile, tests: readonly string[]): JobFile =>
  weighedAs(
    withAllowed({ ...without(file, 'aim'), task: 'find', symptom: file.symptom ?? SYMPTOM }, tests, tests),
    'find',
  );

/** A critical act that does not count in this job, and why; null: it counts. */
export function withGateAside(file: JobFile, gate: string, reason: string | null): JobFile {
  const others = (file.marking?.setAside ?? []).filter((one) => one.gate !== gate);
  const all = reason === null ? others : [...others, { gate, reason }];
  return withField(file, ['marking', 'setAside'], all.length === 0 ? undefined : all);
}

export const withAccepted = (file: JobFile, causes: readonly string[]): JobFile => ({
  ...file,
  accept: [...new Set([...(file.accept ?? []), ...causes])],
});

/** In place of one that it may have had for the same limit; null: the standard's again. */
export function withOwnLimit(file: JobFile, limit: string, own: OwnLimit | null): JobFile {
  const others = (file.own ?? []).filter((one) => one.limit !== limit);
  const all = own === null ? others : [...others, own];
  return withField(file, ['own'], all.length === 0 ? undefined : all);
}

/** A field anywhere in the file by its path; undefined takes it out. */
export function withField(file: JobFile, path: readonly string[], value: unknown): JobFile {
  return set(file, path, value) as JobFile;
}

function set(object: unknown, [name, ...rest]: readonly string[], value: unknown): unknown {
  if (name === undefined) return value;
  const { [name]: old, ...others } = (object ?? {}) as Record<string, unknown>;
  const next = rest.length === 0 ? value : set(old, rest, value);
  if (next === undefined) return others;
  return Object.hasOwn((object ?? {}) as object, name)
    ? { ...(object as object), [name]: next }
    : { ...others, [name]: next };
}

export const fieldOf = (file: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((at, name) => (at as Record<string, unknown> | null | undefined)?.[name], file);

const without = (file: JobFile, name: keyof JobFile): JobFile => withField(file, [name], undefined);

export const textOfFile = (file: JobFile): string => `${JSON.stringify(file, null, 2)}\n`;
