/**
 * What each line of format 1 said a correct unit or circuit does: by test, the lines that it should do, and those that it
 * should not. Frozen: what a line became afterwards changes nothing in what was judged of it then.
 */
export const FORMAT_1_LINES: Readonly<
  Record<string, { readonly should: readonly string[]; readonly shouldNot: readonly string[] }>
> = {
  papers: {
    should: ['additional', 'direct', 'open-pen', 'at-origin', 'touch-voltage'],
    shouldNot: ['over-rating', 'type-ac', 'window'],
  },
  instruments: { should: ['nulled', 'insulation-joined'], shouldNot: ['fuse'] },
  isolate: { should: ['goes-dark'], shouldNot: ['no-indication'] },
  'prove-dead': { should: ['origin-dead'], shouldNot: ['supply-live', 'stored'] },
  inspect: {
    should: ['enclosure', 'protective-devices', 'position', 'labels'],
    shouldNot: ['terminals', 'outlet', 'cable'],
  },
  'pe-circuit': { should: ['near-sum'], shouldNot: ['open'] },
  'pe-outlet': { should: ['near-sum', 'case'], shouldNot: ['open', 'jumps'] },
  'r1r2-polarity': { should: ['near-sum', 'link-off'], shouldNot: ['other-conductor'] },
  'insulation-circuit': { should: ['between-lives'], shouldNot: ['lives-to-earth'] },
  'insulation-unit': { should: [], shouldNot: ['unit-to-earth'] },
  'insulation-outlet': { should: ['outlet-lives'], shouldNot: ['outlet-to-earth'] },
  'poles-open': { should: ['over-range'], shouldNot: ['welded'] },
  coding: { should: ['as-marked'], shouldNot: ['less-than-offered'] },
  electrode: { should: ['as-papers'], shouldNot: ['unstable'] },
  'make-good': { should: ['conductors-back', 'cover-on'], shouldNot: ['link-in'] },
  ze: { should: ['as-design'], shouldNot: ['no-earth'] },
  pfc: { should: ['neutral-way', 'earth-way', 'alike'], shouldNot: ['no-return', 'joined'] },
  'supply-volts': {
    should: ['line-to-neutral', 'line-to-earth', 'line-to-line', 'rotation'],
    shouldNot: ['neutral-lifted', 'earth-lifted', 'swings'],
  },
  energise: {
    should: ['ready', 'twelve-volts'],
    shouldNot: ['voltage', 'contactor', 'offers-early', 'trips'],
  },
  'state-a': { should: ['high', 'ready'], shouldNot: ['voltage'] },
  'state-b': { should: ['high', 'offers', 'plug-held'], shouldNot: ['voltage', 'too-much'] },
  'coding-sizes': { should: ['all-of-it'], shouldNot: ['too-much', 'uncoded-offer', 'uncoded-voltage'] },
  hold: { should: ['lock-first', 'held-in-b'], shouldNot: ['let-out-live'] },
  'state-c': {
    should: ['supplies', 'pilot', 'line-to-earth', 'charging', 'plug-held', 'line-to-line', 'rotation'],
    shouldNot: ['crossed'],
  },
  'c-to-b': { should: ['off-in-time', 'same-offer', 'supplies-again'], shouldNot: ['voltage'] },
  unplug: { should: ['off-in-time', 'twelve-volts', 'session-ends'], shouldNot: ['voltage'] },
  release: { should: ['after-going', 'after-fault'], shouldNot: ['released-live'] },
  'state-d': { should: ['high', 'supplies'], shouldNot: ['voltage', 'fault'] },
  limit: { should: ['follows', 'under-six'], shouldNot: ['too-much', 'digital'] },
  sharing: { should: ['offers-then'], shouldNot: ['fault', 'unasked-offer', 'unasked-supply'] },
  loop: { should: ['near-sum', 'neutral-near-sum'], shouldNot: ['no-return', 'trips'] },
  'volt-drop': { should: ['stays-on'], shouldNot: ['more-than-sum'] },
  'residual-origin': { should: ['in-time', 'which'], shouldNot: ['half-trips'] },
  'residual-half': { should: ['stays-live'], shouldNot: ['trips'] },
  'residual-rated': { should: ['in-time', 'which', 'dark'], shouldNot: ['closes-again'] },
  'residual-five': { should: ['in-time', 'which'], shouldNot: ['closes-again'] },
  'residual-ramp': { should: ['trips', 'stays-off'], shouldNot: ['early'] },
  'half-wave': { should: ['answers-positive', 'answers-negative'], shouldNot: ['early'] },
  'dc-ramp': { should: ['trips-positive', 'trips-negative'], shouldNot: ['early', 'upstream'] },
  'dc-step': { should: ['in-time'], shouldNot: ['closes-again', 'breaker'] },
  'residual-again': { should: ['in-time', 'which', 'button', 'reset-restores'], shouldNot: ['blinded'] },
  'open-pen': {
    should: ['rides-out', 'opens', 'in-time', 'opens-earth', 'says-so', 'earth-back'],
    shouldNot: ['onto-hazard'],
  },
  'pilot-short': { should: ['off-in-time', 'near-zero', 'fault'], shouldNot: ['voltage'] },
  'pilot-open': { should: ['off-in-time', 'as-unplugged', 'offers-again'], shouldNot: ['voltage'] },
  diode: { should: ['low-half', 'fault'], shouldNot: ['voltage'] },
  'diode-in-c': { should: ['low-half'], shouldNot: ['supplies-again'] },
  'pe-open': { should: ['off-in-time', 'as-unplugged', 'offers-again'], shouldNot: ['voltage'] },
  recovery: { should: ['after-short', 'after-trip', 'ready'], shouldNot: ['by-itself'] },
  'supply-return': {
    should: ['supplies-again'],
    shouldNot: ['voltage', 'comes-back-closed', 'permission-again'],
  },
  stop: { should: ['steady', 'emergency', 'says-so'], shouldNot: ['under-load', 'restarts', 'pause'] },
  'lost-line': {
    should: ['stops', 'dark', 'pilot-dead', 'recovers', 'goes-on'],
    shouldNot: ['lost-line-live', 'voltage'],
  },
  finish: { should: ['ready', 'twelve-volts'], shouldNot: ['voltage', 'plug'] },
};
