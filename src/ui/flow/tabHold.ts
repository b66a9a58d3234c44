/**
 * Which tab holds an attempt: one at a time. Browsers keep locks for that on safe addresses; on plain http the tabs
 * ask each other. Taking over ends the other tab's hold at once; what it still wants to keep is refused by the store.
 */

import { THIS_COPY } from '../../store/copy.ts';

/** A name that no other tab and no other attempt has. */
export const newName = (): string =>
  [...crypto.getRandomValues(new Uint8Array(10))].map((byte) => byte.toString(16).padStart(2, '0')).join('');

/** This tab, as long as it is open. */
export const TAB = newName();

export interface Hold {
  readonly release: () => void;
  /** Resolves when another tab has taken it over. */
  readonly lost: Promise<void>;
}

const PREFIX = `${THIS_COPY} attempt `;

/** Null where another tab holds it; with `take over` never null. */
export const takeHold = (id: string, how: 'ask' | 'take over'): Promise<Hold | null> =>
  locks === undefined ? byAsking(id, how) : byLock(locks, id, how);

/** On safe addresses only. */
const locks = navigator.locks as LockManager | undefined;

function byLock(manager: LockManager, id: string, how: 'ask' | 'take over'): Promise<Hold | null> {
  return new Promise((resolve) => {
    const { hold, lose, until } = newHold();
    const options = how === 'take over' ? { steal: true } : { ifAvailable: true };
    let wasHeld = false;
    manager
      .request(PREFIX + id, options, (lock) => {
        wasHeld = lock !== null;
        resolve(wasHeld ? hold : null);
        return wasHeld ? until : undefined;
      })
      .catch(() => {
        if (wasHeld) lose();
        // No locks are to be had, as with site data blocked: then nothing is kept either that two tabs could share.
        else resolve(hold);
      });
  });
}

/** Whether any tab, this one too, holds an attempt; false where that cannot be known. */
export async function isAnyHeld(): Promise<boolean> {
  const { held } = (await locks?.query().catch(() => null)) ?? {};
  return held?.some(({ name }) => name?.startsWith(PREFIX)) === true;
}

/** Long enough for a tab in the background to answer. */
const ANSWER_MS = 400;

interface Asked {
  readonly what: 'who holds it' | 'I hold it' | 'I take it over';
  readonly id: string;
  readonly tab: string;
}

async function byAsking(id: string, how: 'ask' | 'take over'): Promise<Hold | null> {
  if (!('BroadcastChannel' in globalThis)) return newHold().hold;
  const channel = new BroadcastChannel(THIS_COPY);
  const say = (what: Asked['what']) => channel.postMessage({ what, id, tab: TAB } satisfies Asked);
  const { hold, lose, until } = newHold();
  let isHeldElsewhere = false;
  channel.onmessage = ({ data }: MessageEvent<Asked>) => {
    if (data.id !== id) return;
    if (data.what === 'I hold it') isHeldElsewhere = true;
    // Of two tabs that ask at once, the one with the lower name has it.
    if (data.what === 'who holds it' && (isTaken || TAB < data.tab)) say('I hold it');
    if (data.what === 'I take it over') {
      channel.close();
      lose();
    }
  };
  let isTaken = how === 'take over';
  say(isTaken ? 'I take it over' : 'who holds it');
  if (!isTaken) await new Promise((resolve) => setTimeout(resolve, ANSWER_MS));
  if (isHeldElsewhere) {
    channel.close();
    return null;
  }
  isTaken = true;
  until.then(() => channel.close());
  return hold;
}

function newHold() {
  let release = () => {};
  let lose = () => {};
  const until = new Promise<void>((resolve) => {
    release = resolve;
  });
  const lost = new Promise<void>((resolve) => {
    lose = resolve;
  });
  return { hold: { release, lost } satisfies Hold, lose, until };
}
