package gambrel;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;

/**
 * The borders of the program. From the inside out, each part uses only itself and those before it:
 *
 * <ol>
 *   <li>{@code measure}, {@code notice}, {@code cuts}: weights, money, what may be wrong, cut trees
 *   <li>{@code shop}: the shop folder as values
 *   <li>{@code weighing}: from rows to weighings that count
 *   <li>{@code balance}: the mass of a body, a piece, a batch
 *   <li>{@code owner}, {@code charge}, {@code decision}: who gets what, for how much, and when
 *   <li>{@code reckoning}: a night's figures put together
 *   <li>{@code cause}, {@code register}, {@code shrink}, {@code month}, {@code explain}: what is
 *       read off a night
 *   <li>{@code data}: a night as tables
 *   <li>{@code statement}, {@code wording}, {@code ownerpages}: a night as pages
 *   <li>{@code intake}, {@code publish}, {@code render}: files in, files out, pages as PDF
 *   <li>{@code run}: the nightly job
 *   <li>{@code cli}: the command line
 * </ol>
 */
@AnalyzeClasses(packages = "gambrel", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  private static final List<String> MEASURES = List.of("measure", "notice", "cuts");
  private static final List<String> NIGHT =
      List.of("shop", "weighing", "balance", "owner", "charge", "decision", "reckoning");
  private static final List<String> READINGS =
      List.of("cause", "register", "shrink", "month", "explain", "data");
  private static final List<String> PAGES = List.of("statement", "wording", "ownerpages");

  /** The only package that takes statistics from a library. */
  private static final String STATISTICS = "gambrel.shrink..";

  private static final String[] PURE = packages(List.of(MEASURES, NIGHT, READINGS, PAGES));

  private static String[] packages(List<List<String>> groups) {
    return groups.stream()
        .flatMap(List::stream)
        .map(name -> "gambrel." + name + "..")
        .toArray(String[]::new);
  }

  private static DescribedPredicate<JavaClass> files() {
    return describe(
        "files, streams, processes or the network",
        type ->
            resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..", "java.io..")
                    .test(type)
                && !Set.of(
                        StringReader.class.getName(),
                        UncheckedIOException.class.getName(),
                        "java.io.IOException",
                        "java.io.Serializable",
                        "java.io.ObjectStreamException")
                    .contains(type.getName()));
  }

  private static DescribedPredicate<JavaMethodCall> clock() {
    return describe(
        "the machine's clock",
        call ->
            call.getTargetOwner().getPackageName().startsWith("java.time")
                    && call.getName().equals("now")
                || call.getTargetOwner().getName().equals("java.time.Clock")
                || call.getTargetOwner().isEquivalentTo(System.class)
                    && call.getName().matches("currentTimeMillis|nanoTime|getenv|getProperty"));
  }

  @ArchTest
  static final ArchRule theDomainDoesNoInputOrOutput =
      noClasses()
          .that()
          .resideInAnyPackage(PURE)
          .should()
          .dependOnClassesThat(files());

  @ArchTest
  static final ArchRule theDomainUsesNoLibraryButExactFractions =
      classes()
          .that()
          .resideInAnyPackage(PURE)
          .and()
          .resideOutsideOfPackage(STATISTICS)
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage("gambrel..", "java..", "org.apache.commons.numbers.fraction.."));

  @ArchTest
  static final ArchRule onlyStatisticsKnowTheirLibrary =
      noClasses()
          .that()
          .resideOutsideOfPackage(STATISTICS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.hipparchus..");

  @ArchTest
  static final ArchRule onlyTheMomentAskedForIsAClock =
      noClasses()
          .that()
          .resideOutsideOfPackage("gambrel.render..")
          .and()
          .doNotHaveFullyQualifiedName("gambrel.run.AsOf")
          .and()
          // What somebody sees who waits is no output.
          .doNotHaveFullyQualifiedName("gambrel.cli.StandardError")
          .should()
          .callMethodWhere(clock());

  @ArchTest
  static final ArchRule onlyReadersAndThePublisherKnowTheCsvLibrary =
      noClasses()
          .that(not(resideInAnyPackage("gambrel.intake..", "gambrel.publish..")))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.commons.csv..");

  @ArchTest
  static final ArchRule onlyThePageEngineKnowsTemplatesAndPdfs =
      noClasses()
          .that(resideOutsideOfPackage("gambrel.render.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "freemarker..", "org.xhtmlrenderer..", "com.lowagie..", "org.w3c..", "javax.xml..");

  @ArchTest
  static final ArchRule onlyTheCommandLineKnowsItsLibrary =
      noClasses()
          .that(resideOutsideOfPackage("gambrel.cli.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("picocli..");

  @ArchTest
  static final ArchRule nothingGoesRoundInCircles =
      slices().matching("gambrel.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule measuresStandAlone = onlyUse(MEASURES, List.of(MEASURES));

  @ArchTest
  static final ArchRule figuresRestOnTheShopAndItsWeighings =
      onlyUse(NIGHT, List.of(MEASURES, NIGHT));

  @ArchTest
  static final ArchRule whatIsReadOffANightDoesNotKnowItsPages =
      onlyUse(READINGS, List.of(MEASURES, NIGHT, READINGS));

  @ArchTest
  static final ArchRule pagesDoNotKnowHowTheyAreMade =
      onlyUse(PAGES, List.of(MEASURES, NIGHT, READINGS, PAGES));

  @ArchTest
  static final ArchRule readersKnowNothingOfFigures =
      onlyUse(
          List.of("intake"), List.of(MEASURES, List.of("shop", "weighing", "barcode", "intake")));

  @ArchTest
  static final ArchRule barcodesKnowNothingOfMeat =
      onlyUse(List.of("barcode"), List.of(List.of("measure", "barcode")));

  @ArchTest
  static final ArchRule thePublisherKnowsOnlyTables =
      onlyUse(List.of("publish"), List.of(List.of("publish", "data")));

  @ArchTest
  static final ArchRule thePageEngineKnowsNothingOfMeat =
      onlyUse(List.of("render"), List.of(List.of("render")));

  @ArchTest
  static final ArchRule theCommandLineIsTheOutside =
      noClasses()
          .that(resideOutsideOfPackage("gambrel.cli.."))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("gambrel.cli..");

  private static ArchRule onlyUse(List<String> users, List<List<String>> used) {
    return noClasses()
        .that()
        .resideInAnyPackage(packages(List.of(users)))
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("gambrel..").and(not(resideInAnyPackage(packages(used)))));
  }
}
