/**
 * A variant of a job: the same cause on a site with other figures, so that a neighbour's readings are of no use. It follows
 * from the job and a seed alone, and whoever gets which from the word and the learner's label, so that both are made again
 * wherever an attempt is collected. That two are equal is proved in variants.ts.
 */
import { digestOf } from '../attempt/record/attempt.ts';
import { drawer } from '../bench/draw.ts';
import { plainWord } from './heldBy.ts';

type Json = Readonly<Record<string, unknown>>;

/** How far a figure of the site may be from that of the job, as a share. A design choice. */
const SPREAD = 0.12;
/** A service may be 216 to 253 V (ESQCR 2002: 230 V, −6 % to +10 %). */
const VOLTS = { least: 224, most: 246 };
const isTree = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The job with the figures of a seed. What its papers, its cause and its tests are stays as it is. */
export function variantOf(file: object, seed: number): object {
  const draw = drawer(seed);
  const { site, ...job } = file as Json;
  if (!isTree(site)) return file;
  const near = (value: unknown, key: string, digits: number): unknown =>
    typeof value === 'number' ? rounded(value * (1 + SPREAD * (2 * draw(key) - 1)), digits) : value;
  const { circuit } = site;
  const own = Object.entries(site).map(([name, value]): readonly [string, unknown] => {
    switch (name) {
      case 'voltage':
        return [name, VOLTS.least + Math.floor((VOLTS.most - VOLTS.least + 1) * draw('volts'))];
      case 'loopImpedance':
        return [name, near(value, name, 2)];
      case 'electrodeResistance':
        return [name, near(value, name, 0)];
      case 'circuit':
        return [name, isTree(circuit) ? { ...circuit, length: near(circuit.length, 'length', 0) } : circuit];
      default:
        return [name, value];
    }
  });
  return { ...job, site: Object.fromEntries(own), seed };
}

/** At least one of its last digit: a length or a resistance is never nothing. */
function rounded(value: number, digits: number): number {
  const scale = Number(`1e${digits}`);
  return Math.max(1, Math.round(value * scale)) / scale;
}

/** Which of so many variants a learner gets. */
export const variantFor = (word: string, label: string, count: number): number =>
  count === 0 ? 0 : Number.parseInt(digestOf([plainWord(word), plainWord(label)]).slice(0, 8), 16) % count;
