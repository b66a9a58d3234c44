// Reads source files as text and says where they break the house rules on imports, on clocks and dice, and on words:
// the order of the floors and of the rooms of the screen, no cycles, no barrel files, below the two top floors nothing that could make a replay
// differ from one browser to the next, and below the words no text that somebody reads. What the words in the source mean is the compiler's business.

import { posix } from 'node:path';
import { parseSync } from 'vite';

/** From the laws up: a file imports only from its own floor and from floors before it. */
export const FLOORS = [
  'laws',
  'network',
  'site',
  'unit',
  'faults',
  'bench',
  'verification',
  'scenario',
  'fairness',
  'attempt',
  'quiz',
  'desk',
  'store',
  'words',
  'ui',
  'cli',
] as const;

/** The floors that meet the outside world; each stands beside the other and imports nothing from it. */
const TOP_FLOORS: readonly string[] = ['ui', 'cli'];
/**
 * The rooms of a floor that has some, each of which imports only from itself and from rooms before it: what is drawn and
 * shown knows the flow of an attempt, never the other way round; so does what is marked know what was written down.
 * Files beside the rooms of the screen stand above them all.
 */
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  attempt: ['record', 'marks', 'opened'],
  ui: ['styles', 'offline', 'format', 'flow', 'sound', 'parts', 'drawing', 'screens'],
};
/** What a reader meets is worded at the edge: below it there are ids and values, so that a language is one folder. */
const WORDS = 'words';
const ROOT_FILE = 'src/main.tsx';

/**
 * Files that say what is wrong with something that somebody wrote by hand: path and problem, for whoever wrote it. They
 * stand where the shape is checked.
 */
const CHECKS_OF_FILES =
  /^src\/(scenario\/(aimAddressProblems|checks|givenAway|handoverFaults|json(Text|Words)?|nearest|operationProblems|problems?|readScenario|schema|script|tellable|tradeNames|wanted)|attempt\/record\/(file|format1)|bench\/readings\/schemas|desk\/(giving|link|seal)|store\/recordFile)\.ts$/;
/** Names in the chart of a unit: of states, guards, actions and timers. */
const CHART = /^src\/unit\//;
/** Ids of several words, most of them in files and printed output: src/words, or whoever shows them, has their text. */
const IDS = new Set([
  ...['could not finish', 'as it should', 'something is wrong', 'nothing is wrong', 'two good ones'],
  ...['unit breaker tripped', 'upstream device tripped', 'circuit breaker tripped', 'instrument fuse opened'],
  ...['tests left out', 'as it lasts', 'with extra time', 'common practice, no source'],
  // Units of a warning to whoever wrote the file.
  ...['residual device at the origin', 'A d.c.'],
  ...['PE of the circuit', 'PE of the cable', 'PE bond of the case'],
  ...['attempt as written', 'charge-point-trainer bench time'],
  ...[
    'charge-point-trainer first run',
    'charge-point-trainer first minute',
    'charge-point-trainer attempt of this tab',
    'sure and wrong',
  ],
]);

const CLOCKS_AND_SCREENS = new Set([
  ...['Date', 'performance', 'setTimeout', 'setInterval', 'setImmediate', 'requestAnimationFrame'],
  ...['window', 'document', 'navigator', 'globalThis', 'Intl', 'crypto', 'process'],
]);

/** The members of Math that ECMA-262 fixes to the last bit; the rest are left to each browser. */
const EXACT_MATH = new Set([
  ...['abs', 'ceil', 'clz32', 'floor', 'fround', 'imul', 'max', 'min', 'round', 'sign', 'sqrt', 'trunc'],
  ...['E', 'LN10', 'LN2', 'LOG10E', 'LOG2E', 'PI', 'SQRT1_2', 'SQRT2'],
]);

type Node = { type: string; start: number } & Record<string, unknown>;
type Import = { from: string; to: string; line: number };
type Breach = { file: string; line: number; what: string };

/** Every breach in the files, keyed by path from the project's root, as `path:line: what is wrong`. */
export function findBreaches(files: ReadonlyMap<string, string>): string[] {
  const breaches: Breach[] = [];
  const imports: Import[] = [];
  for (const [file, text] of files) {
    const { program, errors } = parseSync(file, text);
    if (errors.length > 0) {
      breaches.push({ file, line: 1, what: `cannot be read: ${errors[0]?.message}` });
      continue;
    }
    const root = program as unknown as Node;
    const lineOf = (node: Node) => text.slice(0, node.start).split('\n').length;
    const say = (node: Node, what: string) => breaches.push({ file, line: lineOf(node), what });

    if (/^index\.[a-z]+$/.test(posix.basename(file)))
      say(root, 'is a barrel file: import from the file itself');
    if (file !== ROOT_FILE && rankOf(file) < 0) say(root, 'stands on no floor');
    if (floorOf(file) in ROOMS && roomOf(file) < 0) say(root, 'stands in no room of its floor');
    for (const { node, target } of importsIn(root)) {
      const what = judgeImport(file, target);
      if (what) say(node, what);
      if (target?.startsWith('.'))
        imports.push({ from: file, to: resolve(file, target), line: lineOf(node) });
    }
    if (mustReplayAlike(file)) findUnrepeatable(root, say);
    if (handsOnIds(file)) findTexts(root, say);
  }
  breaches.push(...findCycles(imports));
  return breaches.map(({ file, line, what }) => `${file}:${line}: ${what}`);
}

function floorOf(file: string): string {
  return /^src\/([^/]+)\//.exec(file)?.[1] ?? '';
}

/** Place of a file's floor in the list, −1 for none; the root file stands above them all. */
function rankOf(file: string): number {
  return file === ROOT_FILE ? FLOORS.length : (FLOORS as readonly string[]).indexOf(floorOf(file));
}

function mustReplayAlike(file: string): boolean {
  return file !== ROOT_FILE && !TOP_FLOORS.includes(floorOf(file));
}

function resolve(file: string, target: string): string {
  return posix.join(posix.dirname(file), target);
}

function judgeImport(file: string, target: string | undefined): string | undefined {
  const floor = floorOf(file);
  if (target === undefined) {
    return mustReplayAlike(file) ? 'imports a file whose name is only known at run time' : undefined;
  }
  if (target.startsWith('node:')) {
    return floor === 'cli' ? undefined : `imports ${target}, which a browser does not have`;
  }
  if (!target.startsWith('.')) {
    const forScreens = /^(react|react-dom|@xstate\/react|wouter)(\/|$)/.test(target);
    return forScreens && floor !== 'ui' && file !== ROOT_FILE ? `imports ${target} outside ui` : undefined;
  }
  if (posix.extname(target) === '') return `imports ${target} without its ending`;
  const to = resolve(file, target);
  if (!to.startsWith('src/')) {
    return mustReplayAlike(file) ? `imports ${target} from outside src` : undefined;
  }
  if (floorOf(to) === WORDS && ![WORDS, ...TOP_FLOORS].includes(floor)) {
    return `imports ${to}: only ${TOP_FLOORS.join(' and ')} put things into words`;
  }
  if (rankOf(to) > rankOf(file)) return `imports ${to} from a floor above its own`;
  if (floor !== floorOf(to) && TOP_FLOORS.includes(floor) && TOP_FLOORS.includes(floorOf(to))) {
    return `imports ${to}: ${TOP_FLOORS.join(' and ')} do not know each other`;
  }
  if (floor === floorOf(to) && roomOf(to) > roomOf(file)) return `imports ${to} from a room above its own`;
  return undefined;
}

/** Place of the room that a file is in, among those of its floor; what stands beside the rooms is above them. */
function roomOf(file: string): number {
  const [, floor = '', room] = /^src\/([^/]+)\/(?:([^/]+)\/)?/.exec(file) ?? [];
  const rooms = ROOMS[floor];
  if (rooms === undefined) return 0;
  return room === undefined ? rooms.length : rooms.indexOf(room);
}

/** All imports of a file: values, types, re-exports, `import()` and `import('…').Type`. */
function importsIn(root: Node): { node: Node; target: string | undefined }[] {
  const found: { node: Node; target: string | undefined }[] = [];
  visit(root, (node) => {
    const named = /^(Import|ExportNamed|ExportAll)Declaration$/.test(node.type) && isNode(node.source);
    if (!named && node.type !== 'ImportExpression' && node.type !== 'TSImportType') return;
    const source = node.source as Node;
    found.push({ node, target: typeof source.value === 'string' ? source.value : undefined });
  });
  return found;
}

function findUnrepeatable(root: Node, say: (node: Node, what: string) => void): void {
  const own = namesDeclaredIn(root);
  visit(root, (node, parent, key) => {
    if (node.operator === '**' || node.operator === '**=') {
      say(node, 'uses **, which browsers round differently');
    }
    if (node.type !== 'Identifier') return;
    const name = String(node.name);
    if (isMemberName(parent, key)) {
      if (name.startsWith('toLocale') || name === 'localeCompare') say(node, `uses ${name}`);
      return;
    }
    if (own.has(name)) return;
    if (CLOCKS_AND_SCREENS.has(name)) say(node, `uses ${name}`);
    if (name === 'Math') {
      const member =
        parent?.type === 'MemberExpression' && parent.computed === false ? parent.property : null;
      const called = isNode(member) ? String(member.name) : '';
      if (!EXACT_MATH.has(called)) say(node, called ? `uses Math.${called}` : 'passes Math on whole');
    }
  });
}

function handsOnIds(file: string): boolean {
  const rank = rankOf(file);
  const isBelow = rank >= 0 && rank < (FLOORS as readonly string[]).indexOf(WORDS);
  return isBelow && !CHECKS_OF_FILES.test(file) && !CHART.test(file);
}

/** A text somebody reads: three words in small letters, or the end or the apostrophe of one. */
const isText = (text: string): boolean =>
  !IDS.has(text) &&
  /\s/.test(text.trim()) &&
  ((text.match(/(?<![\w-])\p{Ll}[\p{Ll}’-]+(?![\w-])/gu) ?? []).length >= 3 || /’|\p{Ll}[.;:]$/u.test(text));

/** Texts that are no message of an error, which a developer reads, and no source of the catalogue, which nobody is shown. */
function findTexts(root: Node, say: (node: Node, what: string) => void): void {
  const silent = new Set<Node>();
  visit(root, (node, parent, key) => {
    const isMessage = /^(NewExpression|ThrowStatement)$/.test(node.type) || isSuperCall(node);
    const isSource = parent?.type === 'Property' && key === 'value' && nameOf(parent.key) === 'source';
    if (isMessage || isSource || (parent !== undefined && silent.has(parent))) silent.add(node);
    if (silent.has(node)) return;
    const text = textIn(node);
    if (text !== null && isText(text)) say(node, `words what somebody reads: ${text}`);
  });
}

const isSuperCall = ({ type, callee }: Node): boolean =>
  type === 'CallExpression' && isNode(callee) && callee.type === 'Super';
const nameOf = (key: unknown): unknown => (isNode(key) ? key.name : undefined);

/** The text of a literal; of a template without what is put in; null for any other node. */
function textIn(node: Node): string | null {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : null;
  if (node.type !== 'TemplateLiteral') return null;
  const pieces = node.quasis as readonly { readonly value: { readonly cooked: string } }[];
  return pieces.map(({ value }) => value.cooked).join('…');
}

/** True if an identifier stands where it names a member and not a thing in scope. */
function isMemberName(parent: Node | undefined, key: string): boolean {
  if (!parent || parent.computed === true) return false;
  if (key === 'property') return parent.type === 'MemberExpression';
  if (key === 'key') return true;
  return ['imported', 'exported', 'label', 'qualifier', 'right'].includes(key) && !parent.operator
    ? /^(ImportSpecifier|ExportSpecifier|TSNamedTupleMember|TSImportType|TSQualifiedName)$/.test(parent.type)
    : false;
}

/** Names that the file itself gives to something, wherever: those no longer mean the browser's own. */
function namesDeclaredIn(root: Node): Set<string> {
  const names = new Set<string>();
  const bind = (pattern: unknown): void => {
    if (!isNode(pattern)) return;
    if (pattern.type === 'Identifier') names.add(String(pattern.name));
    for (const part of [pattern.left, pattern.argument, pattern.value]) bind(part);
    for (const list of [pattern.properties, pattern.elements]) if (Array.isArray(list)) list.forEach(bind);
  };
  visit(root, (node) => {
    if (/Declarat|^ClassExpression$|^FunctionExpression$/.test(node.type)) bind(node.id);
    if (/^Import.*Specifier$/.test(node.type)) bind(node.local);
    if (node.type === 'CatchClause') bind(node.param);
    if (Array.isArray(node.params)) node.params.forEach(bind);
  });
  return names;
}

/** One breach for each import that closes a ring. */
function findCycles(imports: readonly Import[]): Breach[] {
  const found: Breach[] = [];
  const done = new Set<string>();
  const road: string[] = [];
  const walk = (file: string): void => {
    road.push(file);
    for (const { to, line } of imports.filter(({ from }) => from === file)) {
      const back = road.indexOf(to);
      if (back >= 0) {
        found.push({ file, line, what: `imports in a ring: ${[...road.slice(back), to].join(' → ')}` });
      } else if (!done.has(to)) walk(to);
    }
    road.pop();
    done.add(file);
  };
  for (const { from } of imports) if (!done.has(from)) walk(from);
  return found;
}

function isNode(value: unknown): value is Node {
  return (
    typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string'
  );
}

function visit(node: Node, see: (node: Node, parent: Node | undefined, key: string) => void): void {
  const step = (current: Node, parent: Node | undefined, key: string): void => {
    see(current, parent, key);
    for (const [name, value] of Object.entries(current)) {
      for (const child of Array.isArray(value) ? value : [value])
        if (isNode(child)) step(child, current, name);
    }
  };
  step(node, undefined, '');
}
