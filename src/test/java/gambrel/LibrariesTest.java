package gambrel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The libraries that are shipped, which the build writes into {@code target/runtime-class-path}.
 */
class LibrariesTest {
  private static final Pattern LIBRARY =
      Pattern.compile("(?m)^([a-z0-9.-]+) +([0-9.]+) +(?:Apache|EDL|EPL|LGPL|MIT).*$");

  @TempDir Path folder;

  private static List<Path> libraries() throws IOException {
    var jars = Files.readString(Path.of("target/runtime-class-path")).strip();
    return Stream.of(jars.split(Pattern.quote(File.pathSeparator), -1)).map(Path::of).toList();
  }

  private static String notice() throws IOException {
    return Files.readString(Path.of("target/classes/META-INF/NOTICE"));
  }

  @Test
  void theNoticeNamesEachLibraryWithItsVersionAndLicence() throws IOException {
    var named = LIBRARY.matcher(notice()).results().map(LibrariesTest::jar).sorted().toList();
    var shipped = libraries().stream().map(jar -> jar.getFileName().toString()).sorted().toList();

    assertEquals(shipped, named);
  }

  private static String jar(MatchResult library) {
    return library.group(1) + "-" + library.group(2) + ".jar";
  }

  @Test
  void theNoticeNamesFontsAndColourProfileAndWhereTheirTermsAre() throws IOException {
    for (var file : List.of("gambrel/fonts/OFL.txt", "gambrel/icc/srgb.icc")) {
      assertTrue(notice().contains(file), file);
      assertTrue(LibrariesTest.class.getResource("/" + file) != null, file);
    }
  }

  @Test
  void pagesWithDrawingsNeedNoOtherLibrary() throws Exception {
    var urls = new ArrayList<URL>();
    urls.add(url(Path.of("target/classes")));
    urls.add(url(Path.of("target/test-classes")));
    for (var jar : libraries()) {
      urls.add(url(jar));
    }

    try (var only =
        new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader())) {
      only.loadClass("gambrel.pages.views.Preview")
          .getMethod("main", String[].class)
          .invoke(null, (Object) new String[] {folder.toString()});
    }

    try (var pages = Files.list(folder)) {
      assertTrue(pages.allMatch(page -> page.toString().endsWith(".pdf")));
    }
    assertTrue(Files.exists(folder.resolve("month.pdf")));
  }

  private static URL url(Path file) throws MalformedURLException {
    return file.toUri().toURL();
  }
}
