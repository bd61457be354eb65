package gambrel.files.csv;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gambrel.files.export.ExportReader;
import gambrel.files.export.Exports;
import gambrel.files.folder.ShopFiles;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.apache.commons.io.function.IOFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that somebody writes while they are read. */
class SteadyFileTest {
  private static final String EXPORT = "scale,ticket,time,body,code,net\nS1,7,2026-07-01T09:00,B1,";

  private static final String NOTHING_GOES_OUT = " No statement goes out until it is read.";

  @TempDir private Path folder;
  private Path file;
  private int opened;

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(folder.resolve("a.csv"), "one");
  }

  private Optional<String> read(IOFunction<Path, InputStream> opener) throws IOException {
    return SteadyFile.read(file, opener, in -> new String(in.readAllBytes(), UTF_8));
  }

  /** Opens a file to which something is added as soon as it has been read, so many times. */
  private IOFunction<Path, InputStream> growing(int times) {
    return path -> {
      var content = Files.readAllBytes(path);
      if (++opened <= times) {
        Files.writeString(path, "+", StandardOpenOption.APPEND);
      }
      return new ByteArrayInputStream(content);
    };
  }

  @Test
  void aQuietFileIsReadOnce() throws IOException {
    assertEquals(Optional.of("one"), read(growing(0)));
    assertEquals(1, opened);
  }

  @Test
  void aFileToWhichARowIsAddedIsReadAgain() throws IOException {
    assertEquals(Optional.of("one+"), read(growing(1)));
  }

  @Test
  void aFileThatGoesOnGrowingIsGivenUp() throws IOException {
    assertEquals(Optional.empty(), read(growing(Integer.MAX_VALUE)));
    assertEquals(3, opened);
  }

  @Test
  void aFileThatIsReplacedByOneOfTheSameSizeIsReadAgain() throws IOException {
    var read =
        read(
            path -> {
              var content = Files.readAllBytes(path);
              if (opened++ == 0) {
                var other = Files.writeString(folder.resolve("other"), "two");
                Files.setLastModifiedTime(other, Files.getLastModifiedTime(path));
                Files.delete(path);
                Files.writeString(folder.resolve("keeps the old number from coming again"), "");
                Files.move(other, path);
              }
              return new ByteArrayInputStream(content);
            });

    assertEquals(Optional.of("two"), read);
  }

  @Test
  void aFileThatGoesAwayIsNotThere() {
    assertThrows(
        NoSuchFileException.class,
        () ->
            read(
                path -> {
                  Files.delete(path);
                  return new ByteArrayInputStream(new byte[0]);
                }));
  }

  private Exports exports(IOFunction<Path, InputStream> opener) {
    var files = new ShopFiles(folder.resolve("shop"));
    files.with("exports/a.csv", EXPORT + "71,2.5\n").with("exports/b.csv", EXPORT + "72,1\n");
    return ExportReader.read(files.folder(), files.clean(), opener, Progress.NONE);
  }

  private static List<String> told(Exports exports) {
    return exports.notices().stream()
        .filter(notice -> notice.code() == NoticeCode.EXPORT_UNFINISHED)
        .map(notice -> ENGLISH.message(notice))
        .toList();
  }

  /** Does something to the second of two exports whenever it is opened. */
  private static IOFunction<Path, InputStream> second(IOFunction<Path, InputStream> opener) {
    return path -> path.endsWith("b.csv") ? opener.apply(path) : Files.newInputStream(path);
  }

  @Test
  void anExportThatIsBeingWrittenIsLeftForTheNextNightAndToldOnce() {
    var exports = exports(second(growing(1)));

    assertEquals(1, exports.files().get(0).rows().size());
    assertEquals(new ExportFile("exports/b.csv", List.of(), 1, false), exports.files().get(1));
    assertEquals(
        List.of("exports/b.csv was being written while it was read." + NOTHING_GOES_OUT),
        told(exports));
  }

  @Test
  void anExportThatGoesAwayIsTold() {
    var exports =
        exports(
            second(
                path -> {
                  Files.delete(path);
                  return InputStream.nullInputStream();
                }));

    assertEquals(
        List.of("exports/b.csv went away while the exports were read." + NOTHING_GOES_OUT),
        told(exports));
  }

  @Test
  void anExportOnADriveThatFailsIsTold() {
    var exports =
        exports(
            second(
                path -> {
                  throw new IOException("Host is down");
                }));

    assertEquals(1, exports.files().size());
    var notice = exports.notices().get(0);
    assertEquals(NoticeCode.EXPORT_UNREADABLE, notice.code());
    assertEquals("it cannot be opened", ENGLISH.message(notice));
  }
}
