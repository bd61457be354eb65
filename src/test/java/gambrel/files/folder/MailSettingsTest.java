package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.sending.MailSettings;
import gambrel.trade.sending.MailSettings.Security;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MailSettingsTest {
  private final List<Notice> notices = new ArrayList<>();
  @TempDir private Path folder;

  private MailSettings read(String... lines) throws IOException {
    Files.write(folder.resolve("mail.properties"), List.of(lines));
    return MailSettingsReader.read(folder, notices).orElseThrow();
  }

  private List<NoticeCode> codes() {
    return notices.stream().map(Notice::code).toList();
  }

  @Test
  void withoutTheFileThereAreNone() {
    assertEquals(Optional.empty(), MailSettingsReader.read(folder, notices));
    assertEquals(List.of(), notices);
  }

  @ParameterizedTest
  @CsvSource({"starttls, 587", "tls, 465", "none, 25"})
  void thePortIsTheUsualOneOfTheSecurity(String security, int port) throws IOException {
    assertEquals(port, read("host=localhost", "security=" + security).port());
    assertEquals(List.of(), notices);
  }

  @Test
  void allThatMayBeLeftOutHasADefault() throws IOException {
    var settings = read("from=office@shop.example", "host=mail.shop.example");

    assertEquals(
        new MailSettings(
            "office@shop.example",
            "mail.shop.example",
            587,
            Security.STARTTLS,
            "",
            "",
            "",
            "",
            "",
            LocalDate.MIN,
            50),
        settings);
  }

  @Test
  void namesAreComparedAsThoseOfOtherSettings() throws IOException {
    assertEquals("a@b.example", read("Reply-To=a@b.example", "host=h").replyTo());
    assertEquals(List.of(NoticeCode.COLUMN_NAME), codes());
    notices.clear();

    read("pasword_file=x");

    assertEquals(List.of(NoticeCode.COLUMN_UNKNOWN), codes());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "from=Office <office@shop.example>",
        "reply_to=a@b.example, c@d.example",
        "copy_to=nobody",
        "all_to=a@b",
        "port=0",
        "port=70000",
        "security=ssl",
        "since=soon",
        "most_at_once=-1"
      })
  void aValueThatCannotBeReadStopsSending(String line) throws IOException {
    read("host=localhost", line);

    assertEquals(List.of(NoticeCode.SETTING_BAD), codes());
    assertTrue(notices.get(0).place().line() == 2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"mail.shop.example", "localhost.shop.example", "10.0.0.1", ""})
  void withoutProtectionTheServerIsOnThisMachine(String host) throws IOException {
    read("security=none", "host=" + host);

    assertEquals(List.of(NoticeCode.SETTING_BAD), codes());
  }
}
