package yardloom.program.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.vocab.Verb;

/**
 * Public code that only tests reach does nothing for a plan, and its tests credit nobody. What
 * scripts, the launcher or tests' own windows call is named here; nothing is named in vain.
 */
class UnreachedCodeTest {
  /** Called from compiled scripts, where this test cannot look; units are a whole vocabulary. */
  private static final Set<String> ASKED_BY_SCRIPTS =
      Set.of(
          "yardloom.language.value.NumberUnits",
          "yardloom.language.value.Operators",
          "yardloom.language.value.Values",
          "yardloom.language.run.Guard",
          "yardloom.language.run.Builtins",
          "yardloom.kernel.scope.Handle",
          "yardloom.kernel.geom.Shape",
          "yardloom.kernel.geom.Line",
          "yardloom.kernel.ground.Surface");

  /** Windows of tests on what is reached another way, and the launcher's door. */
  private static final Set<String> WINDOWS =
      Set.of(
          // Of plans that are not made in parts: what the test kits of plugins run.
          "yardloom.kernel.fact.FactGraph.run(Plan)",
          "yardloom.kernel.recall.Recall.worked()",
          "yardloom.kernel.spi.PluginLoader.load(ClassLoader)",
          "yardloom.kernel.survey.Bearings.dms(int, int, double)",
          "yardloom.kernel.survey.PlaneAreas.byCoordinates(List)",
          // The machine calls it when a recorded script runs.
          "yardloom.language.record.Recording.link(Lookup, String, MethodType, MethodHandle,"
              + " String)",
          "yardloom.language.run.PlanRunner.check(Path)",
          "yardloom.program.cli.Main.main(String[])",
          "yardloom.program.guide.GuidePages.example(Word)",
          "yardloom.program.guide.GuidePages.exampleWithout(Word)",
          "yardloom.program.guide.GuidePages.of(Lexicon, Set)",
          "yardloom.program.guide.GuidePicture.of(Outcome)",
          "yardloom.program.sitefile.GeoOutline.read(String)",
          "yardloom.sheet.compose.ScaleBar.partMm()",
          "yardloom.sheet.compose.ScaleBar.step()",
          "yardloom.sheet.compose.SheetComposer.compose(SheetRequest)",
          "yardloom.sheet.compose.SheetRequest.withScale(Optional)",
          "yardloom.sheet.font.FontWidths.knows(int)",
          "yardloom.sheet.paper.Paper.all()",
          "yardloom.sun.hours.SunMap.hours(int, int)",
          "yardloom.sun.hours.SunMap.workedOut()",
          "yardloom.water.pipe.formula.PipeNetwork$Solution.headM(String)",
          "yardloom.water.pipe.formula.PipeNetwork$Solution.leastPressureM()");

  private final JavaClasses classes =
      new ClassFileImporter().withImportOption(new NoTests()).importPackages("yardloom");

  @Test
  void everyMethodIsCalledFromAnotherOne() {
    var unreached =
        classes.stream()
            .filter(c -> !c.isInterface() && !c.isAnnotation())
            .filter(c -> !ASKED_BY_SCRIPTS.contains(c.getName()))
            .filter(c -> !c.getPackageName().equals("yardloom.kernel.unit"))
            .flatMap(c -> c.getMethods().stream())
            .filter(m -> m.getModifiers().contains(JavaModifier.PUBLIC))
            .filter(m -> !reached(m))
            .map(UnreachedCodeTest::name)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(String.join("\n", new TreeSet<>(WINDOWS)), String.join("\n", unreached));
  }

  private static boolean reached(JavaMethod method) {
    return calledFromElsewhere(method)
        || method.isAnnotatedWith(Verb.class)
        || method.getName().contains("$")
        || method.getModifiers().contains(JavaModifier.SYNTHETIC)
        || method.getModifiers().contains(JavaModifier.ABSTRACT)
        || generated(method)
        || overrides(method);
  }

  private static boolean calledFromElsewhere(JavaCodeUnit method) {
    return method.getAccessesToSelf().stream().anyMatch(a -> !a.getOrigin().equals(method));
  }

  /** Of records and enums: the compiler writes them whether they are wanted or not. */
  private static boolean generated(JavaMethod method) {
    JavaClass owner = method.getOwner();
    return owner.isEnum() && List.of("values", "valueOf").contains(method.getName())
        || owner.isRecord()
            && method.getRawParameterTypes().isEmpty()
            && owner.tryGetField(method.getName()).isPresent();
  }

  private static boolean overrides(JavaMethod method) {
    return Stream.concat(
            method.getOwner().getAllRawSuperclasses().stream(),
            method.getOwner().getAllRawInterfaces().stream())
        .flatMap(c -> c.getMethods().stream())
        .anyMatch(
            m ->
                m.getName().equals(method.getName())
                    && m.getRawParameterTypes().size() == method.getRawParameterTypes().size());
  }

  private static String name(JavaMethod method) {
    return method.getOwner().getName()
        + "."
        + method.getName()
        + method.getRawParameterTypes().stream()
            .map(JavaClass::getSimpleName)
            .collect(Collectors.joining(", ", "(", ")"));
  }
}
