package gambrel.trade.notice;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class NoticeTableTest {
  @Test
  void theGuideListsEveryNoticeAsItIs() throws Exception {
    var guide = Files.readString(Path.of("src/site/markdown/notices.md"));

    assertTrue(guide.contains(String.join("\n", NoticeTable.lines())));
  }
}
