/** The bench's sounds while they are switched on: of what happens from now on, never of what was before. */
import { useEffect, useRef, useSyncExternalStore } from 'react';
import { SOUND } from '../../store/choices.ts';
import type { Bench } from '../flow/bench.ts';

type Play = typeof import('./play.ts').playHappened;

/** Of this page: one context, which a browser lets sound once somebody has pressed something. */
let context: AudioContext | null = null;
let play: Promise<Play> | null = null;
let isOn = SOUND.kept() === 'on';
const listeners = new Set<() => void>();

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
};

/** The one switch: whether it is on, and what turns it. */
export function useSoundSwitch(): readonly [boolean, () => void] {
  const turn = () => {
    isOn = !isOn;
    SOUND.keep(isOn ? 'on' : 'off');
    if (isOn) void make([]);
    for (const listener of listeners) listener();
  };
  return [
    useSyncExternalStore(
      subscribe,
      () => isOn,
      () => false,
    ),
    turn,
  ];
}

function ready(): { readonly context: AudioContext; readonly play: Promise<Play> } {
  context ??= new AudioContext();
  play ??= import('./play.ts').then((module) => module.playHappened);
  return { context, play };
}

export function useSounds({ happened }: Bench): void {
  const before = useRef(happened.length);
  useEffect(() => {
    const since = happened.slice(before.current);
    before.current = happened.length;
    if (isOn && since.length > 0) void make(since);
  }, [happened]);
}

/** Without a device to sound on, or where its file does not come, the words beside the unit are all there is. */
async function make(happened: Bench['happened']): Promise<void> {
  try {
    const made = ready();
    await made.context.resume();
    (await made.play)(made.context, happened);
  } catch {
    play = null;
  }
}
