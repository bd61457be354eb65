package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.pages.render.PageMemory;
import gambrel.trade.register.Digest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.CRC32;

/**
 * The published pages by their recipes, so that a night lays out only pages that are new. A page
 * that was changed by hand is made again. The list of pages may be deleted at any time: without it
 * all pages are made again.
 *
 * <p>The list holds a checksum of each page, and of issued statements also the SHA-256 of the
 * register: so damage is found without the SHA-256 of all documents, which takes a second a night.
 */
final class PageCache implements PageMemory {
  /** The list, in the output folder. */
  static final String FILE = ".pages";

  private static final Pattern LINE =
      Pattern.compile("([0-9a-f]+) ([0-9a-f]{64}|-) ([A-Za-z0-9_%~./-]+) ([0-9a-f]+)");

  /** Stands for the recipe of a document that was made before the list. */
  private static final String NO_RECIPE = "0";

  /** Stands for the SHA-256 of a page that is no issued statement. */
  private static final String NO_DIGEST = "-";

  private final Changes changes;
  private final Map<String, Entry> byRecipe = new HashMap<>();
  private final Map<String, Entry> byPath = new ConcurrentSkipListMap<>();
  private final Map<String, Entry> written = new HashMap<>();

  /**
   * The recipes of the pages that were found or made tonight. An array is a key by its identity;
   * pages are made by several threads.
   */
  private final Map<byte[], String> tonight = Collections.synchronizedMap(new WeakHashMap<>());

  /** A line of the list: how a page was made, its SHA-256 as issued, its file and checksum. */
  private record Entry(String recipe, String digest, String path, String checksum) {
    private String line() {
      return recipe + ' ' + digest + ' ' + path + ' ' + checksum + '\n';
    }
  }

  private PageCache(Changes changes) {
    this.changes = changes;
  }

  /** The pages published before the night; none where there is no list. */
  static PageCache of(Changes changes) throws IOException {
    var cache = new PageCache(changes);
    changes
        .read(FILE)
        .ifPresent(list -> new String(list, StandardCharsets.UTF_8).lines().forEach(cache::add));
    return cache;
  }

  private void add(String line) {
    var parts = LINE.matcher(line);
    if (parts.matches()) {
      var entry = new Entry(parts.group(1), parts.group(2), parts.group(3), parts.group(4));
      byRecipe.put(entry.recipe(), entry);
      byPath.put(entry.path(), entry);
    }
  }

  /** Whether a document is the one with this digest. */
  boolean isWhole(String path, byte[] document, String digest) {
    var entry = written.getOrDefault(path, byPath.get(path));
    if (entry != null && entry.digest().equals(digest) && entry.checksum().equals(crc(document))) {
      return true;
    }
    boolean whole = Digest.of(document).equals(digest);
    if (whole) {
      byPath.putIfAbsent(path, new Entry(NO_RECIPE, digest, path, crc(document)));
    }
    return whole;
  }

  private static String crc(byte[] bytes) {
    var crc = new CRC32();
    crc.update(bytes);
    return Long.toHexString(crc.getValue());
  }

  @Override
  public byte[] page(String recipe, Supplier<byte[]> maker) {
    var page = published(recipe).orElseGet(maker);
    tonight.put(page, recipe);
    return page;
  }

  private Optional<byte[]> published(String recipe) {
    var entry = byRecipe.get(recipe);
    try {
      return entry == null
          ? Optional.empty()
          : changes.read(entry.path()).filter(b -> crc(b).equals(entry.checksum()));
    } catch (IOException e) {
      // The list may be damaged and name a folder: the page is made again.
      return Optional.empty();
    }
  }

  /** Writes a page; the next night may use it if it was made here. */
  void write(String path, byte[] page) throws IOException {
    write(path, page, NO_DIGEST);
  }

  /** As above, an issued statement with its SHA-256. */
  void write(String path, byte[] page, String digest) throws IOException {
    var recipe = tonight.getOrDefault(page, NO_RECIPE);
    written.put(path, new Entry(recipe, digest, path, crc(page)));
    changes.write(path, page);
  }

  /** Writes the list, once all pages are written. */
  void writeList() throws IOException {
    byPath.keySet().removeAll(changes.removed());
    byPath.putAll(written);
    var list = byPath.values().stream().map(Entry::line).collect(Collectors.joining());
    changes.write(FILE, list.getBytes(StandardCharsets.UTF_8));
  }
}
