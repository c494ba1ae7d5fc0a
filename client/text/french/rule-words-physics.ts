/** What the corrections by physics say. */
export const physicsWords: Readonly<
  Record<string, { readonly when: string; readonly move: string; readonly reason: string }>
> = {
  "own-baseline": {
    when: "la piste est d’un seul type, pour lequel le pilote a une base",
    move: "prendre la base telle quelle",
    reason: "Les réglages que le pilote sait bons sont le meilleur départ possible.",
  },
  blend: {
    when: "la piste mélange plusieurs types",
    move: "mélanger les bases du pilote selon la part de chaque type dans la piste",
    reason: "Entre deux réglages qu’on sait bons, il y en a un bon.",
  },
  "rider-mass": {
    when: "la masse du pilote n’est pas celle de la base",
    move: "pression principale, ou raideur du ressort, pour que le sag reste le même",
    reason: "Le même sag garde le vélo dans la partie du débattement que le pilote connaît.",
  },
  altitude: {
    when: "l’altitude n’est pas celle de la base",
    move: "pression principale, pour que le soutien en fin de course reste le même",
    reason: "Un air plus léger autour du ressort rend la même pression lue moins progressive.",
  },
  "rebound-follows": {
    when: "la raideur au sag a changé de quoi valoir un clic ou plus",
    move: "détente, du nombre de clics qui garde le taux d’amortissement de la base",
    reason: "Un ressort plus raide veut plus de frein de détente, un plus souple en veut moins.",
  },
  temperature: {
    when: "il fait plus froid ou plus chaud à l’établi qu’à la séance",
    move: "chaque pression, par la loi des gaz à volume constant, pour qu’elle soit juste à la séance",
    reason: "Une pression réglée au frais du matin se lit plus haut à la chaleur de la finale.",
  },
};
