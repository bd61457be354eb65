package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.NameComparison;
import gambrel.files.csv.TextLine;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * The keys and values of {@code shop.properties}, {@code mail.properties} or a layout, which are
 * UTF-8 files.
 */
public final class SettingsFile {
  /** The file of the shop's own settings. */
  static final String SHOP = "shop.properties";

  /** The files that are no layouts. */
  private static final Set<String> OWN = Set.of(SHOP, MailSettingsReader.FILE);

  private static final int MOST_LINES = 10_000;
  private static final Pattern KEY_WITH_BLANKS =
      Pattern.compile("\\h*([\\w.-]+(?:\\h+[\\w.-]+)+)\\h*=.*");
  private static final char REPLACED = '\uFFFD';

  private final String name;
  private final List<TextLine> lines;
  private final List<String> written = new ArrayList<>();
  private final SortedMap<String, String> values = new TreeMap<>();
  private final List<Notice> notices;
  private final Set<String> read = new HashSet<>();
  private boolean faulty;

  /**
   * Reads a file.
   *
   * @param name its path relative to the shop folder
   * @param escaping makes a line of the properties format of each line of the file
   * @param notices receives a notice for each key or value that is wrong
   * @throws UnreadableShop if it is missing or cannot be read
   */
  public SettingsFile(
      Path folder, String name, UnaryOperator<String> escaping, List<Notice> notices) {
    this(name, lines(folder, name), escaping, notices);
  }

  /** As above, of a file with these lines. */
  public SettingsFile(
      String name, List<TextLine> lines, UnaryOperator<String> escaping, List<Notice> notices) {
    this.name = name;
    this.notices = notices;
    this.lines = lines;
    if (lines.size() > MOST_LINES) {
      throw new UnreadableShop(name, Phrase.of("FAULT.MANY_LINES").with("most", MOST_LINES));
    }
    try {
      var texts = lines.stream().map(line -> escaping.apply(escaped(line.text()))).toList();
      properties().load(new StringReader(String.join("\n", texts)));
    } catch (IOException | IllegalArgumentException e) {
      throw unreadable(name);
    }
    for (String key : keys()) {
      if (values.get(key).indexOf(REPLACED) >= 0) {
        refuse(key, "NOT_UTF8");
        values.remove(key);
      }
    }
  }

  /** The line with the blanks in its key escaped; the properties format ends a key at a blank. */
  private static String escaped(String line) {
    var found = KEY_WITH_BLANKS.matcher(line);
    return found.matches()
        ? found.group(1).replaceAll("(?=\\h)", "\\\\") + line.substring(found.end(1))
        : line;
  }

  private static List<TextLine> lines(Path folder, String name) {
    if (!ShopFolder.isThere(folder, name)) {
      throw new UnreadableShop(name + " is missing");
    }
    return ShopFolder.lines(folder, name).orElseThrow(() -> unreadable(name));
  }

  private static UnreadableShop unreadable(String name) {
    return new UnreadableShop(name, Phrase.of("FAULT.UNREADABLE"));
  }

  /** Properties that keep the first of two values of one key; a blank one is no value. */
  private Properties properties() {
    return new Properties() {
      private static final long serialVersionUID = 1L;

      @Override
      public synchronized Object put(Object key, Object value) {
        if (values.getOrDefault(key.toString(), "").isBlank()) {
          written.remove(key.toString());
          values.remove(key.toString());
        }
        written.add(key.toString());
        return values.putIfAbsent(key.toString(), value.toString());
      }
    };
  }

  /** Whether a value was left out because it cannot be read. */
  public boolean isFaulty() {
    return faulty;
  }

  /** The stripped value of a key; empty if it is blank or missing. */
  public String text(String key) {
    return value(key).strip();
  }

  private String value(String key) {
    read.add(key);
    return values.getOrDefault(asWritten(key), "");
  }

  /** A key as the file has it, where it may differ in what does not count in a comparison. */
  private String asWritten(String key) {
    return values.containsKey(key)
        ? key
        : keys().stream()
            .filter(other -> NameComparison.plain(other).equals(NameComparison.plain(key)))
            .findFirst()
            .orElse(key);
  }

  /** Whether the file has the key, even with a blank value. */
  public boolean has(String key) {
    return values.containsKey(asWritten(key));
  }

  /** Its lines as they stand. */
  public List<String> lines() {
    return lines.stream().map(TextLine::text).toList();
  }

  /** All values by key, also those that nothing reads. */
  public Map<String, String> values() {
    return Map.copyOf(values);
  }

  /** All keys, sorted. */
  public Collection<String> keys() {
    return List.copyOf(values.keySet());
  }

  /** The value of a key; empty if it is blank or missing, and with a notice if it is bad. */
  public <T> Optional<T> get(String key, Function<String, T> type) {
    String text = text(key);
    return text.isEmpty() ? Optional.empty() : read(key, text, type);
  }

  /** The whole number of a key, as {@link #get} returns it. */
  public Optional<Integer> count(String key) {
    return get(key, CellTypes.PLAIN::count);
  }

  /** Yes or no, as {@link #get} returns it. */
  public Optional<Boolean> yesNo(String key) {
    return get(key, CellTypes.PLAIN::yesNo);
  }

  /** As {@link #get}, but a single blank or tab is a value, too. */
  public <T> Optional<T> getCharacter(String key, Function<String, T> type) {
    String value = value(key);
    return value.length() == 1 ? read(key, value, type) : get(key, type);
  }

  /** As {@link #get}, but a blank text is a value, too, if the file has the key. */
  <T> Optional<T> getEvenBlank(String key, Function<String, T> type) {
    read.add(key);
    return has(key) ? read(key, text(key), type) : Optional.empty();
  }

  private <T> Optional<T> read(String key, String text, Function<String, T> type) {
    try {
      return Optional.of(type.apply(text));
    } catch (BadCell e) {
      var notice = Notice.of(NoticeCode.SETTING_BAD, place(key));
      add(notice.with("cell", text).with("why", e.why()), key);
      return Optional.empty();
    }
  }

  /**
   * Refuses the file if required keys are blank, missing or bad.
   *
   * @param types the kind of value of each
   * @throws UnreadableShop with all that is wrong
   */
  void checkRequired(SortedMap<String, Function<String, ?>> types) {
    var missing = types.keySet().stream().filter(key -> text(key).isEmpty()).toList();
    var faults = new ArrayList<String>();
    if (!missing.isEmpty()) {
      String settings = missing.size() == 1 ? " lacks the setting " : " lacks the settings ";
      faults.add(name + settings + String.join(", ", missing));
    }
    types.forEach(
        (key, type) -> {
          try {
            if (!missing.contains(key)) {
              var unused = type.apply(text(key));
            }
          } catch (BadCell e) {
            String why = NoticeWords.ENGLISH.of(e.why());
            faults.add(name + ": " + key + " \"" + text(key) + "\" " + why);
          }
        });
    if (!faults.isEmpty()) {
      throw new UnreadableShop(String.join("; ", faults));
    }
  }

  /** The value of a required key, which was {@linkplain #checkRequired checked}. */
  <T> T need(String key, Function<String, T> type) {
    return type.apply(text(key));
  }

  /**
   * Adds a notice for each key that is not written as one that was read so far, or is among {@code
   * others}.
   */
  public void compareNames(Collection<String> others) {
    var known = new TreeSet<>(read);
    known.addAll(others);
    new NameComparison(written, known).report(this::place, notices::add);
  }

  /** Adds the notice {@code SETTING_BAD.variant} for a value that does not fit the others. */
  public void refuse(String key, String variant) {
    add(Notice.of(NoticeCode.SETTING_BAD, variant, place(key)), key);
  }

  /** Adds a notice for a key that is itself wrong. */
  public void refuse(String key, BadCell bad) {
    add(Notice.of(NoticeCode.SETTING_BAD, "KEY", place(key)).with("why", bad.why()), key);
  }

  private void add(Notice notice, String key) {
    faulty = true;
    read.add(key);
    notices.add(notice.with("key", key).advising(OWN.contains(name) ? "" : "LAYOUT"));
  }

  /** The last line that begins with the key; line 0 if none does. */
  private Place place(String key) {
    var start = Pattern.compile("\\s*" + Pattern.quote(asWritten(key)) + "(\\s*[=:\\s].*)?");
    var found =
        lines.stream().filter(line -> start.matcher(line.text().replace("\\", "")).matches());
    return new Place(name, found.mapToInt(TextLine::number).max().orElse(0));
  }
}
