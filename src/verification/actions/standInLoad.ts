/** What the stand-in may be set to draw, as far as the supply bears it. */
import type { Amps, Ohms, Volts } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE, expectedCable, expectedCircuitLine } from '../../site/expected.ts';
import { knownLoad } from '../offer.ts';
import type { Papers } from '../testAction.ts';

/**
 * The load may not bring the unit so low that an open-PEN measure takes it for a hazard: 207 V and some (BS 7671
 * 722.411.4.1), V.
 */
const LOWEST: Volts = 212;

/** Lines that are loaded alike leave nothing in the neutral. */
export const ways = ({ site }: Papers): number => (site.phases === 3 ? 1 : 2);

/** Origin to outlet by length and area, both ways as they carry the current, Ω at 20 °C (IEC 60228). */
export const conductors = (papers: Papers): Ohms =>
  ways(papers) * (expectedCircuitLine(papers.site) + expectedCable(papers.sheet.cable));

/** The most that may be drawn on each line before the unit is brought too low, A; below 0 where it is low already. */
export function bearable(papers: Papers): Amps {
  const { site } = papers;
  const atOrigin = site.voltage - knownLoad(papers).greatest * site.neutralImpedance;
  return (atOrigin - LOWEST) / (site.neutralImpedance + conductors(papers) + CONTACT_ALLOWANCE);
}
