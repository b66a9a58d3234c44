/** The chart's timers on the bench's clock. */
import { microseconds } from '../laws/quantities.ts';
import type { TimerOrder } from '../unit/control.ts';
import type { Due } from './due.ts';
import type { Timeline } from './timeline.ts';

/** Starts and stops them as ordered. At one instant they come after plant and trips; none takes less than a tick. */
export function follow(timeline: Timeline<Due>, orders: readonly TimerOrder[]): void {
  for (const order of orders)
    if ('stop' in order) timeline.cancel((due) => due.what === 'timer' && due.id === order.stop);
    else {
      const at = timeline.now + Math.max(1, microseconds(order.time));
      timeline.enter(at, 'logic', { what: 'timer', id: order.start, event: order.event });
    }
}
