package gambrel.files.folder;

import gambrel.files.csv.BadCell;

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
  T read(CellTypes formats, String text);
}
