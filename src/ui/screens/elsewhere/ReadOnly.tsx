/** An attempt that another tab holds, as it was kept when it was opened here: to be looked at, not worked on. */
import type { ReactNode } from 'react';
import { standsText } from '../../../words/stands.ts';
import type { Bench } from '../../flow/bench.ts';
import type { Place } from '../../flow/place.ts';
import { standsAt } from '../../flow/place.ts';
import { ExportButton } from '../../parts/ExportButton.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { Papers } from '../../parts/Papers.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { Head } from '../bench/Head.tsx';
import { Known } from '../bench/Known.tsx';
import { YourTests } from '../bench/YourTests.tsx';

interface Props {
  readonly bench: Bench;
  readonly place: Place;
  readonly onTakeOver: () => void;
  readonly onReadAgain: () => void;
}

export function ReadOnly({ bench, place, onTakeOver, onReadAgain }: Props) {
  const { attempt } = bench.run;
  return (
    <ToRead bench={bench}>
      <p>
        Open in another tab, which stood here when this was read:{' '}
        <strong>{standsText(standsAt(place))}</strong>. Nothing can be done or changed here.
      </p>
      <div className="acts">
        <button type="button" className="main" onClick={onReadAgain}>
          Read it anew
        </button>
        <button type="button" onClick={onTakeOver}>
          Take it over
        </button>
        <ExportButton attempt={attempt} />
      </div>
    </ToRead>
  );
}

/** The bench as its log has it, with nothing on it to press; what stands above it is the caller's. */
export function ToRead({ bench, children }: { readonly bench: Bench; readonly children: ReactNode }) {
  const heading = useFocus<HTMLHeadingElement>();
  const { scenario } = bench.run;
  return (
    <div className="bench">
      <Head bench={bench} keepFailed={false} />
      <main className="columns">
        <section className="card-column stack" aria-labelledby="reading-heading">
          <h2 id="reading-heading" ref={heading} tabIndex={-1}>
            Read only
          </h2>
          {children}
        </section>
        <div className="wide-stack beside">
          <Papers scenario={scenario} papers={bench.run.papers} />
          <div className="strip-known">
            <Known bench={bench} />
          </div>
          <YourTests bench={bench} />
        </div>
      </main>
      <Foot />
    </div>
  );
}
