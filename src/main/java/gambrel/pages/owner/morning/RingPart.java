package gambrel.pages.owner.morning;

import gambrel.pages.owner.Names;
import gambrel.pages.views.MorningView.Issued;
import gambrel.pages.views.MorningView.Ring;
import gambrel.pages.words.Formats;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.account.Entitlement;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Customer.Delivery;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Whom to ring: whose statement was issued last night, and who has owed longest. */
final class RingPart {
  /** The most statements. A night that rebuilds ten years has thousands. */
  static final int MOST_ISSUED = 300;

  private static final int MOST_OWING = 3;

  /**
   * A first night issues all statements at once. Of more than these the sheet lists those of bodies
   * weighed in the last days.
   */
  private static final int FEW_OF_FIRST_NIGHT = 20;

  private static final int DAYS_OF_FIRST_NIGHT = 7;

  private final Night night;
  private final Wording wording;
  private final Formats formats;
  private final Names names;
  private final List<RegisterRow> issued;
  private final List<RegisterRow> told;
  private final boolean first;
  private final int decimals;
  private final Map<String, CustomerAccount> accounts;

  RingPart(MorningReport report, Wording wording) {
    this.night = report.night();
    this.wording = wording;
    this.formats = wording.formats();
    this.names = new Names(night, wording);
    this.issued = report.issued();
    this.first = report.newRegister();
    boolean isAll = !first || issued.size() <= FEW_OF_FIRST_NIGHT;
    this.told = issued.stream().filter(row -> isAll || isOfLately(row)).limit(MOST_ISSUED).toList();
    this.decimals = decimals();
    this.accounts =
        report.accounts().stream()
            .collect(Collectors.toMap(CustomerAccount::customer, Function.identity()));
  }

  private boolean isOfLately(RegisterRow row) {
    var from = night.asOf().minusDays(DAYS_OF_FIRST_NIGHT);
    return account(row)
        .flatMap(account -> account.balance().lastCut())
        .filter(time -> time.isAfter(from))
        .isPresent();
  }

  private Optional<BodyAccount> account(RegisterRow row) {
    return Optional.ofNullable(night.bodies().get(row.body()));
  }

  private Optional<Entitlement> own(RegisterRow row) {
    return account(row).map(account -> account.entitlements().get(row.customer()));
  }

  /** The decimals of the column of weights: as many as one of them needs. */
  private int decimals() {
    var out =
        told.stream()
            .flatMap(row -> account(row).stream())
            .flatMap(account -> account.balance().weighings().out().stream())
            .toList();
    var boxes = told.stream().flatMap(row -> own(row).stream()).map(Entitlement::boxes).toList();
    return WeightDecimals.fitting(WeightDecimals.of(out, night.shop().settings().unit()), boxes);
  }

  /** The part. */
  Ring ring() {
    int more = issued.size() - told.size();
    var owing =
        accounts.values().stream()
            .filter(account -> account.oldest().filter(this::isBefore).isPresent())
            .sorted(CustomerAccount.LONGEST_OWING_FIRST)
            .toList();
    return new Ring(
        told.stream().map(this::issued).toList(),
        more > 0
            ? wording.counted(first ? "morning.issued.earlier" : "morning.issued.more", more)
            : "",
        owing(owing));
  }

  /** What was issued in the night is not owed for long. */
  private boolean isBefore(LocalDate day) {
    return day.isBefore(night.asOf().toLocalDate());
  }

  /** Who has owed longest, and how many others owe. */
  private String owing(List<CustomerAccount> owing) {
    var said = new ArrayList<>(owing.stream().limit(MOST_OWING).map(this::owing).toList());
    if (owing.size() > MOST_OWING) {
      said.add(wording.counted("morning.owing.more", owing.size() - MOST_OWING));
    }
    return String.join(" · ", said);
  }

  private Issued issued(RegisterRow row) {
    var account = account(row);
    var own = own(row);
    // A customer who only gets packs by name has nothing to pay.
    boolean free = own.filter(Entitlement::isOutrightOnly).isPresent();
    String revision = formats.count(row.revision());
    var owes = Optional.ofNullable(accounts.get(row.customer())).map(CustomerAccount::due);
    return new Issued(
        names.customer(row.customer()),
        account.map(names::body).orElse(row.body()),
        row.revision() == 1 ? "" : wording.say("morning.revision", revision),
        own.isPresent() ? packs(account.get().packs(row.customer())) : "",
        own.map(e -> formats.weight(e.boxes(), decimals)).orElse(""),
        free ? "" : formats.money(row.due()),
        owes.filter(due -> due.compareTo(Money.ZERO) > 0).map(formats::money).orElse(""),
        wording.say(
            night.shop().customer(row.customer()).delivery() == Delivery.PRINT
                ? "morning.by.print"
                : "morning.by.email"));
  }

  private String packs(int packs) {
    return packs > 0 ? formats.count(packs) : "";
  }

  /** A date without its year if that is the night's. */
  private String date(LocalDate day) {
    return day.getYear() == night.asOf().getYear() ? formats.brief(day) : formats.date(day);
  }

  private String owing(CustomerAccount account) {
    return wording.say(
        "morning.owing",
        names.customer(account.customer()),
        formats.money(account.due()),
        account.oldest().map(this::date).orElse(""));
  }
}
