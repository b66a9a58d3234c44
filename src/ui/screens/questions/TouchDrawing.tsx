/** The bench's own drawing of one part, on which one terminal is touched, or two leads are put. */
import { useMemo } from 'react';
import type { Terminal } from '../../../bench/terminals.ts';
import type { OnDrawing } from '../../../quiz/question.ts';
import { askedSite } from '../../../quiz/site.ts';
import { Drawing } from '../../drawing/Drawing.tsx';
import { layoutOf } from '../../drawing/layout.ts';
import { leadLines } from '../../drawing/leadLines.ts';
import { planOf } from '../../drawing/plan.ts';
import { Terminals } from '../../drawing/Terminals.tsx';
import { positionAtStart } from '../../flow/position.ts';

interface Props {
  readonly drawing: OnDrawing;
  /** Terminals with a lead on them, or the one that was touched. */
  readonly touched: readonly Terminal[];
  readonly words: string;
  /** Null: it is answered. */
  readonly onTouch: ((terminal: Terminal) => void) | null;
  readonly onTakeOff: (terminal: Terminal) => void;
}

const nothingShut = () => false;

export function TouchDrawing({ drawing, touched, words, onTouch, onTakeOff }: Props) {
  const { site, part, plugged } = drawing;
  const { layout, plan } = useMemo(() => {
    const { papers } = askedSite(site);
    const position = { ...positionAtStart(papers.sheet), cover: 'open' as const, plugged };
    const shown = layoutOf(papers, position, part);
    return {
      layout: shown,
      plan: planOf({
        papers,
        position,
        now: position,
        removed: [],
        links: [],
        switchedAt: null,
        says: null,
        acts: false,
        layout: shown,
      }),
    };
  }, [site, part, plugged]);
  return (
    <div className="asked-drawing">
      <Drawing
        layout={layout}
        plan={plan}
        lines={leadLines(
          layout,
          touched.map((terminal) => [terminal]),
        )}
        instrument=""
        instrumentWords={words}
        whose={words}
        shut={nothingShut}
      >
        {onTouch === null ? null : (
          <Terminals
            layout={layout}
            stateOf={(terminal) => (touched.includes(terminal) ? 'a lead is on it' : 'free')}
            onTap={onTouch}
            onTakeOff={onTakeOff}
          />
        )}
      </Drawing>
    </div>
  );
}
