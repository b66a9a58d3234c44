/**
 * What of the bench can be heard with the sound on, by the events of its log alone: a contact or a motor that moved makes its
 * sound, and nothing else does. Each has its line in words as well (src/ui/flow/known.ts).
 */
import type { Happening } from '../../bench/world.ts';
import type { Happened } from '../flow/bench.ts';

export const SOUNDS = ['contactor in', 'contactor out', 'lock motor', 'breaker'] as const;
export type Sound = (typeof SOUNDS)[number];

/** Null: what makes no sound of its own here. */
const SOUND_OF: Readonly<Record<Happening['what'], Sound | null>> = {
  'contactor closed': 'contactor in',
  'contactor opened': 'contactor out',
  'plug locked': 'lock motor',
  'plug released': 'lock motor',
  'unit breaker tripped': 'breaker',
  'upstream device tripped': 'breaker',
  'circuit breaker tripped': 'breaker',
  'instrument fuse opened': null,
  'detector dark': null,
};

export interface Heard {
  readonly sound: Sound;
  /** After the first one, s, as it is played: a long wait between two is not sat through. */
  readonly after: number;
}

/** Two sounds are no further apart than this as they are played, and no closer than they can be told apart, s. */
const APART = { least: 0.12, most: 0.6 } as const;

export function soundsOf(happened: readonly Pick<Happened, 'outcome'>[]): readonly Heard[] {
  const heard: Heard[] = [];
  let last: number | null = null;
  for (const { what, at } of happened.flatMap(({ outcome }) => outcome.events)) {
    const sound = SOUND_OF[what];
    if (sound === null) continue;
    const gap = last === null ? 0 : Math.min(APART.most, Math.max(APART.least, at - last));
    heard.push({ sound, after: (heard.at(-1)?.after ?? 0) + gap });
    last = at;
  }
  return heard;
}
