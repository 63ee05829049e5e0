/** How much a message may hold; the rest goes to the finding's detail. */

/** Lengths in characters: a message, words quoted in it; and elements named in it. Common practice of ours. */
export const longest = { message: 120, quote: 48, named: 4 } as const;
