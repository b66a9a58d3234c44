/** Faults of residual-current and smooth-d.c. detection, in the unit and at the origin. */
import type { Amps } from '../laws/quantities.ts';
import type { ResidualDevice } from '../site/site.ts';
import type { Fault, Setting } from './fault.ts';
import {
  directOnly,
  LOCK_OFF,
  ownDeviceOnly,
  TELL_INSTALLER,
  TELL_MAKER,
  unless,
  upstreamOnly,
} from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withPart, withSite, withVisible } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'residual-direct',
  next: LOCK_OFF,
  tell: TELL_MAKER,
} as const;

/** Whether the contactor stays open after a residual or d.c. trip until the reset button is pressed, by the sheet. */
const keepsTrip = ({ residual, clearsBy }: Setting['sheet']): boolean =>
  (residual.type !== null && residual.by === 'contactor' && (clearsBy.residual ?? 'reset') === 'reset') ||
  (residual.direct !== null &&
    !(residual.direct === 'protective' && residual.by === 'breaker') &&
    (clearsBy.direct ?? 'reset') === 'reset');

const inMilliamps = (min: number, max: number, usual: number) => ({
  name: 'amps',
  unit: 'A',
  min: min / 1000,
  max: max / 1000,
  default: usual / 1000,
});

/** How much later a stiff mechanism moves for the first time. Common practice, no source. */
const STIFF = { name: 'seconds', unit: 's', min: 0.32, max: 0.45, default: 0.4 } as const;

/** Ratings that residual devices are made in, A (IEC 61008-1 5.3.3, from memory). */
const RATINGS: readonly Amps[] = [0.01, 0.03, 0.1, 0.3, 0.5];
/** What additional protection asks for (BS 7671:2018+A2:2022 415.1.1). */
const ADDITIONAL: Amps = 0.03;
/** The next size up that does not give it. */
const nextRating = (than: Amps): Amps | null =>
  RATINGS.find((one) => one > Math.max(than, ADDITIONAL)) ?? null;

/** Another residual device fitted at the origin than the papers have. */
function withUpstream(parts: Parts, change: Partial<ResidualDevice>): Parts {
  const { circuit } = parts.site;
  const { residualDevice } = circuit;
  return residualDevice === null
    ? parts
    : withSite(parts, { circuit: { ...circuit, residualDevice: { ...residualDevice, ...change } } });
}

export const residualDirectFaults: readonly Fault[] = [
  {
    ...frame,
    // IEC 61008-1: by the rated residual current.
    id: 'residual-dead',
    component: 'residual-device',
    parameters: [],
    impossible: ownDeviceOnly,
    change: (parts) => withDesign(parts, { residualPickup: Infinity }),
  },
  {
    ...frame,
    // IEC 61008-1: 300 ms at the rated residual current.
    id: 'residual-slow',
    component: 'residual-device',
    parameters: [{ name: 'seconds', unit: 's', min: 0.32, max: 0.9, default: 0.45 }],
    impossible: ownDeviceOnly,
    change: (parts, { seconds = 0 }) => withDesign(parts, { residualDelay: seconds }),
  },
  {
    ...frame,
    // IEC 61008-1: 300 ms at the rated residual current, the first time as well.
    id: 'residual-sticks-first',
    component: 'residual-device',
    parameters: [STIFF],
    impossible: ownDeviceOnly,
    change: (parts, { seconds = 0 }) => withDesign(parts, { firstTripLater: seconds }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 531.3.2 (from memory): at most 30 % of the rating.
    id: 'standing-leakage',
    component: 'filter',
    parameters: [{ name: 'share', unit: '', min: 0.88, max: 0.97, default: 0.93 }],
    impossible: ownDeviceOnly,
    // A condenser's share of what begins to trip the device: insulation, tested with d.c., is good. The condenser is as
    // large as it is whatever else is wrong: beside a device that trips late or never it goes by the rating.
    change: (parts, { share = 0 }) => {
      const { residualPickup, sheet } = parts.design;
      const trips = Math.min(residualPickup, sheet.residual.rated ?? residualPickup);
      return withPart(parts, 'filter.L1', (part) => ({
        ...part,
        susceptance: (share * trips) / parts.site.voltage,
      }));
    },
  },
  {
    ...frame,
    // IEC 61008-1: more than half the rating.
    id: 'residual-trips-early',
    component: 'residual-device',
    parameters: [inMilliamps(6, 11.5, 9)],
    impossible: ownDeviceOnly,
    change: (parts, { amps = 0 }) => withDesign(parts, { residualPickup: amps }),
  },
  {
    ...frame,
    // IEC 61008-1: by the rated residual current.
    id: 'residual-trips-late',
    component: 'residual-device',
    parameters: [inMilliamps(33, 60, 42)],
    impossible: ownDeviceOnly,
    change: (parts, { amps = 0 }) => withDesign(parts, { residualPickup: amps }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.531.3.101, 531.3.3.
    id: 'residual-type-ac',
    component: 'residual-device',
    parameters: [],
    impossible: ownDeviceOnly,
    change: (parts) =>
      withVisible(withDesign(parts, { residualType: 'AC' }), 'protective devices', { id: 'unit-device-ac' }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 415.1.1, 722.531.3.101: 30 mA at most.
    id: 'residual-rated-too-high',
    component: 'residual-device',
    parameters: [],
    impossible: ownDeviceOnly,
    change: (parts) => {
      const meant = parts.design.sheet.residual.rated ?? ADDITIONAL;
      const rated = nextRating(meant) ?? meant;
      // As good a device as the one meant, for a greater current.
      const residualPickup = (parts.design.residualPickup * rated) / meant;
      return withVisible(withDesign(parts, { residualPickup }), 'protective devices', {
        id: 'residual-rated',
        where: 'unit',
        rated,
        meant,
      });
    },
  },
  {
    ...frame,
    // IEC 61008-1: by the rated residual current.
    id: 'upstream-dead',
    component: 'upstream-device',
    parameters: [],
    impossible: upstreamOnly,
    tell: TELL_INSTALLER,
    change: (parts) => ({ ...parts, upstreamDevice: 'dead' }),
  },
  {
    ...frame,
    // IEC 61008-1: 300 ms at the rated residual current, the first time as well.
    id: 'upstream-sticks-first',
    component: 'upstream-device',
    parameters: [STIFF],
    impossible: (on) =>
      upstreamOnly(on) ?? (on.site.circuit.residualDevice?.delay === 'S' ? 'delayed-by-design' : null),
    tell: TELL_INSTALLER,
    change: (parts, { seconds = 0 }) => ({ ...parts, upstreamFirstLater: seconds }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.531.3.101, 531.3.3.
    id: 'upstream-type-ac',
    component: 'upstream-device',
    parameters: [],
    impossible: upstreamOnly,
    tell: TELL_INSTALLER,
    change: (parts) =>
      withVisible(withUpstream(parts, { type: 'AC' }), 'protective devices', { id: 'origin-device-ac' }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 415.1.1, 411.5.3.
    id: 'upstream-rated-too-high',
    component: 'upstream-device',
    parameters: [],
    impossible: (on) =>
      upstreamOnly(on) ??
      (nextRating(on.site.circuit.residualDevice?.rated ?? 0) === null ? 'no-greater-rating' : null),
    tell: TELL_INSTALLER,
    change: (parts) => {
      const { rated: meant = 0 } = parts.site.circuit.residualDevice ?? {};
      const rated = nextRating(meant) ?? meant;
      return withVisible(withUpstream(parts, { rated }), 'protective devices', {
        id: 'residual-rated',
        where: 'origin',
        rated,
        meant,
      });
    },
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.531.3.101, 531.2.1 (from memory): all live conductors.
    id: 'upstream-opens-lines-only',
    component: 'upstream-device',
    parameters: [],
    impossible: (on) =>
      upstreamOnly(on) ??
      ((on.site.circuit.residualDevice?.poles ?? 0) <= on.site.phases ? 'opens-lines-only-anyway' : null),
    tell: TELL_INSTALLER,
    change: (parts) =>
      withVisible(withUpstream(parts, { poles: parts.site.phases }), 'protective devices', {
        id: 'origin-device-lines-only',
      }),
  },
  {
    ...frame,
    // IEC 62955:2018 9.9.2.1: by 6 mA.
    id: 'direct-detector-dead',
    component: 'direct-detector',
    parameters: [],
    impossible: directOnly,
    change: (parts) => withDesign(parts, { directPickup: Infinity }),
  },
  {
    ...frame,
    // IEC 62955:2018 9.9.2.1: by 6 mA.
    id: 'direct-trips-late',
    component: 'direct-detector',
    parameters: [inMilliamps(7, 15, 9)],
    impossible: directOnly,
    change: (parts, { amps = 0 }) => withDesign(parts, { directPickup: amps }),
  },
  {
    ...frame,
    // IEC 62955:2018 5.3.4: not below 3 mA.
    id: 'direct-trips-early',
    component: 'direct-detector',
    parameters: [inMilliamps(1, 2.2, 1.8)],
    impossible: directOnly,
    change: (parts, { amps = 0 }) => withDesign(parts, { directPickup: amps }),
  },
  {
    ...frame,
    // IEC 62955:2018 Table 2: 10 s at 6 mA.
    id: 'direct-slow',
    component: 'direct-detector',
    parameters: [{ name: 'seconds', unit: 's', min: 12, max: 60, default: 20 }],
    impossible: directOnly,
    change: (parts, { seconds = 0 }) => withDesign(parts, { directDelay: seconds }),
  },
  {
    ...frame,
    // IEC 62955:2018 9.9.2: both polarities.
    id: 'direct-one-way',
    component: 'direct-detector',
    parameters: [],
    impossible: directOnly,
    change: (parts) => withDesign(parts, { directFeels: 'positive' }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 722.531.3.101: all live conductors.
    id: 'trips-opens-nothing',
    component: 'residual-device',
    parameters: [],
    impossible: ownDeviceOnly,
    change: (parts) => withDesign(parts, { tripOpens: false }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 clause 14, UK note.
    id: 'resets-itself',
    component: 'residual-device',
    parameters: [{ name: 'seconds', unit: 's', min: 4, max: 10, default: 6 }],
    impossible: (on) =>
      ownDeviceOnly(on) ?? (on.sheet.residual.by === 'breaker' ? 'breaker-stays-open' : null),
    change: (parts, { seconds = 0 }) => withDesign(parts, { closesAfterTrip: seconds }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 clause 14, UK note; the unit’s sheet.
    id: 'trip-forgotten',
    component: 'residual-device',
    parameters: [],
    impossible: unless(({ sheet }) => keepsTrip(sheet), 'no-trip-kept'),
    change: (parts) => withDesign(parts, { latchMemory: 'lost' }),
  },
  {
    ...frame,
    // BS 7671:2018+A2:2022 643.10.
    id: 'test-button-dead',
    component: 'residual-device',
    parameters: [],
    impossible: ownDeviceOnly,
    change: (parts) => withPart(parts, 'test-button', (part) => ({ ...part, resistance: 1e9 })),
  },
];
