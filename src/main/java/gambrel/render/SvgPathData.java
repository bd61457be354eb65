package gambrel.render;

import java.awt.geom.Path2D;
import java.util.ArrayDeque;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads path data of the commands M, L, H, V, C and Z, absolute or relative (SVG 1.1, section 8.3).
 */
final class SvgPathData {

  private static final Pattern TOKEN =
      Pattern.compile("([A-Za-z])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)|[\\s,]+|(.)");

  private final ArrayDeque<String> tokens = new ArrayDeque<>();
  private final Path2D.Double path = new Path2D.Double();
  private double x;
  private double y;
  private double startX;
  private double startY;

  private SvgPathData() {}

  /** The path, or empty where the data is none or uses another command. */
  static Optional<Path2D.Double> parse(String data) {
    var reader = new SvgPathData();
    var matcher = TOKEN.matcher(data);
    while (matcher.find()) {
      if (matcher.group(3) != null) {
        return Optional.empty();
      }
      if (matcher.group(1) != null || matcher.group(2) != null) {
        reader.tokens.add(matcher.group());
      }
    }
    return reader.read();
  }

  private Optional<Path2D.Double> read() {
    try {
      var command = "";
      while (!tokens.isEmpty()) {
        var repeated = !Character.isLetter(tokens.peek().charAt(0));
        command = repeated ? lineAfterMove(command) : tokens.remove();
        if (!draw(command.charAt(0))) {
          return Optional.empty();
        }
      }
      return path.getCurrentPoint() == null ? Optional.empty() : Optional.of(path);
    } catch (NoSuchElementException | NumberFormatException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  /** Pairs that follow a move are lines; numbers cannot follow a close. */
  private static String lineAfterMove(String command) {
    return switch (command) {
      case "M" -> "L";
      case "m" -> "l";
      case "Z", "z" -> "";
      default -> command;
    };
  }

  private boolean draw(char command) {
    var shape = Character.toUpperCase(command);
    if (path.getCurrentPoint() == null && shape != 'M') {
      return false;
    }
    var fromX = Character.isLowerCase(command) ? x : 0;
    var fromY = Character.isLowerCase(command) ? y : 0;
    switch (shape) {
      case 'M' -> moveTo(fromX + next(), fromY + next());
      case 'L' -> lineTo(fromX + next(), fromY + next());
      case 'H' -> lineTo(fromX + next(), y);
      case 'V' -> lineTo(x, fromY + next());
      case 'C' -> curveTo(fromX, fromY);
      case 'Z' -> close();
      default -> {
        return false;
      }
    }
    return true;
  }

  private void moveTo(double toX, double toY) {
    path.moveTo(toX, toY);
    x = startX = toX;
    y = startY = toY;
  }

  private void lineTo(double toX, double toY) {
    path.lineTo(toX, toY);
    x = toX;
    y = toY;
  }

  private void curveTo(double fromX, double fromY) {
    var x1 = fromX + next();
    var y1 = fromY + next();
    var x2 = fromX + next();
    var y2 = fromY + next();
    x = fromX + next();
    y = fromY + next();
    path.curveTo(x1, y1, x2, y2, x, y);
  }

  /** The next command starts where the closed part did. */
  private void close() {
    path.closePath();
    x = startX;
    y = startY;
  }

  private double next() {
    return Double.parseDouble(tokens.remove());
  }
}
