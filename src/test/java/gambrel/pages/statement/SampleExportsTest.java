package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.Documents;
import gambrel.night.Inputs;
import gambrel.night.PdfDocuments;
import gambrel.pages.render.PrintedPages;
import gambrel.pages.views.PrintedRows;
import gambrel.pages.words.WordFiles;
import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Planned;
import gambrel.trade.shop.Step;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SampleExportsTest {
  private static final Path SHOP = Path.of("sample-exports");
  private static final OffsetDateTime AS_OF = OffsetDateTime.parse("2026-10-01T02:00:00+10:00");

  private static Night night;
  private static Documents documents;
  private static WordFiles words;

  @BeforeAll
  static void reckon() throws Exception {
    var inputs = Inputs.read(SHOP, Progress.NONE);
    var settings = inputs.shop().settings();
    night = new Reckoner(inputs.shop(), inputs.exports()).at(AS_OF);
    documents = PdfDocuments.of(SHOP, settings);
    words = new WordFiles(FarmShop::file, FarmShop::file, settings);
  }

  static Stream<Planned> statements() {
    return Printing.all(night).stream();
  }

  @Test
  void isThere() {
    assertTrue(statements().count() > 50);
    assertTrue(statements().anyMatch(p -> p.account().decision().state() == State.HELD));
  }

  @ParameterizedTest
  @MethodSource("statements")
  void addsUpAndNamesNobodyElse(Planned planned) {
    ViewRules.check(night, planned, ViewRules.view(night, planned, words.of("")));
  }

  @ParameterizedTest
  @MethodSource("statements")
  void countsThePacksThatWereWeighed(Planned planned) {
    var account = planned.account();
    var own = account.entitlements().get(planned.customer());
    var boxes = ViewRules.view(night, planned, words.of("")).boxes();
    if (!own.isSoleOwner() || boxes.isEmpty() || boxes.get().total().isEmpty()) {
      return;
    }
    var weighings = account.balance().weighings();
    long packs =
        weighings.of(Step.PACK).stream()
            .filter(w -> w.customer().isEmpty() || w.customer().equals(planned.customer()))
            .count();
    for (var batch : account.balance().batches()) {
      if (!batch.isOpen() && batch.meatInByBody().size() == 1) {
        packs += batch.weighings().stream().filter(w -> w.step() == Step.PACK).count();
      }
    }
    long printed =
        PrintedRows.of(boxes.get()).stream()
            .filter(row -> !row.packs().isEmpty())
            .mapToLong(row -> Long.parseLong(row.packs()))
            .sum();
    assertEquals(packs, printed);
  }

  @Test
  void areShortDocumentsThatNameNobodyElse() throws IOException {
    int single = 0;
    for (var planned : statements().toList()) {
      boolean held = planned.account().decision().state() == State.HELD;
      byte[] pdf =
          held
              ? documents.draft(night, planned, new byte[0])
              : documents.statement(night, planned, Optional.of(List.of()), new byte[0]);
      var pages = PrintedPages.of(pdf);
      assertTrue(pages.size() <= 2, () -> planned.body() + ' ' + planned.customer());
      single += pages.size() == 1 && !held ? 1 : 0;
      for (String text : pages) {
        assertEquals(held, text.contains("DRAFT"));
        for (var other : night.shop().customers().values()) {
          boolean named = text.contains(other.name()) && !other.id().equals(planned.customer());
          assertFalse(named, () -> other.name() + " on " + planned.body());
        }
      }
    }
    assertTrue(single >= 12, "on a single sheet: " + single);
  }
}
