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
import java.util.TreeMap;
import java.util.WeakHashMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The published pages by their recipes, so that a night lays out only pages that are new. A page
 * that was changed by hand is made again. The list of pages may be deleted at any time: without it
 * all pages are made again.
 */
final class PageCache implements PageMemory {
  /** The list, in the output folder. */
  static final String FILE = ".pages";

  private static final Pattern LINE =
      Pattern.compile("([0-9a-f]+) ([0-9a-f]{64}) ([A-Za-z0-9_%~./-]+)");

  private final Changes changes;
  private final Map<String, Entry> byRecipe = new HashMap<>();
  private final Map<String, Entry> written = new HashMap<>();

  /**
   * The recipes of the pages that were found or made tonight. An array is a key by its identity;
   * pages are made by several threads.
   */
  private final Map<byte[], String> tonight = Collections.synchronizedMap(new WeakHashMap<>());

  /** A line of the list: how a page was made, the digest of its bytes and its file. */
  private record Entry(String recipe, String digest, String path) {
    private String line() {
      return recipe + ' ' + digest + ' ' + path + '\n';
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
      byRecipe.put(parts.group(1), new Entry(parts.group(1), parts.group(2), parts.group(3)));
    }
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
          : changes.read(entry.path()).filter(b -> Digest.of(b).equals(entry.digest()));
    } catch (IOException e) {
      // The list may be damaged and name a folder: the page is made again.
      return Optional.empty();
    }
  }

  /** Writes a page; the next night may use it if it was made here. */
  void write(String path, byte[] page) throws IOException {
    var recipe = tonight.get(page);
    if (recipe != null) {
      written.put(path, new Entry(recipe, Digest.of(page), path));
    }
    changes.write(path, page);
  }

  /** Writes the list, once all pages are written. */
  void writeList() throws IOException {
    var byPath = new TreeMap<String, Entry>();
    byRecipe.values().forEach(entry -> byPath.put(entry.path(), entry));
    byPath.keySet().removeAll(changes.removed());
    byPath.putAll(written);
    var list = byPath.values().stream().map(Entry::line).collect(Collectors.joining());
    changes.write(FILE, list.getBytes(StandardCharsets.UTF_8));
  }
}
