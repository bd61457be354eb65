package gambrel.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The made-up shop's own files. */
final class BenchOffice {
  private static final int CUSTOMERS = 400;

  private BenchOffice() {}

  static void write(Path folder, List<BenchBody> bodies) throws IOException {
    put(
        folder,
        "shop.properties",
        "name=Long Paddock Boning Room\ncurrency=AUD\nunit=kg\nzone=Australia/Sydney\n");
    put(
        folder,
        "scales.csv",
        "scale,where,layout,unit,division,capacity,class\n"
            + "rail,hall,,kg,0.2,600,III\nblock,block,,kg,0.02,150,III\n"
            + "bench1,bench,,kg,0.005,15,III\nbench2,bins,,kg,0.02,60,III\n");
    put(
        folder,
        "customers.csv",
        "customer,name\n"
            + IntStream.range(0, CUSTOMERS)
                .mapToObj(i -> "c" + i + ",Owner Number " + i + '\n')
                .collect(Collectors.joining()));
    put(folder, "bodies.csv", bodies(bodies));
    put(folder, "codes.csv", codes());
    put(
        folder,
        "charges.csv",
        "charge,description,basis,price,tax_percent\n"
            + "kill,Slaughter,head,130.00,10\nbone,Boning,cold,1.10,10\n");
    put(folder, "values.csv", "item,value\ntenderloin,52.00\ncarcase,9.00\n");
    put(folder, "batches.csv", batches(bodies));
  }

  private static String bodies(List<BenchBody> bodies) {
    var text = new StringBuilder("body,species,class,killed,customer\n");
    for (var body : bodies) {
      text.append(body.id()).append(",beef,steer,").append(body.killed());
      text.append(",c").append(body.number() % CUSTOMERS).append('\n');
    }
    return text.toString();
  }

  private static String codes() {
    return "code,item,step\nH,side,hot\nC,side,cold\nHQ,hindquarter,block\nFQ,forequarter,block\n"
        + "502,mince,pack\n"
        + BenchCuts.ALL.stream()
            .map(c -> c.code() + ',' + c.item() + ',' + c.step() + '\n')
            .collect(Collectors.joining());
  }

  private static String batches(List<BenchBody> bodies) {
    return "batch,product,made\n"
        + bodies.stream()
            .map(b -> b.batch() + ",Mince," + b.killed().plusDays(BenchShop.HANGING) + '\n')
            .distinct()
            .collect(Collectors.joining());
  }

  private static void put(Path folder, String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
  }
}
