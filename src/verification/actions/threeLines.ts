/** What three lines show at a place, at the origin and at the outlet alike: the voltages between them, and their order. */

import type { OperationInput } from '../../bench/operation.ts';
import type { Reading } from '../../bench/reading.ts';
import { ROOT_THREE } from '../../laws/loop.ts';
import type { Range, Volts } from '../../laws/quantities.ts';
import { LINE_TO_LINE, VOLTAGE_DROP_SHARE } from '../../laws/supplyLimits.ts';
import { pairsOf } from '../../site/part.ts';
import { linesOf } from '../../site/site.ts';
import { between, isInside, judgeAll, outletSupplied, readingsOf, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Source } from '../sources.ts';
import { stating } from '../stated.ts';
import { voltage } from '../steps.ts';
import type { Expectation, Finding, Papers } from '../testAction.ts';

/** A published limit of the true value, the last digit shown counted with the reading's uncertainty, V. */
export const LAST_DIGIT: Volts = 1;
export const withinLimits = (r: Reading, range: Partial<Range>): boolean =>
  isInside({ ...r, uncertainty: (r.uncertainty ?? 0) + LAST_DIGIT }, range);

type Place = 'incoming' | 'outlet';

const linePairs = ({ site }: Papers, place: Place) =>
  pairsOf(linesOf(site)).map(([x, y]) => [`${place}.${x}`, `${place}.${y}`] as const);

/** Volts between the lines and their order, as steps; nothing on one phase. */
export const threeLineSteps = (papers: Papers, place: Place): readonly OperationInput[] =>
  papers.site.phases === 1
    ? []
    : [
        ...linePairs(papers, place).map(([a, b]) => voltage(a, b)),
        { op: 'measure', quantity: 'phase-sequence', at: place },
      ];

/** Met once every one of these pairs was read. */
export function everyPair(
  readings: readonly Reading[],
  pairs: readonly (readonly [string, string])[],
  isMet: (r: Reading) => boolean,
): Finding {
  const found = pairs.map(([a, b]) => between(readings, a, b));
  const finding = judgeAll(found.flat(), isMet);
  return finding === 'met' && found.some((one) => one.length === 0) ? 'not shown' : finding;
}

interface LineToLine extends Range {
  readonly source: Source;
}

/** At the supply terminals: what the distributor answers for. */
function supplied(papers: Papers): LineToLine {
  const { supply } = rulesFor(papers);
  return { ...supply.lineToLine, source: supply.source };
}

/** At the outlet: less what the circuit may lose. */
function afterDrop(papers: Papers): LineToLine {
  const { supply, regulation } = rulesFor(papers);
  const { least, greatest } = supply.lineToLine;
  return {
    least: least - VOLTAGE_DROP_SHARE.other * LINE_TO_LINE.nominal,
    greatest,
    source: regulation('525, Appendix 4'),
  };
}

/** Where every reading was taken as it should be, at this place; on one phase there is nothing to say. */
export function threeLines(papers: Papers, place: Place, when: When): readonly Expectation[] {
  if (papers.site.phases === 1) return [];
  const { supply, regulation } = rulesFor(papers);
  // An outlet that is not supplied says nothing of the lines.
  const shown = (o: Observed) => place === 'incoming' || outletSupplied(papers, o, when) === 'met';
  const { least, greatest, source } = place === 'incoming' ? supplied(papers) : afterDrop(papers);
  const inForce = stating(papers, place === 'incoming' ? 'supply-volts' : 'state-c', source, {
    'line-to-line': { unit: 'V', least, greatest },
  });
  const range = inForce.ranges['line-to-line'];
  return [
    {
      id: 'line-to-line',
      should: true,
      ...inForce.line,
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o: Observed) => {
        if (!shown(o)) return 'not shown';
        // Three lines at their own least make a little less than the round figure: that is no fault of theirs.
        const round = supply.lineToLine.least - ROOT_THREE * supply.lineToNeutral.least;
        return everyPair(readingsOf(o, 'voltage', when), linePairs(papers, place), (r) =>
          withinLimits(r, { ...range, least: (range.least ?? 0) - Math.max(0, round) }),
        );
      },
    },
    {
      id: 'rotation',
      should: true,
      source: regulation('643.9'),
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o: Observed) =>
        shown(o)
          ? judgeAll(
              readingsOf(o, 'phase-sequence', when).filter((r) => r.place === place),
              ({ value }) => value === 1,
            )
          : 'not shown',
    },
  ];
}
