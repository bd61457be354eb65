package gambrel.trade.rows;

import gambrel.trade.measure.Groups;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Shop;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The rows of all exports with corrections applied and times, units and statuses read.
 *
 * @param rows the rows in file and line order
 * @param corrections the corrections that were applied, row by row
 * @param notices corrections that fit no row, and times that a clock change makes unclear
 */
public record CorrectedRows(
    List<ReadRow> rows, List<AppliedCorrection> corrections, List<Notice> notices) {

  /**
   * A correction that changed one row.
   *
   * @param row the row as the export has it
   * @param was the text of the field before this correction
   * @param correction the new value, who decided and why
   */
  public record AppliedCorrection(ExportRow row, String was, Correction correction) {
    /** Whether it voids a row of a body or gives it to another body. */
    public boolean takesFrom(Body body) {
      if (correction.field().equals(Field.BODY.id())) {
        return names(body, was) && !names(body, correction.value());
      }
      return correction.field().equals(Field.STATUS.id()) && names(body, row.get(Field.BODY));
    }

    private static boolean names(Body body, String text) {
      return text.equals(body.id()) || body.tags().contains(text);
    }
  }

  /** Reads the rows of {@code files}, which are given in path order. */
  public static CorrectedRows of(List<ExportFile> files, Shop shop, OffsetDateTime asOf) {
    var times = new ExportTimes(shop.settings().zone());
    var overlay = new CorrectionOverlay(shop.corrections(), times, asOf);
    var corrected =
        files.stream().flatMap(file -> file.rows().stream()).map(overlay::apply).toList();
    var clocks = new ClockChanges(times, corrected.stream());
    return new CorrectedRows(
        corrected.parallelStream()
            .map(row -> read(row, clocks, shop, overlay.removed().contains(row.place())))
            .toList(),
        overlay.applied(),
        Groups.both(overlay.unused(), clocks.notices()));
  }

  private static ReadRow read(ExportRow row, ClockChanges clocks, Shop shop, boolean removed) {
    var status = Status.of(row.get(Field.STATUS));
    return new ReadRow(row, clocks.time(row), unit(row, shop), status, removed);
  }

  /** The unit that the row names, else that of the layout, the scale or the shop. */
  private static Optional<WeightUnit> unit(ExportRow row, Shop shop) {
    if (!row.get(Field.UNIT).isEmpty()) {
      return WeightUnit.of(row.get(Field.UNIT));
    }
    var scale = shop.scales().get(row.get(Field.SCALE));
    return row.unit().or(() -> Optional.of(scale == null ? shop.settings().unit() : scale.unit()));
  }
}
