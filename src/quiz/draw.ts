/** Questions by seed: the same to the last digit wherever they are drawn. */
import { drawer, inDrawnOrder } from '../bench/draw.ts';
import type { AimId } from '../scenario/aims.ts';
import { AIMS } from '../scenario/aims.ts';
import { diceFor } from './dice.ts';
import { KINDS, kindNamed } from './kinds.ts';
import type { Question } from './question.ts';

/** By its kind, its topic and its seed; null where there is no such kind, or not about this topic. */
export function question(kind: string, topic: AimId, seed: number): Question | null {
  const found = kindNamed(kind);
  if (found === undefined || !found.topics.includes(topic)) return null;
  const asked = found.ask(diceFor(`${kind} ${topic}`, seed), topic);
  return { ...asked, id: `${kind}.${topic}.${seed}`, kind, topic };
}

/** A question made again from its id; null where that is none. */
export function questionAgain(id: string): Question | null {
  const [kind = '', topic, seed] = id.split('.');
  const aim = AIMS.find((one) => one.id === topic);
  return aim === undefined || !/^\d{1,10}$/.test(seed ?? '') ? null : question(kind, aim.id, Number(seed));
}

/** Seeds a question may have. */
export const SEEDS = 2_147_483_647;

export interface Wanted {
  readonly count: number;
  readonly seed: number;
  /** Left out: all of them in turn. */
  readonly topics?: readonly AimId[];
}

/**
 * So many questions: topics in turn, in an order of the seed's; of a topic its kinds in turn, so that none comes twice
 * before all have come, and of these first one that no other topic has had; no two alike in one drawing.
 */
export function questions({ count, seed, topics = AIMS.map(({ id }) => id) }: Wanted): readonly Question[] {
  const draw = drawer(seed);
  const byShare = <T>(name: string, things: readonly T[], later = (_: T): number => 0): readonly T[] =>
    inDrawnOrder(things, (thing, i) => draw(`questions ${name} ${i}`) + later(thing));
  const order = byShare('topics', topics);
  const kindsOf = new Map(
    order.map((topic) => [
      topic,
      byShare(
        `kinds ${topic}`,
        KINDS.filter(({ topics: of }) => of.includes(topic)),
        // Those that every topic has come later, so that a short drawing is no list of the same three.
        ({ topics: of }) => (of.length > MOST_OF_OWN ? LATER : 0),
      ),
    ]),
  );
  const drawn: Question[] = [];
  const seen = new Set<string>();
  // How often each kind has had its turn, in all and by topic.
  const turns = new Map<string, number>();
  const turnsOf = (key: string): number => turns.get(key) ?? 0;
  for (let at = 0; drawn.length < count; at++) {
    const topic = order[at % order.length];
    if (topic === undefined) break;
    const [kind] = (kindsOf.get(topic) ?? []).toSorted(
      (a, b) => turnsOf(`${a.id} ${topic}`) - turnsOf(`${b.id} ${topic}`) || turnsOf(a.id) - turnsOf(b.id),
    );
    if (kind === undefined) break;
    for (const key of [kind.id, `${kind.id} ${topic}`]) turns.set(key, turnsOf(key) + 1);
    const one = unlike(kind.id, topic, `${seed} ${at}`, seen, draw);
    if (one === null) {
      // Every question that this kind has was asked: another takes its turn, until all are used up.
      if (at > MOST_TRIES * count + order.length * KINDS.length) break;
      continue;
    }
    drawn.push(one);
  }
  return drawn;
}

const MOST_TRIES = 20;
/** A kind of more topics than these is every topic's; so much later it comes, in shares of the order. */
const MOST_OF_OWN = 6;
const LATER = 0.4;

/** One of this kind that was not asked yet, by what it asks and not by its seed; null after some tries. */
function unlike(
  kind: string,
  topic: AimId,
  key: string,
  seen: Set<string>,
  draw: (key: string) => number,
): Question | null {
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    const one = question(kind, topic, Math.floor(SEEDS * draw(`question ${key} ${attempt}`)));
    if (one === null) return null;
    const { id: _, ...content } = one;
    const text = JSON.stringify(content);
    if (seen.has(text)) continue;
    seen.add(text);
    return one;
  }
  return null;
}
