/** The first run comes with the words of the tests that it is about. */
import { expect, test } from 'vitest';
import { aimOf } from '../../src/scenario/aims.ts';
import { COURSE } from '../../src/ui/screens/firstRun/course.ts';
import { COURSE_AIMS } from '../../src/ui/screens/firstRun/courseAims.ts';

test('of their aims, and of no other', () => {
  const aims = COURSE.flatMap(({ lessons }) => lessons.map((lesson) => aimOf(lesson.test)));
  expect([...new Set(aims)]).toEqual(COURSE_AIMS);
});
