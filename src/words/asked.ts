/** What a tutor may ask about one moment of an attempt: two questions each, which the learner answers, not the page. */
import type { UnsafeId } from '../bench/unsafe.ts';
import type { PartName } from '../scenario/tasks.ts';
import { unsafeActText } from './unsafeActs.ts';

export type AskedAbout =
  | { readonly what: 'act'; readonly act: UnsafeId }
  | { readonly what: 'line'; readonly part: PartName; readonly test: string; readonly line: string }
  | { readonly what: 'whole'; readonly part: PartName };

export function questionsAt(about: AskedAbout): readonly [string, string] {
  if (about.what === 'act')
    return [
      'At this moment, what did you know to be dead, and which proof told you?',
      `Here this happened: ${unsafeActText(about.act)}. What could it have done on site, and what would you do first another time?`,
    ];
  if (about.what === 'line') {
    const { part, test, line } = about;
    switch (part) {
      case 'prediction':
        return [
          `Before you measured in “${test}”: what did you expect of “${line}”, and what did you base it on?`,
          'What would a correct unit do here, and which reading would show it?',
        ];
      case 'judgement':
        return [
          `In “${test}”, show me the figure that you held “${line}” against. What is the limit?`,
          'What would you have read if it were the other way round?',
        ];
      default:
        return [
          `Read me the display in “${test}” once more: figure, unit and sign.`,
          'What would follow on site from the figure that you wrote?',
        ];
    }
  }
  switch (about.part) {
    case 'diagnosis':
      return [
        'Which of your figures does the cause that you named explain, and which does it alone explain?',
        'Which test would have told it from the next likely cause?',
      ];
    case 'reasons':
      return [
        'Which finding made you give this verdict?',
        'Whom would you tell, and which tests would you repeat after the repair?',
      ];
    default:
      return [
        'Which of your readings would you take again before you sign, and why?',
        'What did you leave out, and what could it have shown?',
      ];
  }
}
