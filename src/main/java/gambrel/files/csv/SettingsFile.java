package gambrel.files.csv;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Severity;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** The keys and values of {@code shop.properties} or of a layout, as UTF-8. */
public final class SettingsFile {
  static final String NAME = "shop.properties";

  private static final int MOST_LINES = 10_000;
  private static final char REPLACED = '\uFFFD';

  private final String name;
  private final List<TextLine> lines;
  private final Properties values = new Properties();
  private final List<Notice> notices;
  private final Set<String> read = new HashSet<>();
  private boolean faulty;

  /**
   * Reads {@code shop.properties}.
   *
   * @throws UnreadableShop if it is missing or cannot be read
   */
  public SettingsFile(Path folder, List<Notice> notices) {
    this(folder, NAME, UnaryOperator.identity(), notices);
  }

  /**
   * Reads a file.
   *
   * @param name its path relative to the shop folder
   * @param lenient makes of each line what its writer meant
   * @throws UnreadableShop if it is missing or cannot be read
   */
  public SettingsFile(
      Path folder, String name, UnaryOperator<String> lenient, List<Notice> notices) {
    this.name = name;
    this.notices = notices;
    var path = folder.resolve(name);
    if (!Files.exists(path)) {
      throw new UnreadableShop(name + " is missing");
    }
    try (var in = Files.newInputStream(path)) {
      lines = TextLine.read(in, StandardCharsets.UTF_8);
      if (lines.size() > MOST_LINES) {
        throw new UnreadableShop(name, Phrase.of("FAULT.MANY_LINES").with("most", MOST_LINES));
      }
      var texts = lines.stream().map(TextLine::text).map(lenient).toList();
      values.load(new StringReader(String.join("\n", texts)));
    } catch (IOException | IllegalArgumentException e) {
      throw new UnreadableShop(name, Phrase.of("FAULT.UNREADABLE"));
    }
    keys().stream()
        .filter(key -> values.getProperty(key).indexOf(REPLACED) >= 0)
        .forEach(this::drop);
  }

  /** Whether a value had to be left out because it cannot be read. */
  public boolean isFaulty() {
    return faulty;
  }

  /** As {@link #get}, but the value may be a single blank or tab. */
  public <T> Optional<T> getCharacter(String key, Function<String, T> type) {
    String value = value(key);
    String text = value.length() == 1 ? value : value.strip();
    return text.isEmpty() ? Optional.empty() : understand(key, text, type);
  }

  /** The stripped value of a key; empty if it is blank or missing. */
  public String text(String key) {
    return value(key).strip();
  }

  private String value(String key) {
    read.add(key);
    return values.getProperty(key, "");
  }

  /** Whether the key stands there, even with a blank value. */
  public boolean has(String key) {
    return values.containsKey(key);
  }

  /** All keys, sorted. */
  public Collection<String> keys() {
    return new TreeSet<>(values.stringPropertyNames());
  }

  /** The value of a key, or empty with a notice if it cannot be read. */
  public <T> Optional<T> get(String key, Function<String, T> type) {
    String text = text(key);
    return text.isEmpty() ? Optional.empty() : understand(key, text, type);
  }

  /** As {@link #get}, but a blank value of a key that stands there is a value, too. */
  public <T> Optional<T> getEvenBlank(String key, Function<String, T> type) {
    return has(key) ? understand(key, text(key), type) : Optional.empty();
  }

  /**
   * The value of a required key.
   *
   * @throws UnreadableShop if it is blank, missing or bad
   */
  public <T> T need(String key, Function<String, T> type) {
    String text = text(key);
    if (text.isEmpty()) {
      throw new UnreadableShop(name + " lacks the setting " + key);
    }
    try {
      return type.apply(text);
    } catch (BadCell e) {
      throw new UnreadableShop(name + ": " + key + " \"" + text + "\" " + e.words());
    }
  }

  /** Adds a notice for each key that nothing has asked for so far. */
  public void tellUnknown() {
    keys().stream().filter(key -> !read.contains(key)).forEach(this::tellUnknown);
  }

  private void tellUnknown(String key) {
    notices.add(
        Notice.of(NoticeCode.SETTING_BAD, "UNKNOWN", place(key))
            .with("key", key)
            .as(name.equals(NAME) ? Severity.NOTE : Severity.MARK));
  }

  /**
   * Adds a notice for a key whose value cannot be right.
   *
   * @param variant of the notice, or what is wrong
   */
  public void refuse(String key, String variant) {
    read.add(key);
    add(Notice.of(NoticeCode.SETTING_BAD, variant, place(key)), key);
  }

  /** Adds a notice for a key that names something wrong. */
  public void refuse(String key, BadCell bad) {
    read.add(key);
    add(Notice.of(NoticeCode.SETTING_BAD, "KEY", place(key)).with("why", bad.why()), key);
  }

  private void add(Notice notice, String key) {
    faulty = true;
    notices.add(notice.with("key", key).advising(name.equals(NAME) ? "" : "LAYOUT"));
  }

  private <T> Optional<T> understand(String key, String text, Function<String, T> type) {
    try {
      return Optional.of(type.apply(text));
    } catch (BadCell e) {
      var notice = Notice.of(NoticeCode.SETTING_BAD, place(key));
      add(notice.with("cell", text).with("why", e.why()), key);
      return Optional.empty();
    }
  }

  private void drop(String key) {
    refuse(key, "NOT_UTF8");
    values.remove(key);
  }

  private Place place(String key) {
    var start =
        Pattern.compile("\\s*" + Pattern.quote(key) + "\\s*[=:\\s].*|\\s*" + Pattern.quote(key));
    return lines.stream()
        .filter(line -> start.matcher(line.text().replace("\\", "")).matches())
        .reduce((first, last) -> last)
        .map(line -> new Place(name, line.number()))
        .orElse(new Place(name, 0));
  }
}
