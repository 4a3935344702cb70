package yardloom.program.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethod;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Who may depend on whom; see the dependency rules in DEVELOPERS.md. */
@AnalyzeClasses(packages = "yardloom", importOptions = NoTests.class)
class ArchitectureTest {
  /** The plugins: rooms by trade, each with its own package. */
  private static final List<String> ROOMS =
      List.of("site", "climate", "sun", "soil", "materials", "planting", "water", "work");

  private static final String[] BELOW_SCRIPTS =
      Stream.concat(Stream.of("kernel", "sheet", "facts"), ROOMS.stream())
          .map(room -> "yardloom." + room + "..")
          .toArray(String[]::new);

  @ArchTest
  static final ArchRule kernel_dependsOnTheJdkJtsAndGraphsOnly =
      only("yardloom.kernel..", "java..", "org.locationtech.jts..", "org.jgrapht..");

  @ArchTest
  static final ArchRule sheet_dependsOnTheKernelOnly =
      only(
          "yardloom.sheet..",
          "java..",
          "javax.xml.stream..",
          "org.locationtech.jts..",
          "yardloom.kernel..");

  /** A plugin knows the kernel, the contracts, geometry it was handed, and libraries of its own. */
  @ArchTest
  static void plugins_dependOnKernelAndFactsOnly(JavaClasses classes) {
    for (String room : ROOMS) {
      only(
              "yardloom." + room + "..",
              "java..",
              "org.locationtech.jts..",
              "yardloom.kernel..",
              "yardloom.facts..",
              "net.e175.klaus.solarpositioning..",
              "org.hipparchus..",
              "org.jgrapht..")
          .check(classes);
    }
  }

  @ArchTest
  static void plugins_haveNoPackageCycles(JavaClasses classes) {
    for (String room : ROOMS) {
      slices()
          .matching("yardloom." + room + ".(**)")
          .should()
          .beFreeOfCycles()
          .allowEmptyShould(true)
          .check(classes);
    }
  }

  @ArchTest
  static final ArchRule sheet_hasNoPackageCycles =
      slices().matching("yardloom.sheet.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule kernel_hasNoPackageCycles =
      slices().matching("yardloom.kernel.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule kernel_foundationsDependOnNothingAbove =
      noClasses()
          .that()
          .resideInAnyPackage(
              "yardloom.kernel.unit..", "yardloom.kernel.source..", "yardloom.kernel.problem..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("yardloom.kernel..")
                  .and(
                      not(
                          resideInAnyPackage(
                              "yardloom.kernel.unit..",
                              "yardloom.kernel.source..",
                              "yardloom.kernel.problem.."))));

  @ArchTest
  static final ArchRule jtsOverlayAndBuffer_areCalledFromGeomOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("yardloom.kernel.geom..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.locationtech.jts.operation.buffer..",
              "org.locationtech.jts.operation.overlay..",
              "org.locationtech.jts.operation.overlayng..",
              "org.locationtech.jts.geom.util..");

  @ArchTest
  static final ArchRule facts_areContractsOnly =
      classes()
          .that()
          .resideInAPackage("yardloom.facts..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "org.locationtech.jts.geom..",
              "yardloom.facts..",
              "yardloom.kernel.unit..",
              "yardloom.kernel.source..",
              "yardloom.kernel.problem..",
              "yardloom.kernel.plan..",
              "yardloom.kernel.geom..",
              "yardloom.kernel.table..",
              "yardloom.kernel.fact..");

  @ArchTest
  static final ArchRule scripts_knowNoPlugin =
      noClasses()
          .that()
          .resideInAnyPackage("yardloom.language..", "yardloom.program..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              Stream.concat(Stream.of("facts"), ROOMS.stream())
                  .map(room -> "yardloom." + room + "..")
                  .toArray(String[]::new));

  @ArchTest
  static final ArchRule language_dependsOnTheKernelAndGroovyOnly =
      classes()
          .that()
          .resideInAPackage("yardloom.language..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "groovy..",
              "org.codehaus.groovy..",
              "org.apache.groovy..",
              "com.sun.management..",
              "groovyjarjarasm..",
              "yardloom.kernel..",
              "yardloom.language..");

  @ArchTest
  static final ArchRule language_hasNoPackageCycles =
      slices().matching("yardloom.language.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule program_hasNoPackageCycles =
      slices().matching("yardloom.program.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule batikAndImages_areUsedByExportOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("yardloom.program.export..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.apache.batik..", "org.apache.fop..", "javax.imageio..", "java.awt..");

  @ArchTest
  static final ArchRule jackson_isUsedByTheProgramOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("yardloom.program..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.fasterxml.jackson..");

  @ArchTest
  static final ArchRule nothingBelowScripts_printsOrReadsTheMachine =
      noClasses()
          .that()
          .resideInAnyPackage(BELOW_SCRIPTS)
          .should(callMethod(System.class, "currentTimeMillis"))
          .orShould(callMethod(System.class, "nanoTime"))
          .orShould(callMethod(System.class, "getenv", String.class))
          .orShould(callMethod(System.class, "getProperty", String.class))
          .orShould(callMethod(java.util.Locale.class, "getDefault"))
          .orShould(callMethod(java.time.LocalDate.class, "now"))
          .orShould(callMethod(java.time.Instant.class, "now"))
          .orShould(callMethod(java.nio.charset.Charset.class, "defaultCharset"))
          .orShould(callMethod(Math.class, "random"))
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  /** What ships with a plugin is read as a resource; files are the program's. */
  @ArchTest
  static final ArchRule nothingBelowScripts_knowsFilesOrSockets =
      noClasses()
          .that()
          .resideInAnyPackage(BELOW_SCRIPTS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.io.File");

  @ArchTest
  static final ArchRule draft_isUsedOnlyWhereScriptsAreRead =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "yardloom.kernel.plan..", "yardloom.kernel.scope..", "yardloom.language..")
          .and(
              not(
                  com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith(
                      "Words")))
          .should()
          .dependOnClassesThat(simpleName("Draft"));

  @ArchTest
  static final ArchRule planAndFacts_haveNoFieldThatChanges =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(
              "yardloom.kernel.unit..",
              "yardloom.kernel.source..",
              "yardloom.kernel.check..",
              "yardloom.kernel.fact..",
              "yardloom.facts..")
          .and()
          .areDeclaredInClassesThat()
          .haveSimpleNameNotEndingWith("Builder")
          .should()
          .beFinal();

  private static ArchRule only(String who, String... whom) {
    return classes()
        .that()
        .resideInAPackage(who)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(Stream.concat(Stream.of(who), Stream.of(whom)).toArray(String[]::new));
  }

  /** A reader who meets a name knows which class is meant; it also holds across rooms. */
  @ArchTest
  static void everyTopLevelClass_hasANameOfItsOwn(JavaClasses classes) {
    Map<String, Set<String>> places = new TreeMap<>();
    for (JavaClass c : classes) {
      boolean isNamed = c.isTopLevelClass() && !c.getSimpleName().equals("package-info");
      if (isNamed && c.getPackageName().startsWith("yardloom.")) {
        places.computeIfAbsent(c.getSimpleName(), n -> new TreeSet<>()).add(c.getPackageName());
      }
    }
    places.values().removeIf(p -> p.size() == 1);
    assertEquals(Map.of(), places);
  }
}
