/** Step three of a test: what was seen and heard since the lock, the readings and their record, and what else is done. */

import { useEffect, useState } from 'react';
import type { EntryOf } from '../../../attempt/attempt.ts';
import type { Line } from '../../../attempt/lines.ts';
import type { OperationInput } from '../../../bench/operation.ts';
import type { Papers } from '../../../verification/testAction.ts';
import type { InWords } from '../../../words/actions.ts';
import type { Bench, Note } from '../../flow/bench.ts';
import { lastProof, perceived, runningStartDelay } from '../../flow/known.ts';
import type { Measuring } from '../../flow/useMeasuring.ts';
import { Why } from '../../parts/Why.tsx';
import { answerText } from '../../words/answers.ts';
import { benchTime, shownText } from '../../words/figures.ts';
import { readingTitle } from '../../words/trade.ts';
import { Do } from './Do.tsx';
import { Measure } from './Measure.tsx';
import { Readings } from './Readings.tsx';
import { numberedSince } from './records.ts';

interface Props {
  readonly bench: Bench;
  readonly papers: Papers;
  readonly test: string;
  readonly since: number;
  readonly prediction: EntryOf<'prediction'> | undefined;
  readonly lines: readonly InWords<Line>[];
  /** Whether each line's reason can be unfolded once it is locked. */
  readonly tellsWhy: boolean;
  readonly failed: string | null;
  readonly measuring: Measuring;
  readonly onDo: (operation: OperationInput) => void;
  readonly onNote: (note: Note) => void;
}

export function Observe({
  bench,
  papers,
  test,
  since,
  prediction,
  lines,
  tellsWhy,
  failed,
  measuring,
  onDo,
  onNote,
}: Props) {
  const groups = numberedSince(bench, test, since);
  const first = bench.happened.findIndex(({ entry }) => entry > since);
  const noticed = first < 0 ? [] : perceived(bench.happened, first);
  return (
    <div className="wide-stack">
      {prediction === undefined ? null : <Said prediction={prediction} lines={lines} tellsWhy={tellsWhy} />}
      <section aria-labelledby="noticed-heading">
        <h3 id="noticed-heading">Seen and heard since you locked</h3>
        {noticed.length === 0 ? (
          <p className="note">nothing</p>
        ) : (
          <ul className="choices note">
            {noticed.map(({ at, text, heavy }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a log that only grows
              <li key={i}>
                {benchTime(at)} {heavy ? <strong>{text}</strong> : text}
              </li>
            ))}
          </ul>
        )}
      </section>
      {failed === null ? null : (
        <p className="error" role="alert">
          <strong>The bench could not work this out.</strong>
          {failed} Your attempt up to here is kept and can be exported.
        </p>
      )}
      <section aria-labelledby="readings-heading">
        <h3 id="readings-heading">Readings</h3>
        <Readings run={bench.run} test={test} groups={groups} onNote={onNote} />
      </section>
      <Announcer bench={bench} />
      <Measure bench={bench} site={papers.site} measuring={measuring} onApply={onDo} />
      <Do papers={papers} startDelay={runningStartDelay(bench)} lastProof={lastProof(bench)} onDo={onDo} />
    </div>
  );
}

interface SaidProps {
  readonly prediction: EntryOf<'prediction'>;
  readonly lines: readonly InWords<Line>[];
  readonly tellsWhy: boolean;
}

/** What was locked, to be unfolded while the readings come in. */
function Said({ prediction, lines, tellsWhy }: SaidProps) {
  const { at, sure, given } = prediction;
  return (
    <details className="note">
      <summary>
        locked {benchTime(at)}
        {given ? ': what was given' : `${sure === null ? '' : `, ${sure} sure`}: what you said`}
      </summary>
      <ul className="choices">
        {prediction.lines.map(({ id, answer }) => (
          <li key={id}>
            {lines.find((line) => line.id === id)?.text ?? id}: <strong>{answerText(answer)}</strong>
            {tellsWhy ? <Why line={lines.find((line) => line.id === id)} /> : null}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Says each new reading, and each thing seen or heard, once. Its number and time make it new where all else is as before. */
function Announcer({ bench }: { readonly bench: Bench }) {
  const [before] = useState(bench.happened.length);
  const [text, setText] = useState('');
  const last = bench.happened.at(-1);
  const count = bench.happened.length;
  useEffect(() => {
    if (count <= before || last === undefined) return;
    const { readings } = last.outcome;
    const numbered = bench.run.readings.length - readings.length + 1;
    const held = readings.map((r, i) => `Reading ${numbered + i}: ${readingTitle(r)}: ${shownText(r)}`);
    const noticed = perceived(bench.happened, count - 1).map((p) => p.text);
    setText([...held, ...noticed].join('. ') || `Done, ${benchTime(last.at)}. Nothing seen or heard.`);
  }, [count, before, last, bench]);
  return (
    <p role="status" className="unseen">
      {text}
    </p>
  );
}
