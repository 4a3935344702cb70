package yardloom.kernel.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.source.Source;
import yardloom.kernel.study.DrawnLayer;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;

/** What every plugin must do; a plugin's own test extends it and says which plugin it is. */
public abstract class PluginContract {

  /** Types that words may take or return besides quantities and block scopes. */
  private static final Set<Class<?>> SCRIPT_TYPES =
      Set.of(
          void.class,
          String.class,
          Boolean.class,
          Number.class,
          Integer.class,
          List.class,
          Map.class,
          Point.class,
          Line.class,
          Shape.class,
          Source.class,
          Handle.class);

  /** The plugin under test, made anew. */
  protected abstract YardPlugin plugin();

  @Test
  void level_isTheOneCompiledAgainst() {
    assertEquals(Spi.LEVEL, plugin().spiLevel());
  }

  @Test
  void info_isCompleteAndStable() {
    assertEquals(plugin().info(), plugin().info());
    assertFalse(plugin().info().title().isBlank());
    assertFalse(plugin().info().version().isBlank());
  }

  @Test
  void ids_areUnique() {
    Set<String> seen = new HashSet<>();
    plugin().calculators().forEach(c -> assertTrue(seen.add("calculator " + c.id()), c.id()));
    plugin().checks().forEach(c -> assertTrue(seen.add("check " + c.id()), c.id()));
    plugin().tables().forEach(t -> assertTrue(seen.add("table " + t.id()), t.id()));
    plugin().painters().forEach(p -> assertTrue(seen.add("layer " + p.layer().id())));
    plugin().sheets().forEach(s -> assertTrue(seen.add("sheet " + s.id()), s.id()));
    assertFalse(seen.isEmpty(), "a plugin that offers nothing");
  }

  @Test
  void words_takeAndReturnOnlyWhatAPlanMayTouch() {
    for (Word word : Lexicon.of(plugin().vocabularies()).all()) {
      Method method = word.method();
      assertTrue(isScriptType(method.getReturnType()), word.name() + " returns a foreign type");
      for (Parameter parameter : method.getParameters()) {
        Class<?> type = parameter.getType();
        assertTrue(
            isScriptType(type)
                || type == Consumer.class
                || Scope.class.isAssignableFrom(type)
                || isTextOrPublication(parameter),
            word.name() + " takes " + type.getName());
      }
    }
  }

  /** {@link Source#given} refuses whatever else stands there. */
  private static boolean isTextOrPublication(Parameter parameter) {
    Opt opt = parameter.getAnnotation(Opt.class);
    return parameter.getType() == Object.class && opt != null && opt.name().equals("source");
  }

  private static boolean isScriptType(Class<?> type) {
    return SCRIPT_TYPES.contains(type) || Quantity.class.isAssignableFrom(type);
  }

  @Test
  void words_haveHelpForEveryArgument() {
    for (Word word : Lexicon.of(plugin().vocabularies()).all()) {
      assertTrue(word.help().endsWith("."), word.name() + ": the help is a sentence");
      assertTrue(word.example().contains(word.name()), word.name() + ": the example uses it");
      for (Word.Parameter p : word.parameters()) {
        assertFalse(p.help().isBlank(), word.name() + "." + p.name());
        assertTrue(
            p.required() || !p.fallback().isBlank(),
            word.name() + "." + p.name() + ": say what holds without it");
      }
    }
  }

  @Test
  void emptyPlan_givesNoErrorAndTheSameTwice() {
    Plan empty =
        new Draft(new PlanInfo("empty", "Empty", "", "", "", "", UnitSystem.METRIC, "")).freeze();
    assertFalse(holdsOn(empty, List.of(plugin())).hasErrors());
  }

  /**
   * What every plugin must do with a plan, whatever stands in it: give the same twice, and nothing
   * that a sheet could not show.
   *
   * @return what came of it
   */
  public static Outcome holdsOn(Plan plan, List<YardPlugin> loaded) {
    Plugins plugins = PluginLoader.of(loaded);
    Outcome outcome = showsOn(plan, loaded);
    Outcome again = new Study(plugins).of(plan);
    assertEquals(outcome.findings(), again.findings());
    assertEquals(outcome.tables(), again.tables());
    assertEquals(outcome.layers(), again.layers());
    assertEquals(outcome.cautions(), again.cautions());
    return outcome;
  }

  /**
   * The half of {@link #holdsOn} that needs one run: nothing is given that a sheet could not show.
   *
   * @return what came of it
   */
  public static Outcome showsOn(Plan plan, List<YardPlugin> loaded) {
    Outcome outcome = new Study(PluginLoader.of(loaded)).of(plan);
    for (Finding finding : outcome.findings()) {
      assertFalse(finding.advice().isBlank(), finding.rule() + " does not say what to do");
      assertFalse(finding.source().cite().isBlank(), finding.rule() + " has no source");
    }
    outcome.tables().forEach(PluginContract::canShow);
    outcome.layers().forEach((layer, drawn) -> canShow(layer, drawn));
    return outcome;
  }

  private static void canShow(Table table) {
    TableFormat format = new TableFormat(UnitSystem.US, "$");
    Set<String> ids = new HashSet<>();
    table
        .columns()
        .forEach(c -> assertTrue(ids.add(c.id()), table.id() + " has " + c.id() + " twice"));
    for (List<Cell> row : table.rows()) {
      for (int i = 0; i < row.size(); i++) {
        Column column = table.columns().get(i);
        String text = format.text(column, row.get(i));
        String where = table.id() + "." + column.id() + ": " + text;
        assertFalse(text.matches(".*(NaN|Infinity|null|Optional|@[0-9a-f]{5,}).*"), where);
        boolean isNumber = row.get(i).value().filter(v -> !(v instanceof String)).isPresent();
        assertTrue(isNumber || !column.measure().isNumber() || text.length() < 20, where);
        row.get(i).why().ifPresent(why -> canExplain(why, where));
      }
    }
    table.notes().forEach(note -> assertTrue(note.endsWith("."), table.id() + ": " + note));
  }

  private static void canExplain(Derived<?> why, String where) {
    assertFalse(why.formula().isBlank(), where + " has no formula");
    assertFalse(why.source().cite().isBlank(), where + " has no source");
  }

  private static void canShow(Layer layer, DrawnLayer drawn) {
    assertFalse(drawn.marks().isEmpty(), layer.id());
    drawn.legend().forEach(l -> assertFalse(l.text().isBlank(), layer.id() + " has no legend"));
  }
}
