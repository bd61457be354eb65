package gambrel.trade.weighing;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.Field;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

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
   * @param files the rows of each file
   * @param typed places of rows whose weight a correction gives; they are not checked
   */
  static List<Notice> notices(Collection<List<ClassifiedRow>> files, Set<Place> typed) {
    var byScale =
        files.stream()
            .map(rows -> rows.stream().filter(row -> isChecked(row, typed)))
            .flatMap(rows -> Groups.inOrder(rows, DivisionCheck::scale).values().stream())
            .toList();
    var notices = new ArrayList<Notice>();
    var wrongScales = new LinkedHashMap<String, List<List<ClassifiedRow>>>();
    for (var ofScale : byScale) {
      var off = ofScale.stream().filter(DivisionCheck::isOff).toList();
      if (off.size() > 1 && off.size() * ONE_IN >= ofScale.size()) {
        wrongScales.computeIfAbsent(scale(off.get(0)), s -> new ArrayList<>()).add(off);
      } else {
        notices.addAll(ofRows(off));
      }
    }
    wrongScales.values().forEach(off -> notices.add(ofScale(off)));
    return notices;
  }

  private static boolean isChecked(ClassifiedRow row, Set<Place> typed) {
    return row.weighing().isPresent() && !typed.contains(row.row().place());
  }

  private static String scale(ClassifiedRow row) {
    return weighing(row).scale().id();
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
    var shown =
        field(row) == Field.NET
            ? weighing.shown()
            : DecimalText.of(text(row)).orElse(BigDecimal.ZERO);
    return !weighing.isWhole(shown);
  }

  private static List<Notice> ofRows(List<ClassifiedRow> off) {
    int last = MOST_NOTICES - 1;
    return IntStream.range(0, Math.min(off.size(), MOST_NOTICES))
        .mapToObj(
            i ->
                i == last && off.size() > MOST_NOTICES
                    ? notice(off.get(i), "MORE").with("more", off.size() - last)
                    : notice(off.get(i), "ROW"))
        .toList();
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
