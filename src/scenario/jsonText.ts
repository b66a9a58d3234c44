/**
 * What is wrong with JSON text, and where. Engines word their complaints differently and some give no place, so the
 * text is gone through here before JSON.parse makes a value of it. Both take and refuse the same, except for what
 * JSON.parse lets pass in silence and is refused here: a name given twice, a number too large to be one, half a
 * character, a name that reaches an object's prototype, and brackets nested deeper than anybody writes.
 */
import { noNumberAt, placeIn, whatIsAt, whatIsInText } from './jsonWords.ts';
import { shortened } from './quoted.ts';

export interface Slip {
  /** Path of the value, as `site.circuit.length`; empty where the text as a whole is no JSON. */
  readonly path: string;
  readonly message: string;
}

interface Limits {
  /** Deepest nesting of brackets. */
  readonly deepest: number;
  /** Most slips that are listed. */
  readonly most: number;
}

/** A list or an object that is not yet closed. */
interface Level {
  isList: boolean;
  /** Of the member at hand; -1 before the first. */
  index: number;
  name: string;
  readonly names: Names;
}

/** The names of an object and where each stands in the text: a few are looked through, many are looked up. */
interface Names {
  count: number;
  readonly few: string[];
  readonly begins: number[];
  many: Map<string, number> | null;
}

interface Scan extends Limits {
  readonly text: string;
  at: number;
  /** Open lists and objects; those from `depth` on wait to be used again. */
  readonly levels: Level[];
  depth: number;
  /** Of the string read last: whether it has escapes, and where half a character is in it, or -1. */
  isEscaped: boolean;
  halfAt: number;
  readonly slips: Slip[];
  more: number;
}

/** The slips in a text and how many more there are; what is no JSON ends the reading and comes first. */
export function slipsIn(
  text: string,
  limits: Limits,
): { readonly slips: readonly Slip[]; readonly more: number } {
  const start = { at: 0, levels: [], depth: 0, isEscaped: false, halfAt: -1, slips: [], more: 0 };
  const scan: Scan = { ...limits, text, ...start };
  readText(scan);
  return scan;
}

const code = (character: string): number => character.charCodeAt(0);
const QUOTE = code('"');
const BACKSLASH = code('\\');
const COMMA = code(',');
const COLON = code(':');
const MINUS = code('-');
const PLUS = code('+');
const DOT = code('.');
const ZERO = code('0');
const NINE = code('9');
const OPEN_LIST = code('[');
const CLOSE_LIST = code(']');
const OPEN_OBJECT = code('{');
const CLOSE_OBJECT = code('}');
const SMALL_A = code('a');
const SMALL_E = code('e');
const LARGE_E = code('E');
const SMALL_U = code('u');
const WORDS = new Map(['true', 'false', 'null'].map((word) => [code(word), word]));
const ESCAPES = new Set([...'"\\/bfnrt'].map(code));
/** More names than this are looked up in a map, which costs more to begin with. */
const MOST_LOOKED_THROUGH = 16;
/** A number of no more digits, without an exponent, is finite. */
const SURELY_FINITE = 300;

/** True where all of it could be read. */
function readText(scan: Scan): boolean {
  if (!readValue(scan)) return false;
  while (scan.depth > 0) if (!readMember(scan)) return false;
  skipSpace(scan);
  return scan.at === scan.text.length || isNoJson(scan, 'nothing more');
}

/** One member of the innermost list or object, or its end. */
function readMember(scan: Scan): boolean {
  const level = scan.levels[scan.depth - 1] as Level;
  const close = level.isList ? CLOSE_LIST : CLOSE_OBJECT;
  skipSpace(scan);
  if (here(scan) === close) {
    scan.at += 1;
    scan.depth -= 1;
    return true;
  }
  if (level.index >= 0) {
    const comma = scan.at;
    if (here(scan) !== COMMA) return isNoJson(scan, `a comma or ${String.fromCharCode(close)}`);
    scan.at += 1;
    skipSpace(scan);
    if (here(scan) === close)
      return isNoJsonAt(scan, comma, 'the comma after the last of them is one too many');
  }
  level.index += 1;
  return (level.isList || readName(scan, level)) && readValue(scan);
}

/** A member's name and the colon after it. */
function readName(scan: Scan, level: Level): boolean {
  const begin = scan.at;
  if (here(scan) !== QUOTE) return isNoJson(scan, 'a name in double quotes');
  if (!skipString(scan)) return false;
  level.name = scan.isEscaped
    ? JSON.parse(scan.text.slice(begin, scan.at))
    : scan.text.slice(begin + 1, scan.at - 1);
  if (scan.halfAt >= 0) note(scan, halfAt);
  if (level.name === '__proto__') note(scan, () => 'this name is not allowed');
  const first = firstOf(level.names, level.name, begin);
  if (first !== undefined)
    note(scan, () => `given twice, at ${placeIn(scan.text, first)} and at ${placeIn(scan.text, begin)}`);
  skipSpace(scan);
  if (here(scan) !== COLON) return isNoJson(scan, 'a colon after the name');
  scan.at += 1;
  return true;
}

/** Where this name stood before, if it did; it is kept. */
function firstOf(names: Names, name: string, begin: number): number | undefined {
  const { few, begins, count } = names;
  if (names.many === null) {
    for (let i = 0; i < count; i++) if (few[i] === name) return begins[i];
    few[count] = name;
    begins[count] = begin;
    names.count += 1;
    if (count === MOST_LOOKED_THROUGH) names.many = new Map(few.map((one, i) => [one, begins[i] as number]));
    return undefined;
  }
  const first = names.many.get(name);
  if (first === undefined) names.many.set(name, begin);
  return first;
}

function readValue(scan: Scan): boolean {
  skipSpace(scan);
  const c = here(scan);
  if (c === QUOTE) return readString(scan);
  if (c === OPEN_OBJECT || c === OPEN_LIST) return open(scan, c === OPEN_LIST);
  if (c === MINUS || isDigit(c)) return readNumber(scan);
  const word = WORDS.get(c);
  if (word === undefined || !scan.text.startsWith(word, scan.at)) return isNoJson(scan, 'a value');
  scan.at += word.length;
  return true;
}

function open(scan: Scan, isList: boolean): boolean {
  const { levels, depth, deepest } = scan;
  if (depth === deepest)
    return ends(scan, `nested deeper than ${deepest} levels at ${placeIn(scan.text, scan.at)}`);
  levels[depth] ??= { isList, index: -1, name: '', names: { count: 0, few: [], begins: [], many: null } };
  const level = levels[depth];
  level.isList = isList;
  level.index = -1;
  level.names.count = 0;
  level.names.many = null;
  scan.depth += 1;
  scan.at += 1;
  return true;
}

function readString(scan: Scan): boolean {
  if (!skipString(scan)) return false;
  if (scan.halfAt >= 0) note(scan, halfAt);
  return true;
}

/** To the end of a string, or to what may not be in one. */
function skipString(scan: Scan): boolean {
  const { text, at: begin } = scan;
  let i = begin + 1;
  /** Whether the character before is the first half of one. */
  let isHalf = false;
  scan.isEscaped = false;
  scan.halfAt = -1;
  for (;;) {
    let c = text.charCodeAt(i);
    if (!isHalf) while (isPlain(c)) c = text.charCodeAt(++i);
    if (c === QUOTE) break;
    let unit = c;
    let length = 1;
    if (c === BACKSLASH) {
      scan.isEscaped = true;
      length = escapeLength(text, i);
      if (length === 0) return isNotText(scan, begin, i);
      unit = length === 2 ? 0 : unitAt(text, i + 2);
    } else if (!(c >= 0x20)) return isNotText(scan, begin, i);
    if (isHalf || (unit >= 0xd800 && unit <= 0xdfff)) {
      const isSecond = unit >= 0xdc00 && unit <= 0xdfff;
      if (isSecond !== isHalf) scan.halfAt = isHalf ? i - 1 : i;
      isHalf = unit >= 0xd800 && unit < 0xdc00;
    }
    i += length;
  }
  if (isHalf) scan.halfAt = i - 1;
  scan.at = i + 1;
  return true;
}

/** Characters of the escape at a backslash; 0 where it is none. */
function escapeLength(text: string, at: number): number {
  const c = text.charCodeAt(at + 1);
  if (ESCAPES.has(c)) return 2;
  return c === SMALL_U && unitAt(text, at + 2) >= 0 ? 6 : 0;
}

/** What four digits of an escape stand for; -1 where they are none. */
function unitAt(text: string, at: number): number {
  let unit = 0;
  for (let i = at; i < at + 4; i++) {
    const c = text.charCodeAt(i);
    // Small letters and large ones differ in one bit.
    const letter = (c | 0x20) - SMALL_A;
    if (isDigit(c)) unit = unit * 16 + c - ZERO;
    else if (letter >= 0 && letter < 6) unit = unit * 16 + 10 + letter;
    else return -1;
  }
  return unit;
}

/** Inside a string, nothing but itself: no end, no escape, no half of a character. */
const isPlain = (c: number): boolean => c >= 0x20 && c < 0xd800 && c !== QUOTE && c !== BACKSLASH;

function readNumber(scan: Scan): boolean {
  const { text, at } = scan;
  const end = numberEnd(text, at);
  if (end < 0 || goesOn(text, end)) return isNoJsonAt(scan, at, noNumberAt(text, at));
  scan.at = end;
  if (end - at > SURELY_FINITE || hasExponent(text, at, end)) {
    const number = text.slice(at, end);
    if (!Number.isFinite(Number(number)))
      note(scan, () => `${shortened(number)} is larger than any number here`);
  }
  return true;
}

/** Whether a number runs on into what is none. */
function goesOn(text: string, end: number): boolean {
  const c = text.charCodeAt(end);
  return c > COMMA && c !== CLOSE_LIST && c !== CLOSE_OBJECT && /[\w.-]/.test(text.charAt(end));
}

/** Where a number of JSON's own form ends, however it goes on; -1 where it is none. */
function numberEnd(text: string, at: number): number {
  let i = text.charCodeAt(at) === MINUS ? at + 1 : at;
  i = text.charCodeAt(i) === ZERO ? i + 1 : digitsEnd(text, i);
  if (i > 0 && text.charCodeAt(i) === DOT) i = digitsEnd(text, i + 1);
  const c = i < 0 ? 0 : text.charCodeAt(i);
  if (c !== SMALL_E && c !== LARGE_E) return i;
  const sign = text.charCodeAt(i + 1);
  return digitsEnd(text, sign === PLUS || sign === MINUS ? i + 2 : i + 1);
}

/** After one digit or more; -1 where there is none. */
function digitsEnd(text: string, at: number): number {
  let i = at;
  while (isDigit(text.charCodeAt(i))) i += 1;
  return i === at ? -1 : i;
}

function hasExponent(text: string, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (text.charCodeAt(i) > NINE) return true;
  return false;
}

const isDigit = (c: number): boolean => c >= ZERO && c <= NINE;
const here = ({ text, at }: Scan): number => text.charCodeAt(at);

function skipSpace(scan: Scan): void {
  const { text } = scan;
  let i = scan.at;
  for (let c = text.charCodeAt(i); c === 32 || c === 10 || c === 13 || c === 9; c = text.charCodeAt(i))
    i += 1;
  scan.at = i;
}

/** A slip in what is JSON all the same; put into words only where it is listed. */
function note(scan: Scan, message: (scan: Scan) => string): void {
  if (scan.slips.length < scan.most) scan.slips.push({ path: pathOf(scan), message: message(scan) });
  else scan.more += 1;
}

const halfAt = ({ text, halfAt: at }: Scan): string =>
  `half a character (a lone surrogate) at ${placeIn(text, at)}: whole ones are expected`;

/** What goes through every member of an object or a list. */
const pathOf = ({ levels, depth }: Scan): string =>
  levels
    .slice(0, depth)
    .map(({ isList, index, name }, i) => (isList ? `[${index}]` : `${i === 0 ? '' : '.'}${shortened(name)}`))
    .join('');

/** What ends the reading: said first, however much was noted before. */
function ends(scan: Scan, message: string): false {
  scan.slips.unshift({ path: '', message });
  return false;
}

/** How it begins what is said of a text that is none of JSON. */
export const NOT_JSON = 'not JSON at';

const isNoJsonAt = (scan: Scan, at: number, what: string): false =>
  ends(scan, `${NOT_JSON} ${placeIn(scan.text, at)}: ${what}`);

const isNoJson = (scan: Scan, expected: string): false =>
  isNoJsonAt(scan, scan.at, whatIsAt(scan.text, scan.at, expected));

/** A string that is not closed, or what it may not hold. */
const isNotText = (scan: Scan, begin: number, at: number): false =>
  isNoJsonAt(scan, at, whatIsInText(scan.text, begin, at));
