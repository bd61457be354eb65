package gambrel.intake;

/**
 * How the text of a cell becomes a value.
 *
 * @param <T> the kind of value
 */
@FunctionalInterface
interface CellType<T> {
  /**
   * The value of a cell that is not blank.
   *
   * @throws BadCell if there is none
   */
  T read(Formats formats, String text);
}
