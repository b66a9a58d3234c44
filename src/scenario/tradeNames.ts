/**
 * What the trade calls things that a file names otherwise: fields, values and tests. Exact, so that nobody is led from one
 * thing to another that is only spelt like it.
 */
import { DID_YOU_MEAN, LONGEST, nearest } from './nearest.ts';

/**
 * The name meant, by its spelling or by what the trade calls it, or the names that are valid, for a message. Of many names
 * those alone that have a word in common with it, with `where` all of them are told by what they are: a bare list of them
 * is no help.
 */
export function meant(name: string, valid: readonly string[], where: string | null = null): string {
  const spelt = nearest(name, valid);
  if (spelt.startsWith(DID_YOU_MEAN)) return spelt;
  const trade = name.length > LONGEST ? [] : meantByTrade(name, valid);
  if (trade.length > 0) return `${DID_YOU_MEAN} ${trade.map((one) => `"${one}"`).join(' or ')}?`;
  if (where === null || valid.length <= MOST_NAMED) return spelt;
  const near = name.length > LONGEST ? [] : sharingWords(name, valid);
  return near.length === 0 ? where : `near it are ${near.join(', ')}; ${where}`;
}

/** Letters and digits of a name, small: `TN-C-S`, `tncs` and `TN C S` are one. */
const plain = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');

/** By the trade's name what may be meant; which of them is valid where it stands is the caller's business. */
const MEANT: Readonly<Record<string, readonly string[]>> = {
  ze: ['loopImpedance'],
  externalloopimpedance: ['loopImpedance'],
  zn: ['neutralImpedance'],
  ra: ['electrodeResistance', 'electrode'],
  earthelectrode: ['electrodeResistance', 'electrode'],
  rod: ['electrodeResistance', 'electrode'],
  u0: ['voltage'],
  volts: ['voltage'],
  cpc: ['protectiveArea', 'pe-circuit'],
  csa: ['lineArea', 'area'],
  cpcsize: ['protectiveArea'],
  linesize: ['lineArea'],
  conductor: ['lineArea'],
  mcb: ['breaker'],
  cb: ['breaker'],
  protectivedevice: ['breaker'],
  icn: ['breakingCapacity'],
  rcd: ['residualDevice', 'residual', 'residual-rated'],
  rcbo: ['residualDevice', 'residual'],
  rccb: ['residualDevice', 'residual'],
  idn: ['rated'],
  rating: ['rated', 'ratedCurrent'],
  ratedresidual: ['rated'],
  rdcdd: ['direct', 'dc-ramp'],
  dcdetection: ['direct'],
  method: ['method'],
  referencemethod: ['method'],
  installationmethod: ['method'],
  in: ['rating', 'ratedCurrent'],
  current: ['ratedCurrent', 'rating'],
  tether: ['cable'],
  lead: ['cable', 'customerCable'],
  pen: ['openPen'],
  opencircuitpen: ['openPen'],
  spd: ['surgeArrester'],
  tncs: ['TN-C-S'],
  pme: ['TN-C-S'],
  tns: ['TN-S'],
  single: ['1'],
  singlephase: ['1'],
  three: ['3'],
  threephase: ['3'],
  deadtest: ['prove-dead'],
  zs: ['loop'],
  efli: ['loop'],
  earthloop: ['loop'],
  r1r2: ['r1r2-polarity'],
  continuity: ['pe-circuit', 'pe-outlet', 'r1r2-polarity'],
  polarity: ['r1r2-polarity'],
  ir: ['insulation-circuit', 'insulation-unit', 'insulation-outlet'],
  insulation: ['insulation-circuit', 'insulation-unit', 'insulation-outlet'],
  pscc: ['pfc'],
  pefc: ['pfc'],
  ipf: ['pfc'],
  voltdrop: ['volt-drop'],
  functional: ['state-a', 'state-b', 'state-c'],
  visual: ['inspect'],
  visualinspection: ['inspect'],
};

/** The valid names that the trade's own name stands for; none where it is no such name. */
export const meantByTrade = (name: string, valid: readonly string[]): readonly string[] => {
  const key = plain(name);
  return (Object.hasOwn(MEANT, key) ? (MEANT[key] ?? []) : []).filter((one) => valid.includes(one));
};

/** Where all causes, and all tests, are told by what they are. */
export const WHERE_FAULTS = '“Set work” on the page, and the verb "faults", say what each is';
export const WHERE_TESTS = '“Set work” on the page, and the verb "actions", say what each is';

export const WHERE_LIMITS = '“Change one thing” on the page has each of them to choose from';

/** A list longer than this is no help: nobody reads it. */
const MOST_NAMED = 16;
const STEM = 4;
const NEAR = 6;

/** Of a long list those that share a word with it; the best first, a few at most. */
function sharingWords(name: string, valid: readonly string[]): readonly string[] {
  const stems = stemsOf(name);
  const shared = (other: string): number => stemsOf(other).filter((stem) => stems.includes(stem)).length;
  return valid
    .map((other) => ({ other, count: shared(other) }))
    .filter(({ count }) => count > 0)
    .toSorted((x, y) => y.count - x.count)
    .slice(0, NEAR)
    .map(({ other }) => other);
}

const stemsOf = (name: string): readonly string[] =>
  (name.toLowerCase().match(/\p{L}+/gu) ?? [])
    .filter(({ length }) => length > 2)
    .map((word) => word.slice(0, STEM));

/** A figure with its unit, as somebody writes it: `30 mA`, `1.8 Ω`; in the units of a file. Null: it is none. */
export function figureIn(text: string): { readonly value: number; readonly unit: string } | null {
  const match = /^\s*([-+]?\d+(?:[.,]\d+)?)\s*([a-zµΩ²]*)\s*$/iu.exec(text);
  if (match === null) return null;
  const [, digits = '', unit = ''] = match;
  const factor = FACTORS.find(([form]) => form.test(unit))?.[1] ?? 1;
  return { value: Number((Number(digits.replace(',', '.')) * factor).toPrecision(12)), unit };
}

/** A file knows no prefixes. */
const FACTORS: readonly (readonly [RegExp, number])[] = [
  [/^m(a|s|v|Ω|ohms?)$/i, 0.001],
  [/^k(a|v|w|Ω|ohms?)$/i, 1000],
  [/^M(Ω|ohms?)$/, 1_000_000],
];
