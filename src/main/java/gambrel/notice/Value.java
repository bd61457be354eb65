package gambrel.notice;

import gambrel.cuts.Item;
import gambrel.cuts.Species;
import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A value that a notice, a reason or a likely cause names. */
public sealed interface Value permits Phrase, Value.Text, Value.Names, Value.Count, Value.Mass,
    Value.Shown, Value.Percent, Value.Ratio, Value.Day, Value.Moment, Value.Part, Value.Phrases {

  /**
   * A text as the shop's files have it, or an id.
   *
   * @param text printed as it stands
   */
  record Text(String text) implements Value {}

  /**
   * Ids or texts, in order.
   *
   * @param names printed with commas between them
   */
  record Names(List<String> names) implements Value {
    /** Copies the names. */
    public Names {
      names = List.copyOf(names);
    }
  }

  /**
   * A whole number.
   *
   * @param number how many
   */
  record Count(long number) implements Value {}

  /**
   * A weight.
   *
   * @param weight in the shop's unit
   * @param unit the shop's unit
   */
  record Mass(Weight weight, WeightUnit unit) implements Value {}

  /**
   * A number with the decimals that a scale or a file gives it.
   *
   * @param number the number
   * @param unit its unit, if it has one
   */
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

  /**
   * A percentage.
   *
   * @param percent exact, 100 for a whole; printed with one decimal
   */
  record Percent(BigFraction percent) implements Value {}

  /**
   * A part of a whole.
   *
   * @param ratio exact; printed as a fraction
   */
  record Ratio(BigFraction ratio) implements Value {}

  /**
   * A date.
   *
   * @param date in the shop's zone
   */
  record Day(LocalDate date) implements Value {}

  /**
   * A date and time.
   *
   * @param time in the shop's zone
   */
  record Moment(LocalDateTime time) implements Value {}

  /**
   * A part of a body.
   *
   * @param species whose part it is
   * @param item the part
   */
  record Part(Species species, Item item) implements Value {}

  /**
   * Phrases, in order.
   *
   * @param phrases printed with the separator between them
   * @param separator such as a comma and a blank
   */
  record Phrases(List<Phrase> phrases, String separator) implements Value {
    /** Copies the phrases. */
    public Phrases {
      phrases = List.copyOf(phrases);
    }
  }
}
