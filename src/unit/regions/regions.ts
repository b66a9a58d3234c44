/** The regions that run side by side while the unit runs, by name. */
import { contactor } from './contactor.ts';
import { curtailment } from './curtailment.ts';
import { level } from './level.ts';
import { openPen } from './openPen.ts';
import { oscillation } from './oscillation.ts';
import { overCode } from './overCode.ts';
import { permission } from './permission.ts';
import { retention } from './retention.ts';
import { sensing } from './sensing.ts';
import { stopping } from './stopping.ts';
import { supervision } from './supervision.ts';
import { supply } from './supply.ts';
import { trip } from './trip.ts';

export const regions = {
  sensing,
  supply,
  level,
  permission,
  oscillation,
  retention,
  contactor,
  stopping,
  openPen,
  curtailment,
  overCode,
  residual: trip('residual'),
  direct: trip('direct'),
  supervision,
};
