package gambrel.wording;

import gambrel.cuts.Kind;
import gambrel.shop.Step;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Kinds of food as the cold storage chart tells them apart; spans are days in the fridge and months
 * in the freezer.
 */
enum Food {
  STEAKS("3–5", "6–12", Heat.CUT),
  CHOPS("3–5", "4–6", Heat.CUT),
  ROASTS("3–5", "4–12", Heat.CUT),
  MINCE("1–2", "3–4", Heat.GROUND),
  SAUSAGE("1–2", "1–2", Heat.GROUND),
  BACON("7", "1", Heat.NONE),
  /** The chart at hand gives no span for it. */
  HAM("", "", Heat.CUT),
  OFFAL("1–2", "3–4", Heat.NONE);

  /** To what its middle must be cooked. */
  enum Heat {
    CUT,
    GROUND,
    NONE
  }

  private static final List<String> CUT_THIN =
      List.of("steak", "schnitzel", "t-bone", "rib-eye", "osso-bucco", "minute");
  private static final List<String> CUT_SMALL =
      List.of("mince", "dice", "stew", "stir", "strips", "curry", "shin", "burger");
  private final String fridge;
  private final String freezer;
  private final Heat heat;

  Food(String fridge, String freezer, Heat heat) {
    this.fridge = fridge;
    this.freezer = freezer;
    this.heat = heat;
  }

  /** The kinds that a household got. */
  static Set<Food> of(Subject subject) {
    var items =
        subject.batchMeat().stream()
            .flatMap(batch -> batch.batch().weighings().stream())
            .filter(w -> w.step() == Step.PACK)
            .map(w -> w.item());
    var foods = EnumSet.noneOf(Food.class);
    Stream.concat(items, subject.own().lines().stream().map(line -> line.item()))
        .forEach(item -> of(item, subject.kind(item)).ifPresent(foods::add));
    return foods;
  }

  /** The kind of an item of the cut tree; bones, fat and the like are none. */
  static Optional<Food> of(String item, Kind kind) {
    if (kind == Kind.OFFAL) {
      return Optional.of(OFFAL);
    }
    if (kind != Kind.MEAT && kind != Kind.TRIM) {
      return Optional.empty();
    }
    if (item.contains("sausage") || item.contains("salami")) {
      return item.startsWith("cured") ? Optional.empty() : Optional.of(SAUSAGE);
    }
    if (item.contains("bacon")) {
      return Optional.of(BACON);
    }
    if (item.startsWith("ham") || item.startsWith("gammon")) {
      return Optional.of(HAM);
    }
    if (kind == Kind.TRIM || CUT_SMALL.stream().anyMatch(item::contains)) {
      return Optional.of(MINCE);
    }
    if (item.contains("chop") || item.contains("cutlet")) {
      return Optional.of(CHOPS);
    }
    return Optional.of(CUT_THIN.stream().anyMatch(item::contains) ? STEAKS : ROASTS);
  }

  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  Optional<String> fridge() {
    return Optional.of(fridge).filter(span -> !span.isEmpty());
  }

  Optional<String> freezer() {
    return Optional.of(freezer).filter(span -> !span.isEmpty());
  }

  Heat heat() {
    return heat;
  }
}
