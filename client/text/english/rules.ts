/** English texts of the rule book's page. */
export const rulesText = {
  title: "The rules of advice",
  link: "The rules of advice",
  find: "Find by words",
  none: "No rule has all of these words.",
  when: "When",
  moves: "What it does, in order of preference",
} as const;
