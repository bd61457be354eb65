package gambrel.files.export;

import gambrel.trade.notice.Notice;
import gambrel.trade.rows.ExportFile;
import java.util.List;

/**
 * Export files of a shop.
 *
 * @param files in the order of their paths' bytes
 * @param notices about whole files; a broken row holds its own fault
 */
public record Exports(List<ExportFile> files, List<Notice> notices) {
  /** Copies the lists. */
  public Exports {
    files = List.copyOf(files);
    notices = List.copyOf(notices);
  }

  /** The same files with nothing of them used, and why. */
  Exports without(Notice why) {
    return new Exports(files.stream().map(ExportFile::withoutRows).toList(), List.of(why));
  }

  /** No file, and why. */
  static Exports none(Notice why) {
    return new Exports(List.of(), List.of(why));
  }
}
