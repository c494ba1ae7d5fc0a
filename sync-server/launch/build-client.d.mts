/**
 * Builds the client when it was never built or when one of its sources has changed since; ends the process when it cannot.
 * @param root the folder of package.json
 */
export function buildClient(root: string): void;
