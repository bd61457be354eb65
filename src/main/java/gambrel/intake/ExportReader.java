package gambrel.intake;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.notice.Severity;
import gambrel.shop.Shop;
import gambrel.weighing.ExportFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads the scale exports of a shop folder. */
public final class ExportReader {
  /** Why every row of a file is broken whose columns are not known; the file has its own notice. */
  public static final String COLUMNS_UNKNOWN = "the columns of its file are not known";

  private static final String FOLDER = "exports";

  private final List<Notice> notices = new ArrayList<>();

  private final Layouts layouts;

  private ExportReader(Path folder, Shop shop) {
    layouts = new Layouts(folder, shop, notices);
  }

  /**
   * Reads every {@code .csv} file under {@code exports}. A file that cannot be read is a notice and
   * the rest goes on; of one whose columns are not known every row is broken by {@link
   * #COLUMNS_UNKNOWN}. Any other broken row has no notice yet.
   */
  public static Exports read(Path folder, Shop shop) {
    var reader = new ExportReader(folder, shop);
    var files = reader.files(folder.resolve(FOLDER));
    return new Exports(files, reader.notices);
  }

  private List<ExportFile> files(Path top) {
    var files = new ArrayList<ExportFile>();
    if (!Files.isDirectory(top)) {
      notices.add(
          Notice.of(NoticeCode.EXPORT_UNREADABLE, new Place(FOLDER, 0), "there is no such folder")
              .advising("Put the scales' exports there.")
              .as(Severity.MARK));
      return files;
    }
    try {
      ExportTree.list(top, FOLDER).forEach((path, entry) -> read(path, entry, files));
    } catch (IOException e) {
      notices.add(ExportFileReader.unreadable(FOLDER, 0, "it cannot be listed"));
    }
    return files;
  }

  private void read(String path, ExportTree.Entry entry, List<ExportFile> files) {
    if (!entry.fault().isEmpty()) {
      notices.add(ExportFileReader.unreadable(path, 0, entry.fault()));
      return;
    }
    try (var in = Files.newInputStream(entry.path())) {
      files.add(new ExportFileReader(path, layouts.of(path), notices).read(in));
    } catch (IOException e) {
      notices.add(ExportFileReader.unreadable(path, 0, "it cannot be opened"));
    }
  }
}
