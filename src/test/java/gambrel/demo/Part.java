package gambrel.demo;

/**
 * What a body is cut into.
 *
 * @param share of what is on the block, in ten-thousandths, before chance
 * @param way how it leaves the block
 * @param low least grams of a pack; for {@code EACH} the packs a head
 * @param high most grams of a pack
 */
record Part(String code, int share, Way way, int low, int high, int fewest, int most) {
  /** How a part leaves the block. */
  enum Way {
    /** In packs on the packing bench. */
    PACK,
    /** In packs too heavy for it. */
    BIG,
    /** A fixed number of packs a head. */
    EACH,
    /** Into tubs, for mince and sausages. */
    TRIM,
    /** Into a brine or cure. */
    CURE,
    /** Into a bin. */
    BIN
  }

  /** Reads {@code code share way low-high fewest-most}; what a way does not need may be missing. */
  static Part of(String line) {
    String[] cell = line.strip().split("\\s+");
    String[] size = (cell.length > 3 ? cell[3] : "0-0").split("-");
    String[] pieces = (cell.length > 4 ? cell[4] : "0-0").split("-");
    return new Part(
        cell[0],
        Integer.parseInt(cell[1]),
        Way.valueOf(cell[2]),
        Integer.parseInt(size[0]),
        Integer.parseInt(size[1]),
        Integer.parseInt(pieces[0]),
        Integer.parseInt(pieces[1]));
  }

  Part share(int changed) {
    return new Part(code, changed, way, low, high, fewest, most);
  }
}
