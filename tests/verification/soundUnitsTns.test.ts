/** Sound units on TN-S sites. */
import { testSoundUnits } from './soundUnits.ts';

testSoundUnits('TN-S');
