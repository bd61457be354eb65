package gambrel.bench;

import gambrel.data.MonthTables;
import gambrel.data.NightTables;
import gambrel.publish.Csv;
import gambrel.reckoning.Reckoner;
import gambrel.register.Register;
import gambrel.run.Inputs;
import gambrel.run.Months;
import java.nio.file.Path;
import java.time.OffsetDateTime;

public final class DataPass {
  public static void main(String[] args) throws Exception {
    for (int i = 0; i < (args.length > 1 ? Integer.parseInt(args[1]) : 1); i++) {
    long t0 = System.nanoTime();
    var in = Inputs.read(Path.of(args[0]));
    long t1 = System.nanoTime();
    var night = new Reckoner(in.shop(), in.exports()).at(OffsetDateTime.parse("2026-11-01T02:00+11:00"));
    long t2 = System.nanoTime();
    long n = 0;
    var sha = java.security.MessageDigest.getInstance("SHA-256");
    for (var t : NightTables.of(night)) { var b = Csv.bytes(t); n += b.length; sha.update(b); }
    String hash = java.util.HexFormat.of().formatHex(sha.digest()).substring(0,12) + " " + night.notices().hashCode() + " " + night.ledger().notices().size();
    long t3 = System.nanoTime();
    System.out.printf("read %.2f reckon %.2f tables %.2f  bytes %d %s notices %d held %d issued %d%n", (t1-t0)/1e9, (t2-t1)/1e9, (t3-t2)/1e9, n, hash, night.notices().size(),
      night.bodies().values().stream().filter(b -> b.decision().state().toString().equalsIgnoreCase("held")).count(),
      night.bodies().values().stream().filter(b -> b.decision().state().toString().equalsIgnoreCase("issued")).count());
    }
  }
}
