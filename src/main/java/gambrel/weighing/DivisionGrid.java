package gambrel.weighing;

import gambrel.measure.Exact;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds weights that a scale cannot show: no multiple of its division, as written and in the row's
 * own unit. The net is judged where the row has one, else the gross. A few of a file were probably
 * typed by hand and have a notice each; where a fifth or more of a file's are off, the scale's
 * division or the unit is wrong, and one notice a scale says so.
 */
final class DivisionGrid {
  private static final int ONE_IN = 5;
  private static final int MOST_NOTICES = 10;

  private final Map<String, List<Weighed>> off = new LinkedHashMap<>();
  private final List<Notice> notices = new ArrayList<>();

  /** A weighing with the row that it was read from. */
  record Weighed(Weighing weighing, ReadRow row) {
    private Field field() {
      return row.row().get(Field.NET).isEmpty() ? Field.GROSS : Field.NET;
    }

    private String text() {
      return row.row().get(field());
    }

    private Clock clock() {
      return new Clock(row.place().file(), weighing.scale().id());
    }

    private boolean isOff() {
      var scale = weighing.scale();
      var shown = Decimals.of(text()).orElse(BigDecimal.ZERO);
      if (weighing.unit() == scale.unit()) {
        return shown.remainder(scale.division()).signum() != 0;
      }
      return !weighing
          .unit()
          .convert(shown, scale.unit())
          .divide(Exact.fraction(scale.division()))
          .getDenominator()
          .equals(BigInteger.ONE);
    }

    private String written() {
      return field().id() + ' ' + text() + ' ' + weighing.unit().id();
    }

    private String grid() {
      var scale = weighing.scale();
      return "division of " + scale.division().toPlainString() + ' ' + scale.unit().id();
    }

    private Notice notice(String message) {
      return row.notice(NoticeCode.OFF_DIVISION, message);
    }
  }

  private DivisionGrid() {}

  /**
   * The notices.
   *
   * @param weighed in file and line order
   * @param typed places of rows whose weight a correction gives: nobody takes it for the scale's
   */
  static List<Notice> of(List<Weighed> weighed, Set<Place> typed) {
    var grid = new DivisionGrid();
    var byClock = new LinkedHashMap<Clock, List<Weighed>>();
    weighed.stream()
        .filter(w -> !typed.contains(w.row().place()))
        .forEach(w -> byClock.computeIfAbsent(w.clock(), c -> new ArrayList<>()).add(w));
    byClock.values().forEach(grid::look);
    grid.off.values().forEach(grid::tellScale);
    return grid.notices;
  }

  private void look(List<Weighed> file) {
    var out = file.stream().filter(Weighed::isOff).toList();
    if (out.size() > 1 && out.size() * ONE_IN >= file.size()) {
      off.computeIfAbsent(out.get(0).weighing().scale().id(), s -> new ArrayList<>()).addAll(out);
      return;
    }
    int shown = out.size() > MOST_NOTICES ? MOST_NOTICES - 1 : out.size();
    out.subList(0, shown).forEach(this::tellRow);
    if (shown < out.size()) {
      var next = out.get(shown);
      notices.add(
          next.notice(
              (out.size() - shown)
                  + " more weights of scale "
                  + next.weighing().scale().id()
                  + " in this file, from this row on, do not fit its "
                  + next.grid()
                  + "."));
    }
  }

  private void tellRow(Weighed row) {
    notices.add(
        row.notice(
            "The "
                + row.written()
                + " does not fit scale "
                + row.weighing().scale().id()
                + "'s "
                + row.grid()
                + "."));
  }

  private void tellScale(List<Weighed> rows) {
    var first = rows.get(0);
    long files = rows.stream().map(w -> w.row().place().file()).distinct().count();
    notices.add(
        first
            .notice(
                rows.size()
                    + " weights of scale "
                    + first.weighing().scale().id()
                    + (files == 1 ? "" : " in " + files + " files")
                    + ", such as "
                    + first.written()
                    + ", do not fit its "
                    + first.grid()
                    + ".")
            .aboutBody("")
            .advising(
                "Correct division or unit of the scale in scales.csv, or the unit in the layout of"
                    + " its exports: the division decides how much loss the scale can explain."));
  }
}
