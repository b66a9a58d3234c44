/** Figures of a debrief, as its tables have them. */
import type { Figures } from '../../../words/mattered.ts';
import { shownText, timeText } from '../../format/figures.ts';
import { recordText } from '../measure/records.ts';

export const FIGURES: Figures = { shown: shownText, typed: recordText, time: timeText };
