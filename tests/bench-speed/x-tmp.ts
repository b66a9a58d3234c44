import { printCollecting } from './collectSpeed.ts';

printCollecting(() => {});
