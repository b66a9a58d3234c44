/*
 * Files that are nearly good, from a seed: scenarios, scripts and attempts with a few changes to their text (bytes
 * turned, cut, doubled) or to what they hold (fields left out, doubled, moved, of another type, of another file, of
 * a size that nobody meant). Each has a key of its own, so that one that went wrong can be made again. Judges nothing.
 */
import { createHash } from 'node:crypto';
import { attemptSchema } from '../../src/attempt/record/attemptSchema.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { operationSchema } from '../../src/bench/operationSchema.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { scenarioSchema } from '../../src/scenario/schema.ts';
import { ACTIONS } from '../../src/verification/actions.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { attemptWithRepair, faultlessAttempt } from '../helpers/trainee.ts';

export const KINDS = ['scenario', 'script', 'attempt'] as const;
export type Kind = (typeof KINDS)[number];

export interface SpoiltFile {
  readonly kind: Kind;
  readonly text: string;
}

/** A number from 0 up to 1, the next of its kind at each call. */
type Draw = () => number;

function drawing(seed: number, index: number): Draw {
  let block = 0;
  let bytes = Buffer.alloc(0);
  let at = 0;
  return () => {
    if (at === bytes.length) {
      bytes = createHash('sha256').update(`file ${seed} ${index} ${block}`).digest();
      block += 1;
      at = 0;
    }
    at += 4;
    return bytes.readUInt32BE(at - 4) / 2 ** 32;
  };
}

const one = <T>(draw: Draw, of: readonly T[]): T => of[Math.floor(draw() * of.length)] as T;
const below = (draw: Draw, end: number): number => Math.floor(draw() * end);

/** The file of this number. Most have one change, some up to five. */
export function spoiltFile(seed: number, index: number): SpoiltFile {
  const draw = drawing(seed, index);
  const kind = one(draw, KINDS);
  const base = one(draw, bases()[kind]);
  const changes = 1 + below(draw, 5) * below(draw, 2);
  const ofText = draw() < 0.3;
  let text = base;
  if (ofText) for (let i = 0; i < changes; i++) text = one(draw, TEXT_CHANGES)(draw, text);
  else {
    const whole = { file: JSON.parse(base) };
    for (let i = 0; i < changes; i++) changeValue(draw, whole);
    text = JSON.stringify(whole.file) ?? '';
  }
  return { kind, text };
}

let made: Readonly<Record<Kind, readonly string[]>> | undefined;

/** Good files to begin with; those of few tests, so that they are soon played and marked. */
function bases(): Readonly<Record<Kind, readonly string[]>> {
  made ??= {
    scenario: [...scenarioIds.map((id) => scenarioNamed(id).text), ...SHORT.map(shortened)],
    script: SCRIPTS.map((script) => JSON.stringify(script)),
    attempt: attempts(),
  };
  return made;
}

/** Scenarios of which a few tests are kept. */
const SHORT = [
  { id: 'harbour-mews', allowed: ['inspect', 'isolate', 'prove-dead'] },
  { id: 'mill-race', allowed: ['isolate', 'prove-dead', 'pe-circuit'] },
  { id: 'fen-barn', allowed: ['isolate', 'prove-dead', 'ze'] },
];

function shortened({ id, allowed }: (typeof SHORT)[number]): string {
  const known = ACTIONS.map((action) => action.id);
  const { handover: _, lines: __, ...file } = JSON.parse(scenarioNamed(id).text);
  return JSON.stringify({ ...file, allowed: allowed.filter((name) => known.includes(name)) });
}

function attempts(): readonly string[] {
  return SHORT.map(shortened).flatMap((text, i) => {
    const read = parseScenario(text);
    if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
    const { scenario, file } = read;
    const plain = faultlessAttempt(scenario, file);
    const all = i === 1 ? [plain, attemptWithRepair(scenario, file, 'pe-joint')] : [plain];
    return all.map(makeAttemptText);
  });
}

const SCRIPTS: readonly (readonly object[])[] = [
  [
    { op: 'isolate' },
    { op: 'prove-dead', at: 'origin' },
    { op: 'open-cover' },
    { op: 'disconnect', what: 'unit' },
    { op: 'measure', quantity: 'insulation', volts: 250, between: [['supply.L1', 'supply.N'], 'supply.PE'] },
    { op: 'link', between: ['origin.L1', 'origin.PE'] },
    { op: 'measure', quantity: 'continuity', between: ['met', 'supply.PE'] },
    { op: 'unlink', between: ['origin.L1', 'origin.PE'] },
    { op: 'reconnect', what: 'unit' },
    { op: 'close-cover' },
    { op: 'energise' },
  ],
  [
    { op: 'vehicle', plugged: true, state: 'C', load: 16, leakage: { ac: 0.004, dc: 0.003, line: 'L1' } },
    { op: 'wait', seconds: 12 },
    { op: 'measure', quantity: 'pilot' },
    {
      op: 'measure',
      quantity: 'residual',
      line: 'L1',
      waveform: 'AC',
      mode: 'fixed',
      amps: 0.03,
      seconds: 0.3,
      angle: 180,
    },
    { op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'], current: 'low' },
    { op: 'supply', voltage: 245, siteLoad: 20, neighbours: [{ line: 'L1', power: 2000 }], pen: 'open' },
    { op: 'wait', seconds: 8 },
    { op: 'press', button: 'stop' },
    { op: 'reset', what: 'unit' },
    { op: 'measure', quantity: 'opening-time', of: 'C-to-B' },
    { op: 'stop', why: 'enough' },
  ],
  [
    { op: 'action', id: 'isolate' },
    { op: 'action', id: 'prove-dead' },
    { op: 'action', id: 'pe-circuit' },
  ],
];

type TextChange = (draw: Draw, text: string) => string;
const spliced = (text: string, at: number, cut: number, put: string): string =>
  text.slice(0, at) + put + text.slice(at + cut);

const TEXT_CHANGES: readonly TextChange[] = [
  (draw, text) => {
    const at = below(draw, text.length);
    return spliced(text, at, 1, String.fromCharCode(text.charCodeAt(at) ^ (1 << below(draw, 8))));
  },
  (draw, text) => text.slice(0, below(draw, text.length)),
  (draw, text) => spliced(text, below(draw, text.length), 1 + below(draw, 40), ''),
  (draw, text) => {
    const at = below(draw, text.length);
    return spliced(text, at, 0, text.slice(at, at + 1 + below(draw, 200)));
  },
  (draw, text) => spliced(text, below(draw, text.length), 0, one(draw, PIECES)),
  (draw, text) => text.replace(/-?\d+(\.\d+)?/g, (number) => (draw() < 0.05 ? one(draw, NUMBERS) : number)),
  (draw, text) => `${'['.repeat(below(draw, 60))}${text}`,
  (_, text) => `\ufeff${text}`,
  (draw, text) => text.replaceAll('"', () => (draw() < 0.02 ? one(draw, ["'", '\\"', '']) : '"')),
  (draw, text) => text.repeat(1 + below(draw, 3)),
];
const PIECES = [
  '\0',
  '\u001b[2J',
  '\ud800',
  '"__proto__":{},',
  '//',
  ',',
  '}',
  '{',
  ']',
  '"',
  '\\',
  '\\u',
  '1e999',
  'NaN',
  '\u2028',
];
const NUMBERS = [
  '1e999',
  '-1e999',
  'NaN',
  '-0',
  '1e-320',
  '9'.repeat(400),
  '0.1e+1',
  '01',
  '1.',
  '0x10',
  '1e308',
  '-1',
];

/** Where a value stands: in its list or object, under its key. */
interface Place {
  readonly within: Record<string, unknown>;
  readonly key: string;
}

function placesIn(value: unknown, found: Place[] = []): Place[] {
  if (typeof value !== 'object' || value === null) return found;
  const within = value as Record<string, unknown>;
  for (const key of Object.keys(within)) {
    found.push({ within, key });
    placesIn(within[key], found);
  }
  return found;
}

function changeValue(draw: Draw, whole: { file: unknown }): void {
  const places = placesIn(whole);
  if (places.length === 0) return;
  const place = one(draw, places);
  one(draw, VALUE_CHANGES)(draw, place, places);
}

type ValueChange = (draw: Draw, place: Place, places: readonly Place[]) => void;

const VALUE_CHANGES: readonly ValueChange[] = [
  (_, { within, key }) => {
    if (Array.isArray(within)) within.splice(Number(key), 1);
    else delete within[key];
  },
  (draw, { within, key }) => {
    if (Array.isArray(within)) within.splice(Number(key), 0, structuredClone(within[Number(key)]));
    else within[`${key}${below(draw, 3)}`] = structuredClone(within[key]);
  },
  (draw, { within, key }, places) => {
    const other = one(draw, places);
    const [a, b] = [within[key], other.within[other.key]];
    within[key] = structuredClone(b);
    other.within[other.key] = structuredClone(a);
  },
  (draw, { within, key }) => {
    // A copy: what is changed further in one file must not be in the next.
    within[key] = structuredClone(one(draw, HOSTILE));
  },
  (draw, { within, key }) => {
    if (!Array.isArray(within)) within[one(draw, HOSTILE_NAMES)] = within[key];
  },
  (draw, { within, key }) => {
    let deep: unknown = within[key];
    for (let i = below(draw, 45); i > 0; i--) deep = i % 2 === 0 ? [deep] : { a: deep };
    within[key] = deep;
  },
  // What another file or a schema has under the same name: most of these are taken, and new in this place.
  ...Array.from(
    { length: 4 },
    (): ValueChange =>
      (draw, { within, key }) => {
        const values = valuesByName().get(key);
        within[key] = values === undefined ? one(draw, FIGURES) : structuredClone(one(draw, values));
      },
  ),
  // Another figure of the trade, or one near to the old one.
  ...Array.from(
    { length: 4 },
    (): ValueChange => (draw, _, places) => {
      const figures = places.filter(({ within, key }) => typeof within[key] === 'number');
      if (figures.length === 0) return;
      const { within, key } = one(draw, figures);
      const now = within[key] as number;
      within[key] = one(draw, [
        one(draw, FIGURES),
        now * 2,
        now / 2,
        -now,
        now + 1,
        now - 1,
        now * 10 ** below(draw, 9),
      ]);
    },
  ),
];

const HOSTILE: readonly unknown[] = [
  ...[null, true, false, 0, -1, 1e308, -1e308, 5e-324, 2 ** 53, 0.1, '', ' ', '0', 'null', '__proto__'],
  ...['constructor', 'x'.repeat(3000), '\ud800', '\u0000\u001b[2J\u202e', '😀'.repeat(40), '1e999', '<b>'],
  ...[[], {}, [[]], [null], { length: 5 }, { op: 'stop' }, Array(50).fill(0), ['all'], 'all', 'others'],
];
const HOSTILE_NAMES = [
  'toString',
  'constructor',
  'hasOwnProperty',
  '0',
  '',
  'length',
  'x'.repeat(200),
  '\u202e',
  'op',
  'kind',
];
const FIGURES = [
  ...[
    0, 0.001, 0.006, 0.01, 0.03, 0.1, 0.3, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 10, 13, 16, 20, 25, 32, 40, 50,
    63, 70,
  ],
  ...[80, 95, 100, 120, 200, 230, 250, 253, 265, 300, 500, 1000, 1800, 5000, 86_400, 100_000, 2_147_483_647],
];

/** What a schema of any kind may have. */
interface AnySchema {
  readonly wrapped?: AnySchema;
  readonly item?: AnySchema;
  readonly entries?: Readonly<Record<string, AnySchema>>;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
  readonly type: string;
  readonly pipe?: readonly { readonly requirement?: unknown }[];
}

/** Every value that a schema names under a field: words to choose from, ends of ranges. */
function gatherValues(from: unknown, name: string, found: Map<string, unknown[]>): void {
  if (typeof from !== 'object' || from === null) return;
  const { wrapped, item, entries, options = [], literal, type, pipe = [] } = from as AnySchema;
  const named = [
    ...options.filter((option) => typeof option !== 'object'),
    ...(literal === undefined ? [] : [literal]),
    ...(type === 'boolean' ? [true, false] : type === 'nullable' ? [null] : []),
    ...pipe.flatMap(({ requirement }) => (typeof requirement === 'number' ? [requirement] : [])),
  ];
  if (named.length > 0) found.set(name, [...(found.get(name) ?? []), ...named]);
  for (const inner of [wrapped, item, ...options]) gatherValues(inner, name, found);
  for (const [key, inner] of Object.entries(entries ?? {})) gatherValues(inner, key, found);
}

let byName: ReadonlyMap<string, readonly unknown[]> | undefined;

function valuesByName(): ReadonlyMap<string, readonly unknown[]> {
  if (byName !== undefined) return byName;
  const found = new Map<string, unknown[]>();
  for (const text of Object.values(bases()).flat())
    for (const { within, key } of placesIn(JSON.parse(text)))
      if (!Array.isArray(within)) found.set(key, [...(found.get(key) ?? []), within[key]]);
  for (const schema of [scenarioSchema, operationSchema, attemptSchema]) gatherValues(schema, '', found);
  byName = found;
  return found;
}
