import { holdSoundUnit, SOUND } from './soundUnit.ts';

holdSoundUnit(SOUND.tap);
