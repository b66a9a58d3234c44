/** Faults of the contactor and of what watches it. Ranges are trade judgement (common practice, no source). */
import type { Live } from '../laws/conductors.ts';
import type { PoleDesign } from '../unit/design.ts';
import { polesOf } from '../unit/design.ts';
import type { Fault } from './fault.ts';
import { LINE, LOCK_OFF, lineOf, noSuchLine, PRACTICE, TELL_MAKER } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withMore, withPart, withTiming } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'switching',
  component: 'contactor',
  source: PRACTICE,
  next: LOCK_OFF,
  tell: TELL_MAKER,
} as const;

/** Supply only while it is asked for; a socket that is not mated has its contacts open or watched. */
const LET_GO = 'IEC 61851-1:2017 6.3.1 and 8.1';

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
    id: 'line-pole-welded',
    title: 'Line pole of the contactor welded, not noticed by the unit',
    parameters: [LINE],
    where: 'the contactor; the contact that should report it is not read',
    cause: 'Inrush has welded the pole, and the sensing wire is off.',
    hazard: 'The connector is live with nothing plugged in.',
    source: LET_GO,
    impossible: noSuchLine,
    change: (parts, values) => unwatched(withPoles(parts, [lineOf(values)], WELDED)),
  },
  {
    ...frame,
    id: 'line-pole-welded-noticed',
    title: 'Line pole of the contactor welded, and the unit says so',
    parameters: [LINE],
    where: 'the contactor; the contact that reports it works',
    cause: 'Inrush has welded the pole.',
    hazard: 'The connector is live, though nobody can start a charge.',
    source: LET_GO,
    impossible: noSuchLine,
    change: (parts, values) => withPoles(parts, [lineOf(values)], WELDED),
  },
  {
    ...frame,
    id: 'neutral-pole-welded',
    title: 'Neutral pole of the contactor welded',
    parameters: [],
    where: 'the contactor; the contact that should report it is not read',
    cause: 'Inrush has welded the pole.',
    hazard: 'The neutral is always through: the vehicle is never isolated from it.',
    source: LET_GO,
    change: (parts) => unwatched(withPoles(parts, ['N'], WELDED)),
  },
  {
    ...frame,
    id: 'all-poles-welded',
    title: 'Every pole of the contactor welded',
    parameters: [],
    where: 'the contactor; the contact that should report it is not read',
    cause: 'A short circuit in a vehicle.',
    hazard: 'The connector is live with nothing plugged in.',
    source: LET_GO,
    change: (parts) => unwatched(withPoles(parts, polesOf(parts.site.phases), WELDED)),
  },
  {
    ...frame,
    id: 'opens-slowly',
    title: 'Contactor opens too slowly',
    parameters: [{ name: 'seconds', unit: 's', min: 0.15, max: 0.8, default: 0.35 }],
    where: 'the contactor’s coil and springs',
    cause: 'A weak spring, or a coil suppressed too much.',
    hazard: 'An arc as the connector is pulled.',
    change: (parts, { seconds = 0 }) => withTiming(parts, { opening: seconds }),
  },
  {
    ...frame,
    id: 'closes-slowly',
    title: 'Supply comes too late after it is asked for',
    parameters: [{ name: 'seconds', unit: 's', min: 3.2, max: 8, default: 5 }],
    where: 'the control logic, before the contactor closes',
    cause: 'A fault of its programme.',
    hazard: 'None to people: the vehicle gives up.',
    change: (parts, { seconds = 0 }) => withTiming(parts, { beforeClosing: seconds }),
  },
  {
    ...frame,
    id: 'line-pole-stuck-open',
    title: 'A line pole of the contactor never closes',
    parameters: [LINE],
    where: 'the contactor',
    cause: 'The contact is burnt away.',
    hazard: 'None to people: a line is missing at the vehicle.',
    impossible: noSuchLine,
    change: (parts, values) => withPoles(parts, [lineOf(values)], STUCK_OPEN),
  },
  {
    ...frame,
    id: 'neutral-pole-stuck-open',
    title: 'The neutral pole of the contactor never closes',
    parameters: [],
    where: 'the contactor',
    cause: 'The contact is burnt away.',
    hazard: 'An outlet that seems dead is live to earth; on three phases voltages run away.',
    change: (parts) => withPoles(parts, ['N'], STUCK_OPEN),
  },
  {
    ...frame,
    id: 'contact-resistance',
    title: 'A pole of the contactor has high resistance',
    parameters: [LINE, { name: 'ohms', unit: 'Ω', min: 0.5, max: 3, default: 0.8 }],
    where: 'one line pole of the contactor',
    cause: 'The contact is pitted.',
    hazard: 'Heat inside the unit.',
    impossible: noSuchLine,
    change: (parts, { ohms = 0, ...line }) => withMore(parts, `contactor.${lineOf(line)}`, ohms),
  },
  {
    ...frame,
    id: 'bleed-too-strong',
    title: 'What bleeds across an open pole lets too much through',
    parameters: [LINE, { name: 'ohms', unit: 'Ω', min: 5000, max: 50_000, default: 20_000 }],
    where: 'the part across one line pole of the contactor',
    cause: 'A suppressor has failed low.',
    hazard: 'Current through whoever touches the connector, above 3.5 mA.',
    impossible: noSuchLine,
    change: (parts, { ohms = 0, ...line }) =>
      withPart(parts, `contactor.${lineOf(line)}`, (part) => ({ ...part, openResistance: ohms })),
  },
];
