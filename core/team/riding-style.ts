/** How hard a rider loads the bike; our own words, a closed list. */
export const ridingStyles = ["calm", "usual", "hard"] as const;
export type RidingStyle = (typeof ridingStyles)[number];
