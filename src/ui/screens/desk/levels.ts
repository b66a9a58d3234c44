/** How soon a cause is met, in a tutor's words. */
export const LEVEL_WORDS = { 1: '1: met soon', 2: '2: met later', 3: '3: easily missed' } as const;
