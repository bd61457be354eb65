package gambrel.trade.cuts;

import gambrel.trade.measure.FileWord;
import java.util.Currency;
import java.util.Set;

/** The regions whose trade names and primal breaks the built-in trees follow. */
public enum Region implements FileWord {
  AU("AUD"),
  UK("GBP", "EUR"),
  US("USD");

  private final Set<String> money;

  Region(String... money) {
    this.money = Set.of(money);
  }

  /**
   * Whether the rules of the region hold for a shop with that currency. Ireland shares names of
   * cuts and the rule on cattle with the United Kingdom; New Zealand and Canada have rules of their
   * own.
   */
  public boolean rules(Currency currency) {
    return money.contains(currency.getCurrencyCode());
  }
}
