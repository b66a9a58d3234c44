/**
 * When an offer is due, and of what, by the sheet alone: permission, hours and random delay first, then the least of
 * unit, cable and setting (IEC 61851-1:2017 6.3.1.6).
 */
import type { OperationInput } from '../bench/operation.ts';
import { greatestOffer } from '../laws/pilotDuty.ts';
import { codedCurrent } from '../laws/proximity.ts';
import type { Amps, Range } from '../laws/quantities.ts';
import { GREATEST_ON_AFTER_READY, LEAST_OSCILLATION_PAUSE } from '../laws/timing.ts';
import { linesOf } from '../site/site.ts';
import type { LatchReason } from '../unit/design.ts';
import type { Observed, Sample, SetUp } from './observed.ts';
import type { Papers } from './testAction.ts';

/**
 * What the known loads of the site, and the vehicle at its next point, may draw on its most loaded line, A: stated at
 * 230 V, and drawn at 216.2 to 253 V (ESQCR 2002), which their own volt drop lowers a little. Rounded outwards to 10 %.
 */
export function knownLoad({ site }: Papers, set?: Pick<SetUp, 'siteLoad' | 'nextPoint'>): Range {
  const { siteLoad, nextPoint } = set ?? { siteLoad: 0, nextPoint: site.nextPoint?.draws ?? 0 };
  const loads = linesOf(site).map((line) =>
    site.otherLoads.reduce(
      (sum, load) => sum + (load.line === line ? load.power / 230 : 0),
      siteLoad + nextPoint,
    ),
  );
  return { least: 0.9 * Math.max(...loads), greatest: 1.1 * Math.max(...loads) };
}

/** What such a sensor may be out by, A. Common practice, no source. */
const SENSOR: Amps = 1;

/** What of a set-up an offer goes by. */
type OfferedIn = Pick<SetUp, 'loadLimit' | 'siteLoad' | 'nextPoint'> & {
  readonly standIn: Pick<SetUp['standIn'], 'coding'>;
};

/**
 * The offer that is due, A: by the sheet, or with coding, limit and known load as they were set; the coding counts at a
 * socket-outlet only. A range where the unit's own sensor on the service decides, else one figure.
 */
export function offerRange(papers: Papers, setUp?: OfferedIn): Range {
  const { sheet } = papers;
  const limit = setUp === undefined ? sheet.loadLimit : setUp.loadLimit;
  const coding = setUp === undefined ? sheet.cable.coding : (setUp.standIn.coding ?? 0);
  const offer = (leftOfService: Amps) =>
    greatestOffer(
      sheet.ratedCurrent,
      sheet.setCurrent,
      limit ?? Infinity,
      leftOfService,
      sheet.outlet === 'socket' ? coding : Infinity,
    );
  const { serviceLimit } = sheet;
  if (serviceLimit === null) {
    const least = offer(Infinity);
    return { least, greatest: least };
  }
  const others = knownLoad(papers, setUp);
  const left = (load: Amps, error: Amps) => offer(Math.max(0, serviceLimit - load + error));
  return { least: left(others.greatest, -SENSOR), greatest: left(others.least, SENSOR) };
}

/** The one figure that is due, or null where the sensor on the service leaves more than one. */
export function offerFigure(papers: Papers): Amps | null {
  const { least, greatest } = offerRange(papers);
  return least === greatest ? least : null;
}

/** What was done since the vehicle was last away or the supply off: one session, as far as it was observed. */
export function session(observed: Observed, sample: Sample): readonly Sample[] {
  const { samples } = observed;
  const end = samples.indexOf(sample);
  const began = samples.findLastIndex((one, i) => i < end && (isAway(one) || supplyWent(one))) + 1;
  return samples.slice(began, end);
}

const isAway = ({ setUp: { standIn } }: Sample): boolean => !standIn.plugged || standIn.state === 'A';
const supplyWent = ({ operation, setUp }: Sample): boolean =>
  setUp.supply === 'off' || (operation.op === 'reset' && operation.what === 'supply');

const lastPress = (samples: readonly Sample[], ...buttons: readonly string[]): number =>
  samples.findLastIndex(({ operation }) => operation.op === 'press' && buttons.includes(operation.button));

/** Authorised in the stretch without a vehicle that came just before this session. */
function authorisedBefore(observed: Observed, sample: Sample): boolean {
  const own = session(observed, sample);
  const index = observed.samples.indexOf(own[0] ?? sample);
  const before = observed.samples.slice(0, index);
  const began = before.findLastIndex((one) => !isAway(one) || supplyWent(one));
  return lastPress(before.slice(began + 1), 'authorise') >= 0;
}

/** Whether this session has been authorised, as far as the sheet asks for that. */
export const isAuthorised = (papers: Papers, observed: Observed, sample: Sample): boolean =>
  papers.sheet.permission === 'open' ||
  (papers.sheet.permission === 'authorise' &&
    (lastPress(session(observed, sample), 'authorise') >= 0 ||
      (papers.sheet.authoriseBefore && authorisedBefore(observed, sample))));

/** More than the cable is coded for was drawn in this session: the unit may have ended it (IEC 61851-1:2017 Annex B). */
const wasOverdrawn = ({ site, sheet }: Papers, samples: readonly Sample[]): boolean =>
  sheet.outlet === 'socket' &&
  samples.some(
    ({ setUp: { standIn } }) =>
      standIn.coding !== null && standIn.load > codedCurrent(standIn.coding, site.phases),
  );

/** Whether the sheet, or a stop by hand, lets the unit keep the vehicle waiting at this sample. */
export function mayWait(papers: Papers, observed: Observed, sample: Sample): boolean {
  const { sheet } = papers;
  const done = session(observed, sample);
  if (sheet.permission === 'held' || offerRange(papers, sample.setUp).least === 0) return true;
  if (lastPress(done, 'stop', 'emergency') >= 0 || wasOverdrawn(papers, [...done, sample])) return true;
  if (!isAuthorised(papers, observed, sample)) return true;
  // Before it is authorised the unit has nothing to override; what was overridden stays so for the session.
  const overridden = lastPress(done, 'override-delay') >= Math.max(0, lastPress(done, 'authorise'));
  if (overridden) return false;
  const delay =
    sheet.startDelay === 0 ? 0 : sheet.startDelay + LEAST_OSCILLATION_PAUSE + GREATEST_ON_AFTER_READY;
  return sheet.schedule !== null || sample.setUp.settled < delay;
}

/** Buttons that let a session begin at once: permission first, then hours and delay. */
export const permission = ({ sheet }: Papers): readonly OperationInput[] => [
  ...(sheet.permission === 'authorise' ? [{ op: 'press', button: 'authorise' } as const] : []),
  ...(sheet.startDelay > 0 || sheet.schedule !== null
    ? [{ op: 'press', button: 'override-delay' } as const]
    : []),
];

/** Plug in, give permission, take hours and delay away, and let it settle: an offer stands after this. */
export const untilOffered = (papers: Papers): readonly OperationInput[] => [
  { op: 'vehicle', plugged: true, state: 'B' },
  { op: 'wait', seconds: 2 },
  ...permission(papers),
  { op: 'wait', seconds: 2 },
];

export const untilSupplied = (papers: Papers): readonly OperationInput[] => [
  ...untilOffered(papers),
  { op: 'vehicle', state: 'C' },
  { op: 'wait', seconds: 3 },
];

/**
 * What the sheet asks for before the unit is ready again after it has latched, once the cause is gone and nothing is
 * plugged in.
 */
export function cleared({ sheet }: Papers, reason: LatchReason): readonly OperationInput[] {
  const by = sheet.clearsBy[reason];
  if (by === 'reset')
    return [
      { op: 'reset', what: 'unit' },
      { op: 'wait', seconds: 2 },
    ];
  if (by === 'supply')
    return [
      { op: 'reset', what: 'supply' },
      { op: 'wait', seconds: sheet.startUp + 2 },
    ];
  return [{ op: 'wait', seconds: 2 }];
}

/** Back to nothing plugged in: state A first, so that a held plug is let go (IEC 61851-1:2017 Table A.6, 5 s). */
export const unplug: readonly OperationInput[] = [
  { op: 'vehicle', state: 'A', pilot: 'sound', diode: 'sound', earth: 'sound' },
  { op: 'wait', seconds: 5 },
  { op: 'vehicle', plugged: false },
];
