/** The one region that takes in what is sensed; all others look at it a microstep later, at the same instant. */
import { unitSetup } from './setup.ts';

export const sensing = unitSetup.createStateConfig({
  on: {
    sensed: { actions: 'take in' },
  },
});
