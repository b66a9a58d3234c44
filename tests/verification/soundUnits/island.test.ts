/** Sound units on an electrode of their own at a house on PME. */
import { holdSoundUnits } from './soundUnits.ts';

holdSoundUnits('island');
