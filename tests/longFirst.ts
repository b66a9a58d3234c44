// In which order test files are begun: by the seed of the run, but the long ones before all others, so that none of them
// is still running alone when the rest is done.

import { createHash } from 'node:crypto';
import type { TestSpecification } from 'vitest/node';
import { BaseSequencer } from 'vitest/node';

/** Files that take longest, and folders of them, the longest first. */
const LONG = [
  'tests/safety/',
  'tests/faults/catalogue',
  'tests/attempt/mark',
  'tests/ui/noLeak',
  'tests/verification/soundUnits/',
  'tests/attempt/',
  'tests/cli/cheats',
  'tests/unit/paths',
  'tests/bugs/upstreamRatings',
  'tests/verification/testsToRepeat',
  'tests/bugs/soundUnitsCalledFaulty',
  'tests/oracle/circuitSimulator',
  'tests/browser/budget',
  'tests/browser/soundUnit/',
  'tests/browser/aimStory',
  'tests/browser/everyBrowser',
  'tests/browser/access',
  'tests/browser/failing',
  'tests/browser/deskMore',
  'tests/browser/debrief',
  'tests/browser/kept',
  'tests/browser/verification',
  'tests/browser/cheats',
  'tests/browser/oneScreen',
  'tests/browser/twin',
  'tests/browser/record',
] as const;

export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { seed } = this.ctx.config.sequence;
    const placeOf = ({ moduleId }: TestSpecification): number => {
      const at = LONG.findIndex((long) => moduleId.includes(long));
      return at < 0 ? LONG.length : at;
    };
    const drawn = new Map(
      files.map((file) => [file, createHash('sha256').update(`${seed} ${file.moduleId}`).digest('hex')]),
    );
    const drawnOf = (file: TestSpecification): string => drawn.get(file) ?? '';
    return files.toSorted((x, y) => placeOf(x) - placeOf(y) || (drawnOf(x) < drawnOf(y) ? -1 : 1));
  }
}
