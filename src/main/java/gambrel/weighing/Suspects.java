package gambrel.weighing;

import gambrel.shop.IdIndex;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;

/**
 * Finds the rows that have to be compared with others: voids, rows that a void may mean, and rows
 * that are like another. Ten years of rows are never in memory together: a first pass over the files
 * keeps a number a row, a second one picks those rows out.
 */
final class Suspects {
  private static final long FNV_OFFSET = 0xcbf29ce484222325L;
  private static final long FNV_PRIME = 0x100000001b3L;

  private final RowReader reader;
  private final Map<String, long[]> likenesses = new LinkedHashMap<>();
  private final Set<String> files = new HashSet<>();
  private final Set<String> voidedTickets = new HashSet<>();
  private long[] repeated = {};

  Suspects(RowReader reader) {
    this.reader = reader;
  }

  /**
   * What the first pass keeps of a file.
   *
   * @param file its path
   * @param likenesses a number a row, equal wherever rows are alike
   * @param voids its void rows
   */
  record Look(String file, long[] likenesses, List<ReadRow> voids) {}

  /** Looks at the rows of one file; asked by several threads at once. */
  Look look(String file, List<ReadRow> rows) {
    var standing = rows.stream().filter(row -> !row.removed()).toList();
    return new Look(
        file,
        standing.stream().mapToLong(this::likeness).toArray(),
        standing.stream().filter(row -> row.status().isVoid()).toList());
  }

  /** Rows that are not alike have one number once in billions of pairs; comparing tells them apart. */
  private long likeness(ReadRow row) {
    String likeness = reader.likeness(row);
    long hash = FNV_OFFSET;
    for (int i = 0; i < likeness.length(); i++) {
      hash = (hash ^ likeness.charAt(i)) * FNV_PRIME;
    }
    return hash;
  }

  void add(Look look) {
    likenesses.put(look.file(), look.likenesses());
    for (var row : look.voids()) {
      files.add(look.file());
      if (row.status() instanceof Status.VoidTicket other) {
        voidedTickets.add(ticket(row, other.ticket()));
      }
    }
  }

  /** Decides what to pick out, once every file has been added. */
  void decide() {
    repeated = repeated();
    likenesses.forEach(
        (file, numbers) -> {
          if (!voidedTickets.isEmpty() || LongStream.of(numbers).anyMatch(this::isRepeated)) {
            files.add(file);
          }
        });
    likenesses.clear();
  }

  /** The numbers that stand there more than once, sorted. */
  private long[] repeated() {
    var numbers = likenesses.values().stream().flatMapToLong(LongStream::of).toArray();
    Arrays.parallelSort(numbers);
    int found = 0;
    for (int i = 1; i < numbers.length; i++) {
      if (numbers[i] == numbers[i - 1] && (found == 0 || numbers[found - 1] != numbers[i])) {
        numbers[found++] = numbers[i];
      }
    }
    return Arrays.copyOf(numbers, found);
  }

  private boolean isRepeated(long number) {
    return Arrays.binarySearch(repeated, number) >= 0;
  }

  /** Whether a file may have rows to pick out. */
  boolean isIn(ExportFile file) {
    return files.contains(file.path());
  }

  /** Those of a file's rows that have to be compared. */
  List<ReadRow> of(List<ReadRow> rows) {
    return rows.stream()
        .filter(
            row ->
                !row.removed()
                    && (row.status().isVoid()
                        || voidedTickets.contains(ticket(row, row.ticket()))
                        || isRepeated(likeness(row))))
        .toList();
  }

  private static String ticket(ReadRow row, String ticket) {
    return row.scale() + '\n' + IdIndex.withoutZeros(ticket);
  }
}
