/**
 * The line that repeats where the trainee has put the leads, and when those places were last proved dead. It says what
 * was done, never what should be.
 */
import type { Place } from '../../../bench/terminals.ts';
import { PLACES } from '../../../bench/terminals.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { PLACE_WORDS, probeText, terminalText } from '../../../words/terminals.ts';
import type { Bench } from '../../flow/bench.ts';
import type { MeasurementDraft } from '../../flow/measurement.ts';
import { hasLeads } from '../../flow/measurement.ts';
import { proofsOf, proofText } from '../../flow/whatIsKnown.ts';

export function LeadsLine({ draft }: { readonly draft: MeasurementDraft }) {
  const end = (text: string) => <strong className="lead-end">{text}</strong>;
  if (hasLeads(draft.instrument))
    return (
      <>
        <span className="leads-intro">Your leads: </span>
        {end(probeText(draft.first))}, {end(probeText(draft.second))}
        {draft.instrument === 'insulation' ? `, ${draft.volts} V d.c.` : ''}
      </>
    );
  switch (draft.instrument) {
    case 'residual':
      return (
        <>
          <span className="leads-intro">Your leads: </span>
          {end(terminalText(`${draft.tested}.${draft.line}`))}, {end(terminalText(`${draft.tested}.PE`))}
        </>
      );
    case 'coding':
      return (
        <>
          <span className="leads-intro">Your leads: </span>
          {end('PP at the outlet')}, {end('PE at the outlet')}
        </>
      );
    case 'electrode':
      return (
        <>
          <span className="leads-intro">Your leads: </span>
          {end('earth electrode')}, {end('two stakes in a line')}
        </>
      );
    case 'phase-sequence':
      return (
        <>
          <span className="leads-intro">Your leads: </span>
          {end(`L1, L2, L3 at the ${PLACE_WORDS[draft.at] ?? draft.at}`)}
        </>
      );
    case 'opening-time':
      return (
        <>
          <span className="leads-intro">Your leads: </span>
          {end('every live conductor at the outlet')}, {end('PE at the outlet')}
        </>
      );
    default:
      return (
        <>
          <span className="leads-intro">Your leads: </span>
          {end('CP at the outlet')}, {end('PE at the outlet')}
        </>
      );
  }
}

/** When the places that the leads touch were last proved dead. */
export function lastProvedText(bench: Bench, draft: MeasurementDraft): string {
  const touched = hasLeads(draft.instrument)
    ? [...draft.first, draft.second]
    : draft.instrument === 'residual'
      ? [`${draft.tested}.PE`]
      : ['outlet.PE'];
  const places = PLACES.filter((place: Place) => touched.some((t) => t.startsWith(`${place}.`)));
  const listed: readonly Place[] = places.length === 0 ? ['origin'] : places;
  const proofs = proofsOf(bench);
  return listed
    .map((place) => {
      const proof = proofs[place];
      if (proof === undefined) return `${PLACE_WORDS[place]}: not proved dead since last energised`;
      return proof.isWhole
        ? `${PLACE_WORDS[place]}: proved dead ${benchTime(proof.at)}, two-pole detector`
        : `${PLACE_WORDS[place]}: not proved dead: ${proofText(proof)}`;
    })
    .join(' · ');
}
