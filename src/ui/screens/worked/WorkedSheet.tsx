/** The installation as it stood at a step of a worked run, with the leads of what was measured in it. */

import { benchTime } from '../../../words/benchTime.ts';
import { PLACE_WORDS } from '../../../words/terminals.ts';
import { leadsWords } from '../../../words/trade.ts';
import { Drawing } from '../../drawing/Drawing.tsx';
import { Frame } from '../../drawing/Frame.tsx';
import { Installation } from '../../drawing/Installation.tsx';
import { leadLines } from '../../drawing/leadLines.ts';
import { fixedTerminal, shownPart } from '../../drawing/shownPart.ts';
import { useDrawn } from '../../drawing/useDrawn.ts';
import { leadsOf, outOfReach } from '../../flow/leads.ts';
import { instrumentWords, lastDraft } from '../../flow/measurement.ts';
import { standInText, supplyText } from '../../flow/whatIsKnown.ts';
import type { WorkedStep } from './workedSteps.ts';

export function WorkedSheet({ step }: { readonly step: WorkedStep }) {
  const { bench } = step;
  const { happened, position, run } = bench;
  const own = step.kind === 'done' ? step.operations : [];
  const draft = lastDraft(own);
  const leads = leadsOf(draft, run.papers.site);
  const stage = step.kind === 'concluded' ? undefined : step.stage;
  const part = shownPart({ stage, chosen: null, last: fixedTerminal(leads) });
  const last = own.at(-1)?.operation;
  const words =
    last?.op === 'prove-dead'
      ? `leads on every pair in turn at the ${PLACE_WORDS[last.at]}`
      : leads.length === 0
        ? null
        : `leads on ${leadsWords(leads)}`;
  const { layout, plan } = useDrawn(bench, position, { part });
  return (
    <Installation>
      <Frame bench={bench} standing={benchTime(happened.at(-1)?.at ?? run.began)} record="nothing is kept">
        <Drawing
          layout={layout}
          plan={plan}
          lines={leadLines(layout, leads)}
          instrument={draft.instrument}
          whose="leads"
          instrumentWords={instrumentWords(draft.instrument)}
          shut={(terminal) => outOfReach(terminal, position) !== null}
        />
        <p className="plan-caption">
          {words === null ? (
            <span>no lead is on anything</span>
          ) : (
            <strong className="lead-words">{words}</strong>
          )}
          <span className="note">
            supply {supplyText(position)} · cover {position.cover}, conductors {position.unit} · stand-in{' '}
            {standInText(bench)}
          </span>
        </p>
      </Frame>
    </Installation>
  );
}
