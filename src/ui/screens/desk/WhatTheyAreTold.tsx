/** What trainees are told before the first test, how much support they have, and whether any of it gives the answer away. */
import { useEffect, useState } from 'react';
import type { Problem } from '../../../scenario/problem.ts';
import { problemText } from '../../../words/problems.ts';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';
import type { JobFile } from './jobFile.ts';
import { withField } from './jobFile.ts';
import type { LineProps } from './LineFrame.tsx';
import { LineFrame } from './LineFrame.tsx';

const SUPPORTS = ['guided', 'practice', 'assessment'] as const;

const SUPPORT_LINES: Readonly<Record<JobFile['support'], string>> = {
  guided: 'Guided: they are told what a correct unit does',
  practice: 'Practice, told at once after each test',
  assessment: 'Assessment: nothing is told until the end',
};

const NAMES: Readonly<Record<string, string>> = {
  title: 'The title',
  brief: 'What they are told',
  symptom: 'The symptom',
  id: 'The name of the file',
  allowed: 'The list of tests',
};

export function WhatTheyAreTold(props: LineProps & { readonly leaks: readonly Problem[] }) {
  const { file, leaks, onChange } = props;
  const told = file.symptom ?? file.brief;
  const field = (name: 'title' | 'brief' | 'symptom', label: string, longest: number, lines = false) => (
    <Kept
      label={label}
      value={String(file[name] ?? '')}
      longest={longest}
      lines={lines}
      onChange={(text) => onChange(withField(file, [name], text), name)}
    />
  );
  return (
    <LineFrame
      {...props}
      name="What they are told"
      answer={`“${beginningOf(told)}”`}
      more={
        <>
          <p>
            {SUPPORT_LINES[file.support]}. {leaks.length === 0 ? 'Names no cause: checked.' : ''}
          </p>
          <Leaks leaks={leaks} />
        </>
      }
    >
      {field('title', 'title of the job', 120)}
      {field('brief', 'what they are told of the site and the unit', 2000, true)}
      {file.task === 'find' ? field('symptom', 'what somebody says of it', 300, true) : null}
      <FileName file={file} onChange={onChange} />
      <Keys
        legend="support"
        options={SUPPORTS}
        value={file.support}
        onChange={(support) => onChange(withField(file, ['support'], support))}
      />
      <p className="note">{SUPPORT_LINES[file.support]}.</p>
      {leaks.length === 0 ? <p className="note">Names no cause: checked.</p> : <Leaks leaks={leaks} />}
    </LineFrame>
  );
}

/** As much as is taken in at a glance; all of it stands in the panel. */
const GLANCE = 90;

function beginningOf(text: string): string {
  if (text.length <= GLANCE) return text;
  return `${text.slice(0, GLANCE).replace(/\s+\S*$/, '')} …`;
}

function Leaks({ leaks }: { readonly leaks: readonly Problem[] }) {
  return leaks.map((leak) => (
    <p key={`${leak.path} ${problemText(leak)}`} className="error">
      <strong>{NAMES[leak.path] ?? leak.path} gives it away:</strong>
      {problemText(leak).replace(/^it tells the answer: /, '')}
    </p>
  ));
}

interface KeptProps {
  readonly label: string;
  readonly value: string;
  readonly longest: number;
  readonly lines: boolean;
  readonly onChange: (text: string) => void;
}

/** A text that may not be empty: what was there before stands until something is typed. */
function Kept({ label, value, longest, lines, onChange }: KeptProps) {
  const [typed, setTyped] = useState(value);
  useEffect(() => {
    setTyped((now) => (now.trim() === '' ? now : value));
  }, [value]);
  return (
    <TextField
      label={label}
      lines={lines}
      maxLength={longest}
      value={typed}
      error={typed.trim() === '' ? 'Some words are expected; the last ones stand.' : null}
      onChange={(text) => {
        setTyped(text);
        if (text.trim() !== '') onChange(text);
      }}
    />
  );
}

const FORM = /^[a-z0-9]+(-[a-z0-9]+)*$/;

function FileName({ file, onChange }: Pick<LineProps, 'file' | 'onChange'>) {
  const [typed, setTyped] = useState(file.id);
  useEffect(() => {
    setTyped((now) => (FORM.test(now) ? file.id : now));
  }, [file.id]);
  return (
    <TextField
      label="name of the file, without .json"
      maxLength={60}
      value={typed}
      error={FORM.test(typed) ? null : 'Small letters, digits and single hyphens are expected.'}
      onChange={(text) => {
        setTyped(text);
        if (FORM.test(text)) onChange(withField(file, ['id'], text), 'id');
      }}
    />
  );
}
