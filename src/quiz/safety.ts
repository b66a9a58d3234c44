/** What nobody may have forgotten on the day: it comes back sooner. */
import type { AimId } from '../scenario/aims.ts';

const SAFETY_TOPICS: readonly AimId[] = ['dead', 'outlet-dead', 'refuses'];
const SAFETY_KINDS: readonly string[] = ['unsafe-act', 'go-on-or-stop', 'one-pair', 'order-of-proving'];

export const isSafetyTopic = (topic: AimId): boolean => SAFETY_TOPICS.includes(topic);
export const isSafetyKind = (kind: string): boolean => SAFETY_KINDS.includes(kind);
