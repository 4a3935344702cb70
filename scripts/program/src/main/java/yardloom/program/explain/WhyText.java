package yardloom.program.explain;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.program.output.Calculations;

/**
 * A derivation as indented text: value, formula, formula with values, source, then each input with
 * its own why. What was told once is not told again.
 */
final class WhyText {
  private final Calculations calculations;
  private final ScriptLines lines;
  private final Set<Integer> told = new HashSet<>();
  private final StringBuilder text = new StringBuilder();

  WhyText(Calculations calculations, ScriptLines lines) {
    this.calculations = calculations;
    this.lines = lines;
  }

  /** The whole why of {@code derived}, called {@code name}. */
  String of(String name, String value, Derived<?> derived) {
    tell("", name, value, derived);
    return text.toString();
  }

  private void tell(String indent, String name, String value, Derived<?> derived) {
    int number = calculations.number(derived);
    text.append(indent).append(name).append(" = ").append(value);
    text.append("  [").append(number).append("]");
    if (!told.add(number)) {
      text.append(" told above\n");
      return;
    }
    text.append('\n');
    String inner = indent + "    ";
    if (isGiven(derived)) {
      place(inner, "given on ", derived.inputs().get(0).place());
      return;
    }
    text.append(inner).append(derived.formula()).append('\n');
    FormulaInNumbers.of(derived.formula(), values(derived))
        .ifPresent(t -> text.append(inner).append("= ").append(t).append('\n'));
    text.append(inner).append("by: ").append(derived.source().cite()).append('\n');
    derived.inputs().forEach(i -> input(inner, i));
  }

  /** A value that the plan gives as it is. */
  private static boolean isGiven(Derived<?> derived) {
    return derived.inputs().size() == 1
        && derived.inputs().get(0).place().line() > 0
        && derived.inputs().get(0).value().equals(derived.value())
        && derived.inputs().get(0).name().equals(derived.formula());
  }

  private void input(String indent, Derived.Input input) {
    if (input.value() instanceof Derived<?> derived) {
      tell(indent, input.name(), value(derived.value()), derived);
      return;
    }
    text.append(indent).append(input.name()).append(" = ").append(value(input.value()));
    text.append('\n');
    if (input.place().line() > 0) {
      place(indent + "    ", "", input.place());
    }
  }

  private void place(String indent, String how, SourceRef place) {
    text.append(indent).append(how).append(place);
    lines.at(place).ifPresent(line -> text.append(": ").append(line));
    text.append('\n');
  }

  private Map<String, String> values(Derived<?> derived) {
    Map<String, String> values = new LinkedHashMap<>();
    for (Derived.Input input : derived.inputs()) {
      Object value = input.value() instanceof Derived<?> d ? d.value() : input.value();
      values.putIfAbsent(input.name(), value(value));
    }
    return values;
  }

  /** As the appendix has it, without the noughts that only fill up figures. */
  private String value(Object value) {
    String shown = calculations.values().of(value);
    return value instanceof Double && shown.contains(".") && !shown.contains("e")
        ? shown.replaceAll("\\.?0+$", "")
        : shown;
  }
}
