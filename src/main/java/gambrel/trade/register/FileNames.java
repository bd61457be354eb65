package gambrel.trade.register;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Names of files and folders for ids: bytes outside {@code A–Z a–z 0–9 _ -} become {@code %XX}; of
 * names that differ in case only, later ones get {@code ~2}, {@code ~3} and so on, as do names that
 * Windows keeps for devices. A name longer than {@value #LONGEST} characters keeps its beginning
 * and ends in {@code ~} and the first 16 hexadecimal digits of the id's SHA-256: file systems allow
 * 255 bytes a name.
 */
public final class FileNames {
  private static final int LONGEST = 120;
  private static final int DIGEST = 16;
  private static final Pattern DEVICE =
      Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]", Pattern.CASE_INSENSITIVE);
  private static final Pattern ESCAPED = Pattern.compile("[^A-Za-z0-9_-]");
  private static final Pattern CUT_ESCAPE = Pattern.compile("%.?$");

  private final Map<String, String> names = new HashMap<>();

  /**
   * Names for {@code ids}; the first by id keeps its plain name.
   *
   * @param given names that earlier documents already use
   */
  public FileNames(Collection<String> ids, Map<String, String> given) {
    names.putAll(given);
    var taken = new HashSet<String>();
    given.values().forEach(name -> taken.add(name.toLowerCase(Locale.ROOT)));
    for (String id : new TreeSet<>(ids)) {
      if (!names.containsKey(id)) {
        names.put(id, free(shorten(escape(id), id), taken));
      }
    }
  }

  private static String free(String plain, Set<String> taken) {
    String name = plain;
    if (DEVICE.matcher(plain).matches()) {
      taken.add(plain.toLowerCase(Locale.ROOT));
    }
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      name = plain + "~" + i;
    }
    return name;
  }

  /** The name of a known id. */
  public String of(String id) {
    return names.get(id);
  }

  private static String shorten(String name, String id) {
    if (name.length() <= LONGEST) {
      return name;
    }
    var start = CUT_ESCAPE.matcher(name.substring(0, LONGEST - DIGEST - 1)).replaceFirst("");
    var digest = Digest.of(id.getBytes(StandardCharsets.UTF_8));
    return start + '~' + digest.substring(0, DIGEST);
  }

  private static String escape(String id) {
    var bytes = new String(id.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    return ESCAPED
        .matcher(bytes)
        .replaceAll(b -> String.format(Locale.ROOT, "%%%02X", (int) b.group().charAt(0)));
  }
}
