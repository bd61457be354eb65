package gambrel.pages.render.template;

import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * Template files: the file of the shop's own folder or, if that has none of that name, the built-in
 * one.
 *
 * <p>Each file is read once, so that all pages of a night have the same templates even if a person
 * edits them meanwhile.
 */
public final class TemplateFiles {

  private static final String BUILT_IN = "/gambrel/templates/";
  private static final Pattern SEGMENT = Pattern.compile("[\\p{L}\\p{N}_][\\p{L}\\p{N} ()_.-]*");

  private final Optional<Path> shopFolder;
  private final Map<String, Optional<byte[]>> known = new ConcurrentHashMap<>();

  /** The built-in files, and those of {@code shopFolder} if there is one. */
  public TemplateFiles(Optional<Path> shopFolder) {
    this.shopFolder = shopFolder;
  }

  /** The file's bytes; empty if there is no such file, or the name leads out of the folder. */
  public Optional<byte[]> bytes(String name) {
    return isInside(name) ? known.computeIfAbsent(name, this::load) : Optional.empty();
  }

  /**
   * The file's text without a byte-order mark; empty if there is no such file.
   *
   * @throws TemplateProblem if it is not UTF-8
   */
  public Optional<String> text(String name) {
    return bytes(name).map(bytes -> decode(name, bytes));
  }

  /**
   * SHA-256 of the program's jar, whose manifest names the libraries, and of every file of the
   * shop's template folder. Empty if the program does not run from a jar, since its classes may
   * change at any moment.
   */
  public Optional<String> fingerprint() {
    try {
      var source = TemplateFiles.class.getProtectionDomain().getCodeSource().getLocation();
      var program = Path.of(URI.create(source.toString()));
      return Files.isRegularFile(program)
          ? Optional.of(digest(program, shopFolder))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** SHA-256 of a program and the files of a folder. */
  public static String digest(Path program, Optional<Path> folder) throws IOException {
    var digest = DigestUtils.getSha256Digest();
    digest.update(Files.readAllBytes(program));
    for (var file : files(folder)) {
      digest.update((file + "\0").getBytes(StandardCharsets.UTF_8));
      digest.update(Files.readAllBytes(file));
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static List<Path> files(Optional<Path> folder) throws IOException {
    if (folder.isEmpty() || !Files.isDirectory(folder.get())) {
      return List.of();
    }
    try (var walk = Files.walk(folder.get())) {
      return walk.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static boolean isInside(String name) {
    for (var segment : name.split("/", -1)) {
      if (!SEGMENT.matcher(segment).matches()) {
        return false;
      }
    }
    return true;
  }

  private Optional<byte[]> load(String name) {
    try {
      var own = shopFolder.isEmpty() ? Optional.<byte[]>empty() : ownFile(shopFolder.get(), name);
      return own.isPresent() ? own : builtIn(name);
    } catch (IOException e) {
      throw new UncheckedIOException("template file " + name + " cannot be read", e);
    }
  }

  private static Optional<byte[]> ownFile(Path folder, String name) throws IOException {
    var file = folder.resolve(name);
    if (!Files.isRegularFile(file) || !file.toRealPath().startsWith(folder.toRealPath())) {
      return Optional.empty();
    }
    return Optional.of(Files.readAllBytes(file));
  }

  private static Optional<byte[]> builtIn(String name) throws IOException {
    try (InputStream in = TemplateFiles.class.getResourceAsStream(BUILT_IN + name)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    }
  }

  private static String decode(String name, byte[] bytes) {
    try {
      var text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw TemplateProblem.of(name, Fault.NOT_UTF8, Map.of(), e);
    }
  }
}
