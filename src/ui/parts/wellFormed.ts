/** Half of a pair of surrogates stands for nothing, and no file may hold it: a text that was cut in the middle of one. */
const HALF = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text as it may stand in a file, with the sign for an unknown letter in place of half a pair. */
export const wellFormed = (text: string): string => text.replace(HALF, '\ufffd');
