package gambrel.bench;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the made-up plant weighs on a day. */
final class BenchFloor {
  private static final String HEADER = "scale,ticket,time,body,code,net,gross,tare,batch\n";
  private static final int MILLI = 1000;

  private final Map<LocalDate, List<BenchBody>> byKill;
  private final Map<String, Integer> tickets = new HashMap<>();
  private Map<String, StringBuilder> files = new TreeMap<>();

  BenchFloor(List<BenchBody> bodies) {
    byKill = bodies.stream().collect(Collectors.groupingBy(BenchBody::killed));
  }

  /** The day's files by scale. */
  Map<String, StringBuilder> work(LocalDate day) {
    files = new TreeMap<>();
    killed(day).forEach(b -> sides(b, "H", day.atTime(6, 0), b.hot()));
    killed(day.minusDays(1)).forEach(b -> sides(b, "C", day.atTime(5, 0), cold(b)));
    var cut = killed(day.minusDays(BenchShop.HANGING));
    cut.forEach(b -> bone(b, day));
    if (!cut.isEmpty()) {
      mince(cut, day);
    }
    return files;
  }

  private List<BenchBody> killed(LocalDate day) {
    return byKill.getOrDefault(day, List.of());
  }

  private static int cold(BenchBody body) {
    return body.hot() - body.hot() * (14 + (int) (body.seed() & 3)) / MILLI;
  }

  private void sides(BenchBody body, String code, LocalDateTime from, int grams) {
    var time = from.plusMinutes(body.place() * 4L);
    row("rail", time, body.id(), code, grams / 2 / 200 * 200, 0, "");
    row("rail", time.plusSeconds(40), body.id(), code, grams / 2 / 200 * 200, 0, "");
  }

  private void bone(BenchBody body, LocalDate day) {
    var random = new Random(body.seed());
    int into = cold(body) / 2 / 200 * 400;
    var time = day.atTime(6, 30).plusMinutes(body.place() * 18L);
    for (int i = 0; i < 2; i++) {
      row("block", time.plusMinutes(i), body.id(), "HQ", into / 100 * 24 / 20 * 20, 0, "");
      row("block", time.plusMinutes(8 + i), body.id(), "FQ", into / 100 * 26 / 20 * 20, 0, "");
    }
    int at = 0;
    for (var cut : BenchCuts.ALL) {
      boolean bin = cut.step().equals("bin");
      int all = (int) ((long) into * cut.share() / 10_000);
      int left = all;
      for (int i = 0; i < cut.trays(); i++) {
        int mean = left / (cut.trays() - i);
        int tray = i == cut.trays() - 1 ? left : mean * (90 + random.nextInt(21)) / 100;
        left -= tray;
        row(
            bin ? "bench2" : "bench1",
            time.plusSeconds(at++ * 7L),
            body.id(),
            cut.code(),
            bin ? tray / 20 * 20 : tray / 5 * 5,
            bin ? 0 : 45,
            cut.step().equals("tub") ? body.batch() : "");
      }
    }
  }

  private void mince(List<BenchBody> cut, LocalDate day) {
    int grams = cut.stream().mapToInt(b -> (int) ((long) cold(b) * 900 / 10_000)).sum();
    for (int left = grams - grams / 100, i = 0; left > 0; left -= 8_000, i++) {
      var time = day.atTime(15, 0).plusSeconds(i * 20L);
      row("bench1", time, "", "502", Math.min(8_000, left) / 5 * 5, 45, cut.get(0).batch());
    }
  }

  private void row(
      String scale, LocalDateTime time, String body, String code, int net, int tare, String batch) {
    var file = files.computeIfAbsent(scale, s -> new StringBuilder(HEADER));
    file.append(scale).append(',').append(tickets.merge(scale, 1, Integer::sum));
    file.append(',').append(time).append(',').append(body).append(',').append(code).append(',');
    kilos(file, net).append(',');
    kilos(file, net + tare).append(',');
    kilos(file, tare).append(',').append(batch).append('\n');
  }

  private static StringBuilder kilos(StringBuilder file, int grams) {
    String rest = Integer.toString(MILLI + grams % MILLI);
    return file.append(grams / MILLI).append('.').append(rest, 1, rest.length());
  }
}
