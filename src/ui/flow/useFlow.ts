/**
 * An attempt's flow for the screens. What is typed and written shows at once; what turns the page, or acts on the bench,
 * is drawn in slices, so that the press itself is answered first. The flow has gone on by then, so that a second press
 * on a page that is about to go does nothing.
 */
import { useActorRef } from '@xstate/react';
import { startTransition, useCallback, useEffect, useState } from 'react';
import type { InputFrom } from 'xstate';
import type { AttemptActor, AttemptState } from './attemptMachine.ts';
import { attemptMachine } from './attemptMachine.ts';

type Send = AttemptActor['send'];

const DRAWN_IN_SLICES: ReadonlySet<Parameters<Send>[0]['type']> = new Set([
  'choose',
  'ready',
  'leave',
  'back',
  'lock',
  'do',
  'judge',
  'judged',
  'next',
  'stopped',
  'conclude',
  'concluded',
]);

export function useFlow(input: InputFrom<typeof attemptMachine>): readonly [AttemptState, Send] {
  const actor = useActorRef(attemptMachine, { input });
  const [state, setState] = useState<AttemptState>(() => actor.getSnapshot());
  useEffect(() => {
    const { unsubscribe } = actor.subscribe(setState);
    // What came before anybody listened.
    setState(actor.getSnapshot());
    return unsubscribe;
  }, [actor]);
  const send: Send = useCallback(
    (event) => {
      if (DRAWN_IN_SLICES.has(event.type)) startTransition(() => actor.send(event));
      else actor.send(event);
    },
    [actor],
  );
  return [state, send];
}
