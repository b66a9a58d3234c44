/** Sound units on TT. */
import { holdSoundUnits } from './soundUnits.ts';

holdSoundUnits('TT');
