package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bodies that are all off by the factor of a unit: check says so first. */
class WrongUnitTest {
  @TempDir private Path shop;

  private void write(String file, String text) throws IOException {
    Files.createDirectories(shop.resolve(file).getParent());
    Files.writeString(shop.resolve(file), text);
  }

  /** 99.5 kg come out of each of two bodies; the rail shows what stands here. */
  @ParameterizedTest
  @CsvSource({
    "100.0, false",
    "100000, true",
    "220.5, true",
    "45.4, true",
    "0.100, true",
    "150.0, false"
  })
  void aRailInAnotherUnitIsNamedBeforeAllElse(String rail, boolean named) throws IOException {
    write("shop.properties", "name=Hill\ncurrency=GBP\nunit=kg\nzone=Europe/London\nrail=cold\n");
    write("bodies.csv", "body,species,killed\nB1,beef,2026-07-28\nB2,beef,2026-07-28\n");
    write("scales.csv", "scale,unit,division\ns,kg,0.1\n");
    write("codes.csv", "code,item,step\nC,carcase,cold\nR,rump,pack\nF,fat,bin\n");
    write(
        "exports/s/a.csv",
        """
        scale,ticket,time,body,code,net
        s,1,2026-07-29T07:00,B1,C,%1$s
        s,2,2026-07-29T07:01,B2,C,%1$s
        s,3,2026-07-30T07:00,B1,R,60.0
        s,4,2026-07-30T07:01,B1,F,39.5
        s,5,2026-07-30T07:02,B2,R,60.0
        s,6,2026-07-30T07:03,B2,F,39.5
        """
            .formatted(rail));
    var text = new StringWriter();
    var out = new PrintWriter(text);
    Main.run(out, out, "check", shop.toString(), "--as-of", "2026-08-05T02:00");
    assertEquals(named, text.toString().startsWith("Look at the units first"), text::toString);
  }
}
