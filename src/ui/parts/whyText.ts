/** The reason, and which tests tell what this one cannot. */
export const whyText = (why: string, toldBy: readonly string[]): string =>
  toldBy.length === 0 ? why : `${why} Told by: ${toldBy.join('; ')}.`;
