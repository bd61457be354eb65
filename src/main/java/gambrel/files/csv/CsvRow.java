package gambrel.files.csv;

import gambrel.trade.notice.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * One record of a delimited file.
 *
 * @param line the line on which it starts, from 1
 * @param raw its beginning as it stands in the file
 * @param cells its cells; of a broken record those that could be told apart
 * @param broken what is wrong with it as text
 */
public record CsvRow(int line, String raw, List<String> cells, Optional<Phrase> broken) {
  private static final int RAW_LENGTH = 500;

  public CsvRow {
    raw = raw.length() <= RAW_LENGTH ? raw : raw.substring(0, RAW_LENGTH);
    cells = List.copyOf(cells);
  }

  /** The same record with this fault, if any. */
  public CsvRow brokenBy(Optional<Phrase> fault) {
    return new CsvRow(line, raw, cells, fault);
  }

  /** The stripped text of the cell at {@code index}; empty beyond the last. */
  public String cell(int index) {
    return index < cells.size() ? cells.get(index).strip() : "";
  }

  /** Whether every cell from {@code index} on is blank. */
  public boolean isBlankFrom(int index) {
    for (int i = index; i < cells.size(); i++) {
      if (!cells.get(i).isBlank()) {
        return false;
      }
    }
    return true;
  }
}
