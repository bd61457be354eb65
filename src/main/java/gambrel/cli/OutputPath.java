package gambrel.cli;

import gambrel.night.RefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Refuses output paths in a shop's exports. */
final class OutputPath {
  private OutputPath() {}

  /**
   * Refuses an output folder at or under the shop's exports, also by links and dots, and one that
   * is a file.
   */
  static void checkFolder(Path folder, Path shop) throws RefusedException {
    refuseExports(folder, shop);
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new RefusedException(folder + " is no folder");
    }
  }

  /** Refuses a file at or under the shop's exports. */
  static void refuseExports(Path path, Path shop) throws RefusedException {
    if (real(path).startsWith(real(shop.resolve("exports")))) {
      throw new RefusedException(path + " lies in the shop's exports, which are never written to");
    }
  }

  /** The path without links and dots, as far as it exists. */
  private static Path real(Path path) {
    var absolute = path.toAbsolutePath();
    var real = absolute.getRoot();
    for (var name : absolute) {
      real = step(real, name);
    }
    return real;
  }

  private static Path step(Path from, Path name) {
    if (name.toString().equals("..")) {
      return from.getParent() == null ? from : from.getParent();
    }
    var next = from.resolve(name).normalize();
    try {
      return next.toRealPath();
    } catch (IOException e) {
      return next;
    }
  }
}
