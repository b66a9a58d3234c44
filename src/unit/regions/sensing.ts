import { unitSetup } from './setup.ts';

export const sensing = unitSetup.createStateConfig({
  on: {
    sensed: { actions: 'take in' },
  },
});
