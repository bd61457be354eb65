package gambrel.pages.views;

import gambrel.insight.usual.LikeBodies;
import gambrel.night.Documents;
import gambrel.night.Inputs;
import gambrel.night.PdfDocuments;
import gambrel.night.RefusedException;
import gambrel.night.Trees;
import gambrel.pages.render.PageRenderer;
import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Planned;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The statements whose pages are kept: made-up views, and statements of the sample shop. */
final class GoldenSet {
  private static final Path SHOP = Path.of("sample-exports");
  private static final OffsetDateTime AS_OF = OffsetDateTime.parse("2026-10-01T02:00:00+10:00");

  /** Bodies of the sample shop, between them of every species and kind of share. */
  private static final List<String> BODIES =
      List.of(
          "B0701", "B0702", "B0705", "B0715", "B0724", "D0051", "G0101", "L0402", "L0405", "L0407",
          "P0211", "P0212", "V0901");

  private GoldenSet() {}

  /** Made-up views by name. */
  static Map<String, byte[]> samples(PageRenderer renderer) {
    var pages = new LinkedHashMap<String, byte[]>();
    SampleViews.statements()
        .forEach((name, view) -> pages.put(name, Preview.render(renderer, view)));
    pages.put("lines-200", Preview.render(renderer, SampleRare.lines(200)));
    return pages;
  }

  /**
   * Statements of the sample shop by body and customer; each body's owners read a language each.
   */
  static Map<String, byte[]> sampleShop(Path folder) throws IOException, RefusedException {
    for (var file : Trees.files(SHOP)) {
      if (!file.startsWith("reports/")) {
        Files.createDirectories(folder.resolve(file).getParent());
        Files.copy(SHOP.resolve(file), folder.resolve(file));
      }
    }
    giveLanguages(folder.resolve("customers.csv"));
    giveAway(folder.resolve("bodies.csv"), "V0901", "osei");
    var inputs = Inputs.read(folder, Progress.NONE);
    var night = new Reckoner(inputs.shop(), inputs.exports()).at(AS_OF);
    var documents =
        PdfDocuments.of(folder, inputs.shop().settings()).comparing(LikeBodies.of(night));
    var pages = new LinkedHashMap<String, byte[]>();
    for (var body : BODIES) {
      for (var customer : night.bodies().get(body).customers()) {
        pages.put(body + "-" + customer, print(night, documents, body, customer));
      }
    }
    return pages;
  }

  private static byte[] print(Night night, Documents documents, String body, String customer) {
    var account = night.bodies().get(body);
    var planned = new Planned(customer, account, Optional.empty(), false);
    return account.decision().state() == State.HELD
        ? documents.draft(night, planned, new byte[0])
        : documents.statement(night, planned, Optional.of(List.of()), new byte[0]);
  }

  /** The shop has no veal but its own, and its own gets no statement. */
  private static void giveAway(Path bodies, String body, String customer) throws IOException {
    var lines = Files.readAllLines(bodies);
    lines.replaceAll(
        line -> line.startsWith(body + ',') ? line.replace(",shop,", ',' + customer + ',') : line);
    Files.write(bodies, lines);
  }

  private static void giveLanguages(Path customers) throws IOException {
    var languages = List.of("", "es", "de", "fr");
    var lines = Files.readAllLines(customers);
    for (var i = 1; i < lines.size(); i++) {
      if (lines.get(i).endsWith(",")) {
        lines.set(i, lines.get(i) + languages.get(i % languages.size()));
      }
    }
    Files.write(customers, lines);
  }
}
