package gambrel.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The shop's three scales and its working days. */
final class Floor {
  /** In the slaughter hall: sides, quarters, carcases. */
  final ScaleBook rail =
      new ScaleBook(
          "rail",
          200,
          1101,
          List.of("ticket", "time", "body", "code", "net", "operator", "status"));

  /** The packing bench. */
  final ScaleBook bench1 =
      new ScaleBook(
          "bench1",
          5,
          5001,
          List.of(
              "ticket",
              "time",
              "body",
              "code",
              "net",
              "pieces",
              "operator",
              "batch",
              "customer",
              "status"));

  /** The heavy bench beside the block: tubs, bins, primals, cartons. */
  final ScaleBook bench2 =
      new ScaleBook(
          "bench2",
          20,
          301,
          List.of("ticket", "time", "body", "code", "net", "gross", "operator", "batch", "status"));

  private final Map<String, Shift> shifts = new HashMap<>();

  /** The boning room's day. */
  Shift boning(LocalDate day) {
    return shift("boning", day, LocalTime.of(6, 40));
  }

  /** The block's day: a boner is ahead of the packers. */
  Shift block(LocalDate day) {
    return shift("block", day, LocalTime.of(6, 41));
  }

  /** The slaughter hall's day. */
  Shift slaughter(LocalDate day) {
    return shift("slaughter", day, LocalTime.of(7, 30));
  }

  /** The early round through the chiller. */
  Shift chiller(LocalDate day) {
    return shift("chiller", day, LocalTime.of(6, 2));
  }

  /** The bench where offal is packed on the day of the kill. */
  Shift offal(LocalDate day) {
    return shift("offal", day, LocalTime.of(13, 5));
  }

  private Shift shift(String place, LocalDate day, LocalTime start) {
    return shifts.computeIfAbsent(place + day, k -> new Shift(day, start));
  }
}
