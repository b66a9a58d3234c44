/** What can be due on the bench's clock, as plain data: settle.ts says what comes of each. */
import type { ChartEvent } from '../unit/chart/standing.ts';
import type { Plant } from './plant.ts';
import type { TripTimes } from './sensors.ts';

export type Device = keyof TripTimes;
export const DEVICES = ['residual', 'direct', 'upstream', 'breaker'] as const satisfies readonly Device[];

export type Due =
  /** The contactor follows its coil. */
  | { readonly what: 'contactor'; readonly closed: boolean }
  | { readonly what: 'earth pole'; readonly to: Plant['earthPole'] }
  | { readonly what: 'lock'; readonly held: boolean }
  | { readonly what: 'trip'; readonly device: Device }
  /** One of the chart's own timers, by its id, with the event that it ends in. */
  | { readonly what: 'timer'; readonly id: string; readonly event: ChartEvent }
  /** An edge of the default charging hours, of which the control is to hear. */
  | { readonly what: 'hours' };
