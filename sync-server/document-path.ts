import { syncPath } from "#core/protocol/limits.ts";

/**
 * The document name in the path of a socket's request, with or without percent-encoded slashes.
 * @returns undefined when the path is not below `/sync/` or cannot be decoded. The name is not judged.
 */
export function documentNameInPath(requestUrl: string | undefined): string | undefined {
  const path = requestUrl?.split("?", 1)[0];
  if (path === undefined || !path.startsWith(syncPath)) return undefined;
  try {
    return decodeURIComponent(path.slice(syncPath.length));
  } catch {
    return undefined;
  }
}
