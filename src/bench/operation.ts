/**
 * The operations a person can do at the bench, as data: the same for scripts, attempts and screens. What comes from a file
 * is held to the schema that their types are from (operationSchema.ts).
 */
import type * as v from 'valibot';
import type { operationSchema } from './operationSchema.ts';
import { filled, MEASUREMENTS, OPERATIONS } from './usual.ts';

export type Operation = v.InferOutput<typeof operationSchema>;
/** As written: defaults may be left out. */
export type OperationInput = v.InferInput<typeof operationSchema>;
export type Measurement = Extract<Operation, { op: 'measure' }>;
export type MeasurementOf<Q extends Measurement['quantity']> = Extract<Measurement, { quantity: Q }>;

/** In the order of logs, with what is left out filled in: as the schema reads it. Meant for operations written in code. */
export function operation(input: OperationInput): Operation {
  const says =
    input.op === 'measure'
      ? { op: input.op, quantity: input.quantity, ...MEASUREMENTS[input.quantity] }
      : { op: input.op, ...OPERATIONS[input.op] };
  return filled(says, input) as Operation;
}
