package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.shop.Shop;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The rows of all exports with corrections applied and times, units and statuses read.
 *
 * @param files the files in path order
 * @param corrections the corrections that were applied, row by row
 * @param notices corrections that fit no row, and times that a clock change makes unclear
 */
public record CorrectedRows(
    List<OfFile> files, List<AppliedCorrection> corrections, List<Notice> notices) {

  /** The rows of one file, in line order. */
  public record OfFile(String path, List<ReadRow> rows) {}

  /** Reads the rows of {@code files}, which are given in path order. */
  public static CorrectedRows of(List<ExportFile> files, Shop shop, OffsetDateTime asOf) {
    var times = new ExportTimes(shop.settings().zone());
    var overlay = new CorrectionOverlay(shop.corrections(), times, asOf);
    var corrected =
        files.stream().map(file -> file.rows().stream().map(overlay::apply).toList()).toList();
    var clocks =
        new ClockChanges(
            times, corrected.stream().flatMap(List::stream).map(CorrectionOverlay.Corrected::row));
    var read =
        IntStream.range(0, files.size())
            .parallel()
            .mapToObj(i -> new OfFile(files.get(i).path(), read(corrected.get(i), clocks, shop)))
            .toList();
    return new CorrectedRows(
        read,
        overlay.applied(),
        Stream.concat(overlay.unused().stream(), clocks.notices().stream()).toList());
  }

  private static List<ReadRow> read(
      List<CorrectionOverlay.Corrected> rows, ClockChanges clocks, Shop shop) {
    return rows.stream()
        .map(
            c ->
                new ReadRow(
                    c.row(),
                    clocks.time(c.row()),
                    unit(c.row(), shop),
                    Status.of(c.row().get(Field.STATUS)),
                    c.removed()))
        .toList();
  }

  /** The unit that the row names, else that of the layout, the scale or the shop. */
  private static Optional<WeightUnit> unit(ExportRow row, Shop shop) {
    if (!row.get(Field.UNIT).isEmpty()) {
      return WeightUnit.of(row.get(Field.UNIT));
    }
    var scale = shop.scales().get(row.get(Field.SCALE));
    return row.unit().or(() -> Optional.of(scale == null ? shop.settings().unit() : scale.unit()));
  }

  /** Every row, in the order of files and lines. */
  public List<ReadRow> all() {
    return files.stream().flatMap(file -> file.rows().stream()).toList();
  }
}
