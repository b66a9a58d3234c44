/**
 * Readings of the open test as the instruments show them, and what the trainee writes down of each. What is typed is
 * the record; the page never fills a value in. Readings of one act that look at many pairs share one table.
 */
import { useEffect, useRef } from 'react';
import type { Run } from '../../../attempt/run.ts';
import type { Reading } from '../../../bench/reading.ts';
import { TraceView } from '../../drawing/traces/TraceView.tsx';
import { traceOf } from '../../drawing/traces/traceOf.ts';
import type { Note } from '../../flow/bench.ts';
import { benchTime, furtherFacts, shownText, uncertaintyText } from '../../words/figures.ts';
import { readingTitle } from '../../words/trade.ts';
import { RecordPairs } from './RecordPairs.tsx';
import { RecordReading } from './RecordReading.tsx';
import type { Numbered } from './records.ts';
import { lastUnit, lastVolts, recordOf, recordText } from './records.ts';

interface Props {
  readonly run: Run;
  readonly test: string;
  /** Readings of the open test, those of one act together. */
  readonly groups: readonly (readonly Numbered[])[];
  readonly onNote: (note: Note) => void;
}

export function Readings({ run, test, groups, onNote }: Props) {
  const newest = useRef<HTMLDivElement>(null);
  const before = useRef(groups.length);
  useEffect(() => {
    if (groups.length > before.current)
      newest.current?.querySelector<HTMLElement>('form input, form select')?.focus();
    before.current = groups.length;
  }, [groups.length]);
  if (groups.length === 0) return <p className="note">Readings stand here once an instrument was applied.</p>;
  return (
    <div>
      {groups.map((group, i) => {
        const [only] = group;
        if (only === undefined) return null;
        return (
          <div key={only.index} ref={i === groups.length - 1 ? newest : null}>
            {group.length > 1 ? (
              <RecordPairs run={run} test={test} group={group} onNote={onNote} />
            ) : (
              <OneReading run={run} test={test} numbered={only} onNote={onNote} />
            )}
          </div>
        );
      })}
    </div>
  );
}

interface OneProps {
  readonly run: Run;
  readonly test: string;
  readonly numbered: Numbered;
  readonly onNote: (note: Note) => void;
}

function OneReading({ run, test, numbered, onNote }: OneProps) {
  const { reading, index, took } = numbered;
  const record = recordOf(run, index);
  const place = useRef<HTMLDivElement>(null);
  const before = useRef(record);
  // The fields go once they are written: the focus stays with their reading.
  useEffect(() => {
    if (record !== before.current) place.current?.querySelector<HTMLElement>('.acts > button')?.focus();
    before.current = record;
  }, [record]);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a reading and what is typed of it are no set of fields
    <div ref={place} className="reading stack" role="group" aria-label={readingTitle(reading)}>
      <div>
        <p className="reading-title note">
          <span>{readingTitle(reading)}</span>
          <span>{benchTime(reading.at)}</span>
        </p>
        <Shown reading={reading} />
      </div>
      <ReadingTrace reading={reading} took={took} isWritten={record !== undefined} />
      <RecordReading
        key={record === undefined ? 'open' : `${recordText(record)}`}
        reading={reading}
        record={record}
        unit={record?.unit ?? lastUnit(run, reading.quantity)}
        volts={lastVolts(run)}
        onRecord={(typed) => onNote({ kind: 'observation', test, reading: index, ...typed })}
      />
    </div>
  );
}

interface TraceProps {
  readonly reading: Reading;
  readonly took: number;
  readonly isWritten: boolean;
}

/** It folds away once the reading is written down, and its cursors stay where they were put. */
function ReadingTrace({ reading, took, isWritten }: TraceProps) {
  const trace = traceOf(reading, took);
  return trace === null ? null : (
    <details open={!isWritten}>
      <summary className="note" hidden={!isWritten}>
        Trace
      </summary>
      <TraceView trace={trace} />
    </details>
  );
}

function Shown({ reading }: { readonly reading: Reading }) {
  return (
    <div className="shown-facts">
      <p className="shown">
        {reading.quantity === 'pilot' ? <small>high </small> : null}
        {shownText(reading)} <small>{uncertaintyText(reading)}</small>
      </p>
      {furtherFacts(reading).map(({ term, text }) => (
        <p key={term} className="shown">
          <small>{term} </small>
          {text}
        </p>
      ))}
    </div>
  );
}
