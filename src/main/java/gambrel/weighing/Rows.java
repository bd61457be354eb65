package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.shop.Shop;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** Rows as they count: corrected, and at the moment that their time means. */
final class Rows {
  private final Overlay overlay;
  private final ClockChanges clocks;
  private final RowReader reader;

  Rows(Shop shop, OffsetDateTime asOf, RowReader reader) {
    this.overlay = new Overlay(shop, asOf);
    this.clocks = new ClockChanges(new Times(shop.settings().zone()));
    this.reader = reader;
  }

  /** The rows of a file in line order; asked by several threads at once. */
  List<ReadRow> of(List<ExportRow> file) {
    return file.stream()
        .map(overlay::apply)
        .map(c -> reader.read(c.row(), clocks.time(c.row()), c.removed()))
        .toList();
  }

  /** Looks at a file, in the order of files, before {@link #decide}. */
  void look(List<ExportRow> file, List<ReadRow> read) {
    file.forEach(overlay::note);
    read.forEach(row -> clocks.look(row.row()));
  }

  /** Decides about hours that come twice, once every file has been looked at. */
  void decide() {
    clocks.decide();
  }

  /** What was laid over rows, row by row. */
  List<AppliedCorrection> corrections() {
    return overlay.applied();
  }

  /** Corrections that fit nothing, and hours that come twice or never. */
  List<Notice> notices() {
    var notices = new ArrayList<>(overlay.unused());
    notices.addAll(clocks.notices());
    return notices;
  }
}
