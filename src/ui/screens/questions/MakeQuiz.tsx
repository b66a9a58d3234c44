/** A quiz for others: topics, number, seed, minutes, sure or not; a link, a file, a sheet on paper with its key, a table, a package. */
import { zipSync } from 'fflate';
import { useMemo, useState } from 'react';
import { givingText, quizGiving } from '../../../desk/giving.ts';
import type { SetQuiz } from '../../../quiz/setQuiz.ts';
import { questionsOf, readQuiz } from '../../../quiz/setQuiz.ts';
import type { AimId } from '../../../scenario/aims.ts';
import { AIMS, GREATEST_SEED } from '../../../scenario/aims.ts';
import type { Problem } from '../../../scenario/problems.ts';
import { keepGiving } from '../../../store/givings.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { inWords } from '../../../words/problems.ts';
import { quizCsv, quizQti } from '../../../words/quizRows.ts';
import { anySeed } from '../../flow/aimLinks.ts';
import type { FigureRange } from '../../format/ranges.ts';
import { figureWithin, rangeText } from '../../format/ranges.ts';
import { download } from '../../parts/download.ts';
import { FigureField } from '../../parts/FigureField.tsx';
import { OpenFile } from '../../parts/OpenFile.tsx';
import { ProblemList } from '../../parts/Problems.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { setLink } from './asked.ts';
import { QuizSheet } from './QuizSheet.tsx';

const COUNT = { least: 1, greatest: 60, unit: 'questions' };
const MINUTES = { least: 1, greatest: 240, unit: 'minutes' };
const SEED = { least: 0, greatest: GREATEST_SEED, unit: 'as a whole number' };

function wholeWithin(text: string, range: FigureRange): number | null {
  const value = figureWithin(text, range);
  return value === null || !Number.isInteger(value) ? null : value;
}

export function MakeQuiz() {
  const [title, setTitle] = useState('');
  const [count, setCount] = useState('10');
  const [minutes, setMinutes] = useState('15');
  const [seed, setSeed] = useState(() => String(anySeed()));
  const [sure, setSure] = useState(true);
  const [topics, setTopics] = useState<readonly AimId[]>([]);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [printing, setPrinting] = useState<'sheet' | 'key'>('sheet');
  /** As it was when it was given out: the tutor's own copy decides when it comes back. */
  const [given, setGiven] = useState<{ quiz: SetQuiz; isKept: boolean } | null>(null);
  const howMany = wholeWithin(count, COUNT);
  const whichSeed = wholeWithin(seed, SEED);
  const howLong = wholeWithin(minutes, MINUTES);
  const quiz = useMemo((): SetQuiz | null => {
    if (howMany === null || whichSeed === null || (minutes.trim() !== '' && howLong === null)) return null;
    const chosen = AIMS.map(({ id }) => id).filter((id) => topics.includes(id));
    return {
      format: 1,
      title: title.trim(),
      ...(chosen.length === 0 ? {} : { topics: chosen }),
      count: howMany,
      seed: whichSeed,
      minutes: howLong,
      sure,
    };
  }, [title, howMany, whichSeed, howLong, minutes, sure, topics]);
  const giveOut = (made: SetQuiz) =>
    keepGiving(quizGiving(made, Date.now())).then(
      () => setGiven({ quiz: made, isKept: true }),
      () => setGiven({ quiz: made, isKept: false }),
    );
  const asked = useMemo(() => (quiz === null ? [] : questionsOf(quiz)), [quiz]);
  const open = async (file: File) => {
    const read = readQuiz(await file.text());
    if (!read.ok) return setProblems(read.problems);
    const { value } = read;
    setProblems([]);
    setTitle(value.title);
    setCount(String(value.count));
    setMinutes(value.minutes === null ? '' : String(value.minutes));
    setSeed(String(value.seed));
    setSure(value.sure);
    setTopics(value.topics ?? []);
  };
  const name = `quiz-${(title.trim() || 'of-questions').replaceAll(/[^\p{L}\p{N}-]+/gu, '-')}`;
  const paper = (what: 'sheet' | 'key') => {
    setPrinting(what);
    // After the sheet stands there.
    setTimeout(() => print());
  };
  const qti = (made: SetQuiz) => {
    const files = Object.fromEntries(
      Object.entries(quizQti(made)).map(([file, text]) => [file, new TextEncoder().encode(text)]),
    );
    // The same bytes for the same quiz.
    download(`${name}-qti.zip`, zipSync(files, { mtime: new Date(1980, 0, 1, 12) }), 'application/zip');
  };
  return (
    <div className="make-quiz columns one">
      <div className="stack not-printed">
        <h2>Set a quiz</h2>
        <p className="note">
          The same link asks everybody the same questions. Nothing is told before the end; what is handed in
          is marked by replay.
        </p>
        <TextField label="title" value={title} maxLength={120} onChange={setTitle} />
        <div className="fields short">
          <FigureField label="how many" range={COUNT} value={count} onChange={setCount} />
          <TextField
            label="minutes, if any"
            numeric
            value={minutes}
            error={minutes.trim() === '' || howLong !== null ? null : rangeText(MINUTES)}
            onChange={setMinutes}
          />
          <FigureField label="seed" range={SEED} value={seed} onChange={setSeed} />
        </div>
        <label className="tick">
          <input type="checkbox" checked={sure} onChange={(event) => setSure(event.target.checked)} />
          ask how sure
        </label>
        <fieldset>
          <legend>topics; none ticked: all twelve</legend>
          <div className="topic-ticks">
            {AIMS.map(({ id }) => (
              <label key={id} className="tick">
                <input
                  type="checkbox"
                  checked={topics.includes(id)}
                  onChange={(event) =>
                    setTopics(event.target.checked ? [...topics, id] : topics.filter((one) => one !== id))
                  }
                />
                {AIM_WORDS[id].question}
              </label>
            ))}
          </div>
        </fieldset>
        {quiz === null ? (
          <p className="note">Every figure is needed first.</p>
        ) : (
          <>
            {given?.quiz === quiz ? (
              <>
                <p>
                  Link: <a href={setLink(quiz)}>{`${location.href.split('#')[0]}${setLink(quiz)}`}</a>
                </p>
                <p role="status">
                  {given.isKept ? (
                    <>
                      Given out. Your own copy is kept on this device: <i>Collect</i> marks by it. Save it as
                      well if you collect on another computer.
                    </>
                  ) : (
                    <>
                      <strong>This browser keeps nothing.</strong> Save your own copy: without it a changed
                      quiz is not noticed.
                    </>
                  )}
                </p>
                <div className="acts">
                  <button type="button" onClick={() => download(`${name}.json`, `${JSON.stringify(quiz)}\n`)}>
                    Write the quiz file
                  </button>
                  <button
                    type="button"
                    onClick={() => download(`${name}-tutor.json`, givingText(quizGiving(quiz, Date.now())))}
                  >
                    Save your own copy
                  </button>
                </div>
              </>
            ) : (
              <div className="acts">
                <button type="button" className="main" onClick={() => void giveOut(quiz)}>
                  Give it out
                </button>
              </div>
            )}
            <div className="acts">
              <button type="button" onClick={() => paper('sheet')}>
                Print the sheet
              </button>
              <button type="button" onClick={() => paper('key')}>
                Print the key
              </button>
              <button type="button" onClick={() => download(`${name}.csv`, quizCsv(quiz), 'text/csv')}>
                Write the key as a table (CSV)
              </button>
              <button type="button" onClick={() => qti(quiz)}>
                Write a package (QTI 3.0)
              </button>
            </div>
          </>
        )}
        <OpenFile label="Open a quiz file" onFile={(file) => void open(file)} />
        {problems.length === 0 ? null : (
          <div role="alert">
            <p className="error">
              <strong>Not opened.</strong> What stood here is unchanged.
            </p>
            <ProblemList problems={inWords(problems)} />
          </div>
        )}
      </div>
      {quiz === null ? null : <QuizSheet quiz={quiz} questions={asked} isKey={printing === 'key'} />}
    </div>
  );
}
