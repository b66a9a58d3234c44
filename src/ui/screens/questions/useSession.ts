/** The session in hand: read from what is kept or made anew, and kept after every answer and every step. */
import { useCallback, useEffect, useState } from 'react';
import type { Sure } from '../../../attempt/record/attempt.ts';
import { questionAgain } from '../../../quiz/draw.ts';
import type { Given } from '../../../quiz/given.ts';
import { isRight, mistakeOf } from '../../../quiz/given.ts';
import type { Question } from '../../../quiz/question.ts';
import { sessionOf } from '../../../quiz/session.ts';
import { afterAnswer, dueCards, dueOf } from '../../../store/questionCards.ts';
import type { Card, KeptQuestions, KeptSession } from '../../../store/questionRecord.ts';
import { cardId } from '../../../store/questionRecord.ts';
import { anySeed } from '../../flow/aimLinks.ts';
import type { AskedFor } from './asked.ts';
import { keepInHand, readInHand } from './sessionInHand.ts';

export interface Session {
  readonly kept: KeptQuestions;
  readonly session: KeptSession;
  readonly questions: readonly Question[];
  /** Whether the last answer could be kept on this device. */
  readonly isKept: boolean;
}

export interface Answering {
  /** Null while it is being read. */
  readonly now: Session | null;
  readonly answer: (given: Given, sure: Sure) => void;
  readonly goOn: () => void;
  /** Ten others. */
  readonly again: () => void;
}

export function useSession(asked: AskedFor): Answering {
  const [now, setNow] = useState<Session | null>(null);
  useEffect(() => {
    let isStale = false;
    readInHand().then(({ kept, isKept }) => {
      if (isStale) return;
      const begun = goneOnWith(kept, asked) ?? begunAnew(kept, asked, Date.now());
      setNow({ kept, ...begun, isKept });
    });
    return () => {
      isStale = true;
    };
  }, [asked]);

  const keep = useCallback((next: Session, cards: readonly Card[]) => {
    setNow(next);
    keepInHand({ ...next.kept, session: next.session }, cards).then((isKept) =>
      setNow((one) => (one === null || one.isKept === isKept ? one : { ...one, isKept })),
    );
  }, []);

  const answer = (given: Given, sure: Sure) => {
    const question = now === null ? undefined : now.questions[now.session.at];
    // Settled at once: a second answer is none.
    if (now === null || question === undefined || now.session.answers.length > now.session.at) return;
    const { kept, session } = now;
    const at = Date.now();
    const answers = [...session.answers, { given, sure, at }];
    // Of a quiz that is set nothing is told, and nothing remembered.
    if (asked.set !== null) return keep({ ...now, session: { ...session, answers, at: session.at + 1 } }, []);
    const changed = afterAnswer(kept.cards, {
      question,
      isRight: isRight(question, given),
      mistake: mistakeOf(question, given),
      sure,
      now: at,
      assessment: kept.assessment,
    });
    const ids = new Set(changed.map(cardId));
    const cards = [...kept.cards.filter((card) => !ids.has(cardId(card))), ...changed];
    keep(
      {
        ...now,
        kept: { ...kept, cards },
        session: { ...session, answers },
      },
      changed,
    );
  };
  const goOn = () => {
    if (now === null || now.session.answers.length <= now.session.at) return;
    keep({ ...now, session: { ...now.session, at: now.session.at + 1 } }, []);
  };
  const again = () => {
    if (now === null) return;
    keep({ ...now, ...begunAnew(now.kept, { ...asked, seed: null }, Date.now()) }, []);
  };
  return { now, answer, goOn, again };
}

type Begun = Pick<Session, 'session' | 'questions'>;

/** Null where none is in hand for this address, it is at its end, or not all of it can be made again. */
function goneOnWith({ session }: KeptQuestions, { address, set }: AskedFor): Begun | null {
  if (session === null || session.address !== address) return null;
  // A quiz that is set stays at its end until it is handed in; other questions are asked anew.
  if (set === null && session.at >= session.ids.length) return null;
  const questions = session.ids.flatMap((id) => questionAgain(id) ?? []);
  return questions.length === session.ids.length ? { session, questions } : null;
}

/** A seed in the address asks for its drawing alone; without one what is due comes back. */
function begunAnew({ cards, assessment }: KeptQuestions, asked: AskedFor, now: number): Begun {
  const due = asked.seed === null ? dueCards(cards, assessment, now) : [];
  const questions = sessionOf(
    {
      count: asked.count,
      seed: asked.seed ?? anySeed(),
      ...(asked.topics === null ? {} : { topics: asked.topics }),
    },
    due.map(dueOf),
  );
  const why = questions.flatMap(({ id, topic, kind }) => {
    const card = due.find((one) => one.topic === topic && (one.kind === kind || one.kind === null));
    return card === undefined ? [] : [[id, cardId(card)]];
  });
  return {
    session: {
      address: asked.address,
      ids: questions.map(({ id }) => id),
      began: now,
      answers: [],
      at: 0,
      due: Object.fromEntries(why),
    },
    questions,
  };
}
