package yardloom.language.run;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Scope;
import yardloom.language.form.FormPlan;
import yardloom.language.form.Step;
import yardloom.language.form.Value;

/** Speaks the words of a plan in its JSON form, within the limits of any script. */
final class FormProgram extends PlanProgram {
  private final FormPlan plan;
  private final Map<String, Object> names = new HashMap<>();
  private final Map<String, Object> params = new HashMap<>();

  FormProgram(FormPlan plan) {
    this.plan = plan;
  }

  @Override
  public void run(PlanScope scope) {
    steps(plan.steps(), scope);
  }

  private void steps(List<Step> steps, Scope scope) {
    for (Step step : steps) {
      if (step instanceof Step.Call call) {
        call(call, scope);
      } else if (step instanceof Step.Include include) {
        Guard.begin(scope, include.place());
        steps(include.block(), scope);
        Guard.left();
      } else if (step instanceof Step.Param param) {
        Object fallback = value(param.value(), Object.class, scope);
        params.put(
            param.name(), Run.present().param(param.place(), param.name(), fallback, param.help()));
      }
    }
  }

  private Object call(Step.Call call, Scope scope) {
    List<Object> arguments = new ArrayList<>();
    arguments.add(Guard.begin(scope, call.place()));
    for (int i = 0; i < call.values().size(); i++) {
      Class<?> type = call.word().parameters().get(i).type();
      Optional<Value> given = call.values().get(i);
      arguments.add(given.isPresent() ? value(given.get(), type, scope) : null);
    }
    if (call.word().inner().isPresent()) {
      arguments.add(call.blocks().isEmpty() ? null : body(call.blocks()));
    }
    Object result = invoke(call, arguments);
    if (call.word().method().getReturnType() == void.class) {
      Guard.left();
      return null;
    }
    Guard.leave(result);
    if (call.name() != null) {
      names.put(call.name(), result);
    }
    return result;
  }

  /** Reads one block each time, or the next of several and the last from then on. */
  private Consumer<Scope> body(List<List<Step>> blocks) {
    int[] read = {0};
    return Guard.block(s -> steps(blocks.get(Math.min(read[0]++, blocks.size() - 1)), s));
  }

  private static Object invoke(Step.Call call, List<Object> arguments) {
    try {
      return call.word().method().invoke(null, arguments.toArray());
    } catch (InvocationTargetException e) {
      throw FormProgram.<RuntimeException>asIs(e.getCause());
    } catch (IllegalAccessException e) {
      throw new IllegalStateException("the word " + call.word().name() + " is not public", e);
    }
  }

  @SuppressWarnings("unchecked")
  private static <T extends Throwable> T asIs(Throwable thrown) throws T {
    throw (T) thrown;
  }

  private Object value(Value value, Class<?> wanted, Scope scope) {
    Object made = made(value, scope);
    if (made instanceof Handle handle && wanted == Shape.class) {
      return handle.getShape();
    } else if (made instanceof Handle handle && wanted == Line.class) {
      return handle.getLine();
    }
    return made;
  }

  private Object made(Value value, Scope scope) {
    if (value instanceof Step.Call call) {
      return call(call, scope);
    } else if (value instanceof Value.Plain plain) {
      return plain.value();
    } else if (value instanceof Value.Measure measure) {
      return measure.value();
    } else if (value instanceof Value.At at) {
      return new Point((Length) at.x().value(), (Length) at.y().value());
    } else if (value instanceof Value.Along along) {
      return along.line();
    } else if (value instanceof Value.Ground ground) {
      return ground.shape();
    } else if (value instanceof Value.Items items) {
      List<Object> list = new ArrayList<>();
      items.values().forEach(v -> list.add(made(v, scope)));
      return list;
    } else if (value instanceof Value.Given given) {
      return params.get(given.name());
    }
    return named((Value.Ref) value);
  }

  private Object named(Value.Ref ref) {
    Object made = names.get(ref.name());
    if (made == null) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD, "the step '" + ref.name() + "' has made nothing yet");
    }
    if (ref.part() == 0) {
      return made;
    }
    List<Handle> parts = ((Handle) made).getParts();
    if (ref.part() > parts.size()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "'" + ref.name() + "' made " + parts.size() + " things; there is no part " + ref.part());
    }
    return parts.get(ref.part() - 1);
  }
}
