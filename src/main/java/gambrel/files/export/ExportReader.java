package gambrel.files.export;

import gambrel.files.csv.SteadyFile;
import gambrel.files.layout.Layouts;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.shop.Shop;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the scale exports of a shop folder. */
public final class ExportReader {
  /** Why every row of a file is broken whose columns are not known; the file has its own notice. */
  public static final Phrase COLUMNS_UNKNOWN = Phrase.of("FAULT.COLUMNS_UNKNOWN");

  private static final String FOLDER = "exports";

  private final List<Notice> notices = new ArrayList<>();

  private final Layouts layouts;
  private final SteadyFile.Opener opener;

  private ExportReader(Path folder, Shop shop, SteadyFile.Opener opener) {
    this.opener = opener;
    layouts = new Layouts(folder, shop, notices);
  }

  /**
   * Reads every {@code .csv} file under {@code exports}. A file that cannot be read, or that is
   * being written just now, is a notice and the rest goes on; of one whose columns are not known
   * every row is broken by {@link #COLUMNS_UNKNOWN}. Any other broken row has no notice yet.
   */
  public static Exports read(Path folder, Shop shop) {
    return readTelling(folder, shop, Progress.NONE);
  }

  /** As above, and reports the bytes of the files to {@code progress} as they are read. */
  public static Exports readTelling(Path folder, Shop shop, Progress progress) {
    return read(folder, shop, Files::newInputStream, progress);
  }

  /** As above, with files that are opened in another way. */
  public static Exports read(Path folder, Shop shop, SteadyFile.Opener opener, Progress progress) {
    var reader = new ExportReader(folder, shop, opener);
    var files = reader.files(folder.resolve(FOLDER), progress);
    return new Exports(files, reader.notices);
  }

  private List<ExportFile> files(Path top, Progress progress) {
    var files = new ArrayList<ExportFile>();
    if (!Files.isDirectory(top)) {
      notices.add(
          Notice.of(NoticeCode.EXPORT_UNREADABLE, "NO_FOLDER", new Place(FOLDER, 0))
              .as(Severity.MARK));
      return files;
    }
    try {
      var readings = new ArrayList<Reading>();
      ExportTree.list(top, FOLDER)
          .forEach((path, entry) -> readings.add(new Reading(path, entry, layouts.of(path))));
      var bytes =
          progress.begin(
              Progress.Stage.READING, readings.stream().mapToLong(r -> r.entry().size()).sum());
      readings.parallelStream()
          .map(
              reading -> {
                var read = read(reading);
                bytes.accept(reading.entry().size());
                return read;
              })
          .toList()
          .forEach(
              read -> {
                read.file().ifPresent(files::add);
                notices.addAll(read.notices());
              });
    } catch (IOException e) {
      notices.add(unfinished(FOLDER, "NOT_LISTED"));
    }
    return files;
  }

  /** A file to read. */
  private record Reading(String path, ExportTree.Entry entry, Layouts.Choice layout) {}

  private ReadFile read(Reading reading) {
    var entry = reading.entry();
    String path = reading.path();
    if (entry.fault().isPresent()) {
      return ReadFile.none(
          entry.isOutOfReach()
              ? unfinished(path, entry.fault().get())
              : ExportFileReader.unreadable(path, 0, Phrase.of("FAULT." + entry.fault().get())));
    }
    try {
      return SteadyFile.read(entry.path(), opener, in -> read(reading, in))
          .orElseGet(() -> ReadFile.none(unfinished(path, "WRITTEN")));
    } catch (NoSuchFileException e) {
      return ReadFile.none(unfinished(path, "GONE"));
    } catch (IOException e) {
      return ReadFile.none(unfinished(path, "NOT_OPENED"));
    }
  }

  private static Notice unfinished(String path, String variant) {
    return Notice.of(NoticeCode.EXPORT_UNFINISHED, variant, new Place(path, 0));
  }

  private static ReadFile read(Reading reading, InputStream in) throws IOException {
    var notices = new ArrayList<Notice>();
    var file = new ExportFileReader(reading.path(), reading.layout(), notices).read(in);
    return new ReadFile(Optional.of(file), notices);
  }

  /** A file, if it could be read, and what is wrong with it as a whole. */
  private record ReadFile(Optional<ExportFile> file, List<Notice> notices) {
    private static ReadFile none(Notice why) {
      return new ReadFile(Optional.empty(), List.of(why));
    }
  }
}
