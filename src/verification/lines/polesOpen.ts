/** What test action `poles-open` ought to show. */
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { livesOf } from '../../site/site.ts';
import { isInside, judgeAll } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard, published, SHEET } from '../sources.ts';
import type { Finding, Papers, TestLines } from '../testAction.ts';
import { continuityOf } from './protectivePath.ts';

/** Below this a pole is closed: welded, or bridged by metal, Ω. Common practice, no source. */
const WELDED: Ohms = 1;
/** The end of the tester's range: what reads more is open to it, Ω. */
const RANGE_END: Ohms = 2000;

/** The least that an open pole may read: what the sheet says lies across it, or the end of the range. */
const leastOpen = ({ sheet }: Papers): Ohms => Math.min(RANGE_END, sheet.poleBleed ?? Infinity);

function everyPole(papers: Papers, o: Observed, isMet: (r: Reading) => boolean): Finding {
  const poles = livesOf(papers.site).map((x) => continuityOf(o, `supply.${x}`, `outlet.${x}`));
  const finding = judgeAll(poles.flat(), isMet);
  return finding === 'met' && poles.some((readings) => readings.length === 0) ? 'not shown' : finding;
}

export const polesOpen: TestLines = {
  expectations: (papers) => [
    {
      id: 'over-range',
      should: true,
      values:
        papers.sheet.poleBleed === null
          ? { bleeds: false, least: leastOpen(papers) }
          : { bleeds: true, least: leastOpen(papers), ohms: papers.sheet.poleBleed },
      source: papers.sheet.poleBleed === null ? pilotStandard('6.3.1') : SHEET,
      of: 'unit',
      points: ['switching', 'insulation'],
      judge: (o) => everyPole(papers, o, (r) => isInside(r, { least: leastOpen(papers) })),
    },
    {
      id: 'welded',
      should: false,
      values: { ohms: WELDED },
      source: published(
        `IEC 61851-1:2017 6.3.1 and 8.1; ${rulesFor(papers).regulation('722.531.3.101').where}`,
      ),
      of: 'unit',
      points: ['switching'],
      judge: (o) => everyPole(papers, o, (r) => r.qualifier === '>' || (r.value ?? 0) >= WELDED),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['welded'],
};
