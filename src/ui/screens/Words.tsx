/** The trade words of this trainer on one page. */
import { Glossary } from '../parts/WordsUsed.tsx';
import { GLOSSARY } from '../words/glossary.ts';
import { Reading } from './Reading.tsx';

export function Words() {
  return (
    <Reading title="Words" about="trade words, and what they mean here">
      <Glossary words={GLOSSARY} />
    </Reading>
  );
}
