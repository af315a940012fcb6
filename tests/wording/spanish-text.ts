/** Words of English that are no word of Spanish, no name of an input and no name of a rule. */
export const englishWords = /(?<!\p{L})(?:the|an|of|is|are|it|its|and|with|without|must|give|leave|needs?|write|which|where|there|that|this|than|from|above|below|least|most|one|each|have|has)(?!\p{L})/iu;

/** What an input takes is the same in every language, and so stands in quotes, or in brackets where it is a name of ours. */
export const prose = (text: string): string => text.replace(/"[^"]*"|\([a-z]\w*\)|\([^)]*:[^)]*\)|\{[^}]*\}/g, "");

/** The numbers of a text with their units, in order of the alphabet. */
export const figures = (text: string): readonly string[] => (text.match(/\d[\d.,:/-]*(?<=\d)(?: (?:%|mil|um|in(?! the| trade)|ft|mm|m|ft2|m2|gal|lb|degF|degC|h|min|psi)\b)?/g) ?? []).sort();
