/**
 * The position of everything that the trainee has set, and the operations that bring about another one, in an order
 * in which a person can do them. It knows what was set, not what came of it.
 */
import { OPENING_MOVES } from '../../bench/instruments/openingTimer.ts';
import type { Operation, OperationInput } from '../../bench/operation.ts';
import type { StandIn } from '../../bench/standIn.ts';
import type { UnitSheet } from '../../unit/design.ts';

export const SUPPLY_POSITIONS = ['on', 'off-locked', 'off-line-locked', 'off-unlocked'] as const;
export type SupplyPosition = (typeof SUPPLY_POSITIONS)[number];

/** The main switch of the whole installation, which opens every pole that it has. */
export const MAIN_POSITIONS = ['on', 'off-locked', 'off-unlocked'] as const;
export type MainPosition = (typeof MAIN_POSITIONS)[number];

export interface Position {
  /** The circuit, at its own device. */
  readonly supply: SupplyPosition;
  readonly main: MainPosition;
  readonly cover: 'closed' | 'open';
  readonly unit: 'connected' | 'taken off';
  readonly plugged: boolean;
  readonly state: StandIn['state'];
  readonly pilot: StandIn['pilot'];
  readonly diode: StandIn['diode'];
  readonly earth: StandIn['earth'];
  readonly coding: StandIn['coding'];
  readonly load: StandIn['load'];
  readonly leakage: StandIn['leakage'];
}

/** As the bench stands when an attempt begins. */
export const positionAtStart = (sheet: UnitSheet): Position => ({
  supply: 'on',
  main: 'on',
  cover: 'closed',
  unit: 'connected',
  plugged: false,
  state: 'A',
  pilot: 'sound',
  diode: 'sound',
  earth: 'sound',
  coding: sheet.cable.coding,
  load: 0,
  leakage: null,
});

const VEHICLE_FIELDS = ['plugged', 'state', 'pilot', 'diode', 'earth', 'coding', 'load', 'leakage'] as const;
type VehicleField = (typeof VEHICLE_FIELDS)[number];

/** Whether a field of the stand-in is set alike in both; a leakage is alike by its figures. */
export function isAlike(a: Position, b: Position, field: VehicleField): boolean {
  if (field !== 'leakage') return a[field] === b[field];
  const [x, y] = [a.leakage, b.leakage];
  return x === null || y === null ? x === y : x.ac === y.ac && x.dc === y.dc && x.line === y.line;
}

/** `refused`: the bench did not allow it, so nothing moved. */
export function positionAfter(position: Position, operation: Operation, refused: boolean): Position {
  if (refused && operation.op !== 'vehicle') return position;
  switch (operation.op) {
    case 'isolate':
      if (operation.at === 'main-switch')
        return { ...position, main: operation.lock ? 'off-locked' : 'off-unlocked' };
      return {
        ...position,
        supply:
          operation.poles === 'line' ? 'off-line-locked' : operation.lock ? 'off-locked' : 'off-unlocked',
      };
    case 'energise':
      return {
        ...position,
        ...(operation.at === 'main-switch' ? {} : { supply: 'on' }),
        ...(operation.at === 'origin' ? {} : { main: 'on' }),
      };
    case 'open-cover':
      return { ...position, cover: 'open' };
    case 'close-cover':
      return { ...position, cover: 'closed' };
    case 'disconnect':
      return operation.what === 'unit' ? { ...position, unit: 'taken off' } : position;
    case 'reconnect':
      return operation.what === 'unit' ? { ...position, unit: 'connected' } : position;
    case 'pull-plug':
      return { ...position, plugged: false };
    case 'vehicle': {
      const set = Object.fromEntries(
        VEHICLE_FIELDS.filter((field) => operation[field] !== undefined).map((field) => [
          field,
          operation[field],
        ]),
      );
      return { ...position, ...set, ...(refused ? { plugged: true } : {}) };
    }
    case 'measure':
      return operation.quantity === 'opening-time'
        ? { ...position, ...OPENING_MOVES[operation.of] }
        : position;
    default:
      return position;
  }
}

/** A plug that is held is let go within 5 s of state A (IEC 61851-1:2017 Table A.6); a second more to be sure. */
const RELEASE_SECONDS = 6;

/**
 * What has to be done to come from one position to another; nothing for what stays. The stand-in is set before the
 * supply goes off, while a held plug can still be let go, and after it has come on.
 */
export function operationsBetween(
  from: Position,
  to: Position,
  wait: number,
  outlet: UnitSheet['outlet'],
): readonly OperationInput[] {
  const vehicle = vehicleOperations(from, to, outlet);
  const goingOff = switchedOff(from, to);
  const goesOff = goingOff.length > 0;
  const list: OperationInput[] = goesOff ? [...vehicle, ...goingOff] : [];
  if (from.cover === 'closed' && to.cover === 'open') list.push({ op: 'open-cover' });
  if (from.unit !== to.unit)
    list.push({ op: to.unit === 'connected' ? 'reconnect' : 'disconnect', what: 'unit' });
  if (from.cover === 'open' && to.cover === 'closed') list.push({ op: 'close-cover' });
  list.push(...switchedOn(from, to));
  if (!goesOff) list.push(...vehicle);
  if (wait > 0) list.push({ op: 'wait', seconds: wait });
  return list;
}

/** The circuit first, then the main switch behind which there is nothing left to break. */
function switchedOff(from: Position, to: Position): readonly OperationInput[] {
  const list: OperationInput[] = [];
  if (to.supply !== from.supply && to.supply !== 'on')
    list.push({
      op: 'isolate',
      poles: to.supply === 'off-line-locked' ? 'line' : 'all',
      lock: to.supply !== 'off-unlocked',
    });
  if (to.main !== from.main && to.main !== 'on')
    list.push({ op: 'isolate', at: 'main-switch', lock: to.main === 'off-locked' });
  return list;
}

/** Of the two what is to be on; both at once where nothing is left off. */
function switchedOn(from: Position, to: Position): readonly OperationInput[] {
  const circuit = from.supply !== 'on' && to.supply === 'on';
  const main = from.main !== 'on' && to.main === 'on';
  if (to.supply === 'on' && to.main === 'on') return circuit || main ? [{ op: 'energise' }] : [];
  return [
    ...(main ? [{ op: 'energise', at: 'main-switch' } as const] : []),
    ...(circuit ? [{ op: 'energise', at: 'origin' } as const] : []),
  ];
}

function vehicleOperations(
  from: Position,
  to: Position,
  outlet: UnitSheet['outlet'],
): readonly OperationInput[] {
  const changed = VEHICLE_FIELDS.filter((field) => !isAlike(from, to, field));
  if (changed.length === 0) return [];
  const settings = Object.fromEntries(changed.map((field) => [field, to[field]]));
  const unplugs = changed.includes('plugged') && !to.plugged;
  if (!unplugs || outlet === 'tethered') return [{ op: 'vehicle', ...settings }];
  return [
    { op: 'vehicle', state: 'A' },
    { op: 'wait', seconds: RELEASE_SECONDS },
    { op: 'vehicle', ...settings, plugged: false },
  ];
}
