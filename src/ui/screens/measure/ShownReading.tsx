/** A reading as the instrument shows it: figure, uncertainty, what belongs to it. */
import { memo } from 'react';
import type { Reading } from '../../../bench/reading.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { readingTitle } from '../../../words/readings.ts';
import { furtherFacts, shownText, uncertaintyText } from '../../format/figures.ts';

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
