/**
 * A quiz that goes to another program: the package of QTI 3.0 read back by an XML reader that knows nothing of how it was
 * written, its structure held to the specification's (elements and attributes of IMS QTI 3.0, Assessment Section and Item
 * model; from memory where marked), and the table read back as a spreadsheet would.
 */
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import type { SetQuiz } from '../../src/quiz/setQuiz.ts';
import { questionsOf } from '../../src/quiz/setQuiz.ts';
import { quizCsv, quizQti } from '../../src/words/quizRows.ts';

const QUIZ: SetQuiz = { format: 1, title: 'Loops & <legs>', count: 60, seed: 9, minutes: 30, sure: false };
const ASKED = questionsOf(QUIZ);
const FILES = quizQti(QUIZ);

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '@',
  parseTagValue: false,
  isArray: (name) =>
    [
      'qti-simple-choice',
      'qti-value',
      'resource',
      'dependency',
      'qti-assessment-item-ref',
      'qti-base-value',
    ].includes(name),
});
// biome-ignore lint/suspicious/noExplicitAny: what a foreign reader makes of it
const read = (name: string): any => parser.parse(FILES[name] ?? '');
const itemAt = (i: number) => read(`items/item-${i + 1}.xml`)['qti-assessment-item'];

test('every way of answering is among them', () => {
  expect(new Set(ASKED.map(({ way }) => way)).size).toBe(7);
});

test('every file is well-formed', () => {
  for (const [name, text] of Object.entries(FILES)) expect(XMLValidator.validate(text), name).toBe(true);
});

test('the manifest names every file once, and the test every item in its order', () => {
  const { manifest } = read('imsmanifest.xml');
  expect(manifest['@xmlns']).toBe('http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1');
  const hrefs = manifest.resources.resource.map((one: { '@href': string }) => one['@href']);
  expect([...hrefs, 'imsmanifest.xml'].sort()).toEqual(Object.keys(FILES).sort());
  const whole = read('test.xml')['qti-assessment-test'];
  expect(whole['@title']).toBe('Loops & <legs>');
  expect(whole['qti-time-limits']['@max-time']).toBe('1800');
  const refs = whole['qti-test-part']['qti-assessment-section']['qti-assessment-item-ref'];
  expect(refs.map((one: { '@href': string }) => one['@href'])).toEqual(
    ASKED.map((_, i) => `items/item-${i + 1}.xml`),
  );
});

describe('an item', () => {
  test('has one declared response, an interaction for it, and a right answer among what may be chosen', () => {
    for (const [i, question] of ASKED.entries()) {
      const item = itemAt(i);
      expect(item['@xmlns'], question.id).toBe('http://www.imsglobal.org/xsd/imsqtiasi_v3p0');
      const declared = item['qti-response-declaration'];
      const right: readonly string[] = declared['qti-correct-response']['qti-value'];
      const body = item['qti-item-body'];
      if (question.way === 'figure') {
        expect(declared['@base-type']).toBe('float');
        expect(Number(right[0])).toBe(question.answer);
        const equal =
          item['qti-response-processing']['qti-response-condition']['qti-response-if']['qti-equal'];
        expect(equal['@tolerance']).toBe(`${question.tolerance} ${question.tolerance}`);
        continue;
      }
      const interaction = body[question.way === 'order' ? 'qti-order-interaction' : 'qti-choice-interaction'];
      expect(interaction['@response-identifier'], question.id).toBe(declared['@identifier']);
      const ids = interaction['qti-simple-choice'].map(
        (one: { '@identifier': string }) => one['@identifier'],
      );
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of right) expect(ids, question.id).toContain(id);
      expect(declared['@cardinality']).toBe(
        { order: 'ordered', leads: 'multiple' }[question.way as string] ?? 'single',
      );
      // The place of the right one is that of the question.
      if (question.way === 'choice')
        expect(right).toEqual([
          `option-${1 + question.choices.findIndex(({ id }) => id === question.answer)}`,
        ]);
    }
  });
});

test('the table has a row a question, and no field that a spreadsheet would work out', () => {
  const lines = quizCsv(QUIZ).trimEnd().split('\r\n');
  expect(lines).toHaveLength(ASKED.length + 1);
  for (const line of lines) {
    const fields = [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))/g)].map(
      ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
    );
    expect(fields).toHaveLength(10);
    for (const text of fields) expect(text).not.toMatch(/^[=+@-]/);
  }
});

/**
 * Content models of the binding: children in this order, how often each, and attributes that are required or may stand
 * there. Source: 1EdTech QTI 3.0 (2022), Assessment, Section and Item information model and XSD binding, and Content
 * Packaging 1.2 for the manifest; no package of the archive carries the schema itself, so this is from memory.
 */
interface Model {
  readonly children: readonly (readonly [name: string, least: number, most: number])[];
  readonly required?: readonly string[];
  readonly allowed?: readonly string[];
}
const ANY = Infinity;
const TEXT = '#text';
const EXPRESSIONS = [
  'qti-variable',
  'qti-base-value',
  'qti-match',
  'qti-or',
  'qti-equal',
  'qti-multiple',
  'qti-ordered',
];
/** Expressions stand in any order: so many of them. */
const expressions = (least: number, most: number): Model['children'] => [['expression', least, most]];

const MODELS: Readonly<Record<string, Model>> = {
  'qti-assessment-item': {
    children: [
      ['qti-response-declaration', 0, ANY],
      ['qti-outcome-declaration', 0, ANY],
      ['qti-item-body', 0, 1],
      ['qti-response-processing', 0, 1],
    ],
    required: ['xmlns', 'identifier', 'title', 'time-dependent'],
    allowed: ['adaptive', 'xml:lang'],
  },
  'qti-response-declaration': {
    children: [['qti-correct-response', 0, 1]],
    required: ['identifier', 'cardinality'],
    allowed: ['base-type'],
  },
  'qti-outcome-declaration': {
    children: [['qti-default-value', 0, 1]],
    required: ['identifier', 'cardinality'],
    allowed: ['base-type'],
  },
  'qti-correct-response': { children: [['qti-value', 1, ANY]] },
  'qti-default-value': { children: [['qti-value', 1, ANY]] },
  'qti-value': { children: [[TEXT, 1, 1]] },
  'qti-item-body': {
    children: [
      ['p', 0, ANY],
      ['qti-choice-interaction', 0, ANY],
      ['qti-order-interaction', 0, ANY],
    ],
  },
  p: {
    children: [
      [TEXT, 0, 1],
      ['qti-text-entry-interaction', 0, 1],
      [TEXT, 0, 1],
    ],
  },
  'qti-text-entry-interaction': {
    children: [],
    required: ['response-identifier'],
    allowed: ['expected-length'],
  },
  'qti-choice-interaction': {
    children: [
      ['qti-prompt', 0, 1],
      ['qti-simple-choice', 1, ANY],
    ],
    required: ['response-identifier'],
    allowed: ['shuffle', 'max-choices', 'min-choices'],
  },
  'qti-order-interaction': {
    children: [
      ['qti-prompt', 0, 1],
      ['qti-simple-choice', 1, ANY],
    ],
    required: ['response-identifier'],
    allowed: ['shuffle'],
  },
  'qti-prompt': { children: [[TEXT, 1, 1]] },
  'qti-simple-choice': { children: [[TEXT, 1, 1]], required: ['identifier'] },
  'qti-response-processing': { children: [['qti-response-condition', 1, ANY]] },
  'qti-response-condition': { children: [['qti-response-if', 1, 1]] },
  'qti-response-if': {
    children: [
      ['expression', 1, 1],
      ['qti-set-outcome-value', 0, ANY],
    ],
  },
  'qti-set-outcome-value': { children: expressions(1, 1), required: ['identifier'] },
  'qti-match': { children: expressions(2, 2) },
  'qti-or': { children: expressions(1, ANY) },
  'qti-multiple': { children: expressions(0, ANY) },
  'qti-ordered': { children: expressions(0, ANY) },
  'qti-equal': { children: expressions(2, 2), required: ['tolerance-mode'], allowed: ['tolerance'] },
  'qti-variable': { children: [], required: ['identifier'] },
  'qti-base-value': { children: [[TEXT, 1, 1]], required: ['base-type'] },
  'qti-assessment-test': {
    children: [
      ['qti-outcome-declaration', 0, ANY],
      ['qti-time-limits', 0, 1],
      ['qti-test-part', 1, ANY],
    ],
    required: ['xmlns', 'identifier', 'title'],
  },
  'qti-time-limits': { children: [], allowed: ['max-time', 'min-time'] },
  'qti-test-part': {
    children: [['qti-assessment-section', 1, ANY]],
    required: ['identifier', 'navigation-mode', 'submission-mode'],
  },
  'qti-assessment-section': {
    children: [['qti-assessment-item-ref', 0, ANY]],
    required: ['identifier', 'title', 'visible'],
  },
  'qti-assessment-item-ref': { children: [], required: ['identifier', 'href'] },
  manifest: {
    children: [
      ['metadata', 1, 1],
      ['organizations', 1, 1],
      ['resources', 1, 1],
    ],
    required: ['xmlns', 'identifier'],
  },
  metadata: {
    children: [
      ['schema', 1, 1],
      ['schemaversion', 1, 1],
    ],
  },
  schema: { children: [[TEXT, 1, 1]] },
  schemaversion: { children: [[TEXT, 1, 1]] },
  organizations: { children: [] },
  resources: { children: [['resource', 0, ANY]] },
  resource: {
    children: [
      ['file', 1, ANY],
      ['dependency', 0, ANY],
    ],
    required: ['identifier', 'type'],
    allowed: ['href'],
  },
  file: { children: [], required: ['href'] },
  dependency: { children: [], required: ['identifierref'] },
};

/** Values that an attribute of this name may have. */
const VALUES: Readonly<Record<string, RegExp>> = {
  identifier: /^[A-Za-z_][\w.-]*$/,
  'response-identifier': /^[A-Za-z_][\w.-]*$/,
  cardinality: /^(single|multiple|ordered|record)$/,
  'base-type': /^(identifier|boolean|integer|float|string)$/,
  'time-dependent': /^(true|false)$/,
  adaptive: /^(true|false)$/,
  shuffle: /^(true|false)$/,
  visible: /^(true|false)$/,
  'max-choices': /^\d+$/,
  'min-choices': /^\d+$/,
  'expected-length': /^\d+$/,
  'tolerance-mode': /^(exact|absolute|relative)$/,
  tolerance: /^\d+(\.\d+)?( \d+(\.\d+)?)?$/,
  'navigation-mode': /^(linear|nonlinear)$/,
  'submission-mode': /^(individual|simultaneous)$/,
  'max-time': /^\d+(\.\d+)?$/,
  title: /\S/,
};

interface Node {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Node[];
}

const ordered = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '',
  preserveOrder: true,
  parseTagValue: false,
  parseAttributeValue: false,
});

const nodesIn = (parsed: readonly Record<string, unknown>[]): readonly Node[] =>
  parsed.flatMap((one) => {
    const [name = ''] = Object.keys(one).filter((key) => key !== ':@');
    if (name.startsWith('?')) return [];
    const inner = one[name];
    return [
      {
        name,
        attributes: (one[':@'] ?? {}) as Record<string, string>,
        children: Array.isArray(inner) ? nodesIn(inner as Record<string, unknown>[]) : [],
      },
    ];
  });

/** Every way in which an element is not as its content model has it, with where. */
function faultsOf(node: Node, path: string): readonly string[] {
  if (node.name === TEXT) return [];
  const at = `${path}/${node.name}`;
  const model = MODELS[node.name];
  if (model === undefined) return [`${at}: no such element`];
  const { children, required = [], allowed = [] } = model;
  const names = Object.keys(node.attributes);
  const attributes = [
    ...required.filter((name) => !names.includes(name)).map((name) => `${at}: lacks ${name}`),
    ...names
      .filter((name) => ![...required, ...allowed].includes(name))
      .map((name) => `${at}: has no attribute ${name}`),
    ...names
      .filter((name) => VALUES[name]?.test(node.attributes[name] ?? '') === false)
      .map((name) => `${at}: ${name}="${node.attributes[name]}"`),
  ];
  let next = 0;
  const order: string[] = [];
  for (const [name, least, most] of children) {
    const isOne = (child: Node | undefined): boolean =>
      child !== undefined && (name === 'expression' ? EXPRESSIONS.includes(child.name) : child.name === name);
    const from = next;
    while (next - from < most && isOne(node.children[next])) next += 1;
    if (next - from < least) order.push(`${at}: ${next - from} of ${name}`);
  }
  if (next < node.children.length) order.push(`${at}: ${node.children[next]?.name} out of its place`);
  return [...attributes, ...order, ...node.children.flatMap((child) => faultsOf(child, at))];
}

const faultsIn = (text: string): readonly string[] =>
  nodesIn(ordered.parse(text)).flatMap((node) => faultsOf(node, ''));

describe('the binding', () => {
  test('every file has the elements, their order and number, and the attributes that it asks for', () => {
    for (const [name, text] of Object.entries(FILES)) expect(faultsIn(text), name).toEqual([]);
  });

  test('a quiz without title or minutes too', () => {
    const files = quizQti({ ...QUIZ, title: '', minutes: null, count: 3 });
    for (const [name, text] of Object.entries(files)) expect(faultsIn(text), name).toEqual([]);
  });

  test('what is out of its place, missing or of no such value is found', () => {
    const item = FILES['items/item-1.xml'] ?? '';
    const [, declared = ''] =
      /(<qti-outcome-declaration[\s\S]*?<\/qti-outcome-declaration>)/.exec(item) ?? [];
    const moved = item
      .replace(declared, '')
      .replace('</qti-assessment-item>', `${declared}</qti-assessment-item>`);
    expect(faultsIn(moved).join()).toMatch(/qti-outcome-declaration out of its place/);
    expect(faultsIn(item.replace(' time-dependent="false"', '')).join()).toMatch(/lacks time-dependent/);
    expect(faultsIn(item.replace('cardinality="single"', 'cardinality="one"')).join()).toMatch(
      /cardinality="one"/,
    );
    expect(
      faultsIn(
        item
          .replace('qti-set-outcome-value', 'qti-set-outcome')
          .replace('/qti-set-outcome-value', '/qti-set-outcome'),
      ).join(),
    ).toMatch(/no such element|out of its place/);
  });
});
