package yardloom.scripts.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethod;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Who may depend on whom; see the dependency rules in DEVELOPERS.md. */
@AnalyzeClasses(packages = "yardloom", importOptions = NoTests.class)
class ArchitectureTest {
  private static final String[] BELOW_SCRIPTS = {
    "yardloom.kernel..",
    "yardloom.facts..",
    "yardloom.materials..",
    "yardloom.soil..",
    "yardloom.work..",
    "yardloom.water..",
    "yardloom.sun..",
    "yardloom.planting.."
  };

  @ArchTest
  static final ArchRule kernel_dependsOnTheJdkJtsAndGraphsOnly =
      classes()
          .that()
          .resideInAPackage("yardloom.kernel..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "javax.xml.stream..",
              "org.locationtech.jts..",
              "org.jgrapht..",
              "yardloom.kernel..");

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
  static final ArchRule plugins_doNotKnowEachOther =
      slices()
          .matching("yardloom.(materials|soil|work|water|sun|planting)..")
          .should()
          .notDependOnEachOther();

  @ArchTest
  static final ArchRule plugins_dependOnKernelAndFactsOnly =
      noClasses()
          .that()
          .resideInAnyPackage(BELOW_SCRIPTS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "yardloom.scripts..",
              "groovy..",
              "org.codehaus.groovy..",
              "org.apache.batik..",
              "java.awt..",
              "javax.imageio..");

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
              "yardloom.kernel.fact..",
              "yardloom.kernel.table..");

  @ArchTest
  static final ArchRule scripts_knowNoPlugin =
      noClasses()
          .that()
          .resideInAPackage("yardloom.scripts..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "yardloom.materials..",
              "yardloom.soil..",
              "yardloom.work..",
              "yardloom.water..",
              "yardloom.sun..",
              "yardloom.planting..");

  @ArchTest
  static final ArchRule batikAndImages_areUsedByExportOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("yardloom.scripts.export..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.apache.batik..", "org.apache.fop..", "javax.imageio..", "java.awt..");

  @ArchTest
  static final ArchRule jackson_isUsedForDataAndReportsOnly =
      noClasses()
          .that()
          .resideOutsideOfPackages("yardloom..data..", "yardloom.scripts..")
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

  @ArchTest
  static final ArchRule draft_isUsedOnlyWhereScriptsAreRead =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "yardloom.kernel.plan..", "yardloom.kernel.words..", "yardloom.scripts.dsl..")
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
}
