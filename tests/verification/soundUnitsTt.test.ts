/** Sound units on TT sites. */
import { testSoundUnits } from './soundUnits.ts';

testSoundUnits('TT');
