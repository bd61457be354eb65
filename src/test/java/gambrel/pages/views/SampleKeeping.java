package gambrel.pages.views;

import java.util.List;

/**
 * Keeping and cooking of the samples.
 *
 * <p>Source: US Food Safety and Inspection Service, cold storage chart and safe minimum internal
 * temperatures.
 */
final class SampleKeeping {

  private SampleKeeping() {}

  static List<String> row(Words words, String kind, boolean fahrenheit) {
    return switch (kind) {
      case "steaks" -> row(words, kind, "3–5", "6–12", cut(words, fahrenheit));
      case "chops" -> row(words, kind, "3–5", "4–6", cut(words, fahrenheit));
      case "roasts" ->
          row(words, kind, "3–5", "4–12", fahrenheit ? cut(words, true) : ground(false));
      case "mince" -> row(words, kind, "1–2", "3–4", ground(fahrenheit));
      case "sausage" -> row(words, kind, "1–2", "1–2", ground(fahrenheit));
      case "offal" -> row(words, kind, "1–2", "3–4", ground(fahrenheit));
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private static List<String> row(
      Words words, String kind, String days, String months, String cook) {
    return List.of(
        words.say("keeping." + kind),
        words.say("keeping.days", days),
        words.say("keeping.months", months),
        cook);
  }

  private static String cut(Words words, boolean fahrenheit) {
    return fahrenheit
        ? words.say("keeping.cooked.us", "145 °F", "3")
        : words.say("keeping.cooked.au", "63 °C", "3");
  }

  private static String ground(boolean fahrenheit) {
    return fahrenheit ? "160 °F" : "75 °C";
  }
}
