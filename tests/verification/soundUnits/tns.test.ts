/** Sound units on TN-S. */
import { holdSoundUnits } from './soundUnits.ts';

holdSoundUnits('TN-S');
