package gambrel.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.NoticeCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every kind of notice is provoked by a folder of its own, and only the expected comes of it. */
class CorpusTest {
  @TempDir private Path work;

  @Test
  void everyFolderIsNamedByACode() throws Exception {
    try (var folders = Files.list(Corpus.top())) {
      assertEquals(
          Stream.of(NoticeCode.values()).map(NoticeCode::id).sorted().toList(),
          folders.map(folder -> folder.getFileName().toString()).sorted().toList());
    }
  }

  @ParameterizedTest
  @EnumSource
  void aNightTellsAndComputesWhatIsExpected(NoticeCode code) throws Exception {
    var folder = Corpus.top().resolve(code.id());

    var data = Corpus.run(folder, work);

    for (String table : Corpus.TABLES) {
      String expected = Files.readString(Corpus.expected(folder, table));
      assertEquals(expected, Corpus.shown(table, data), table);
    }
    String notices = Files.readString(Corpus.expected(folder, "notices"));
    assertTrue(
        notices.lines().anyMatch(line -> line.matches("[a-z]+," + code.id() + ",.*")), notices);
  }
}
