package gambrel.intake;

/** Something without which no shop can be read; never leaves this package. */
final class UnreadableShop extends RuntimeException {
  UnreadableShop(String why) {
    super(why, null, false, false);
  }
}
