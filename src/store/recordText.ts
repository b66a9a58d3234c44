/** The text of the file that everything on this device is exported to; what its fields mean is in recordFile.ts. */
import type { RecordItem } from './recordItem.ts';

export interface Goal {
  readonly text: string;
  /** ms since 1970 */
  readonly at: number;
}

export interface KeptRecord {
  readonly items: readonly RecordItem[];
  readonly goal: Goal | null;
  readonly further: Readonly<Record<string, unknown>>;
}

export const makeRecordText = ({ items, goal, further }: KeptRecord): string =>
  `${JSON.stringify({
    ...further,
    format: 1,
    goal,
    attempts: items.map(({ further: own, draft, ...item }) => ({
      ...own,
      ...item,
      ...(draft === null ? {} : { draft }),
    })),
  })}\n`;
