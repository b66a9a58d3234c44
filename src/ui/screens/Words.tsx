/** The trade words of this trainer on one page. */

import { GLOSSARY } from '../../words/glossary.ts';
import { Glossary } from '../parts/Glossary.tsx';
import { Reading } from './Reading.tsx';

export function Words() {
  return (
    <Reading title="Words" about="trade words, and what they mean here">
      <Glossary words={GLOSSARY} />
    </Reading>
  );
}
