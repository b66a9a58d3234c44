/** A reading as the instrument shows it: figure, uncertainty, what belongs to it; and its trace where it has one. */
import { memo } from 'react';
import type { Reading } from '../../../bench/reading.ts';
import { readingTitle } from '../../../words/readings.ts';
import { TraceView } from '../../drawing/traces/TraceView.tsx';
import { traceOf } from '../../drawing/traces/traceOf.ts';
import { benchTime, furtherFacts, shownText, uncertaintyText } from '../../format/figures.ts';

interface Props {
  readonly reading: Reading;
}

export const ShownReading = memo(function ShownReading({ reading }: Props) {
  return (
    <div>
      <p className="reading-title note">
        <span>{readingTitle(reading)}</span>
        <span>{benchTime(reading.at)}</span>
      </p>
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
    </div>
  );
});

interface TraceProps extends Props {
  /** Bench time that its act took, s. */
  readonly took: number;
}

/** Typing beside it does not draw it anew. */
export const ReadingTrace = memo(function ReadingTrace({ reading, took }: TraceProps) {
  const trace = traceOf(reading, took);
  return trace === null ? null : <TraceView trace={trace} />;
});
