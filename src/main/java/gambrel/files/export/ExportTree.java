package gambrel.files.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The export files under a folder. Hidden files are none; links are listed as unusable, since what
 * they lead to may lie outside the shop or be read twice.
 */
final class ExportTree extends SimpleFileVisitor<Path> {
  /** Paths by their bytes, as every output sorts them. */
  static final Comparator<String> BY_BYTES =
      (one, other) ->
          Arrays.compareUnsigned(
              one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));

  private final Path top;
  private final String prefix;
  private final SortedMap<String, Entry> entries = new TreeMap<>(BY_BYTES);

  private ExportTree(Path top, String prefix) {
    this.top = top;
    this.prefix = prefix;
  }

  /**
   * Lists a folder.
   *
   * @param top the folder, which may itself be a link
   * @param prefix its path relative to the shop folder
   * @return entries by path relative to the shop folder
   */
  static SortedMap<String, Entry> list(Path top, String prefix) throws IOException {
    var real = top.toRealPath();
    var tree = new ExportTree(real, prefix);
    Files.walkFileTree(real, tree);
    return tree.entries;
  }

  @Override
  public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
    return isHidden(dir) && !dir.equals(top)
        ? FileVisitResult.SKIP_SUBTREE
        : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    boolean isExport = file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    if (!isHidden(file) && (isExport || attributes.isSymbolicLink())) {
      var fault =
          attributes.isSymbolicLink()
              ? Optional.of("LINK")
              : attributes.isRegularFile() ? Optional.<String>empty() : Optional.of("NO_FILE");
      add(file, attributes.size(), fault, false);
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException e) {
    add(file, 0, Optional.of("NOT_OPENED"), true);
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult postVisitDirectory(Path dir, IOException e) {
    if (e != null) {
      add(dir, 0, Optional.of("NOT_LISTED"), true);
    }
    return FileVisitResult.CONTINUE;
  }

  private static boolean isHidden(Path path) {
    return path.getFileName().toString().startsWith(".");
  }

  private void add(Path path, long size, Optional<String> fault, boolean isOutOfReach) {
    var relative = new StringBuilder(prefix);
    top.relativize(path).forEach(name -> relative.append('/').append(name));
    entries.put(relative.toString(), new Entry(path, size, fault, isOutOfReach));
  }

  /**
   * Something that should be read.
   *
   * @param path where it lies
   * @param size its bytes when it was listed
   * @param fault why it cannot be read, as the notices files name it
   * @param isOutOfReach whether it may hold exports that just cannot be got at
   */
  record Entry(Path path, long size, Optional<String> fault, boolean isOutOfReach) {}
}
