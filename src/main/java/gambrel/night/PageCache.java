package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.pages.render.PageMemory;
import gambrel.trade.register.Digest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.WeakHashMap;
import java.util.regex.Pattern;

/**
 * The published pages, by what they were made of, so that a night lays out only what is new. A page
 * that was changed by hand is not taken. The list may be deleted at any time: it saves work and
 * decides nothing.
 */
final class PageCache implements PageMemory {
  /** The list, beside what it lists. */
  static final String FILE = ".pages";

  private static final Pattern LINE = Pattern.compile("([0-9a-f]+) ([0-9a-f]{64}) (.+)");

  private final Changes changes;
  private final Map<String, Page> byRecipe = new HashMap<>();

  private final Map<String, Page> placed = new HashMap<>();

  /**
   * The pages found and kept tonight. An array is known by itself, not by its bytes; pages are made
   * by several threads.
   */
  private final Map<byte[], Tonight> tonight = Collections.synchronizedMap(new WeakHashMap<>());

  /** How a page was made, with its digest where that is known already. */
  private record Tonight(String recipe, Optional<String> digest) {}

  /** A page: the digest of its bytes and where it stands. */
  private record Page(String recipe, String digest, String path) {
    String line() {
      return recipe + ' ' + digest + ' ' + path + '\n';
    }
  }

  private PageCache(Changes changes) {
    this.changes = changes;
  }

  /** The pages published before the night; none where there is no list. */
  static PageCache of(Changes changes) throws IOException {
    var shelf = new PageCache(changes);
    changes
        .read(FILE)
        .ifPresent(list -> new String(list, StandardCharsets.UTF_8).lines().forEach(shelf::add));
    return shelf;
  }

  private void add(String line) {
    var parts = LINE.matcher(line);
    if (parts.matches()) {
      var page = new Page(parts.group(1), parts.group(2), parts.group(3));
      byRecipe.put(page.recipe(), page);
    }
  }

  @Override
  public Optional<byte[]> find(String recipe) {
    var page = byRecipe.get(recipe);
    if (page == null) {
      return Optional.empty();
    }
    try {
      var bytes = changes.read(page.path()).filter(b -> Digest.of(b).equals(page.digest()));
      bytes.ifPresent(b -> tonight.put(b, new Tonight(recipe, Optional.of(page.digest()))));
      return bytes;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void keep(String recipe, byte[] page) {
    tonight.put(page, new Tonight(recipe, Optional.empty()));
  }

  /** Writes a page, which the next night may take as it is if it was found or kept here. */
  void write(String path, byte[] page) throws IOException {
    var known = tonight.get(page);
    if (known != null) {
      String digest = known.digest().orElseGet(() -> Digest.of(page));
      placed.put(path, new Page(known.recipe(), digest, path));
    }
    changes.write(path, page);
  }

  /** Writes the list of pages, once all are made. */
  void writeList() throws IOException {
    var byPath = new TreeMap<String, Page>();
    byRecipe.values().forEach(page -> byPath.put(page.path(), page));
    byPath.keySet().removeAll(changes.removed());
    byPath.putAll(placed);
    var list = new StringBuilder();
    byPath.values().forEach(page -> list.append(page.line()));
    changes.write(FILE, list.toString().getBytes(StandardCharsets.UTF_8));
  }
}
