/** Faults of the contactor and of what watches it. Ranges are trade judgement (common practice, no source). */
import type { Live } from '../laws/conductors.ts';
import type { PoleDesign } from '../unit/design.ts';
import { polesOf } from '../unit/design.ts';
import type { Fault } from './fault.ts';
import { LINE, LOCK_OFF, lineOf, noSuchLine, TELL_MAKER } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withMore, withPart, withTiming } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'switching',
  component: 'contactor',
  next: LOCK_OFF,
  tell: TELL_MAKER,
} as const;

/** Supply only while it is asked for; a socket that is not mated has its contacts open or watched. */

const WELDED: PoleDesign = { welded: true };
const STUCK_OPEN: PoleDesign = { welded: false, stuckOpen: true };

const withPoles = (parts: Parts, poles: readonly Live[], pole: PoleDesign): Parts =>
  withDesign(parts, {
    poles: { ...parts.design.poles, ...Object.fromEntries(poles.map((name) => [name, pole])) },
  });

const unwatched = (parts: Parts): Parts => withDesign(parts, { weldCheck: 'none' });

export const switchingFaults: readonly Fault[] = [
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1 and 8.1.
    id: 'line-pole-welded',
    parameters: [LINE],
    impossible: noSuchLine,
    change: (parts, values) => unwatched(withPoles(parts, [lineOf(values)], WELDED)),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1 and 8.1.
    id: 'line-pole-welded-noticed',
    parameters: [LINE],
    impossible: noSuchLine,
    change: (parts, values) => withPoles(parts, [lineOf(values)], WELDED),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1 and 8.1.
    id: 'neutral-pole-welded',
    parameters: [],
    change: (parts) => unwatched(withPoles(parts, ['N'], WELDED)),
  },
  {
    ...frame,
    // IEC 61851-1:2017 6.3.1 and 8.1.
    id: 'all-poles-welded',
    parameters: [],
    change: (parts) => unwatched(withPoles(parts, polesOf(parts.site.phases), WELDED)),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 8: within 100 ms.
    id: 'opens-slowly',
    parameters: [{ name: 'seconds', unit: 's', min: 0.15, max: 0.8, default: 0.35 }],
    change: (parts, { seconds = 0 }) => withTiming(parts, { opening: seconds }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 8: within 100 ms.
    id: 'sticks-now-and-then',
    parameters: [{ name: 'seconds', unit: 's', min: 0.5, max: 20, default: 3 }],
    change: (parts, { seconds = 0 }) => unwatched(withDesign(parts, { sticks: { oneIn: 3, seconds } })),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 4: within 3 s.
    id: 'closes-slowly',
    parameters: [{ name: 'seconds', unit: 's', min: 3.2, max: 8, default: 5 }],
    change: (parts, { seconds = 0 }) => withTiming(parts, { beforeClosing: seconds }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 4.
    id: 'line-pole-stuck-open',
    parameters: [LINE],
    impossible: noSuchLine,
    change: (parts, values) => withPoles(parts, [lineOf(values)], STUCK_OPEN),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.6 sequence 4.
    id: 'neutral-pole-stuck-open',
    parameters: [],
    change: (parts) => withPoles(parts, ['N'], STUCK_OPEN),
  },
  {
    ...frame,
    // Common practice, no source.
    id: 'contact-resistance',
    parameters: [LINE, { name: 'ohms', unit: 'Ω', min: 0.5, max: 3, default: 0.8 }],
    impossible: noSuchLine,
    change: (parts, { ohms = 0, ...line }) => withMore(parts, `contactor.${lineOf(line)}`, ohms),
  },
  {
    ...frame,
    // IEC 61851-1:2017 12.6: a touch current of 3.5 mA at most.
    id: 'bleed-too-strong',
    parameters: [LINE, { name: 'ohms', unit: 'Ω', min: 5000, max: 50_000, default: 20_000 }],
    impossible: noSuchLine,
    change: (parts, { ohms = 0, ...line }) =>
      withPart(parts, `contactor.${lineOf(line)}`, (part) => ({ ...part, openResistance: ohms })),
  },
];
