package gambrel.files.folder;

import gambrel.files.csv.Dates;
import gambrel.files.csv.SettingsFile;
import gambrel.files.csv.UnreadableShop;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Settings.Bins;
import gambrel.trade.shop.Settings.Limits;
import gambrel.trade.shop.Settings.Paper;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.time.Month;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code shop.properties}. */
final class SettingsReader {
  private static final String RAIL = "rail";

  private final SettingsFile file;
  private final CellTypes plain;

  private SettingsReader(SettingsFile file) {
    this.file = file;
    var zone = file.need("zone", SettingTypes::zone);
    var currency = file.need("currency", SettingTypes::currency);
    this.plain = new CellTypes(new Dates(Optional.empty(), zone), currency, false);
  }

  /**
   * The shop's settings, and how it writes its cells.
   *
   * @throws UnreadableShop if a required setting is missing or bad
   */
  static Result read(SettingsFile file) {
    var reader = new SettingsReader(file);
    var settings = reader.settings();
    var own = file.get("dates", pattern -> SettingTypes.formatter(pattern, settings.locale()));
    file.tellUnknown();
    return new Result(
        settings, new CellTypes(new Dates(own, settings.zone()), settings.currency(), false));
  }

  private Settings settings() {
    var given = file.get("locale", SettingTypes::locale);
    var region =
        file.get("region", SettingTypes::region)
            .orElseGet(() -> given.map(SettingTypes::regionOf).orElse(Region.AU));
    var language = file.get("language", plain::language).orElse("en");
    return new Settings(
        file.need("name", text -> text),
        file.text("address"),
        file.text("contact"),
        plain.currency(),
        given.orElseGet(() -> SettingTypes.localeOf(language, region)),
        language,
        region,
        file.need("unit", SettingTypes::unit),
        file.need("zone", SettingTypes::zone),
        file.get("paper", t -> word(Paper.class, t))
            .orElse(region == Region.US ? Paper.LETTER : Paper.A4),
        file.text("tax_name"),
        yes("tax_included"),
        Optional.of(file.text("templates")).filter(path -> !path.isEmpty()),
        rail(),
        file.get("bins", t -> word(Bins.class, t)).orElse(Bins.WEIGHED),
        file.get("quiet_hours", plain::count).orElse(6),
        file.get("cutting_days", plain::count).orElse(4),
        file.getEvenBlank("year_review", SettingTypes::months).orElse(EnumSet.of(Month.DECEMBER)),
        yes("allow_mixed_batches"),
        limits());
  }

  private Limits limits() {
    return new Limits(
        percent("limit.cutting_loss_pct", "3.0"),
        percent("limit.hanging_pct_per_day", "0.4"),
        percent("limit.batch_loss_pct", "8.0"),
        file.get("limit.days_hung", plain::count).orElse(42),
        file.get("limit.revisions", plain::count).orElse(5));
  }

  private BigDecimal percent(String key, String otherwise) {
    return file.get(key, plain::notNegative).orElseGet(() -> new BigDecimal(otherwise));
  }

  private boolean yes(String key) {
    return file.get(key, plain::yesNo).orElse(false);
  }

  private <E extends Enum<E>> E word(Class<E> words, String text) {
    return CellTypes.word(words).read(plain, text);
  }

  private Map<Optional<Species>, Set<Step>> rail() {
    var rail = new HashMap<Optional<Species>, Set<Step>>();
    rail.put(
        Optional.empty(),
        file.getEvenBlank(RAIL, SettingTypes::steps).orElse(EnumSet.of(Step.HOT, Step.COLD)));
    for (var key : file.keys()) {
      railSpecies(key)
          .ifPresent(
              species ->
                  file.getEvenBlank(key, SettingTypes::steps)
                      .ifPresent(steps -> rail.put(Optional.of(species), steps)));
    }
    return Map.copyOf(rail);
  }

  private static Optional<Species> railSpecies(String key) {
    return key.startsWith(RAIL + ".")
        ? Species.of(key.substring(RAIL.length() + 1))
        : Optional.empty();
  }

  /** Settings, and the formats that follow from them. */
  record Result(Settings settings, CellTypes formats) {}
}
