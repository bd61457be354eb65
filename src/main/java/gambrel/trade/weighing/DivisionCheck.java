package gambrel.trade.weighing;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.Field;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds weights that a scale cannot show: in the row's own unit no multiple of its division. The
 * net weight is checked if the row has one, else the gross weight. If fewer than a fifth of a
 * scale's weights in a file are off, they were probably typed by hand, and each has a notice. If a
 * fifth or more are off, the scale's division or unit is probably wrong, and one notice a scale
 * says so.
 */
final class DivisionCheck {
  private static final int ONE_IN = 5;
  private static final int MOST_NOTICES = 10;

  private DivisionCheck() {}

  /**
   * The notices about rows, then those about scales.
   *
   * @param typed places of rows whose weight a correction gives; they are not checked
   */
  static List<Notice> notices(List<ClassifiedRow> rows, Set<Place> typed) {
    var checked =
        rows.stream()
            .filter(row -> row.weighing().isPresent() && !typed.contains(row.row().place()));
    var byScale =
        Groups.inOrder(
            checked, row -> row.row().place().file() + '\n' + weighing(row).scale().id());
    var notices = new ArrayList<Notice>();
    var wrongScales = new LinkedHashMap<String, List<List<ClassifiedRow>>>();
    for (var ofScale : byScale.values()) {
      var off = ofScale.parallelStream().filter(DivisionCheck::isOff).toList();
      if (off.size() > 1 && off.size() * ONE_IN >= ofScale.size()) {
        String scale = weighing(off.get(0)).scale().id();
        wrongScales.computeIfAbsent(scale, s -> new ArrayList<>()).add(off);
      } else {
        notices.addAll(ofRows(off));
      }
    }
    wrongScales.values().forEach(files -> notices.add(ofScale(files)));
    return notices;
  }

  private static Weighing weighing(ClassifiedRow row) {
    return row.weighing().orElseThrow();
  }

  private static Field field(ClassifiedRow row) {
    return row.row().row().get(Field.NET).isEmpty() ? Field.GROSS : Field.NET;
  }

  private static String text(ClassifiedRow row) {
    return row.row().row().get(field(row));
  }

  private static boolean isOff(ClassifiedRow row) {
    var weighing = weighing(row);
    var scale = weighing.scale();
    var shown =
        field(row) == Field.NET
            ? weighing.shown()
            : DecimalText.of(text(row)).orElse(BigDecimal.ZERO);
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

  private static List<Notice> ofRows(List<ClassifiedRow> off) {
    int shown = off.size() > MOST_NOTICES ? MOST_NOTICES - 1 : off.size();
    var named = off.stream().limit(shown).map(row -> notice(row, "ROW"));
    var more =
        off.stream()
            .skip(shown)
            .limit(1)
            .map(row -> notice(row, "MORE").with("more", off.size() - shown));
    return Stream.concat(named, more).toList();
  }

  private static Notice ofScale(List<List<ClassifiedRow>> files) {
    var first = files.get(0).get(0);
    return notice(first, files.size() == 1 ? "SCALE" : "FILES")
        .aboutBody("")
        .with("weights", files.stream().mapToInt(List::size).sum())
        .with("files", files.size());
  }

  /** A notice with the weight as the row has it and the scale's division. */
  private static Notice notice(ClassifiedRow row, String variant) {
    var scale = weighing(row).scale();
    return row.row()
        .about(Notice.of(NoticeCode.OFF_DIVISION, variant))
        .with("column", field(row).id())
        .with("found", new Value.Text(text(row) + ' ' + weighing(row).unit().id()))
        .with("named", scale.id())
        .with("division", new Value.Shown(scale.division(), scale.unit()));
  }
}
