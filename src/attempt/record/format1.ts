/**
 * Attempts of format 1, which held what was said as English sentences, and a judgement as whether a line was "as it
 * should". Converted for reading and marking alone: chain and record code stay those of the file as it was written,
 * and how sure somebody was is kept as the nearest of today's three without being counted among them (its three were
 * other shares). What is in no table stays as it is, for the schema to complain of.
 */
import { IN_WORDS } from './attempt.ts';
import { FORMAT_1_LINES } from './format1Lines.ts';

type Table = Readonly<Record<string, string>>;
type Json = Readonly<Record<string, unknown>>;

const ANSWERS: Table = { 'should not': 'should-not', "can't tell": 'cant-tell' };
const SURENESS: Table = {
  'under 67 %': 'guessing',
  '67 to 80 %': 'fairly-sure',
  'over 80 %': 'would-sign',
};
const LIMITS: Table = { 'too close': 'too-close' };
const QUALIFIERS: Table = { 'no reading': 'no-reading' };
const VERDICTS: Table = {
  'fit for service': 'fit',
  'not fit for service': 'not-fit',
  'could not finish': 'could-not-finish',
};
const NEXT: Table = {
  'hand over': 'hand-over',
  'put right and repeat the tests it may have touched': 'put-right-and-repeat',
  'isolate, lock off and label': 'lock-off-and-label',
};
const TELL: Table = {
  'the client': 'client',
  'whoever installed the circuit': 'installer',
  'the maker or supplier of the unit': 'maker',
  'the distributor': 'distributor',
};

export const isFormat1 = (file: unknown): file is Json => isObject(file) && file.format === 1;

/** The file in format 2, as far as it is one of format 1. */
export const fromFormat1 = (file: Json): unknown => ({
  ...file,
  format: 2,
  ...(Array.isArray(file.entries) ? { entries: file.entries.map(entryFrom) } : {}),
});

function entryFrom(entry: unknown): unknown {
  if (!isObject(entry)) return entry;
  switch (entry.kind) {
    case 'prediction':
      return {
        ...entry,
        lines: each(entry.lines, (line) => ({ ...line, answer: by(ANSWERS, line.answer) })),
        sure: by(SURENESS, entry.sure),
      };
    case 'observation':
      return { ...entry, qualifier: by(QUALIFIERS, entry.qualifier) };
    case 'judgement':
      return {
        ...entry,
        lines: each(entry.lines, (line) => ({ ...line, judged: judgedFrom(entry.test, line) })),
        limits: each(entry.limits, (limit) => ({ ...limit, judged: by(LIMITS, limit.judged) })),
      };
    case 'record':
      return { ...entry, leftOut: IN_WORDS, words: entry.leftOut };
    case 'conclusion':
      return {
        ...entry,
        verdict: by(VERDICTS, entry.verdict),
        sure: by(SURENESS, entry.sure),
        next: by(NEXT, entry.next),
        tell: by(TELL, entry.tell),
      };
    default:
      return entry;
  }
}

/** A line that format 1 did not have was marked nowhere: what it did is not known. */
function judgedFrom(test: unknown, { id, judged }: Json): unknown {
  if (judged === 'not shown') return 'not-shown';
  if (judged !== 'as it should' && judged !== 'not as it should') return judged;
  const { should = [], shouldNot = [] } = typeof test === 'string' ? (own(FORMAT_1_LINES, test) ?? {}) : {};
  const isSound = judged === 'as it should';
  if (should.some((line) => line === id)) return isSound ? 'did' : 'did-not';
  if (shouldNot.some((line) => line === id)) return isSound ? 'did-not' : 'did';
  return 'not-shown';
}

const by = (table: Table, value: unknown): unknown =>
  typeof value === 'string' ? (own(table, value) ?? value) : value;

const own = <T>(table: Readonly<Record<string, T>>, name: string): T | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;

const each = (list: unknown, change: (item: Json) => unknown): unknown =>
  Array.isArray(list) ? list.map((item) => (isObject(item) ? change(item) : item)) : list;

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
