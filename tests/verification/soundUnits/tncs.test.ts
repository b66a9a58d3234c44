/** Sound units on TN-C-S. */
import { holdSoundUnits } from './soundUnits.ts';

holdSoundUnits('TN-C-S');
