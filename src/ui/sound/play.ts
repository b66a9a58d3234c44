/** The sounds themselves, made of tones by Web Audio: no file is fetched, and none imitates a certain make. */
import type { Happened } from '../flow/bench.ts';
import type { Heard, Sound } from './heard.ts';
import { soundsOf } from './heard.ts';

/** What is asked of an audio context. */
export type Player = Pick<AudioContext, 'currentTime' | 'destination' | 'createOscillator' | 'createGain'>;

interface Tone {
  readonly type: OscillatorType;
  /** Hz at its beginning and its end. */
  readonly from: number;
  readonly to: number;
  /** After the sound's beginning, and how long, s. */
  readonly after: number;
  readonly lasts: number;
  /** Of full volume. */
  readonly level: number;
}

/** A heavy armature, a lighter one falling back, a small geared motor, a sprung latch. */
const TONES: Readonly<Record<Sound, readonly Tone[]>> = {
  'contactor in': [
    { type: 'square', from: 1400, to: 900, after: 0, lasts: 0.012, level: 0.12 },
    { type: 'sine', from: 130, to: 55, after: 0.004, lasts: 0.13, level: 0.5 },
  ],
  'contactor out': [
    { type: 'sine', from: 210, to: 90, after: 0, lasts: 0.07, level: 0.35 },
    { type: 'square', from: 1100, to: 700, after: 0.02, lasts: 0.01, level: 0.06 },
  ],
  'lock motor': [
    { type: 'sawtooth', from: 150, to: 185, after: 0, lasts: 0.32, level: 0.08 },
    { type: 'square', from: 900, to: 600, after: 0.32, lasts: 0.012, level: 0.1 },
  ],
  breaker: [
    { type: 'square', from: 2600, to: 1500, after: 0, lasts: 0.01, level: 0.2 },
    { type: 'triangle', from: 420, to: 160, after: 0.006, lasts: 0.06, level: 0.4 },
  ],
};

const SILENT = 0.0001;

/** Whatever of this makes a sound. */
export const playHappened = (player: Player, happened: readonly Pick<Happened, 'outcome'>[]): void =>
  play(player, soundsOf(happened));

export function play(player: Player, heard: readonly Heard[]): void {
  for (const { sound, after } of heard)
    for (const tone of TONES[sound]) sounded(player, tone, player.currentTime + after + tone.after);
}

function sounded(player: Player, { type, from, to, lasts, level }: Tone, at: number): void {
  const oscillator = player.createOscillator();
  const gain = player.createGain();
  oscillator.type = type;
  oscillator.frequency.setValueAtTime(from, at);
  oscillator.frequency.exponentialRampToValueAtTime(to, at + lasts);
  gain.gain.setValueAtTime(level, at);
  gain.gain.exponentialRampToValueAtTime(SILENT, at + lasts);
  oscillator.connect(gain).connect(player.destination);
  oscillator.start(at);
  oscillator.stop(at + lasts);
}
