/** Rows of cells in aligned columns, two spaces apart, without spaces at the ends of lines. */
export function alignColumns(rows: readonly (readonly string[])[], indent = ""): readonly string[] {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(...rows.map((row) => [...(row[column] ?? "")].length)),
  );
  return rows.map((row) => {
    const cells = row.map((cell, column) => cell + " ".repeat((widths[column] ?? 0) - [...cell].length));
    return `${indent}${cells.join("  ")}`.trimEnd();
  });
}
