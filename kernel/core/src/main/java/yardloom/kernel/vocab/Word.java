package yardloom.kernel.vocab;

import java.lang.reflect.Method;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One word of the plan language: what the resolver, the messages, the reference and the editor
 * description all read.
 *
 * @param scope the block type it may stand in
 * @param inner the block type it opens, if it opens one
 */
public record Word(
    String name,
    String plugin,
    Class<? extends Scope> scope,
    String help,
    String example,
    List<Parameter> parameters,
    Optional<Class<? extends Scope>> inner,
    Method method) {

  /**
   * One argument or option, in the order of the method's parameters.
   *
   * @param named whether scripts give it by name
   * @param required whether leaving it out is an error
   * @param choices the allowed texts; empty for any
   */
  public record Parameter(
      String name,
      Class<?> type,
      String help,
      boolean named,
      boolean required,
      String fallback,
      List<String> choices) {}

  public List<Parameter> arguments() {
    return parameters.stream().filter(p -> !p.named()).toList();
  }

  public List<Parameter> options() {
    return parameters.stream().filter(Parameter::named).toList();
  }

  /** {@code bed(name, shape, use: …) { … }}. */
  public String signature() {
    String inside =
        parameters.stream()
            .map(p -> p.named() ? p.name() + ": …" : p.name())
            .collect(Collectors.joining(", "));
    return name + "(" + inside + ")" + (inner.isPresent() ? " { … }" : "");
  }
}
