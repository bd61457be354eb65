package gambrel;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The borders of the program. Six groups of rooms; each uses only itself and those below it:
 *
 * <ol>
 *   <li>{@code trade}: the domain, pure
 *   <li>{@code insight}: what the figures say
 *   <li>{@code files}: the outside world as files
 *   <li>{@code pages}: what people read
 *   <li>{@code night}: the order of one night
 *   <li>{@code cli}: the command line
 * </ol>
 */
@AnalyzeClasses(packages = "gambrel", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String TRADE = "gambrel.trade..";
  private static final String INSIGHT = "gambrel.insight..";
  private static final String FILES = "gambrel.files..";
  private static final String PAGES = "gambrel.pages..";
  private static final String RENDER = "gambrel.pages.render..";

  /** The only package that takes statistics from a library. */
  private static final String STATISTICS = "gambrel.insight.statistics..";

  private static final String MONTH = "gambrel.insight.month";
  private static final String MONTH_FIGURES = "gambrel.insight.month.figures..";

  private static final String[] PURE = {
    TRADE,
    INSIGHT,
    "gambrel.files.tables..",
    "gambrel.pages.words..",
    "gambrel.pages.views..",
    "gambrel.pages.statement..",
    "gambrel.pages.owner..",
    "gambrel.pages.explain.."
  };

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
      noClasses().that().resideInAnyPackage(PURE).should().dependOnClassesThat(files());

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
          .resideOutsideOfPackage(RENDER)
          .and()
          .doNotHaveFullyQualifiedName("gambrel.night.AsOf")
          .should()
          .callMethodWhere(clock());

  @ArchTest
  static final ArchRule onlyReadersAndThePublisherKnowTheCsvLibrary =
      noClasses()
          .that(not(resideInAPackage(FILES)))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.commons.csv..");

  @ArchTest
  static final ArchRule onlyMailingKnowsTheMailLibrary =
      noClasses()
          .that(resideOutsideOfPackage("gambrel.files.mail.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("jakarta..", "org.eclipse.angus..");

  @ArchTest
  static final ArchRule onlyThePageEngineKnowsTemplatesAndPdfs =
      noClasses()
          .that(resideOutsideOfPackage(RENDER))
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
          .resideInAnyPackage("org.apache.commons.cli..");

  @ArchTest
  static final ArchRule noRoomUsesOneThatUsesIt =
      slices().matching("gambrel.(*).(*)..").should().beFreeOfCycles();

  @ArchTest static final ArchRule theDomainUsesNothingElseOfOurs = uses(TRADE, TRADE);

  @ArchTest static final ArchRule insightRestsOnTheDomain = uses(INSIGHT, TRADE, INSIGHT);

  @ArchTest static final ArchRule statisticsKnowNoMonth = uses(STATISTICS, TRADE, STATISTICS);

  @ArchTest
  static final ArchRule roomsOfAMonthUseOnlyTheTypesOfItsFigures =
      slices()
          .matching(MONTH + ".(*)..")
          .should()
          .notDependOnEachOther()
          .ignoreDependency(alwaysTrue(), resideInAPackage(MONTH_FIGURES));

  @ArchTest
  static final ArchRule roomsOfAMonthDoNotUseTheWholeMonth =
      noClasses()
          .that()
          .resideInAPackage(MONTH + ".*..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage(MONTH);

  @ArchTest static final ArchRule filesKnowNoPages = uses(FILES, TRADE, INSIGHT, FILES);

  @ArchTest static final ArchRule pagesKnowNoFiles = uses(PAGES, TRADE, INSIGHT, PAGES);

  @ArchTest
  static final ArchRule barcodesKnowNothingOfMeat =
      uses(
          "gambrel.files.barcode..",
          "gambrel.trade.measure..",
          "gambrel.trade.notice..",
          "gambrel.files.csv..",
          "gambrel.files.barcode..");

  @ArchTest
  static final ArchRule viewsKnowNoFigures = uses("gambrel.pages.views..", "gambrel.pages.views..");

  @ArchTest
  static final ArchRule thePublisherKnowsOnlyTables =
      uses("gambrel.files.publish..", "gambrel.files.publish..", "gambrel.files.tables..");

  @ArchTest static final ArchRule thePageEngineKnowsNothingOfMeat = uses(RENDER, RENDER);

  @ArchTest
  static final ArchRule theCommandLineIsTheOutside =
      noClasses()
          .that(resideOutsideOfPackage("gambrel.cli.."))
          .should()
          .dependOnClassesThat()
          .resideInAPackage("gambrel.cli..");

  @ArchTest
  static void noTwoTopLevelTypesShareASimpleName(JavaClasses classes) {
    var names =
        classes.stream()
            .filter(type -> type.isTopLevelClass() && !type.getSimpleName().equals("package-info"))
            .collect(Collectors.groupingBy(JavaClass::getSimpleName, Collectors.counting()));
    names.values().removeIf(number -> number == 1);
    assertEquals(Map.of(), names);
  }

  private static ArchRule uses(String users, String... used) {
    return noClasses()
        .that()
        .resideInAPackage(users)
        .should()
        .dependOnClassesThat(resideInAnyPackage("gambrel..").and(not(resideInAnyPackage(used))));
  }
}
