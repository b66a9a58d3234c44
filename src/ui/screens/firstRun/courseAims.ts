/** The aims whose tests the course (course.ts) is about: their words come with its screen. */
import type { AimId } from '../../../scenario/aims.ts';

export const COURSE_AIMS: readonly AimId[] = ['offer', 'lets-go', 'outlet-dead'];
