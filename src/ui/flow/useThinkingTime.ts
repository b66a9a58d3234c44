/** The trainee's own time, which is only reported. */
import { useCallback, useState } from 'react';

/** Milliseconds of thinking since the attempt began; what was thought before a reload counts on. */
export function useThinkingTime(before: number): () => number {
  const [began] = useState(() => performance.now() - before);
  return useCallback(() => Math.round(performance.now() - began), [began]);
}
