/**
 * A variant of a job: the same cause at another size on a site with other figures, so that a neighbour's readings are of
 * no use. It follows from the job, the word and a number alone, and whoever gets which from the word and the learner's
 * label, so that both are made again wherever an attempt is collected. That two are equal is proved in variants.ts.
 *
 * What is wrong and where, what the papers rate, the tests and the words are the same in all: a variant of those would be
 * another job.
 */
import { digestOf } from '../attempt/record/attempt.ts';
import { drawer } from '../bench/draw.ts';
import { severityOf } from '../fairness/cause.ts';
import { entryNamed } from '../faults/catalogue.ts';
import { plainWord } from './heldBy.ts';

type Json = Readonly<Record<string, unknown>>;
type Draw = (key: string) => number;

/** How far a figure may be from that of the job, as a share; of a size that a cause may have, of its range. A design choice. */
const SPREAD = 0.12;
/** A service may be 216 to 253 V (ESQCR 2002: 230 V, −6 % to +10 %). */
const VOLTS = { least: 224, most: 246 };
const isTree = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The job with the figures of a seed. */
export function variantOf(file: object, seed: number): object {
  const draw = drawer(seed);
  const { site, unit, faults } = file as Json;
  return {
    ...file,
    ...(isTree(site) ? { site: otherSite(site, draw) } : {}),
    ...(isTree(unit) ? { unit: otherUnit(unit, draw) } : {}),
    ...(Array.isArray(faults) ? { faults: faults.map((one, i) => otherSize(one, i, draw)) } : {}),
    seed,
  };
}

/** A number from −1 to 1. */
const eitherWay = (draw: Draw, key: string): number => 2 * draw(key) - 1;

function near(value: unknown, draw: Draw, key: string, digits: number): unknown {
  if (typeof value !== 'number') return value;
  const scale = Number(`1e${digits}`);
  // At least one of its last digit: a length or a resistance is never nothing.
  return Math.max(1, Math.round(value * (1 + SPREAD * eitherWay(draw, key)) * scale)) / scale;
}

function mapped(tree: Json, change: (name: string, value: unknown) => unknown): Json {
  return Object.fromEntries(Object.entries(tree).map(([name, value]) => [name, change(name, value)]));
}

const otherSite = (site: Json, draw: Draw): Json =>
  mapped(site, (name, value) => {
    switch (name) {
      case 'voltage':
        return VOLTS.least + Math.floor((VOLTS.most - VOLTS.least + 1) * draw('volts'));
      // Of one supply: where the line is longer, so is the neutral.
      case 'loopImpedance':
      case 'neutralImpedance':
        return near(value, draw, 'loopImpedance', 2);
      case 'electrodeResistance':
        return near(value, draw, name, 0);
      case 'circuit':
        return isTree(value) ? { ...value, length: near(value.length, draw, 'length', 0) } : value;
      default:
        return value;
    }
  });

const otherUnit = (unit: Json, draw: Draw): Json =>
  mapped(unit, (name, value) =>
    isTree(value) && (name === 'cable' || name === 'customerCable')
      ? { ...value, length: near(value.length, draw, name, 1) }
      : value,
  );

/** The same cause a little better or worse; what stands in the papers stays. */
function otherSize(line: unknown, at: number, draw: Draw): unknown {
  if (!isTree(line) || typeof line.fault !== 'string') return line;
  const entry = entryNamed(line.fault);
  const parameter = entry?.kind === 'fault' && entry.alter === undefined ? severityOf(entry) : null;
  if (parameter === null) return line;
  const { name, min, max } = parameter;
  const own = line[name] ?? parameter.default;
  if (typeof own !== 'number') return line;
  const by = SPREAD * eitherWay(draw, `size ${at}`);
  // By ratio where the range spans decades. From an end of the range it goes the one way that there is.
  const isByRatio = min > 0 && max / min > 10;
  const moved = (share: number) => own + share * (isByRatio ? 2 * own : max - min);
  const other = moved(by) < min || moved(by) > max ? moved(-by) : moved(by);
  return { ...line, [name]: Math.min(max, Math.max(min, Number(other.toPrecision(3)))) };
}

/** The seed of the nth variant of a giving-out. */
const seedOf = (word: string, n: number): number =>
  Number.parseInt(digestOf(['variant', plainWord(word), n]).slice(0, 8), 16) & 0x7fffffff;

/** The nth variant of a job in a giving-out with this word. */
export const nthVariant = (file: object, word: string, n: number): object => variantOf(file, seedOf(word, n));

/** What a giving-out says of who gets which. */
export interface Dealing {
  readonly word: string;
  readonly variants: readonly number[];
  /** The labels that the tutor listed, as dealtTo has them, in their order; none: whoever has whichever label. */
  readonly dealt?: readonly string[] | undefined;
}

/** A listed label as it stands in what every learner opens, where names are nobody's business; 6 hexadecimal digits. */
const dealtTo = (word: string, label: string): string =>
  digestOf(['dealt', plainWord(word), plainWord(label)]).slice(0, 6);

/** Labels that were listed, in the order in which variants are dealt out to them: it follows from word and labels alone. */
export const allDealt = (word: string, labels: readonly string[]): readonly string[] =>
  [...new Set(labels.map((label) => dealtTo(word, label)))].sort();

export const isListed = ({ word, dealt = [] }: Dealing, label: string): boolean =>
  dealt.length === 0 || dealt.includes(dealtTo(word, label));

/**
 * Which of the variants a learner gets, from 0. Listed labels get one after another, so that none is given out twice before
 * each was once; any other gets one by chance, made of word and label.
 */
export function variantFor({ word, variants, dealt = [] }: Dealing, label: string): number {
  if (variants.length === 0) return 0;
  const place = dealt.indexOf(dealtTo(word, label));
  const drawn = Number.parseInt(digestOf([plainWord(word), plainWord(label)]).slice(0, 8), 16);
  return (place >= 0 ? place : drawn) % variants.length;
}

/** A job as this learner gets it; the job itself where all get the same. */
export function variantFrom(file: object, dealing: Dealing, label: string): object {
  const n = dealing.variants[variantFor(dealing, label)];
  return n === undefined ? file : nthVariant(file, dealing.word, n);
}

/** How many of a group have the same variant as somebody else of it, on average, where each gets one by chance. */
export function sharing(learners: number, variants: number): number {
  let alone = 1;
  for (let other = 1; other < learners; other += 1) alone *= 1 - 1 / variants;
  return learners * (1 - alone);
}
