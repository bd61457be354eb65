package gambrel.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;

/** Goes through files a handful at a time: read side by side, handed over in their order. */
final class FilePasses {
  /** So many rows keep every processor busy, and are nothing beside what a night keeps. */
  private static final int ROWS_AT_ONCE = 20_000;

  private FilePasses() {}

  /**
   * Reads every file and hands over what was made of it.
   *
   * @param reading asked by several threads at once
   * @param taking given the results one by one, in the order of the files
   */
  static <T> void each(List<ExportFile> files, Function<ExportFile, T> reading, Consumer<T> taking) {
    each(files, reading, taking, rows -> {});
  }

  /**
   * The same for somebody who waits.
   *
   * @param passed given the number of rows that are done with, now and then
   */
  static <T> void each(
      List<ExportFile> files,
      Function<ExportFile, T> reading,
      Consumer<T> taking,
      LongConsumer passed) {
    var handful = new ArrayList<ExportFile>();
    int rows = 0;
    for (var file : files) {
      handful.add(file);
      rows += file.count();
      if (rows >= ROWS_AT_ONCE) {
        handful.parallelStream().map(reading).toList().forEach(taking);
        passed.accept(rows);
        handful.clear();
        rows = 0;
      }
    }
    handful.parallelStream().map(reading).toList().forEach(taking);
    passed.accept(rows);
  }
}
