/** English texts of the named sections of a course. */
export const sections = {
  shape: "Profile from a GPX file, and named sections",
  count: (count: number) => (count === 1 ? "1 section" : `${count} sections`),
  title: "Sections of the course",
  theSections: "sections",
  hint: "Name what riders speak of, such as a rock garden. They can then say where something happened. Ends may be left open.",
  none: "No section is named.",
  add: "Add a section",
  full: (most: number) => `${most} sections are as many as there may be.`,
  position: (position: number) => `Section ${position}`,
  name: "Name",
  from: "From",
  to: "To",
  remove: (name: string) => `Remove ${name}`,
  /** A field's name for assistive technology: "Rock garden: From". */
  fieldOf: (section: string, field: string) => `${section}: ${field}`,
  problems: {
    noName: (section: string) => `${section}: give it a name of 1 to 80 characters, or remove it.`,
    twice: (name: string) => `Two sections are called ${name}. Riders could not tell them apart.`,
    oneEnd: (name: string) => `${name}: enter both its ends, or neither.`,
    backwards: (name: string, from: string, to: string) =>
      `${name}: it ends at ${to} m, which is not after ${from} m, where it begins.`,
    beyond: (name: string, to: string, length: string) =>
      `${name}: it ends at ${to} m, but the course ends at ${length} m.`,
    gone: (name: string) =>
      `The section ${name} is no longer named on this course. Choose again where it was, then save.`,
  },
  /** On the run log. */
  where: "Where was it?",
  whole: "the whole run",
  stretch: (name: string, from: string, to: string) => `${name}, ${from} to ${to} m`,
  /** On a logged run: where the rider's answers belong to. */
  at: (section: string) => `Where: ${section}`,
} as const;
