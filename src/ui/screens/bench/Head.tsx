/** The head line of bench and conclusion: which job, by which rules, and the buttons that are always at hand. */
import { memo, useState } from 'react';
import { rungOf } from '../../../attempt/record/rung.ts';
import { sheetLines } from '../../../words/papers.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { editionNamed } from '../../../words/sources.ts';
import type { Bench } from '../../flow/bench.ts';
import { DESK, useMatches } from '../../flow/useMatches.ts';
import { CAUTION_LINE, Cautions } from '../../parts/Cautions.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { FootLinks } from '../../parts/Foot.tsx';
import { HandedOverSheet } from '../../parts/HandedOverSheet.tsx';
import { NotKept } from '../../parts/NotKept.tsx';
import { Papers } from '../../parts/Papers.tsx';
import { SheetLines } from '../../parts/SheetLines.tsx';
import { YourTests } from './YourTests.tsx';

interface Props {
  readonly bench: Bench;
  readonly keepFailed: boolean;
  readonly onStop?: () => void;
  /** Where it was come from. */
  readonly from?: WayBack | undefined;
}

export interface WayBack {
  readonly href: string;
  /** In a word, as a phone has room for. */
  readonly name: string;
}

const JOBS: WayBack = { href: '#/', name: 'Jobs' };

export const Head = memo(function Head({ bench, keepFailed, onStop, from = JOBS }: Props) {
  const [shown, setShown] = useState<'cautions' | 'sheet' | 'papers' | null>(null);
  const { scenario, papers, attempt } = bench.run;
  const isDesk = useMatches(DESK);
  return (
    <header className="head">
      <a href={from.href} className="head-back">
        {from.name}
      </a>
      <div className="head-title">
        <h1>{scenario.title}</h1>
        <p>
          <span className="head-more">{editionNamed(scenario.rules)} · </span>
          {RUNG_NAMES[rungOf(scenario.support, attempt)]} · <strong>training only</strong>
        </p>
      </div>
      <div className="head-acts">
        <button type="button" onClick={() => setShown('cautions')}>
          Cautions
        </button>
        <button type="button" onClick={() => setShown('sheet')}>
          Unit’s sheet
        </button>
        <button type="button" onClick={() => setShown('papers')}>
          Papers
        </button>
        {onStop === undefined ? null : (
          <button type="button" className="strong" onClick={onStop} aria-haspopup="dialog">
            Stop…
          </button>
        )}
      </div>
      {keepFailed ? <NotKept attempt={attempt} /> : null}
      {shown === 'cautions' ? <Cautions rules={scenario.rules} onClose={() => setShown(null)} /> : null}
      {shown === 'papers' ? (
        <Dialog title="Papers and your tests" closeWith="Back" onClose={() => setShown(null)}>
          <div className="wide-stack">
            <p className="note prose">{CAUTION_LINE}</p>
            <Papers scenario={scenario} papers={papers} />
            <section className="stack" aria-labelledby="extract-heading">
              <h3 id="extract-heading">Unit’s sheet</h3>
              <SheetLines lines={sheetLines(papers)} />
            </section>
            <HandedOverSheet handedOver={bench.run.handedOver} />
            {isDesk ? null : <YourTests bench={bench} />}
          </div>
          <div className="foot">
            <FootLinks />
          </div>
        </Dialog>
      ) : null}
      {shown === 'sheet' ? (
        <Dialog title="Unit’s sheet" closeWith="Back" onClose={() => setShown(null)}>
          <p className="note">The maker’s extract.</p>
          <SheetLines lines={sheetLines(papers)} />
        </Dialog>
      ) : null}
    </header>
  );
});
