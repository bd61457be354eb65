package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.shop.AccuracyClass;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What codes mean, what the shop cuts, and what it weighs with. */
class CodesCutsAndScalesTest {
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files = new ShopFiles(folder);
  }

  private CutTree beef() {
    return files.read().shop().cuts().of(Species.BEEF);
  }

  /** "Breast" is also the id of an item of veal, which it then means. */
  @ParameterizedTest
  @CsvSource({
    "short loins, short-loin",
    "loin short, short-loin",
    "breast, breast",
  })
  void anItemMayBeNamedByItsName(String name, String item) {
    files.with("codes.csv", "code,item,step\n71," + name + ",pack\n");
    assertEquals(List.of(item), files.read().shop().codes().get(0).items());
    var notices = files.read().notices();
    assertEquals(name.equals(item) ? 0 : 1, notices.size(), notices::toString);
    assertTrue(notices.stream().allMatch(n -> n.severity() == Severity.NOTE), notices::toString);
  }

  /** Case, blanks and hyphens do not count. */
  @ParameterizedTest
  @ValueSource(strings = {"short-loin", "Short loin", "SHORT_LOIN"})
  void anIdWrittenOtherwiseDrawsNoNote(String name) {
    files.with("codes.csv", "code,item,step\n71," + name + ",pack\n");
    assertEquals(List.of("short-loin"), files.read().shop().codes().get(0).items());
    assertEquals(List.of(), files.read().notices());
  }

  /** Soup bones go home; a tub of bone that nobody takes is keyed as easily. */
  @ParameterizedTest
  @CsvSource({
    "bone, pack, 1",
    "fat, pack, 1",
    "bone, bin, 0",
    "rump, pack, 0",
    "marrow-bones, pack, 0"
  })
  void ofBoneFatAndWasteThatGoHomeANoteIsMade(String item, String step, int notes) {
    files.with("codes.csv", "code,item,step\n71," + item + ',' + step + '\n');
    var notices = files.read().notices();
    assertEquals(notes, notices.size(), notices::toString);
    assertTrue(notices.stream().allMatch(n -> n.severity() == Severity.NOTE), notices::toString);
  }

  /** Breast is an id of veal; of lamb, pages of the United Kingdom call another item so. */
  @ParameterizedTest
  @CsvSource({"lamb, breast-and-flap", "veal, breast", "beef, breast"})
  void anIdOfASpeciesThatTheShopHasNotMeansWhatPagesCallSo(String species, String item) {
    files
        .with("shop.properties", ShopFiles.SETTINGS + "region=uk\n")
        .with("bodies.csv", "body,species\nB1," + species + "\n")
        .with("codes.csv", "code,item,step\n34,breast,pack\n");

    var read = files.read();

    assertEquals(List.of(item), read.shop().codes().get(0).items());
    assertEquals(List.of(), read.notices());
  }

  @ParameterizedTest
  @ValueSource(strings = {"round", "short lion", "loin chop bone out"})
  void aNameOfTwoItemsOrOfNoneIsNoItem(String name) {
    files.with("codes.csv", "code,item,step\n71," + name + ",pack\n");
    assertEquals(List.of(), files.read().shop().codes());
    assertEquals(
        List.of(NoticeCode.REFERENCE_UNKNOWN),
        files.read().notices().stream().map(notice -> notice.code()).toList());
  }

  @Test
  void codesAreReadInFileOrder() {
    files.with(
        "codes.csv",
        """
        code,item,step,description,tare,tare_each,nominal
        71*,Rump,PACK,rump steak,0.02,yes,
        0001,,test,,,,20
        9,,added,water,,,
        """);
    assertEquals(
        List.of(
            new ScaleCode(
                "71*",
                List.of("rump"),
                Step.PACK,
                "rump steak",
                Weight.ofThousandths(20),
                true,
                Optional.empty()),
            new ScaleCode(
                "0001",
                List.of(),
                Step.TEST,
                "",
                Weight.ZERO,
                false,
                Optional.of(Weight.ofThousandths(20_000))),
            new ScaleCode(
                "9", List.of(), Step.ADDED, "water", Weight.ZERO, false, Optional.empty())),
        files.clean().codes());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "71,unicorn-steak,pack",
        "71,,pack",
        "71,|,pack",
        "71,rump|,pack",
        "71,rump|unicorn-steak,pack",
        "71,,hot",
        "71,rump,eat",
        "71,rump,",
        "7*1,rump,pack",
        ",rump,pack",
        "7.1E+12,rump,pack"
      })
  void aCodeWithoutAnItemOrStepThatExistsIsLeftOut(String row) {
    files.with("codes.csv", "code,item,step\n" + row + "\n");
    assertEquals(2, files.onlyNotice().place().line());
    assertTrue(files.read().shop().codes().isEmpty());
  }

  @Test
  void ofACodeThatStandsThereTwiceTheFirstIsUsed() {
    files.with("codes.csv", "code,item,step\n71,rump,pack\n71,bone,bin\n");
    files.refuses(NoticeCode.ID_TWICE, "codes.csv", 3);
    assertEquals("rump", files.read().shop().codes().get(0).item());
  }

  @Test
  void aCodeMayNameAnItemForEachSpecies() {
    files.with("codes.csv", "code,item,step\n15,Breast-and-flap | belly,pack\n");
    assertEquals(List.of("breast-and-flap", "belly"), files.clean().codes().get(0).items());
  }

  @Test
  void aCodeWithTwoItemsOfASpeciesThatTheShopHasIsMarked() {
    files.with("bodies.csv", "body,species\nB1,pork\n");
    files.with("codes.csv", "code,item,step\n15,belly|loin,pack\n");
    var notice = files.onlyNotice();
    assertEquals(NoticeCode.SHOP_ROW_BAD, notice.code());
    assertEquals(2, notice.place().line());
    assertEquals(1, files.read().shop().codes().size());
  }

  @Test
  void aCodeMayNameAnItemThatOnlyTheShopHas() {
    files.with("cuts.csv", "species,item,parent,name,kind\ngoat,saddle-roll,carcase,Roll,meat\n");
    files.with("codes.csv", "code,item,step\n71,saddle-roll,pack\n");
    assertEquals("saddle-roll", files.clean().codes().get(0).item());
  }

  @Test
  void cutsExtendTheTreeInAnyOrderOfRows() {
    files.with(
        "cuts.csv",
        """
        species,item,parent,name,kind,count,unece
        beef,half-rump,whole-rump,Half rump,meat,,
        beef,whole-rump,hindquarter,Whole rump,piece,2,7001 7002
        """);
    files.clean();
    assertTrue(beef().isUnder("half-rump", "hindquarter"));
    assertEquals(
        new Item(
            "whole-rump",
            "hindquarter",
            "Whole rump",
            Kind.PIECE,
            2,
            List.of("7001", "7002"),
            true,
            Facts.INHERITED),
        beef().find("whole-rump").orElseThrow());
  }

  @Test
  void aCutOfTheShopsOwnHasTheFactsOfTheItemThatItComesFrom() {
    files.with(
        "cuts.csv",
        "species,item,parent,name,kind\nbeef,long-bone,op-rib,Long bone rib,meat\n"
            + "beef,herb-sausages,sausages,Herb sausages,meat\n");
    files.clean();
    assertTrue(beef().facts("long-bone").isOnBone());
    assertTrue(beef().facts("herb-sausages").isMinced());
    assertEquals(Optional.of("sausage"), beef().facts("herb-sausages").food());
  }

  @Test
  void aBlankCellLeavesAKnownItemAsItWas() {
    var before = beef().find("kidney").orElseThrow();
    files.with("cuts.csv", "species,item,parent,name,kind\nbeef,kidney,,,meat\n");
    files.clean();
    assertEquals(
        new Item(
            "kidney",
            before.parent(),
            before.name(),
            Kind.MEAT,
            before.count(),
            before.unece(),
            false,
            before.facts()),
        beef().find("kidney").orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ox,new,carcase,New,meat",
        "beef,new,carcase,New,steak",
        "beef,new,nowhere,New,meat",
        "beef,new,new,New,meat",
        "beef,new,,New,meat",
        "beef,new,carcase,,meat",
        "beef,carcase,side,,",
        "beef,side,hindquarter,,"
      })
  void aCutThatDoesNotFitIsLeftOut(String row) {
    var before = beef().items();
    files.with("cuts.csv", "species,item,parent,name,kind\n" + row + "\n");
    files.refuses(NoticeCode.SHOP_ROW_BAD, "cuts.csv", 2);
    assertEquals(before, beef().items());
  }

  @Test
  void scalesHaveTheShopsUnitUnlessTheyNameTheirOwn() {
    files.with(
        "scales.csv",
        """
        scale,where,layout,unit,division,capacity,class
        rail,chiller,,,0.2,600,III
        01,bench,plain,g,5,,
        """);
    assertEquals(
        Map.of(
            "rail",
            new Scale(
                "rail",
                "chiller",
                "",
                WeightUnit.KG,
                new BigDecimal("0.2"),
                Optional.of(new BigDecimal("600")),
                Optional.of(AccuracyClass.III)),
            "01",
            new Scale(
                "01",
                "bench",
                "plain",
                WeightUnit.G,
                new BigDecimal("5"),
                Optional.empty(),
                Optional.empty())),
        files.clean().scales());
  }

  @ParameterizedTest
  @ValueSource(strings = {"s,,", "s,0,", "s,-1,", "s,fine,", "s,0.1,stone"})
  void aScaleWithoutADivisionOrWithAStrangeUnitIsLeftOut(String row) {
    files.with("scales.csv", "scale,division,unit\n" + row + "\n");
    files.refuses(NoticeCode.SHOP_ROW_BAD, "scales.csv", 2);
    assertTrue(files.read().shop().scales().isEmpty());
  }

  @Test
  void aScaleKeepsWeighingWhenItsClassOrCapacityIsBad() {
    files.with("scales.csv", "scale,division,capacity,class\ns,0.1,lots,V\n");
    assertEquals(2, files.read().notices().size());
    assertEquals(Optional.empty(), files.read().shop().scales().get("s").accuracy());
  }
}
