package gambrel.files.csv;

import gambrel.trade.notice.Phrase;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One record of a delimited file.
 *
 * @param line the number of its first line, from 1
 * @param raw the first 500 characters of its text in the file
 * @param cells its cells; of a broken record those that could be told apart
 * @param broken what is wrong with it as text
 */
public record CsvRow(int line, String raw, List<String> cells, Optional<Phrase> broken) {
  private static final int RAW_LENGTH = 500;

  /** Cuts the raw text and copies the cells. */
  public CsvRow {
    raw = raw.length() <= RAW_LENGTH ? raw : raw.substring(0, RAW_LENGTH);
    cells = List.copyOf(cells);
  }

  /** The same record with this fault. */
  public CsvRow brokenBy(Optional<Phrase> fault) {
    return new CsvRow(line, raw, cells, fault);
  }

  /** The stripped text of the cell at {@code index}; empty beyond the last. */
  public String cell(int index) {
    return index < cells.size() ? cells.get(index).strip() : "";
  }

  /** Whether every cell from {@code index} on is blank. */
  public boolean isBlankFrom(int index) {
    return cells.size() <= index || cells.stream().skip(index).allMatch(String::isBlank);
  }

  /** The row with blank cells at its end, up to {@code width} cells. */
  public CsvRow padded(int width) {
    return new CsvRow(
        line,
        raw,
        Stream.concat(cells.stream(), Stream.generate(() -> ""))
            .limit(Math.max(width, cells.size()))
            .toList(),
        broken);
  }
}
