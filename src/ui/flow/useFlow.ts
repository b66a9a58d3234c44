/**
 * An attempt's flow for the screens. What is typed or set shows at once; what acts on the bench, is written down or turns
 * the page is drawn in slices, so that the press itself is answered first. The flow has gone on by then: a second press on
 * the page that is about to go does nothing.
 */
import { useActorRef } from '@xstate/react';
import { startTransition, useCallback, useEffect, useState } from 'react';
import type { InputFrom } from 'xstate';
import type { AttemptActor, AttemptState } from './attemptMachine.ts';
import { attemptMachine } from './attemptMachine.ts';

type Send = AttemptActor['send'];

const DRAWN_IN_SLICES: ReadonlySet<Parameters<Send>[0]['type']> = new Set([
  'choose',
  'leave',
  'predict',
  'back',
  'lock',
  'do',
  'do in a row',
  'waited',
  'make safe',
  'note',
  'judge',
  'judge again',
  'judged',
  'next',
  'stop',
  'go on',
  'stopped',
  'conclude',
  'concluded',
]);

/** What is shown, what takes what is done, and the flow itself, which goes ahead of what is shown. */
export function useFlow(
  input: InputFrom<typeof attemptMachine>,
): readonly [AttemptState, Send, AttemptActor] {
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
  return [state, send, actor];
}
