/**
 * The drawing on its sheet: on a desk the whole installation in a frame with zones and a title block, on a small screen
 * one part at a time in a plain frame, upright while something is set up. In the step Measure its terminals take leads.
 */
import { memo, useCallback, useMemo, useState } from 'react';
import type { Stage } from '../../verification/testAction.ts';
import { leadsWords } from '../../words/trade.ts';
import type { Bench } from '../flow/bench.ts';
import { leadOn, leadsOf, outOfReach } from '../flow/leads.ts';
import { hasLeads, instrumentWords } from '../flow/measurement.ts';
import type { Position } from '../flow/position.ts';
import type { Measuring } from '../flow/useMeasuring.ts';
import { END_WORDS } from '../flow/useMeasuring.ts';
import { Keys } from '../parts/Keys.tsx';
import { Drawing } from './Drawing.tsx';
import { Frame } from './Frame.tsx';
import type { HandsNow } from './Hands.tsx';
import { Hands } from './Hands.tsx';
import { Installation } from './Installation.tsx';
import type { Part } from './layout.ts';
import { PARTS } from './layout.ts';
import { leadLines, NO_LEADS, readingLabels } from './leadLines.ts';
import { benchScene } from './scene.ts';
import { fixedTerminal, shownPart } from './shownPart.ts';
import { STRIP, stripFigure } from './strip.ts';
import { Terminals } from './Terminals.tsx';
import { uprightFigure, uprightLayout } from './upright.ts';
import { useDrawn } from './useDrawn.ts';

/** How long the log is. */
const recordWords = ({ run: { attempt } }: Bench): string =>
  attempt.entries.length === 1 ? '1 entry' : `${attempt.entries.length} entries`;

interface Props {
  readonly bench: Bench;
  /** As set up, before the lock; else as things are. */
  readonly position: Position;
  readonly measuring: Measuring;
  /** The test in hand and its stage. */
  readonly test: string | null;
  readonly stage: Stage | undefined;
  /** Whether leads can be put on now. */
  readonly isOpen: boolean;
  /** Whether nothing is read before the lock. */
  readonly isSettingUp: boolean;
  /** What was done last, for the title block. */
  readonly standing: string;
  /** While something can be set up by touching it. */
  readonly hands?: HandsNow | null;
  /** What the instrument shows through the leads as they are now; it stands beside it. */
  readonly reading?: string | null;
  /**
   * All of the bench, one part of it, upright on a phone while a test is set up, or in one row without targets. Without
   * it, all where there is room and else a part.
   */
  readonly view: 'whole' | 'part' | 'upright' | 'strip';
}

export const Sheet = memo(function Sheet(props: Props) {
  const { view } = props;
  return view === 'upright' || view === 'strip' ? (
    <SmallSheet {...props} view={view} />
  ) : (
    <FullSheet {...props} />
  );
});

const nothingShut = () => false;

/** A phone's whole bench: nothing but the drawing. */
function SmallSheet({ bench, position, hands = null, view }: Props & { readonly view: 'upright' | 'strip' }) {
  const acts = hands !== null;
  const { happened, position: now } = bench;
  const { papers } = bench.run;
  const { layout, plan } = useMemo(() => {
    const scene = benchScene({ happened, position: now, papers }, position, acts);
    return view === 'strip'
      ? { layout: STRIP, plan: stripFigure(scene) }
      : { layout: uprightLayout(scene), plan: uprightFigure(scene) };
  }, [happened, now, papers, position, acts, view]);
  return (
    <Installation>
      <Drawing
        layout={layout}
        plan={plan}
        lines={NO_LEADS}
        instrument=""
        instrumentWords=""
        shut={nothingShut}
      >
        {hands === null ? null : <Hands layout={layout} position={position} {...hands} />}
      </Drawing>
    </Installation>
  );
}

function FullSheet(props: Props) {
  const { bench, position, measuring, test, stage, isOpen, isSettingUp, standing } = props;
  const { hands = null, reading = null, view } = props;
  const [choice, setChoice] = useState<{ test: string | null; part: Part; last: string | null } | null>(null);
  const { draft } = measuring;
  const { papers } = bench.run;
  const leads = leadsOf(draft, papers.site);
  const isFree = hasLeads(draft.instrument);
  const last = isFree
    ? measuring.lastIn(test)
    : isOpen && draft.instrument !== ''
      ? fixedTerminal(leads)
      : null;
  const part = shownPart({
    stage,
    last,
    chosen: choice !== null && choice.test === test && choice.last === last ? choice.part : null,
  });
  const { isWhole, layout, plan } = useDrawn(bench, position, {
    part,
    whole: view === 'whole',
    acts: hands !== null,
  });
  const shut = useCallback((terminal: string) => outOfReach(terminal, position) !== null, [position]);
  const words = leads.length === 0 ? 'no lead is on anything' : leadsWords(leads);
  const lines = leadLines(layout, leads);
  const caption = (
    <p className="plan-caption">
      <span>
        {leads.length === 0 ? words : <strong className="lead-words">your leads on {words}</strong>}
        {isSettingUp ? <span className="note"> reading: after you lock</span> : null}
      </span>
      {isWhole ? <span className="lettering">earthing, lengths, areas: by the papers</span> : null}
    </p>
  );
  return (
    <Installation>
      <Frame bench={bench} standing={standing} record={recordWords(bench)}>
        {isWhole ? null : (
          <div className="part-choice not-printed">
            <Keys
              legend="part shown"
              options={PARTS}
              value={part}
              onChange={(chosen) => setChoice({ test, part: chosen, last })}
            />
          </div>
        )}
        <Drawing
          layout={layout}
          plan={plan}
          lines={lines}
          reading={
            reading === null ? null : readingLabels(layout, lines, reading, words.replace(' at the ', ', '))
          }
          instrument={draft.instrument}
          instrumentWords={instrumentWords(draft.instrument)}
          shut={shut}
        >
          {/* Below the terminals: a lead goes on where both are. */}
          {hands === null ? null : <Hands layout={layout} position={position} {...hands} />}
          {isOpen ? (
            <Terminals
              layout={layout}
              stateOf={(terminal) => {
                const on = isFree ? leadOn(draft, terminal) : null;
                const fixed = !isFree && leads.flat().includes(terminal) ? 'a lead of the instrument' : null;
                return on === null ? (fixed ?? outOfReach(terminal, position) ?? 'no lead') : END_WORDS[on];
              }}
              onTap={measuring.tap}
              onTakeOff={measuring.takeOff}
            />
          ) : null}
        </Drawing>
        {caption}
      </Frame>
    </Installation>
  );
}
