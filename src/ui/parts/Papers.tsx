/** The installation by its papers, in words: nothing of it was measured. */
import { siteLines } from '../../scenario/words.ts';
import type { Bench } from '../flow/bench.ts';
import { SheetLines } from './SheetLines.tsx';

export function Papers({ bench }: { readonly bench: Bench }) {
  const { scenario, papers } = bench.run;
  return (
    <section className="stack" aria-labelledby="papers-heading">
      <div className="bar-title">
        <h2 id="papers-heading">Papers</h2>
        <span className="note">lengths, areas, earthing: not measured</span>
      </div>
      <p>{scenario.brief}</p>
      <SheetLines lines={siteLines(papers)} />
    </section>
  );
}
