package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.cause.LikelyCauses;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.PrintedPages;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Money;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.RegisterRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The morning sheet of seeded shops of very different sizes, as it is printed. */
class MorningPagesTest {
  private static final String NOW = "2026-07-15T02:00:00Z";
  private static final String[] OWNERS = {"c-ann", "c-bob", "c-trust", ""};

  @TempDir private Path folder;

  /** Bodies, and the most pages: about 45 lines fit one, and few bodies need more than one. */
  @ParameterizedTest(name = "{0} bodies, {1}, {2}, {3}")
  @CsvSource({
    "1, kg, a4, en, 1",
    "12, kg, a4, en, 1",
    "12, lb, letter, en, 1",
    "60, lb, letter, es, 3",
    "200, kg, a4, de, 6",
    "400, kg, a4, fr, 11"
  })
  void everyBodyThatIsNotFinishedIsNamedOnFewPages(
      int bodies, String unit, String paper, String language, int most) throws IOException {
    var night = shop(bodies, unit, paper, language).at(NOW);
    byte[] pdf = new OwnerDocuments(night.shop().settings()).morning(report(night));
    keep(bodies + "-" + unit + "-" + language, pdf);
    var pages = PrintedPages.of(pdf);
    assertTrue(pages.size() <= most, () -> "pages: " + pages.size());
    String text = String.join(" ", pages);
    for (var account : night.bodies().values()) {
      boolean finished = account.decision().state().isSettled();
      var named = Pattern.compile(" " + account.body().id() + "[,.]").matcher(text);
      assertTrue(finished || named.find(), account.body().id());
    }
    String head = SmallShop.wording(night).words().say("cut_by");
    long tables = count(text, head);
    var hangs = Pattern.compile("B[0-9]{3}, [^0-9]+ [0-9]+ [^0-9]+ [0-9]+ [0-9.,]+.(kg|lb)");
    long withBodies = pages.stream().filter(page -> hangs.matcher(page).find()).count();
    assertTrue(tables >= withBodies, "each page repeats the head");
  }

  private static long count(String text, String word) {
    return Pattern.compile(Pattern.quote(word)).matcher(text).results().count();
  }

  /** For somebody who wants to look at them. */
  private static void keep(String name, byte[] pdf) throws IOException {
    var pages = Files.createDirectories(Path.of("target", "morning"));
    Files.write(pages.resolve(name + ".pdf"), pdf);
  }

  /** About half of the bodies hang; the others are cut in part, held, in cure, or finished. */
  private SmallShop shop(int bodies, String unit, String paper, String language) {
    var dice = new SplittableRandom(bodies);
    var shop = new SmallShop(folder);
    shop.instead(
        "shop.properties",
        String.join(
            "\n",
            "name=Fold End Boning Room",
            "currency=AUD",
            "locale=" + language + "-AU",
            "language=" + language,
            "unit=" + unit,
            "paper=" + paper,
            "zone=UTC"));
    shop.add("customers.csv", "c-trust,Trustees of the Estate of W. Featherstone-Ravenscroft");
    shop.instead("bodies.csv", "body,species,class,killed,customer,chiller,cut_by");
    shop.add("batches.csv", "H1,Smoked ham,2026-07-30");
    for (int i = 0; i < bodies; i++) {
      body(shop, dice, String.format(Locale.ROOT, "B%03d", i), dice.nextInt(10));
    }
    return shop;
  }

  private static void body(SmallShop shop, SplittableRandom dice, String id, int fate) {
    var killed = LocalDate.of(2026, 7, 12).minusDays(fate < 5 ? dice.nextInt(10) : 10);
    String asked = dice.nextInt(3) == 0 ? killed.plusDays(14).toString() : "";
    String owner = OWNERS[dice.nextInt(OWNERS.length)];
    shop.add(
        "bodies.csv", String.join(",", id, "beef,steer", killed.toString(), owner, "north", asked));
    shop.hung(id, killed.toString(), "204", "200");
    if (fate >= 5) {
      String day = fate == 5 ? "2026-07-14" : killed.plusDays(2).toString();
      shop.cut(id, day, fate == 5 ? "60" : fate == 6 ? "120" : "150", "40");
      if (fate > 6) {
        shop.row("bench", day + "T10:00", id, "trim", "6", fate == 7 ? "H1" : "M" + id);
      }
      if (fate > 7) {
        shop.row("bench", day + "T11:00", "", "mince", "6", "M" + id);
      }
    }
  }

  private static MorningReport report(Night night) {
    var issued = new ArrayList<RegisterRow>();
    var accounts = new ArrayList<CustomerAccount>();
    for (var account : night.bodies().values()) {
      if (account.decision().state() == State.ISSUED) {
        account.customers().forEach(customer -> issued.add(row(night, account, customer)));
      }
    }
    issued.stream()
        .map(RegisterRow::customer)
        .distinct()
        .forEach(customer -> accounts.add(owing(customer, issued.get(0).body())));
    var notices = new ArrayList<Notice>(night.notices());
    return new MorningReport(night, issued, accounts, List.of(), notices, LikelyCauses.NONE, false);
  }

  private static CustomerAccount owing(String customer, String body) {
    var money = new CustomerMoney(new Money(123_456), Money.ZERO, Money.ZERO);
    var statement = new CustomerAccount.Statement(body, LocalDate.of(2026, 3, 2), money);
    return new CustomerAccount(customer, List.of(statement), Money.ZERO);
  }

  private static RegisterRow row(Night night, BodyAccount account, String customer) {
    return new RegisterRow(
        customer,
        account.body().id(),
        1,
        night.issueTime(),
        account.entitlements().get(customer).takeHome(),
        new Money(10_000),
        Money.ZERO,
        Money.ZERO,
        Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        List.of());
  }
}
