/**
 * The goal for next time: one is kept, and shown on the first screen and in the record. In a debrief the suggested
 * one can be kept as it is, or one's own written in its place.
 */
import type { FormEvent } from 'react';
import { useEffect, useState } from 'react';
import type { KeepProblem } from '../../store/keepProblem.ts';
import { problemOf } from '../../store/keepProblem.ts';
import { keepGoal, keptGoal } from '../../store/keptRecord.ts';
import type { Goal } from '../../store/recordText.ts';
import { wellFormed } from '../../store/wellFormed.ts';
import { WHY_NOT_KEPT } from '../../words/keeping.ts';
import { TextField } from './TextField.tsx';

const LONGEST = 300;

interface Props {
  /** What the debrief found; without it only one's own is written. */
  readonly suggested?: string;
  /** The tests that the suggested one speaks of: the first screen leads to them. */
  readonly tests?: readonly string[];
  /** The goal that is kept, where it has been read already: then nothing moves when it is read again. */
  readonly kept?: string | null;
}

export function GoalKeeper({ suggested, tests = [], kept: first = null }: Props) {
  const [goal, setGoal] = useState<string | null>(first);
  const [problem, setProblem] = useState<KeepProblem | null>(null);
  const [isWriting, setIsWriting] = useState(false);
  useEffect(() => {
    let isStale = false;
    keptGoal().then(
      (kept) => !isStale && setGoal(kept?.text ?? null),
      // The page has said already that nothing is kept here.
      () => {},
    );
    return () => {
      isStale = true;
    };
  }, []);
  const keep = async (text: string | null) => {
    try {
      await keepGoal(text === null ? null : goalOf(text, text === suggested ? tests : []));
      setGoal(text);
      setIsWriting(false);
      setProblem(null);
    } catch (error) {
      setProblem(problemOf(error));
    }
  };
  const isSuggestedKept = suggested !== undefined && goal === suggested.slice(0, LONGEST);
  return (
    <div className="stack">
      {suggested === undefined ? null : <p>{suggested}</p>}
      {goal === null ? (
        suggested === undefined ? (
          <p className="note">No goal is kept. A debrief suggests one, or write your own.</p>
        ) : null
      ) : isSuggestedKept ? (
        <p className="note" role="status">
          Kept as your goal: it stands on the first page and in My record.
        </p>
      ) : (
        <p>
          <span className="note">Your goal: </span>
          <strong>{goal}</strong>
        </p>
      )}
      {isWriting ? (
        <OwnGoal
          first={suggested === undefined ? (goal ?? '') : ''}
          onKeep={(text) => void keep(text)}
          onBack={() => setIsWriting(false)}
        />
      ) : (
        <div className="acts">
          {suggested === undefined || isSuggestedKept ? null : (
            <button type="button" onClick={() => void keep(suggested)}>
              Keep this goal
            </button>
          )}
          <button type="button" onClick={() => setIsWriting(true)}>
            Write my own
          </button>
          {goal === null || suggested !== undefined ? null : (
            <button type="button" className="plain" onClick={() => void keep(null)}>
              Put the goal away
            </button>
          )}
        </div>
      )}
      {problem === null ? null : (
        <p className="error" role="alert">
          <strong>Not kept.</strong>
          {WHY_NOT_KEPT[problem]}
        </p>
      )}
    </div>
  );
}

const goalOf = (text: string, tests: readonly string[]): Goal => ({
  text: wellFormed(text.slice(0, LONGEST)),
  at: Date.now(),
  ...(tests.length === 0 ? {} : { tests }),
});

interface OwnProps {
  readonly first: string;
  readonly onKeep: (text: string) => void;
  readonly onBack: () => void;
}

function OwnGoal({ first, onKeep, onBack }: OwnProps) {
  const [text, setText] = useState(first);
  const [tried, setTried] = useState(false);
  const isEmpty = text.trim() === '';
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (!isEmpty) onKeep(text.trim());
  };
  return (
    <form className="stack" onSubmit={submit} noValidate>
      <TextField
        label="my goal for next time"
        value={text}
        maxLength={LONGEST}
        error={tried && isEmpty ? 'A goal in a few words is expected.' : null}
        onChange={setText}
      />
      <div className="acts">
        <button type="submit" className="main">
          Keep my goal
        </button>
        <button type="button" className="plain" onClick={onBack}>
          Back
        </button>
      </div>
    </form>
  );
}
