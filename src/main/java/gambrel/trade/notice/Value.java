package gambrel.trade.notice;

import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A value of a notice, a reason or a likely cause. */
public sealed interface Value
    permits Phrase,
        Value.Text,
        Value.Names,
        Value.Count,
        Value.Mass,
        Value.Shown,
        Value.Percent,
        Value.Ratio,
        Value.Day,
        Value.Moment,
        Value.Part,
        Value.Phrases {

  /** A text of the shop's files or an id; printed unchanged. */
  record Text(String text) implements Value {}

  /** Ids or texts, printed in order with commas between them. */
  record Names(List<String> names) implements Value {
    /** Copies the names. */
    public Names {
      names = List.copyOf(names);
    }
  }

  /** A whole number of things. */
  record Count(long number) implements Value {}

  /** A weight with the shop's unit. */
  record Mass(Weight weight, WeightUnit unit) implements Value {}

  /** A number with the decimals of the scale or file that gives it, and its unit if any. */
  record Shown(BigDecimal number, Optional<WeightUnit> unit) implements Value {
    /** A number with its unit. */
    public Shown(BigDecimal number, WeightUnit unit) {
      this(number, Optional.of(unit));
    }

    /** A number without a unit. */
    public Shown(BigDecimal number) {
      this(number, Optional.empty());
    }
  }

  /** An exact percentage, 100 for a whole; printed with one decimal. */
  record Percent(BigFraction percent) implements Value {}

  /** An exact share of a whole, printed as a fraction. */
  record Ratio(BigFraction ratio) implements Value {}

  /** A date in the shop's zone. */
  record Day(LocalDate date) implements Value {}

  /** A date and time in the shop's zone. */
  record Moment(LocalDateTime time) implements Value {}

  /** A part of a body of a species. */
  record Part(Species species, Item item) implements Value {}

  /** Phrases, printed in order with {@code separator} between them. */
  record Phrases(List<Phrase> phrases, String separator) implements Value {
    /** Copies the phrases. */
    public Phrases {
      phrases = List.copyOf(phrases);
    }
  }
}
