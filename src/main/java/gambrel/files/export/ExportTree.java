package gambrel.files.export;

import gambrel.files.layout.Layouts;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.io.FilenameUtils;

/**
 * Lists the export files under a folder. Hidden files and folders, temporary files and layouts are
 * passed over. Links are listed as unreadable, since their targets may lie outside the shop or be
 * read twice.
 */
final class ExportTree {
  /** What the names of text files end in; the last is the name without a suffix. */
  private static final Set<String> SUFFIXES =
      Set.of("csv", "txt", "tsv", "tab", "log", "dat", "prn", "");

  private static final Set<String> SPREADSHEETS = Set.of("xlsx", "xls", "ods");

  private final SortedMap<String, Entry> entries = new TreeMap<>(ByteOrder.IDS);

  private ExportTree() {}

  /**
   * A file, or a folder that cannot be listed.
   *
   * @param path relative to the shop folder, with {@code /}
   * @param file where it lies
   * @param size its bytes when it was listed
   * @param fault a notice if it is not read
   */
  record Entry(String path, Path file, long size, Optional<Notice> fault) {
    /** Whether its name is not that of a text file. */
    boolean isOther() {
      return fault.filter(why -> why.code() == NoticeCode.EXPORT_OTHER).isPresent();
    }
  }

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
        if (!name.startsWith(".") && !name.equals(Layouts.OWN)) {
          add(child, path + '/' + name);
        }
      }
    } catch (DirectoryIteratorException | IOException e) {
      put(path, folder, 0, unopened(path, "FAULT.NOT_LISTED"));
    }
  }

  private void add(Path file, String path) {
    try {
      var attributes =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (attributes.isDirectory()) {
        addFolder(file, path);
      } else if (file.getFileName().toString().startsWith("~")) {
        return;
      } else if (attributes.isSymbolicLink()) {
        put(path, file, 0, unreadable(path, "FAULT.LINK"));
      } else {
        boolean regular = attributes.isRegularFile();
        put(path, file, attributes.size(), fault(path, regular));
      }
    } catch (IOException e) {
      put(path, file, 0, unopened(path, "FAULT.NOT_OPENED"));
    }
  }

  /** Why a file is not read; empty for a text file. */
  private static Optional<Notice> fault(String path, boolean regular) {
    String suffix = FilenameUtils.getExtension(path).toLowerCase(Locale.ROOT);
    if (SPREADSHEETS.contains(suffix)) {
      return unreadable(path, "FAULT.SPREADSHEET").map(n -> n.advising("SPREADSHEET"));
    }
    if (!SUFFIXES.contains(suffix)) {
      return Optional.of(Notice.of(NoticeCode.EXPORT_OTHER, new Place(path, 0)));
    }
    return regular ? Optional.empty() : unreadable(path, "FAULT.NO_FILE");
  }

  private static Optional<Notice> unreadable(String path, String fault) {
    return Optional.of(ExportFileReader.unreadable(path, 0, Phrase.of(fault)));
  }

  private static Optional<Notice> unopened(String path, String fault) {
    return Optional.of(ExportFileReader.unopened(path, fault));
  }

  private void put(String path, Path file, long size, Optional<Notice> fault) {
    entries.put(path, new Entry(path, file, size, fault));
  }
}
