package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Completeness;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.Ownership;
import gambrel.pages.views.Words;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.shop.Body.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class OwnerWordsTest {
  private static final Set<ReasonCode> OPEN_ONLY =
      EnumSet.of(ReasonCode.BATCH_OPEN, ReasonCode.PART_CUT);
  private static final List<String> SIGNALS =
      List.of("beyond-limits", "two-of-three", "four-of-five", "eight-on-one-side");

  static Stream<String> everyKeyThatIsPutTogether() {
    return Stream.of(
            Stream.of(ReasonCode.values())
                .filter(code -> !OPEN_ONLY.contains(code))
                .flatMap(code -> Stream.of(reason(code), "summary.cure." + code.id())),
            SIGNALS.stream().flatMap(s -> Stream.of(signal(s, "above"), signal(s, "below"))),
            Stream.of(Ownership.values()).map(o -> "worth." + o.id()),
            Stream.of(Finding.Sureness.values()).map(s -> "sure." + s.id()),
            BodyFigure.LOSSES.stream().map(l -> "shrink.loss." + l.id()),
            Stream.of(Completeness.What.values()).map(w -> "finding.paperwork." + w.id()),
            Stream.of(Ownership.values()).map(o -> "summary." + o.id()),
            Stream.of(Species.values()).map(s -> "summary.kind." + s.id()),
            Stream.of(State.values()).map(s -> "summary.state." + s.id()),
            Stream.of(BatchBalance.State.values()).map(s -> "summary.batch." + s.id()),
            Stream.of("hot", "cold", "aged").map(step -> "summary.step." + step),
            EnumSet.complementOf(EnumSet.of(Outcome.CUT)).stream().map(OwnerWordsTest::outcome),
            Stream.of("stop", "hold", "rows", "mark").map(group -> "morning.group." + group))
        .flatMap(keys -> keys);
  }

  private static String reason(ReasonCode code) {
    String key = "summary.reason." + code.id();
    return code == ReasonCode.ROW_SET_ASIDE ? key + ".one" : key;
  }

  private static String signal(String code, String side) {
    return "summary.signal." + code + "." + side;
  }

  private static String outcome(Outcome outcome) {
    return "summary.outcome." + outcome.name().toLowerCase(Locale.ROOT);
  }

  @ParameterizedTest
  @MethodSource("everyKeyThatIsPutTogether")
  void everyKindOfThing(String key) throws IOException {
    var english = Words.of(List.of(Files.readString(Path.of("templates/words_en.properties"))));
    assertTrue(english.has(key), key);
  }

  @ParameterizedTest
  @EnumSource(Finding.Kind.class)
  void everyKindOfFindingAndWhatToDoAboutIt(Finding.Kind kind) throws IOException {
    var keys = new Properties();
    try (var file = Files.newBufferedReader(Path.of("templates/words_en.properties"))) {
      keys.load(file);
    }
    for (var part : List.of("finding.", "step.")) {
      String own = part + kind.id();
      assertTrue(
          keys.stringPropertyNames().stream()
              .anyMatch(key -> key.equals(own) || key.startsWith(own + ".")),
          own);
    }
  }
}
