package gambrel.files.folder;

import gambrel.files.csv.Dates;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code shop.properties}. */
final class SettingsReader {
  private static final String RAIL = "rail";

  private final SettingsFile file;

  private SettingsReader(SettingsFile file) {
    this.file = file;
  }

  /**
   * Reads the settings of a shop.
   *
   * @throws UnreadableShop if a required setting is missing or bad
   */
  static Result read(SettingsFile file) {
    var reader = new SettingsReader(file);
    var settings = reader.settings();
    var own = file.get("dates", pattern -> SettingTypes.formatter(pattern, settings.locale()));
    file.compareNames(List.of());
    return new Result(
        settings, new CellTypes(new Dates(own, settings.zone()), settings.currency(), false));
  }

  private Settings settings() {
    var given = file.get("locale", SettingTypes::locale);
    var region =
        file.get("region", SettingTypes::region)
            .orElseGet(() -> given.map(SettingTypes::regionOf).orElse(Region.AU));
    var language = file.get("language", CellTypes.PLAIN::language).orElse("en");
    return new Settings(
        file.need("name", text -> text),
        file.text("address"),
        file.text("contact"),
        file.need("currency", SettingTypes::currency),
        given.orElseGet(() -> SettingTypes.localeOf(language, region)),
        language,
        region,
        file.need("unit", SettingTypes::unit),
        file.need("zone", SettingTypes::zone),
        file.get("paper", t -> CellTypes.word(Paper.class, t))
            .orElse(region == Region.US ? Paper.LETTER : Paper.A4),
        file.text("tax_name"),
        file.yesNo("tax_included").orElse(false),
        Optional.of(file.text("templates")).filter(path -> !path.isEmpty()),
        rail(),
        file.get("bins", t -> CellTypes.word(Bins.class, t)).orElse(Bins.WEIGHED),
        file.count("quiet_hours").orElse(6),
        file.count("cutting_days").orElse(4),
        file.getEvenBlank("year_review", SettingTypes::months).orElse(EnumSet.of(Month.DECEMBER)),
        file.yesNo("allow_mixed_batches").orElse(false),
        limits());
  }

  private Limits limits() {
    return new Limits(
        percent("limit.cutting_loss_pct", "3.0"),
        percent("limit.hanging_pct_per_day", "0.4"),
        percent("limit.batch_loss_pct", "8.0"),
        file.count("limit.days_hung").orElse(42),
        file.count("limit.revisions").orElse(5));
  }

  private BigDecimal percent(String key, String otherwise) {
    return file.get(key, CellTypes.PLAIN::notNegative).orElseGet(() -> new BigDecimal(otherwise));
  }

  private Map<Optional<Species>, Set<Step>> rail() {
    var rail = new HashMap<Optional<Species>, Set<Step>>();
    rail.put(
        Optional.empty(),
        file.getEvenBlank(RAIL, SettingTypes::steps).orElse(EnumSet.of(Step.HOT, Step.COLD)));
    for (var species : Species.values()) {
      file.getEvenBlank(RAIL + "." + species.id(), SettingTypes::steps)
          .ifPresent(steps -> rail.put(Optional.of(species), steps));
    }
    return Map.copyOf(rail);
  }

  /** The settings of a shop, and the kinds of cell that follow from them. */
  record Result(Settings settings, CellTypes types) {}
}
