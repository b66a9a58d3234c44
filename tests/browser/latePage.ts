/**
 * A page that answers late, where it is asked for: CHARGE_TRAINER_LATE=150 puts off by so many ms whatever the page does
 * after a press and not with it: drawing what can wait, working out, reading what is kept. A test that looks before the
 * page has answered then fails each time, which a quick machine would tell now and then. Unlike a slower device it takes
 * no more of the machine.
 */
import type { BrowserContext } from 'playwright-core';

const LATE_MS = Number(process.env.CHARGE_TRAINER_LATE ?? 0);

export async function lateAsAsked(context: BrowserContext): Promise<void> {
  if (LATE_MS > 0) await context.addInitScript(putOff, LATE_MS);
}

function putOff(late: number): void {
  const soon = setTimeout;
  const putOffTimer = (then: TimerHandler, ms = 0, ...given: unknown[]) => soon(then, ms + late, ...given);
  window.setTimeout = putOffTimer as typeof setTimeout;
  // What a library draws in slices goes through a port of its own.
  const { postMessage } = MessagePort.prototype;
  MessagePort.prototype.postMessage = function (this: MessagePort, ...given: unknown[]) {
    soon(() => Reflect.apply(postMessage, this, given), late);
  };
  const { addEventListener: listen } = EventTarget.prototype;
  IDBOpenDBRequest.prototype.addEventListener = function (type: string, told: unknown, options?: unknown) {
    const later = (event: Event) => soon(() => (told as (event: Event) => void)(event), late);
    listen.call(this, type, type === 'success' ? later : (told as EventListener), options as boolean);
  };
}
