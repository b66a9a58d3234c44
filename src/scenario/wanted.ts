/**
 * What a schema asks for at the place of a complaint, in plain words: the library's own messages say what a key is
 * called, not what belongs there. Finding the complaint and putting it into a sentence is problems.ts's business.
 */
import * as v from 'valibot';

/** What this code looks for in a schema of any kind. */
interface AnySchema {
  readonly type: string;
  readonly expects: string;
  readonly wrapped?: AnySchema;
  readonly entries?: Readonly<Record<string, AnySchema>>;
  readonly item?: AnySchema;
  readonly key?: string;
  readonly options?: readonly AnySchema[];
  readonly pipe?: readonly { readonly type: string; readonly requirement?: unknown }[];
}

interface Step {
  readonly key: unknown;
  /** The value that the key was sought in. */
  readonly input: unknown;
}

const stepsOf = ({ path = [] as never }: v.BaseIssue<unknown>): readonly Step[] =>
  path as readonly { key: unknown; input: unknown }[];

/** What would be right where a complaint lies. */
export function wantedAt(schema: v.GenericSchema, issue: v.BaseIssue<unknown>): string {
  const found = follow(schema as unknown as AnySchema, stepsOf(issue));
  return found === undefined ? inWords(issue.expected ?? 'another value') : wanted(found);
}

/** Names of the fields that the object round a complaint may have. */
export function namesAt(schema: v.GenericSchema, issue: v.BaseIssue<unknown>): readonly string[] {
  const steps = stepsOf(issue);
  const round = follow(schema as unknown as AnySchema, steps.slice(0, -1));
  return Object.keys((round && shapeOf(round, steps.at(-1)?.input))?.entries ?? {});
}

const follow = (schema: AnySchema, steps: readonly Step[]): AnySchema | undefined =>
  steps.reduce<AnySchema | undefined>((at, { key, input }) => {
    const shape = at && shapeOf(at, input);
    return ownEntry(shape, String(key)) ?? shape?.item;
  }, schema);

/** Never what every object has: a file may name a field `toString`. */
const ownEntry = (shape: AnySchema | undefined, key: string): AnySchema | undefined =>
  shape?.entries !== undefined && Object.hasOwn(shape.entries, key) ? shape.entries[key] : undefined;

/** A schema without its wrapping; of several shapes, the one that the value says it is. */
function shapeOf(schema: AnySchema, input: unknown): AnySchema | undefined {
  const { wrapped, options, key } = schema;
  if (wrapped !== undefined) return shapeOf(wrapped, input);
  if (options === undefined || key === undefined) return schema;
  const said = (input as Readonly<Record<string, unknown>> | null)?.[key];
  const fits = (option: AnySchema): boolean =>
    option.options !== undefined
      ? option.options.some(fits)
      : v.is(option.entries?.[key] as unknown as v.GenericSchema, said);
  const meant = options.find(fits);
  return meant && shapeOf(meant, input);
}

function wanted(schema: AnySchema): string {
  if (schema.wrapped !== undefined) return wanted(schema.wrapped);
  const bound = (type: string) => schema.pipe?.find((step) => step.type === type)?.requirement;
  const [least, greatest] = [bound('min_value'), bound('max_value')];
  if (schema.type === 'number' && least !== undefined && greatest !== undefined)
    return `a number from ${least} to ${greatest}`;
  return inWords(schema.expects);
}

const PLAIN: Readonly<Record<string, string>> = {
  object: 'an object',
  array: 'a list',
  number: 'a number',
  string: 'text',
  boolean: 'true or false',
};

const inWords = (expects: string): string =>
  expects
    .replace(/^\((.*)\)$/, '$1')
    .split(' | ')
    .map((word) => PLAIN[word.toLowerCase()] ?? word)
    .join(' or ');
