/** No figure stands at the end of a line with its unit on the next (look: a no-break space between them). */
const UNIT = /(\d) (?=(?:[mµk]?[AVs]|Hz|%|[mkM]?Ω(?:\/m)?|m|mm²)(?![\p{L}\p{N}]))/gu;

export const withUnits = (text: string): string => text.replaceAll(UNIT, '$1\u00a0');
