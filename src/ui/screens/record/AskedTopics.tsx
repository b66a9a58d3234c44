/** Questions by topic: how many were right, when each comes back, and both ways on where something was wrong. */
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { AIMS } from '../../../scenario/aims.ts';
import type { KeptQuestions } from '../../../store/questionRecord.ts';
import { NO_QUESTIONS } from '../../../store/questionRecord.ts';
import { keptQuestions } from '../../../store/questions.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { aimLink, anySeed } from '../../flow/aimLinks.ts';
import { questionsLink } from '../../flow/questionsLink.ts';
import { backText } from '../../format/backText.ts';
import { dayMonthText } from '../../format/dates.ts';
import { TopicTable } from '../../parts/TopicTable.tsx';

/** `changes`: another number when it is to be read anew. */
export function AskedTopics({ changes }: { readonly changes: number }) {
  const [{ cards, assessment }, setKept] = useState<KeptQuestions>(NO_QUESTIONS);
  const [seed] = useState(anySeed);
  const [now] = useState(() => Date.now());
  // biome-ignore lint/correctness/useExhaustiveDependencies: a change is the very occasion
  useEffect(() => {
    let isStale = false;
    keptQuestions().then(
      (kept) => isStale || setKept(kept),
      () => {},
    );
    return () => {
      isStale = true;
    };
  }, [changes]);
  const topics = AIMS.flatMap(({ id }) => cards.filter(({ topic, kind }) => topic === id && kind === null));
  return (
    <section className="stack" aria-labelledby="asked-heading">
      <h2 id="asked-heading">Questions</h2>
      {topics.length === 0 ? (
        <p className="note">
          What you answer in <Link href="/questions">five minutes of questions</Link> stands here by topic,
          with when it comes back.
        </p>
      ) : (
        <TopicTable
          caption="Questions answered, by topic"
          rows={topics.map(({ topic, asked, right, due, last, lastWrong }) => ({
            topic,
            right,
            of: asked,
            back: backText({ due, last }, assessment, now),
            beside:
              lastWrong === null ? null : (
                <span className="note link-row">
                  <a href={`#${questionsLink([topic], 3, 'record')}`}>
                    Three questions<span className="unseen"> on {AIM_WORDS[topic].question}</span>
                  </a>{' '}
                  <a href={`#${aimLink(topic, 2, seed)}`}>
                    On a unit<span className="unseen">: {AIM_WORDS[topic].question}</span>
                  </a>
                </span>
              ),
          }))}
        />
      )}
      {topics.length > 0 && assessment !== null && assessment > now ? (
        <p className="note">
          Your assessment is on {dayMonthText(assessment)}: all comes back by the day before.
        </p>
      ) : null}
    </section>
  );
}
