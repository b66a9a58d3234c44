/** What test action `supply-volts` ought to show. */

import type { Reading } from '../../bench/reading.ts';
import type { Amps, Volts } from '../../laws/quantities.ts';
import { OPEN_PEN_WINDOW } from '../../laws/supplyLimits.ts';
import { linesOf, type Site } from '../../site/site.ts';
import { foundLockedOut } from '../actions/penHazard.ts';
import { incoming, SWITCHED, toNeutral } from '../actions/supplyVolts.ts';
import { everyPair, LAST_DIGIT, threeLines, withinLimits } from '../actions/threeLines.ts';
import { between, isInside, judgeAll, readingsOf, samplesWhen, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { stating } from '../stated.ts';
import type { Expectation, Finding, Papers, TestLines } from '../testAction.ts';

/** What load current may make of neutral or earth against true earth, V. Common practice, no source: a few volts. */
const FEW: Volts = 10;

const undisturbed: When = ({ disturbed, removed }) => !disturbed && removed.length === 0;
const asFound: When = (setUp, sample) => undisturbed(setUp, sample) && setUp.siteLoad === 0;
const loaded: When = (setUp, sample) => undisturbed(setUp, sample) && setUp.siteLoad > 0;

const volts = (o: Observed): readonly Reading[] => readingsOf(o, 'voltage', asFound);
/** Each line's two readings within their uncertainties and what neutral or earth may stand at. */
function alike(papers: Papers, o: Observed): Finding {
  const pairs = linesOf(papers.site).flatMap((line) => {
    const neutral = between(volts(o), incoming(line), incoming('N')).at(-1);
    const earth = between(volts(o), incoming(line), 'met').at(-1);
    return neutral?.value != null && earth !== undefined ? [{ neutral, earth }] : [];
  });
  return pairs.length < linesOf(papers.site).length
    ? 'not shown'
    : judgeAll(pairs, ({ neutral, earth }) => {
        const margin = FEW + (neutral.uncertainty ?? 0);
        const value = neutral.value ?? 0;
        return isInside(earth, { least: value - margin, greatest: value + margin });
      });
}

/** What a load may take away, V: it is stated at 230 V, and its loop is known to 0.05 Ω. */
const mostDropped = ({ neutralImpedance }: Site, amps: Amps): Volts => 1.1 * amps * (neutralImpedance + 0.05);

/** What a load that is switched on may take away: its current through the line–neutral loop of the papers. */
function swings(papers: Papers, o: Observed): Finding {
  const { site } = papers;
  const before = readingsOf(o, 'voltage', asFound);
  const during = samplesWhen(o, loaded);
  const pairs = during.flatMap(({ readings, setUp }) =>
    toNeutral(papers).flatMap(([a, b]) => {
      const off = between(before, a, b).at(-1);
      return off === undefined
        ? []
        : between(readings, a, b).map((on) => ({ off, on, amps: setUp.siteLoad }));
    }),
  );
  return judgeAll(pairs, ({ off, on, amps }) => {
    const margin = (off.uncertainty ?? 0) + (on.uncertainty ?? 0);
    const change = (off.value ?? 0) - (on.value ?? 0);
    return change <= mostDropped(site, amps) + margin && change >= -margin;
  });
}

const { least: LEAST, greatest: GREATEST } = OPEN_PEN_WINDOW;

/**
 * A measure that goes by line to neutral opens outside its window, and rightly: what is wrong is the supply. A reading
 * that leaves it open counts as outside where the unit was found locked out, and below, where the distributor's limits
 * end well before.
 */
const unitWindow = (papers: Papers): readonly Expectation[] =>
  papers.sheet.openPen !== 'voltage-window'
    ? []
    : [
        {
          id: 'unit-window',
          should: true,
          values: { ...OPEN_PEN_WINDOW },
          source: rulesFor(papers).remembered('722.411.4.1'),
          of: 'circuit',
          points: ['supply-wiring'],
          judge: (o) =>
            everyPair(volts(o), toNeutral(papers), (r) => {
              const [value, uncertainty] = [r.value ?? 0, r.uncertainty ?? 0];
              const margin = foundLockedOut(papers, o) ? uncertainty : -uncertainty;
              return value - uncertainty >= LEAST && value + margin <= GREATEST;
            }),
        },
      ];

export const supplyVolts: TestLines = {
  expectations: (papers) => {
    const { supply } = rulesFor(papers);
    const { least, greatest } = supply.lineToNeutral;
    const lineToNeutral = stating(papers, 'supply-volts', supply.source, {
      'line-to-neutral': { unit: 'V', least, greatest },
    });
    const { earthing } = papers.site;
    const mostLifted = earthing === 'TN-C-S' ? LAST_DIGIT : FEW;
    return [
      {
        id: 'line-to-neutral',
        should: true,
        ...lineToNeutral.line,
        of: 'circuit',
        points: ['supply-wiring'],
        judge: (o) =>
          everyPair(volts(o), toNeutral(papers), (r) =>
            withinLimits(r, lineToNeutral.ranges['line-to-neutral']),
          ),
      },
      ...unitWindow(papers),
      {
        id: 'line-to-earth',
        should: true,
        values: { few: FEW },
        source: CIRCUIT,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => alike(papers, o),
      },
      {
        id: 'neutral-lifted',
        should: false,
        values: { joined: earthing === 'TN-C-S', most: mostLifted },
        source: earthing === 'TN-C-S' ? CIRCUIT : PRACTICE,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) =>
          everyPair(volts(o), [['incoming.N', 'met']], (r) => isInside(r, { greatest: mostLifted })),
      },
      {
        id: 'earth-lifted',
        should: false,
        values: { few: FEW },
        source: PRACTICE,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => everyPair(volts(o), [['met', 'earth']], (r) => isInside(r, { greatest: FEW })),
      },
      {
        id: 'swings',
        should: false,
        values: { amps: SWITCHED, most: mostDropped(papers.site, SWITCHED) },
        source: PRACTICE,
        of: 'circuit',
        points: ['supply-wiring'],
        judge: (o) => swings(papers, o),
      },
      ...threeLines(papers, 'incoming', asFound),
    ];
  },
  figures: () => [],
  limits: () => [],
  stops: ['unit-window', 'neutral-lifted', 'earth-lifted'],
};
