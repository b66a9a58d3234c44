// What takes long and stands for what is told elsewhere too is done where all of it is asked for:
// CHARGE_TRAINER_EVERY_TEST=1. Without it a fixed share goes.

export const EVERY_TEST = process.env.CHARGE_TRAINER_EVERY_TEST !== undefined;

/** All of them where every test is asked for, else those. */
export const share = <T>(all: readonly T[], otherwise: readonly T[]): readonly T[] =>
  EVERY_TEST ? all : otherwise;
