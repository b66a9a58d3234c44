/**
 * The questions of one session: what is due comes back, in a question of its own with other figures, among new ones.
 * Where nothing is due it is the drawing of the seed alone, the same as on the command line.
 */
import { drawer, inDrawnOrder } from '../bench/draw.ts';
import type { AimId } from '../scenario/aims.ts';
import type { Wanted } from './draw.ts';
import { question, questions, SEEDS } from './draw.ts';
import { KINDS, kindNamed } from './kinds.ts';
import type { Question } from './question.ts';

/** A session of five minutes. */
export const SESSION = 10;

/** Something that comes back: a topic, or a kind that a misconception was met in. */
export interface Due {
  readonly topic: AimId;
  readonly kind: string | null;
  /** Kinds of this topic that were asked before, with when: the others, then the one longest ago comes first. */
  readonly asked: Readonly<Record<string, number>>;
}

/** So much of a session at most comes back; the rest is new, so that it stays mixed. */
const SHARE_DUE = 0.6;

/** `due`: what is due first stands first. No two questions are alike, and no kind and topic comes back twice. */
export function sessionOf(wanted: Wanted, due: readonly Due[] = []): readonly Question[] {
  const { count, seed, topics } = wanted;
  const draw = drawer(seed);
  const back: Question[] = [];
  for (const one of due) {
    if (back.length >= Math.round(SHARE_DUE * count)) break;
    if (topics !== undefined && !topics.includes(one.topic)) continue;
    const kind = kindFor(one, draw);
    const made =
      kind === null ? null : question(kind, one.topic, Math.floor(SEEDS * draw(`due ${kind} ${one.topic}`)));
    if (made !== null && !back.some((other) => isAlike(other, made))) back.push(made);
  }
  if (back.length === 0) return questions(wanted);
  // More than are wanted, since some may be of a kind that comes back.
  const fresh = questions({ ...wanted, count: count + back.length }).filter(
    (one) => !back.some((other) => isAlike(other, one)),
  );
  const all = [...back, ...fresh.slice(0, Math.max(0, count - back.length))];
  return inDrawnOrder(all, (_, i) => draw(`mixed ${i}`));
}

const isAlike = (a: Question, b: Question): boolean => a.kind === b.kind && a.topic === b.topic;

/** The kind that is to be asked; null where there is none of it any more. */
function kindFor({ topic, kind, asked }: Due, draw: (key: string) => number): string | null {
  if (kind !== null) return kindNamed(kind)?.topics.includes(topic) === true ? kind : null;
  const kinds = KINDS.filter(({ topics }) => topics.includes(topic)).map(({ id }) => id);
  const [first] = inDrawnOrder(kinds, (id) => draw(`kind due ${topic} ${id}`)).toSorted(
    (a, b) => (asked[a] ?? 0) - (asked[b] ?? 0),
  );
  return first ?? null;
}
