/** English words of a photo that was just taken: they come with its script. */
export const photoEn = {
  keep: "KEEP IT",
  throwAway: "THROW AWAY",
  about: "What it shows (may be empty)",
  reducing: "The photo is made smaller…",
  size: (width: number, height: number, kilobytes: number) =>
    `${width} × ${height}, ${kilobytes} kB, without place, hour or maker.`,
  nobodyInIt: "Nobody's face is needed.",
  noPicture:
    "This phone can't read that file as a picture. Throw it away and take the photo with the camera.",
  withEntry: (entry: number) => `with entry ${entry}`,
};

export type PhotoWords = typeof photoEn;
