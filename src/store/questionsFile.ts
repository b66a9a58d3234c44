/** What a record file says of questions, checked before it is taken. */
import * as v from 'valibot';
import { SURENESS } from '../attempt/record/attempt.ts';
import { givenSchema } from '../quiz/given.ts';
import type { AimId } from '../scenario/aims.ts';
import { AIMS } from '../scenario/aims.ts';

/** Milliseconds since 1970, as far as a date goes. */
const moment = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(8.64e15));
const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e6));
const text = v.pipe(v.string(), v.maxLength(100));
const share = v.pipe(v.number(), v.finite(), v.minValue(0));
const topics = AIMS.map(({ id }) => id) as [AimId, ...AimId[]];

/** More cards than there are topics and misconceptions. */
const MOST_CARDS = 5000;
const MOST_QUESTIONS = 200;

const card = v.object({
  due: moment,
  last: moment,
  stability: share,
  difficulty: share,
  scheduledDays: count,
  reps: count,
  lapses: count,
  state: v.picklist([0, 1, 2, 3]),
  topic: v.picklist(topics),
  kind: v.nullable(text),
  mistake: v.nullable(text),
  asked: count,
  right: count,
  sureAndWrong: count,
  lastWrong: v.nullable(moment),
  kinds: v.record(text, moment),
});

const session = v.object({
  address: v.pipe(v.string(), v.maxLength(500)),
  ids: v.pipe(v.array(text), v.maxLength(MOST_QUESTIONS)),
  began: moment,
  answers: v.pipe(
    v.array(v.object({ given: givenSchema, sure: v.picklist(SURENESS), at: moment })),
    v.maxLength(MOST_QUESTIONS),
  ),
  at: count,
  due: v.record(text, v.pipe(v.string(), v.maxLength(300))),
});

export const questionsSchema = v.object({
  cards: v.pipe(v.array(card), v.maxLength(MOST_CARDS)),
  assessment: v.nullable(moment),
  session: v.nullable(session),
});
