package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.shop.Shop;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The rows of all exports as they count: corrected, and at the moment that their time means. */
public final class CorrectedRows {
  private final CorrectionOverlay overlay;
  private final ClockChanges clocks;
  private final RowReader reader;
  private final List<OfFile> files;

  /** The rows of one file, in line order. */
  public record OfFile(String path, List<ReadRow> rows) {}

  /** Reads the rows of {@code files}, which are given in path order. */
  public CorrectedRows(List<ExportFile> files, Shop shop, OffsetDateTime asOf, RowReader reader) {
    this.overlay = new CorrectionOverlay(shop, asOf);
    this.clocks = new ClockChanges(new ExportTimes(shop.settings().zone()));
    this.reader = reader;
    var corrected = new ArrayList<List<CorrectionOverlay.Corrected>>();
    for (var file : files) {
      corrected.add(file.rows().stream().map(overlay::apply).toList());
    }
    corrected.forEach(rows -> rows.forEach(row -> clocks.look(row.row())));
    clocks.decide();
    this.files =
        IntStream.range(0, files.size())
            .parallel()
            .mapToObj(i -> new OfFile(files.get(i).path(), read(corrected.get(i))))
            .toList();
  }

  private List<ReadRow> read(List<CorrectionOverlay.Corrected> rows) {
    return rows.stream().map(c -> reader.read(c.row(), clocks.time(c.row()), c.removed())).toList();
  }

  /** The files in path order. */
  public List<OfFile> files() {
    return files;
  }

  /** What was laid over rows, row by row. */
  public List<AppliedCorrection> corrections() {
    return overlay.applied();
  }

  /** Corrections that fit nothing, and hours that come twice or never. */
  public List<Notice> notices() {
    var notices = new ArrayList<>(overlay.unused());
    notices.addAll(clocks.notices());
    return notices;
  }
}
