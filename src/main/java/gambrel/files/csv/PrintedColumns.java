package gambrel.files.csv;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Cells that blanks part, below each other as a report prints them. A cell that is blank between
 * others leaves no mark in a line; where the lines with all cells keep them apart, it is known by
 * the places of the others.
 */
final class PrintedColumns {
  /** Where each column begins and ends; empty if lines do not keep them apart. */
  private final List<Span> columns;

  /** A piece of a line, from its first character to behind its last. */
  private record Span(int from, int to) {
    Span with(Span other) {
      return new Span(Math.min(from, other.from), Math.max(to, other.to));
    }

    boolean meets(Span other) {
      return from < other.to && other.from < to;
    }
  }

  /** The columns of rows, each as the pieces of its line. */
  private PrintedColumns(List<List<Span>> rows) {
    int width = CsvRows.usualWidth(rows.stream().map(List::size).toList(), 2);
    var whole = rows.stream().filter(row -> row.size() == width).toList();
    var all = new ArrayList<Span>();
    for (int i = 0; i < width; i++) {
      int column = i;
      whole.stream().map(row -> row.get(column)).reduce(Span::with).ifPresent(all::add);
    }
    boolean apart = true;
    for (int i = 1; i < all.size(); i++) {
      apart &= all.get(i - 1).to < all.get(i).from;
    }
    this.columns = apart && whole.size() > 2 ? all : List.of();
  }

  /** Lines whose cells are parted by a gap, with a mark between their cells. */
  static List<TextLine> parted(List<TextLine> lines, Pattern gap, char mark) {
    var cells = lines.stream().map(line -> cells(line.text(), gap)).toList();
    var numbers = IntStream.range(0, lines.size());
    var rows = numbers.filter(i -> hasFigure(lines.get(i))).mapToObj(cells::get).toList();
    var columns = new PrintedColumns(rows);
    return IntStream.range(0, lines.size())
        .mapToObj(i -> columns.parted(lines.get(i), cells.get(i), mark))
        .toList();
  }

  private static boolean hasFigure(TextLine line) {
    return line.text().chars().anyMatch(Character::isDigit);
  }

  private static List<Span> cells(String text, Pattern gap) {
    var cells = new ArrayList<Span>();
    int end = text.stripTrailing().length();
    int from = text.length() - text.stripLeading().length();
    var gaps = gap.matcher(text).region(Math.min(from, end), end);
    while (gaps.find()) {
      cells.add(new Span(from, gaps.start()));
      from = gaps.end();
    }
    cells.add(new Span(from, Math.max(from, end)));
    return cells;
  }

  private TextLine parted(TextLine line, List<Span> cells, char mark) {
    var places = places(cells);
    var parts = new ArrayList<String>();
    for (int i = 0; i < cells.size(); i++) {
      parts.addAll(Collections.nCopies(places.get(i) - parts.size(), ""));
      parts.add(line.text().substring(cells.get(i).from, cells.get(i).to));
    }
    String text = String.join("" + mark, parts);
    return new TextLine(line.number(), text, line.end(), line.overlong());
  }

  /**
   * The column of each cell. Where a line has less cells than columns, but more than half, and each
   * stands below one column, it is that column; else cells are counted.
   */
  private List<Integer> places(List<Span> cells) {
    var counted = IntStream.range(0, cells.size()).boxed().toList();
    if (cells.size() >= columns.size() || cells.size() * 2 <= columns.size()) {
      return counted;
    }
    var below =
        cells.stream()
            .flatMap(
                cell ->
                    IntStream.range(0, columns.size())
                        .filter(i -> columns.get(i).meets(cell))
                        .boxed())
            .distinct()
            .toList();
    boolean each = cells.stream().allMatch(c -> columns.stream().anyMatch(c::meets));
    return each && below.size() == cells.size() ? below : counted;
  }
}
