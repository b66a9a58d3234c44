/** The title block of a sheet that is given out, or of its key, which says so on each page. */
import { TRAINING_RECORD } from '../../parts/pageTitle.ts';
import { TitleBlock } from '../../parts/TitleBlock.tsx';

interface Props {
  readonly title: string;
  readonly word: string;
  readonly rules: string;
  readonly page: number;
  readonly of: number;
  readonly isKey?: boolean;
}

export const SheetBlock = ({ title, word, rules, page, of, isKey = false }: Props) => (
  <TitleBlock
    framed
    rows={[
      ...(isKey ? [['KEY', 'for the tutor alone'] as const] : []),
      ['job', title],
      ['word', word],
      ['rules', rules],
      ['page', `${page} of ${of}`],
    ]}
    trainingOnly={TRAINING_RECORD}
  />
);
