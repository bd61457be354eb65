package gambrel.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Tells one state of program and templates from another, so that a page made by an older one is not
 * taken for new.
 */
final class Fingerprint {
  private Fingerprint() {}

  /**
   * SHA-256 of the program's jar, whose manifest names the libraries, and of every file of the
   * shop's template folder; empty where the program does not run from a jar: it may change under
   * our hands.
   */
  static Optional<String> of(Optional<Path> shopFolder) {
    try {
      var source = Fingerprint.class.getProtectionDomain().getCodeSource().getLocation();
      var program = Path.of(URI.create(source.toString()));
      return Files.isRegularFile(program)
          ? Optional.of(digest(program, shopFolder))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** SHA-256 of a program and the files of a folder. */
  static String digest(Path program, Optional<Path> folder) throws IOException {
    try {
      var digest = MessageDigest.getInstance("SHA-256");
      digest.update(Files.readAllBytes(program));
      for (var file : files(folder)) {
        digest.update((file + "\0").getBytes(StandardCharsets.UTF_8));
        digest.update(Files.readAllBytes(file));
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Path> files(Optional<Path> folder) throws IOException {
    if (folder.isEmpty() || !Files.isDirectory(folder.get())) {
      return List.of();
    }
    try (var walk = Files.walk(folder.get())) {
      return walk.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
