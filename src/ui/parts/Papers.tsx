/** The installation by its papers, as a sheet with its title block: nothing on it was measured. */
import { siteLines } from '../../scenario/words.ts';
import { Installation } from '../drawing/Installation.tsx';
import type { Bench } from '../flow/bench.ts';
import { benchTime } from '../words/figures.ts';
import { SheetLines } from './SheetLines.tsx';

export function Papers({ bench }: { readonly bench: Bench }) {
  const { scenario, papers, attempt } = bench.run;
  return (
    <section className="sheet" aria-labelledby="papers-heading">
      <div className="stack">
        <h2 id="papers-heading">Installation</h2>
        <p>{scenario.brief}</p>
        <Installation bench={bench} />
        <SheetLines lines={siteLines(papers)} />
      </div>
      <dl className="title-block">
        <div>
          <dt>job</dt>
          <dd>{scenario.title}</dd>
        </div>
        <div>
          <dt>rules</dt>
          <dd>{scenario.rules}</dd>
        </div>
        <div>
          <dt>bench time</dt>
          <dd>{benchTime(attempt.entries.at(-1)?.at ?? 0)}</dd>
        </div>
        <div>
          <dt>training only</dt>
          <dd>no certificate, no competence</dd>
        </div>
      </dl>
    </section>
  );
}
