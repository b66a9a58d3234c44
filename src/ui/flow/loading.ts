/**
 * Files of the page that are loaded when they are first wanted. One that does not come, or comes broken, is told apart
 * from whatever else may fail: nothing is wrong with the attempt then.
 */

export class NotLoaded extends Error {
  constructor(cause: unknown) {
    super(cause instanceof Error ? cause.message : String(cause), { cause });
    this.name = 'NotLoaded';
  }
}

/** Rejects with `NotLoaded` where the file does not come whole. */
export async function loaded<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (cause) {
    throw new NotLoaded(cause);
  }
}

/**
 * What simulates comes in two files, of which the second builds on the first (`vite.config.ts`): the world and the
 * bench, which all further ones build on. Each is worked through by itself, so that the page stays in hand between them.
 */
export const afterEngine = <T>(load: () => Promise<T>): Promise<T> =>
  loaded(async () => {
    await import('../../scenario/scenario.ts');
    return load();
  });
