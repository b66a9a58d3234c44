/**
 * What test action `papers` ought to show: judged from the papers alone; what was observed only tells whether they were
 * read.
 */
import type { DeviceType } from '../../laws/residualLimits.ts';
import { isSelective } from '../../laws/residualProtection.ts';
import { livesOf } from '../../site/site.ts';
import { designSums, isRight } from '../designSums.ts';
import type { RuleSet } from '../rules/ruleSet.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

/** Read: something was done under this test's name, a minute of reading if nothing else. */
const read =
  (isMet: boolean): Expectation['judge'] =>
  ({ samples }) =>
    samples.length === 0 ? 'not shown' : isMet ? 'met' : 'broken';

interface Device {
  readonly type: DeviceType;
  readonly rated: number;
  readonly opensAll: boolean;
}

/**
 * Every residual device that stands before this outlet alone; a unit's own opens all that its contactor or breaker has.
 */
function devices({ site, sheet }: Papers): readonly Device[] {
  const { type, rated } = sheet.residual;
  const upstream = site.circuit.residualDevice;
  return [
    ...(type === null ? [] : [{ type, rated: rated ?? Infinity, opensAll: true }]),
    ...(upstream === null || site.circuit.points > 1
      ? []
      : [{ ...upstream, opensAll: upstream.poles >= livesOf(site).length }]),
  ];
}

const isAdditional =
  ({ additional }: RuleSet) =>
  ({ type, rated, opensAll }: Device): boolean =>
    opensAll && rated <= additional.rated && additional.types.includes(type);

const direct = (papers: Papers): boolean =>
  papers.sheet.residual.direct !== null || devices(papers).some(({ type }) => type === 'B');

/** On a PME earth an open PEN must be provided for; a voltage window can see one on a single phase alone. */
function openPenLines(papers: Papers): readonly Expectation[] {
  const { site, sheet } = papers;
  if (site.earthing !== 'TN-C-S') return [];
  const { regulation } = rulesFor(papers);
  return [
    {
      id: 'open-pen',
      should: true,
      source: regulation('722.411.4.1'),
      of: 'circuit',
      points: ['supply-wiring', 'protective-conductor'],
      judge: read(sheet.openPen !== 'none'),
    },
    ...(site.phases === 1
      ? []
      : [
          {
            id: 'window',
            should: false,
            source: regulation('722.411.4.1(iv)'),
            of: 'circuit',
            points: ['supply-wiring'],
            judge: read(sheet.openPen !== 'voltage-window'),
          } as const,
        ]),
  ];
}

function electrodeLines(papers: Papers): readonly Expectation[] {
  const { site } = papers;
  if (site.earthing !== 'TT') return [];
  const { electrode, regulation } = rulesFor(papers);
  const device = site.circuit.residualDevice;
  return [
    {
      id: 'at-origin',
      should: true,
      source: regulation('411.5.2'),
      of: 'circuit',
      points: ['residual-direct', 'supply-wiring'],
      judge: read(device !== null),
    },
    ...(device === null
      ? []
      : [
          {
            id: 'touch-voltage',
            should: true,
            values: { rated: device.rated, touchVoltage: electrode.touchVoltage },
            source: regulation('411.5.3'),
            of: 'circuit',
            points: ['protective-conductor'],
            judge: read((site.electrodeResistance ?? Infinity) * device.rated <= electrode.touchVoltage),
          } as const,
        ]),
  ];
}

/** The design's own sums, each a line. */
const designLines = (papers: Papers): readonly Expectation[] =>
  designSums(papers).map((sum) => ({
    id: sum.id,
    should: sum.should,
    values: sum.values,
    source: sum.source,
    of: 'circuit',
    points: ['design', 'supply-wiring'],
    judge: read(isRight(sum)),
  }));

/** A unit's own device and one at the origin: which of them opens is a matter of service, not of safety. */
function notSelective({ site, sheet }: Papers): readonly { readonly rated: number }[] {
  const upstream = site.circuit.residualDevice;
  const { type, rated } = sheet.residual;
  return upstream === null ||
    type === null ||
    rated === null ||
    isSelective(upstream, { rated, delay: 'general' })
    ? []
    : [upstream];
}

export const papers: TestLines = {
  expectations: (p) => {
    const { additional, regulation, remembered } = rulesFor(p);
    const { sheet, site } = p;
    return [
      {
        id: 'over-rating',
        should: false,
        values: { setCurrent: sheet.setCurrent, rating: site.circuit.breaker.rating },
        source: remembered('433.1.1'),
        of: 'circuit',
        points: ['design', 'supply-wiring'],
        judge: read(sheet.setCurrent <= site.circuit.breaker.rating),
      },
      {
        id: 'additional',
        should: true,
        values: { rated: additional.rated },
        source: additional.source,
        of: 'circuit',
        points: ['residual-direct'],
        judge: read(devices(p).some(isAdditional(rulesFor(p)))),
      },
      {
        id: 'direct',
        should: true,
        source: additional.source,
        of: 'circuit',
        points: ['residual-direct'],
        judge: read(direct(p)),
      },
      {
        id: 'type-ac',
        should: false,
        source: regulation('531.3.3'),
        of: 'circuit',
        points: ['residual-direct'],
        judge: read(devices(p).every(({ type }) => type !== 'AC')),
      },
      ...designLines(p),
      ...openPenLines(p),
      ...electrodeLines(p),
    ];
  },
  figures: () => [],
  limits: () => [],
  advice: (p) =>
    notSelective(p).map(({ rated }) => ({
      id: 'not-selective',
      values: { rated },
      source: rulesFor(p).regulation('536.4.1.4'),
      isDue: ({ samples }) => samples.length > 0,
    })),
  stops: [],
};
