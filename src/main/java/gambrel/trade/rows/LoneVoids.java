package gambrel.trade.rows;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Void rows that stand alone on their ticket, and so cancel only themselves, though a weighing of
 * the same scale, body and code stands just before them, with the same weight if they have one.
 * Some scales cancel so.
 */
final class LoneVoids {
  private static final Duration JUST_BEFORE = Duration.ofHours(1);

  private static final Comparator<ReadRow> BY_TIME =
      Comparator.comparing(LoneVoids::time).thenComparing(ReadRow::place);

  private LoneVoids() {}

  /**
   * A notice for each of the void rows that may be meant for another row, which it names.
   *
   * @param alone void rows that no other row shares its key with
   * @param counted the rows that count
   */
  static List<Notice> notices(List<ReadRow> alone, Stream<ReadRow> counted) {
    var timed = alone.stream().filter(row -> row.time().isPresent()).toList();
    if (timed.isEmpty()) {
      return List.of();
    }
    var alike = Groups.inOrder(counted.filter(row -> row.time().isPresent()), LoneVoids::about);
    return timed.stream()
        .flatMap(
            row ->
                alike.getOrDefault(about(row), List.of()).stream()
                    .filter(other -> isJustBefore(other, row))
                    .filter(o -> weight(row).isEmpty() || weight(row).equals(weight(o)))
                    .max(BY_TIME)
                    .map(other -> notice(row, other))
                    .stream())
        .toList();
  }

  private static Notice notice(ReadRow row, ReadRow other) {
    return row.about(Notice.of(NoticeCode.VOID_ALONE)).with("first", other.place().toString());
  }

  private static boolean isJustBefore(ReadRow other, ReadRow row) {
    return BY_TIME.compare(other, row) < 0 && !time(other).plus(JUST_BEFORE).isBefore(time(row));
  }

  private static OffsetDateTime time(ReadRow row) {
    return row.time().orElseThrow();
  }

  private static List<String> about(ReadRow read) {
    return List.of(read.scale(), read.row().get(Field.BODY), read.row().get(Field.CODE));
  }

  private static String weight(ReadRow read) {
    String net = read.row().get(Field.NET);
    return DecimalText.canonical(net.isEmpty() ? read.row().get(Field.GROSS) : net);
  }
}
