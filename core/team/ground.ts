/** What a course's ground is like, from hardest and loosest to softest; a closed list. */
export const grounds = ["dry dust", "dry", "damp", "wet", "mud"] as const;
export type Ground = (typeof grounds)[number];
