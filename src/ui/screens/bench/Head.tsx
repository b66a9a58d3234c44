/** The head line of bench and conclusion: which job, by which rules, and the buttons that are always at hand. */
import { memo, useState } from 'react';
import { rungOf } from '../../../attempt/rung.ts';
import { sheetLines } from '../../../scenario/words.ts';
import { editionNamed } from '../../../verification/rules/rules.ts';
import type { Bench } from '../../flow/bench.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { NotKept } from '../../parts/NotKept.tsx';
import { SheetLines } from '../../parts/SheetLines.tsx';
import { RUNG_NAMES } from '../../words/rungs.ts';
import { unitLine } from '../offered.ts';

interface Props {
  readonly bench: Bench;
  readonly keepFailed: boolean;
  readonly onStop?: () => void;
}

export const Head = memo(function Head({ bench, keepFailed, onStop }: Props) {
  const [shown, setShown] = useState<'cautions' | 'sheet' | null>(null);
  const { scenario, papers, attempt } = bench.run;
  return (
    <header className="head">
      <div className="head-title">
        <h1>{scenario.title}</h1>
        <p>
          {unitLine(scenario)} · {editionNamed(scenario.rules)} ·{' '}
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
        {onStop === undefined ? null : (
          <button type="button" className="strong" onClick={onStop} aria-haspopup="dialog">
            Stop…
          </button>
        )}
      </div>
      {keepFailed ? <NotKept attempt={attempt} /> : null}
      {shown === 'cautions' ? <Cautions rules={scenario.rules} onClose={() => setShown(null)} /> : null}
      {shown === 'sheet' ? (
        <Dialog title="Unit’s sheet" closeWith="Back" onClose={() => setShown(null)}>
          <p className="note">The maker’s extract.</p>
          <SheetLines lines={sheetLines(papers)} />
        </Dialog>
      ) : null}
    </header>
  );
});
