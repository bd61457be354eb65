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
  private final Pattern gap;

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

  /** The columns of lines whose cells are parted by a gap. */
  PrintedColumns(List<TextLine> lines, Pattern gap) {
    this.gap = gap;
    var rows =
        lines.stream()
            .map(TextLine::text)
            .filter(text -> text.chars().anyMatch(Character::isDigit))
            .map(this::cells)
            .toList();
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

  private List<Span> cells(String text) {
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

  /** A line with a mark between its cells. */
  String parted(String text, char mark) {
    var cells = cells(text);
    var places = places(cells);
    var parts = new ArrayList<String>();
    for (int i = 0; i < cells.size(); i++) {
      parts.addAll(Collections.nCopies(places.get(i) - parts.size(), ""));
      parts.add(text.substring(cells.get(i).from, cells.get(i).to));
    }
    return String.join("" + mark, parts);
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
