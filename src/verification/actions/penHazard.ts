/**
 * What an open-PEN measure watches for: how it is brought about and taken back, and how it is recognised in what was set
 * and read. What the unit makes of it is the test action's business.
 */
import type { OperationInput } from '../../bench/operation.ts';
import type { Seconds, Volts } from '../../laws/quantities.ts';
import { OPEN_PEN_WINDOW, TOUCH_LIMIT } from '../../laws/supplyLimits.ts';
import type { Load, Site } from '../../site/site.ts';
import { between } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import type { Papers } from '../testAction.ts';

/** Under the window’s lower edge, and enough for any unit to work from, V. */
const LOW = OPEN_PEN_WINDOW.least - 5;

export const byWindow = ({ sheet }: Papers): boolean => sheet.openPen === 'voltage-window';

/**
 * Neighbours whose current, with the PEN open, moves the neutral: a transformer's worth, so that an electrode does not
 * hold it down. On one phase at right angles to L1, so that line to neutral stays inside the window while the
 * earthing terminal goes over 70 V; on three phases 80 V towards L2, which leaves no line far above 300 V.
 */
function moving({
  phases,
  voltage: volts,
  metEarthResistance,
  sourceElectrodeResistance,
}: Site): readonly Load[] {
  // The source's own electrode takes its share of the voltage.
  const beyond = metEarthResistance === null ? 1 : 1 + sourceElectrodeResistance / metEarthResistance;
  const share = (80 * beyond) / volts;
  const house: readonly Load[] =
    phases === 1
      ? [
          { line: 'L1', power: 60_000 },
          { line: 'L2', power: 84_000 },
        ]
      : [
          { line: 'L1', power: 30_000 },
          { line: 'L2', power: Math.round((30_000 * (1 + 2 * share)) / (1 - share)) },
          { line: 'L3', power: 30_000 },
        ];
  return Array.from({ length: 5 }, () => house).flat();
}

/** What the measure watches for, brought about by the maker's test function or the tutor. */
export const disturb = (papers: Papers): OperationInput =>
  byWindow(papers)
    ? { op: 'supply', voltage: LOW }
    : { op: 'supply', pen: 'open', neighbours: [...moving(papers.site)] };
/** The supply as it was found, whatever that is. */
export const restore: OperationInput = {
  op: 'supply',
  pen: 'sound',
  voltage: null,
  neighbours: null,
  missing: null,
  siteLoad: 0,
};

/**
 * Whether the unit said by a fault, when it was last seen with power, that its measure may have opened: the PE pole then
 * stands open for as long as it is left without power.
 */
export const foundLockedOut = ({ sheet }: Papers, { before = [] }: Observed): boolean =>
  sheet.openPen !== 'none' &&
  before.findLast(({ seen }) => seen.indicator !== 'dark')?.seen.indicator === 'fault';

/** A stretch of samples on a disturbed supply. */
export interface Disturbance {
  readonly samples: readonly Sample[];
  /** Null where it was not seen to begin, or to end. */
  readonly began: Seconds | null;
  readonly ended: Seconds | null;
  /** Index of the first sample after it. */
  readonly next: number;
}

export function disturbances(o: Observed): readonly Disturbance[] {
  const found: Disturbance[] = [];
  for (let i = 0; i < o.samples.length; i++) {
    if (o.samples[i]?.setUp.disturbed !== true) continue;
    const end = o.samples.findIndex(({ setUp }, j) => j > i && !setUp.disturbed);
    const next = end < 0 ? o.samples.length : end;
    const samples = o.samples.slice(i, next);
    // The operation that brings it about, and the one that ends it, pass no time themselves.
    const first = samples[0];
    found.push({
      samples,
      began: first?.operation.op === 'supply' ? first.seen.at : null,
      ended: o.samples[next]?.seen.at ?? null,
      next,
    });
    i = next;
  }
  return found;
}

/**
 * Whether what was set or read shows what the measure watches for: line to neutral outside the window, or the earthing
 * terminal above 70 V. An open PEN with little current and a good electrode is no such thing.
 */
function isHazard(papers: Papers, { samples }: Disturbance): boolean {
  const volts = samples.flatMap(({ readings }) => readings.filter((r) => r.quantity === 'voltage'));
  const { least, greatest } = OPEN_PEN_WINDOW;
  const outside = (value: Volts, uncertainty: Volts) =>
    value + uncertainty < least || value - uncertainty > greatest;
  return byWindow(papers)
    ? samples.some(
        ({ operation }) =>
          operation.op === 'supply' && typeof operation.voltage === 'number' && outside(operation.voltage, 0),
      ) ||
        ['incoming', 'origin', 'supply'].some((place) =>
          between(volts, `${place}.L1`, `${place}.N`).some((r) =>
            outside(r.value ?? least, r.uncertainty ?? 0),
          ),
        )
    : between(volts, 'met', 'earth').some((r) => (r.value ?? 0) - (r.uncertainty ?? 0) > TOUCH_LIMIT);
}

export const hazards = (papers: Papers, o: Observed): readonly Disturbance[] =>
  disturbances(o).filter((d) => isHazard(papers, d));
