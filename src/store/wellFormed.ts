/** Half of a pair of surrogates stands for nothing, as of a text that was cut in the middle of one; no file may hold it. */
const HALF = /\p{Cs}/gu;

/** A text as it may stand in a file, with the sign for an unknown letter in place of half a pair. */
export const wellFormed = (text: string): string => text.replace(HALF, '\ufffd');
