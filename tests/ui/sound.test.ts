// Which sounds are made follows from the log's events alone, each kind by tones of its own; what makes no event is silent,
// and every sound has its line in words.
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Happening } from '../../src/bench/world.ts';
import { HAPPENINGS } from '../../src/bench/world.ts';
import type { Bench, Happened } from '../../src/ui/flow/bench.ts';
import { done, newBench } from '../../src/ui/flow/bench.ts';
import { perceived } from '../../src/ui/flow/whatIsKnown.ts';
import type { Heard, Sound } from '../../src/ui/sound/heard.ts';
import { SOUNDS, soundsOf } from '../../src/ui/sound/heard.ts';
import type { Player } from '../../src/ui/sound/play.ts';
import { play } from '../../src/ui/sound/play.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

interface Tone {
  readonly type: string;
  readonly from: number;
  readonly at: number;
}

/** An audio context that notes each tone and when it begins. */
function standIn(now: number): { readonly player: Player; readonly tones: Tone[] } {
  const tones: Tone[] = [];
  const node = { connect: (to: unknown) => to };
  const param = () => ({ setValueAtTime: () => {}, exponentialRampToValueAtTime: () => {} });
  const player = {
    currentTime: now,
    destination: node,
    createGain: () => ({ ...node, gain: param() }),
    createOscillator: () => {
      let from = 0;
      return {
        ...node,
        type: 'sine',
        frequency: { ...param(), setValueAtTime: (value: number) => (from = value) },
        start(at: number) {
          tones.push({ type: this.type, from, at });
        },
        stop: () => {},
      };
    },
  };
  return { player: player as unknown as Player, tones };
}

/** What it sounds like, by itself. */
function tonesOf(sound: Sound): readonly Tone[] {
  const { player, tones } = standIn(0);
  play(player, [{ sound, after: 0 }]);
  return tones;
}

const happening = (...events: readonly [Happening['what'], number][]): Pick<Happened, 'outcome'> => ({
  outcome: { events: events.map(([what, at]) => ({ what, at })) } as unknown as Happened['outcome'],
});

/** Harbour Mews, sound, after these operations. */
function benchAfter(id: string, ...inputs: readonly OperationInput[]): Bench {
  const { scenario, file } = scenarioNamed(id);
  return inputs.reduce<Bench>((bench, input) => done(bench, null, input, 0), newBench(scenario, file));
}
const soundsAfter = (bench: Bench, first = 0): readonly Sound[] =>
  soundsOf(bench.happened.slice(first)).map(({ sound }) => sound);

describe('by the log', () => {
  test('a contactor goes in and out, and nothing else is heard', () => {
    const bench = benchAfter(
      'harbour-mews',
      { op: 'wait', seconds: 60 },
      { op: 'vehicle', plugged: true, state: 'B' },
      { op: 'wait', seconds: 5 },
      { op: 'vehicle', state: 'C' },
      { op: 'wait', seconds: 5 },
      { op: 'vehicle', state: 'B' },
      { op: 'wait', seconds: 5 },
    );
    expect(soundsAfter(bench, 0)).toEqual(['contactor in', 'contactor out']);
    expect(soundsAfter(bench, 3)).toEqual(['contactor in', 'contactor out']);
    expect(soundsAfter(benchAfter('harbour-mews', { op: 'wait', seconds: 60 }))).toEqual([]);
  });

  test('what is heard is what happened, event by event', () => {
    for (const what of HAPPENINGS) {
      const { happened } = benchAfter('harbour-mews', { op: 'wait', seconds: 1 });
      const [last] = happened as [Happened];
      const one = { ...last, outcome: { ...last.outcome, events: [{ what, at: 1 }] } };
      const lines = perceived([one], 0).filter(({ text }) => text.startsWith('heard: '));
      expect(lines, what).toHaveLength(soundsOf([one]).length);
    }
  });
});

describe('as they are made', () => {
  test('every sound has tones of its own', () => {
    const made = SOUNDS.map((sound) => JSON.stringify(tonesOf(sound)));
    expect(new Set(made).size).toBe(SOUNDS.length);
    for (const tones of made) expect(tones).not.toBe('[]');
  });

  test('in the order of the events, each in its time, long waits left out', () => {
    const heard: readonly Heard[] = soundsOf([
      happening(['plug locked', 3], ['contactor closed', 3.4]),
      happening(['instrument fuse opened', 9], ['upstream device tripped', 100]),
    ]);
    expect(heard.map(({ sound }) => sound)).toEqual(['lock motor', 'contactor in', 'breaker']);
    expect(heard.map(({ after }) => Number(after.toFixed(3)))).toEqual([0, 0.4, 1]);
    const { player, tones } = standIn(20);
    play(player, heard);
    const expected = heard.flatMap(({ sound, after }) =>
      tonesOf(sound).map((tone) => ({ ...tone, at: tone.at + after + 20 })),
    );
    expect(tones.map(({ type, from }) => [type, from])).toEqual(
      expected.map(({ type, from }) => [type, from]),
    );
    for (const [i, { at }] of tones.entries()) expect(at).toBeCloseTo(expected[i]?.at ?? 0, 6);
  });
});
