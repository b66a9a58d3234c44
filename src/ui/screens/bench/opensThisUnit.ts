/** Where the unit itself may be opened as soon as a test is told, and where its correct twin alone. */
import type { Scenario } from '../../../scenario/scenario.ts';

/** In a job of one aim; in any other it would give away what later tests are there to find. */
export const opensThisUnit = ({ task }: Pick<Scenario, 'task'>): boolean => task === 'aim';
