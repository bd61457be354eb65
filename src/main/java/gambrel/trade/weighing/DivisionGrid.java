package gambrel.trade.weighing;

import gambrel.trade.measure.Exact;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds weights that a scale cannot show: no multiple of its division, as written and in the row's
 * own unit. The net is judged where the row has one, else the gross. A few of a file were probably
 * typed by hand and have a notice each; where a fifth or more of a file's are off, the scale's
 * division or the unit is wrong, and one notice a scale says so.
 */
final class DivisionGrid {
  private static final int ONE_IN = 5;
  private static final int MOST_NOTICES = 10;

  private final Map<String, List<List<Weighed>>> wrongScales = new LinkedHashMap<>();
  private final List<Notice> notices = new ArrayList<>();

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
          field() == Field.NET ? weighing.shown() : DecimalText.of(text()).orElse(BigDecimal.ZERO);
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
   * The notices: those of single rows, then those of scales.
   *
   * @param files for each file its weighings in line order
   * @param typed places of rows whose weight a correction gives; they say nothing about the scale
   */
  static List<Notice> notices(Stream<List<Weighed>> files, Set<Place> typed) {
    var grid = new DivisionGrid();
    files.forEach(
        file ->
            file.stream()
                .filter(weighed -> !typed.contains(weighed.row().place()))
                .collect(
                    Collectors.groupingBy(
                        w -> w.weighing().scale().id(), LinkedHashMap::new, Collectors.toList()))
                .forEach(grid::look));
    grid.wrongScales.values().forEach(grid::tellScale);
    return grid.notices;
  }

  /** Looks at the weighings of one scale in one file. */
  private void look(String scale, List<Weighed> weighed) {
    var out = weighed.stream().filter(Weighed::isOff).toList();
    if (out.size() > 1 && out.size() * ONE_IN >= weighed.size()) {
      wrongScales.computeIfAbsent(scale, s -> new ArrayList<>()).add(out);
      return;
    }
    int shown = out.size() > MOST_NOTICES ? MOST_NOTICES - 1 : out.size();
    out.subList(0, shown).forEach(row -> notices.add(row.notice("ROW")));
    if (shown < out.size()) {
      var next = out.get(shown);
      notices.add(next.notice("MORE").with("more", out.size() - shown));
    }
  }

  private void tellScale(List<List<Weighed>> files) {
    var first = files.get(0).get(0);
    notices.add(
        first
            .notice(files.size() == 1 ? "SCALE" : "FILES")
            .aboutBody("")
            .with("weights", files.stream().mapToInt(List::size).sum())
            .with("files", files.size()));
  }
}
