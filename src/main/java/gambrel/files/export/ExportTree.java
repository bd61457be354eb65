package gambrel.files.export;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Phrase;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Lists the export files under a folder. Hidden files and folders are passed over. Links are listed
 * as unreadable, since their targets may lie outside the shop or be read twice.
 */
final class ExportTree {
  private final SortedMap<String, Entry> entries = new TreeMap<>(ByteOrder.IDS);

  private ExportTree() {}

  /**
   * A file to read, or a folder that cannot be listed.
   *
   * @param path relative to the shop folder, with {@code /}
   * @param file where it lies
   * @param size its bytes when it was listed
   * @param fault a notice if it cannot be read
   */
  record Entry(String path, Path file, long size, Optional<Notice> fault) {}

  /**
   * Lists a folder.
   *
   * @param top the folder, which may itself be a link
   * @param path its path relative to the shop folder
   * @return the entries in the order of their paths' bytes
   */
  static Collection<Entry> list(Path top, String path) throws IOException {
    var tree = new ExportTree();
    tree.addFolder(top.toRealPath(), path);
    return tree.entries.values();
  }

  private void addFolder(Path folder, String path) {
    try (var children = Files.newDirectoryStream(folder)) {
      for (var child : children) {
        String name = child.getFileName().toString();
        if (!name.startsWith(".")) {
          add(child, path + '/' + name);
        }
      }
    } catch (DirectoryIteratorException e) {
      put(path, folder, 0, Optional.of(ExportFileReader.unfinished(path, "NOT_LISTED")));
    } catch (IOException e) {
      put(path, folder, 0, Optional.of(ExportFileReader.unfinished(path, "NOT_OPENED")));
    }
  }

  private void add(Path file, String path) {
    try {
      var attributes =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (attributes.isDirectory()) {
        addFolder(file, path);
      } else if (attributes.isSymbolicLink()) {
        put(path, file, 0, unreadable(path, "FAULT.LINK"));
      } else if (path.toLowerCase(Locale.ROOT).endsWith(".csv")) {
        boolean regular = attributes.isRegularFile();
        var fault = regular ? Optional.<Notice>empty() : unreadable(path, "FAULT.NO_FILE");
        put(path, file, attributes.size(), fault);
      }
    } catch (IOException e) {
      put(path, file, 0, Optional.of(ExportFileReader.unfinished(path, "NOT_OPENED")));
    }
  }

  private static Optional<Notice> unreadable(String path, String fault) {
    return Optional.of(ExportFileReader.unreadable(path, 0, Phrase.of(fault)));
  }

  private void put(String path, Path file, long size, Optional<Notice> fault) {
    entries.put(path, new Entry(path, file, size, fault));
  }
}
