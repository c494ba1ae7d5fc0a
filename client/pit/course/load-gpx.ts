/** The reading of GPX and the distances on the ellipsoid, loaded when a file is first chosen; undefined when they cannot be had now. */
export async function loadGpx() {
  try {
    const [{ readGpx }, { trackProfile }] = await Promise.all([
      import("./read-gpx.ts"),
      import("#core/course/track-profile.ts"),
    ]);
    return { readGpx, trackProfile };
  } catch {
    return undefined;
  }
}
