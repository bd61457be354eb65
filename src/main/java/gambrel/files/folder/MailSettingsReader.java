package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.mail.MailAddress;
import gambrel.trade.notice.Notice;
import gambrel.trade.sending.MailSettings;
import gambrel.trade.sending.MailSettings.Security;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Reads {@code mail.properties}. */
public final class MailSettingsReader {
  /** The file's name. */
  public static final String FILE = "mail.properties";

  private static final int USUAL_MOST = 50;
  private static final int HIGHEST_PORT = 65_535;
  private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "::1");

  private MailSettingsReader() {}

  /**
   * The settings; empty if the shop folder has no such file.
   *
   * @param notices receives a notice for each key or value that is wrong
   * @throws UnreadableShop if the file cannot be read
   */
  public static Optional<MailSettings> read(Path folder, List<Notice> notices) {
    if (!ShopFolder.isThere(folder, FILE)) {
      return Optional.empty();
    }
    var file = new SettingsFile(folder, FILE, UnaryOperator.identity(), notices);
    var security =
        file.get("security", text -> CellTypes.word(Security.class, text))
            .orElse(Security.STARTTLS);
    String host = file.text("host");
    var settings =
        new MailSettings(
            address(file, "from"),
            host,
            file.get("port", MailSettingsReader::port).orElse(security.port()),
            security,
            file.text("user"),
            file.text("password_file"),
            address(file, "reply_to"),
            address(file, "copy_to"),
            address(file, "all_to"),
            file.get("since", CellTypes.PLAIN::date).orElse(LocalDate.MIN),
            file.count("most_at_once").orElse(USUAL_MOST));
    if (security == Security.NONE && !THIS_MACHINE.contains(host)) {
      file.refuse("security", "NOT_THIS_MACHINE");
    }
    file.compareNames(List.of());
    return Optional.of(settings);
  }

  private static String address(SettingsFile file, String key) {
    return file.get(key, text -> BadCell.unless("NOT_ADDRESS", text, MailAddress::isUsable))
        .orElse("");
  }

  private static int port(String text) {
    return BadCell.unless(
        "NOT_PORT", CellTypes.PLAIN.count(text), port -> port > 0 && port <= HIGHEST_PORT);
  }
}
