/** Sound units that share their service with a second charging point. */
import { holdSoundUnits } from './soundUnits.ts';

holdSoundUnits('pair');
