/** Sound units on TN-C-S sites. */
import { testSoundUnits } from './soundUnits.ts';

testSoundUnits('TN-C-S');
