package gambrel.weighing;

import gambrel.measure.Exact;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.notice.Value;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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

  private final List<Off> off = new ArrayList<>();
  private final List<Notice> notices = new ArrayList<>();

  /**
   * Where so many of a file's weights are off that the scale is the reason.
   *
   * @param first the first of them
   * @param weights how many there are
   * @param files in how many files
   */
  record Off(Weighed first, int weights, int files) {
    private Off with(Off later) {
      return new Off(first, weights + later.weights, files + later.files);
    }
  }

  /** A weighing with the row that it was read from. */
  record Weighed(Weighing weighing, ReadRow row) {
    private Field field() {
      return row.row().get(Field.NET).isEmpty() ? Field.GROSS : Field.NET;
    }

    private String text() {
      return row.row().get(field());
    }

    private boolean isOff() {
      var scale = weighing.scale();
      // A net weight stands in the weighing as the row has it.
      var shown =
          field() == Field.NET
              ? weighing.shown()
              : Decimals.of(text()).orElse(BigDecimal.ZERO);
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

    /** The row's notice, with the weight as it is written and the scale's division. */
    private Notice notice(String variant) {
      var scale = weighing.scale();
      return row.about(Notice.of(NoticeCode.OFF_DIVISION, variant, row.place()))
          .with("column", field().id())
          .with("found", new Value.Text(text() + ' ' + weighing.unit().id()))
          .with("named", scale.id())
          .with("division", new Value.Shown(scale.division(), scale.unit()));
    }
  }

  private DivisionGrid() {}

  /**
   * Looks at one file.
   *
   * @param weighed in line order
   * @param typed places of rows whose weight a correction gives: nobody takes it for the scale's
   */
  static DivisionGrid of(List<Weighed> weighed, Set<Place> typed) {
    var grid = new DivisionGrid();
    var byScale = new LinkedHashMap<String, List<Weighed>>();
    weighed.stream()
        .filter(w -> !typed.contains(w.row().place()))
        .forEach(
            w -> byScale.computeIfAbsent(w.weighing().scale().id(), s -> new ArrayList<>()).add(w));
    byScale.values().forEach(grid::look);
    return grid;
  }

  /** The notices of all files: those of single rows, then those of scales. */
  static List<Notice> notices(List<DivisionGrid> ofFiles) {
    var notices = new ArrayList<Notice>();
    var byScale = new LinkedHashMap<String, Off>();
    for (var grid : ofFiles) {
      notices.addAll(grid.notices);
      grid.off.forEach(o -> byScale.merge(o.first().weighing().scale().id(), o, Off::with));
    }
    byScale.values().forEach(o -> notices.add(tellScale(o)));
    return notices;
  }

  private void look(List<Weighed> ofScale) {
    var out = ofScale.stream().filter(Weighed::isOff).toList();
    if (out.size() > 1 && out.size() * ONE_IN >= ofScale.size()) {
      off.add(new Off(out.get(0), out.size(), 1));
      return;
    }
    int shown = out.size() > MOST_NOTICES ? MOST_NOTICES - 1 : out.size();
    out.subList(0, shown).forEach(row -> notices.add(row.notice("ROW")));
    if (shown < out.size()) {
      var next = out.get(shown);
      notices.add(next.notice("MORE").with("more", out.size() - shown));
    }
  }

  private static Notice tellScale(Off off) {
    return off.first()
        .notice(off.files() == 1 ? "SCALE" : "FILES")
        .aboutBody("")
        .with("weights", off.weights())
        .with("files", off.files());
  }
}
