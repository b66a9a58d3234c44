/**
 * What is loaded when it is first wanted comes in two files, of which the second builds on the first (`vite.config.ts`):
 * the world and the bench. Each is worked through by itself, so that the page stays in hand between them.
 */
export async function afterTheWorld<T>(load: () => Promise<T>): Promise<T> {
  await import('../../scenario/verify.ts');
  return load();
}
