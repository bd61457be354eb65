package gambrel.oracle;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** One export row: its cells after corrections, how it counts, and what it turns out to say. */
final class Row {
  /** How a row counts. */
  enum Mark {
    USED,
    REPEAT,
    VOID,
    SET_ASIDE
  }

  static final Comparator<Row> BY_TIME =
      Comparator.comparing((Row r) -> r.time)
          .thenComparing(r -> r.scale == null ? "" : r.scale.id())
          .thenComparing(r -> r.cell("ticket"))
          .thenComparing(r -> r.index);

  private static final Set<String> MASS =
      Set.of("hot", "cold", "aged", "block", "tub", "added", "pack", "bin");

  final String file;
  final int line;
  final int index;
  final Map<String, String> cells;

  Mark mark = Mark.USED;
  boolean struck;

  /** Columns that make a weighing where the layout says so, else empty. */
  List<String> identity = List.of();

  boolean later;

  /** In a file that ends in the middle, of which nothing is used. */
  boolean unfinished;

  Instant time;
  LocalDate date;

  /** Of a time that cannot be read: those of the rows before and after it in its file. */
  final List<Instant> around = new ArrayList<>();

  List<Beast> named = List.of();
  Beast body;
  String batch = "";
  String customer = "";
  String item = "";

  /** The items that its code may mean. */
  List<String> items = List.of();

  String step = "";
  BigFraction net;
  BigFraction exactNet;
  Integer pieces;
  BigFraction nominal;
  ScaleInfo scale;

  Row(String file, int line, int index, Map<String, String> cells) {
    this.file = file;
    this.line = line;
    this.index = index;
    this.cells = cells;
  }

  String cell(String column) {
    return cells.getOrDefault(column, "");
  }

  String status() {
    return cell("status");
  }

  boolean isVoidRow() {
    return status().equals("void") || status().startsWith("void:");
  }

  /** Used, and dated by the run's clock. */
  boolean counts() {
    return mark == Mark.USED && !later;
  }

  boolean movesMass() {
    return MASS.contains(step);
  }

  boolean is(String... steps) {
    return List.of(steps).contains(step);
  }

  boolean hasBatch() {
    return !batch.isEmpty();
  }

  boolean isRail() {
    return is("hot", "cold", "aged");
  }

  /** A pack that is the body's own. */
  boolean isPack() {
    return is("pack") && !hasBatch();
  }

  /** Leaves the body for good: a pack of its own, a tub for a batch, a bin. */
  boolean isOut() {
    return isPack() || is("bin") || is("tub") && hasBatch();
  }
}
