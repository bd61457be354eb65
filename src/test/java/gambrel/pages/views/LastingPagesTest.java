package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.Validator;
import gambrel.pages.render.template.Templates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page is made to last and can be read aloud: PDF/A-3a and PDF/UA-1. */
class LastingPagesTest {
  private static final Set<String> REPORT = new TreeSet<>();

  private final PageRenderer renderer = new PageRenderer(Templates.of(SampleWords.FOLDER));

  static Stream<String> samples() {
    return SampleViews.all().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void anIndependentValidatorFindsNoFault(String sample) {
    var pdf = Preview.render(renderer, SampleViews.all().get(sample));

    var faults = Validator.faults(pdf);
    REPORT.add(sample + ": " + (faults.isEmpty() ? "PDF/A-3a and PDF/UA-1" : faults));

    assertEquals(List.of(), faults);
  }

  @AfterAll
  static void keepTheReport() throws IOException {
    Files.write(Path.of("target", "validation.txt"), REPORT);
  }
}
