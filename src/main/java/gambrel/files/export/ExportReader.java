package gambrel.files.export;

import gambrel.files.csv.OrderedParallel;
import gambrel.files.csv.SteadyFile;
import gambrel.files.layout.Layouts;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
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
import org.apache.commons.io.function.IOFunction;

/** Reads the scale exports of a shop folder. */
public final class ExportReader {
  private static final String FOLDER = "exports";

  private ExportReader() {}

  /**
   * Reads every text file under {@code exports}. A file that cannot be read, that is being written
   * or that ends within a row draws a notice and has no rows; the others are read. Broken rows have
   * no notice yet. The bytes of the files are reported to {@code progress} as they are read.
   */
  public static Exports read(Path folder, Shop shop, Progress progress) {
    return read(folder, shop, Files::newInputStream, progress);
  }

  /** As above, with files that {@code opener} opens. */
  public static Exports read(
      Path folder, Shop shop, IOFunction<Path, InputStream> opener, Progress progress) {
    var notices = new ArrayList<Notice>();
    var layouts = new Layouts(folder, shop, notices, shop.scales()::containsKey);
    var top = folder.resolve(FOLDER);
    if (!Files.isDirectory(top)) {
      notices.add(
          Notice.of(NoticeCode.EXPORT_UNREADABLE, "NO_FOLDER", new Place(FOLDER, 0))
              .as(Severity.MARK));
      return new Exports(List.of(), notices);
    }
    try {
      var entries = ExportTree.list(top, FOLDER);
      if (!entries.isEmpty() && entries.stream().allMatch(ExportTree.Entry::isOther)) {
        notices.add(Notice.of(NoticeCode.EXPORT_UNREADABLE, "NONE_READ", new Place(FOLDER, 0)));
      }
      var readings =
          entries.stream().map(entry -> new Reading(entry, layouts.of(entry.path()))).toList();
      long all = readings.stream().mapToLong(reading -> reading.entry().size()).sum();
      var bytes = progress.begin(Progress.Stage.READING, all);
      var files = new ArrayList<ExportFile>();
      OrderedParallel.each(
          readings,
          reading -> {
            var read = reading.read(opener);
            bytes.accept(reading.entry().size());
            return read;
          },
          read -> {
            notices.addAll(read.notices());
            files.addAll(read.files());
          });
      return new Exports(files, notices);
    } catch (IOException e) {
      notices.add(ExportFileReader.unopened(FOLDER, "FAULT.NOT_LISTED"));
      return new Exports(List.of(), notices);
    }
  }

  /**
   * One export as a layout reads it, whether the layout is saved or not.
   *
   * @param path relative to the shop folder
   * @throws IOException if the file cannot be opened
   */
  public static Exports read(Path folder, String path, Layouts.Choice layout) throws IOException {
    try (var in = Files.newInputStream(folder.resolve(path))) {
      return new ExportFileReader(path, layout).read(in);
    }
  }

  /** The paths of the files that are read as exports, relative to the shop folder, in order. */
  public static List<String> paths(Path folder) throws IOException {
    var top = folder.resolve(FOLDER);
    return Files.isDirectory(top)
        ? ExportTree.list(top, FOLDER).stream()
            .filter(entry -> entry.fault().isEmpty())
            .map(ExportTree.Entry::path)
            .toList()
        : List.of();
  }

  /** A file to read with its layout. */
  private record Reading(ExportTree.Entry entry, Layouts.Choice layout) {
    private Exports read(IOFunction<Path, InputStream> opener) {
      String path = entry.path();
      if (entry.fault().isPresent()) {
        return Exports.none(entry.fault().get());
      }
      try {
        var once =
            SteadyFile.readOnce(
                entry.file(), opener, in -> new ExportFileReader(path, layout).read(in));
        return once.steady() ? once.content() : once.content().without(unfinished("WRITTEN"));
      } catch (NoSuchFileException e) {
        return Exports.none(unfinished("GONE"));
      } catch (IOException e) {
        return Exports.none(ExportFileReader.unopened(path, "FAULT.NOT_OPENED"));
      }
    }

    private Notice unfinished(String variant) {
      return Notice.of(NoticeCode.EXPORT_UNFINISHED, variant, new Place(entry.path(), 0));
    }
  }
}
