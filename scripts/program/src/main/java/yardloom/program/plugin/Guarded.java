package yardloom.program.plugin;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/**
 * Stands before a guest and all it offers. A check or a table that breaks costs its own output and
 * says so in its place; anything else that breaks ends the run with jar, plugin and cause, since
 * others may build on it. What a guest says of the plan as a {@link PlanException} passes.
 */
final class Guarded implements InvocationHandler {
  /** What the lists of a plugin hold, by the method that gives them. */
  private static final Map<String, Class<?>> OFFERS =
      Map.of(
          "calculators", Calculator.class,
          "checks", Check.class,
          "painters", Painter.class,
          "tables", TableMaker.class,
          "sheets", SheetMaker.class);

  private static final Source PLUGIN = Source.plan("plugins that the user has added");

  private final Guest guest;
  private final Class<?> type;
  private final Object real;

  private Guarded(Guest guest, Class<?> type, Object real) {
    this.guest = guest;
    this.type = type;
    this.real = real;
  }

  static YardPlugin plugin(Guest guest, YardPlugin real) {
    return (YardPlugin) of(guest, YardPlugin.class, real);
  }

  private static Object of(Guest guest, Class<?> type, Object real) {
    return Proxy.newProxyInstance(
        Guarded.class.getClassLoader(), new Class<?>[] {type}, new Guarded(guest, type, real));
  }

  @Override
  public Object invoke(Object proxy, Method method, Object[] arguments) throws Throwable {
    if (method.getDeclaringClass() == Object.class) {
      return ofObject(proxy, method, arguments);
    }
    try {
      Object result = method.invoke(real, arguments);
      if (result == null) {
        throw new NullPointerException(method.getName() + " returned null");
      }
      return guarded(method, result);
    } catch (InvocationTargetException e) {
      return broken(method, e.getCause());
    } catch (NullPointerException e) {
      return broken(method, e);
    }
  }

  private Object ofObject(Object proxy, Method method, Object[] arguments) {
    return switch (method.getName()) {
      case "equals" -> proxy == arguments[0];
      case "hashCode" -> System.identityHashCode(proxy);
      default -> guest.id() + " from " + guest.jar().getFileName();
    };
  }

  /** A list of things offered, each behind a guard of its own. */
  private Object guarded(Method method, Object result) {
    Class<?> offer = OFFERS.get(method.getName());
    if (type != YardPlugin.class || offer == null) {
      return result;
    }
    List<Object> made = new ArrayList<>();
    ((List<?>) result).forEach(each -> made.add(of(guest, offer, each)));
    return List.copyOf(made);
  }

  private Object broken(Method method, Throwable thrown) throws Throwable {
    if (thrown instanceof PlanException
        || thrown instanceof VirtualMachineError && !(thrown instanceof StackOverflowError)) {
      throw thrown;
    }
    if (type == Check.class && method.getName().equals("run")) {
      return List.of(fault("the check " + ((Check) real).id(), thrown));
    }
    if (type == TableMaker.class && method.getName().equals("make")) {
      return table(((TableMaker) real).id(), thrown);
    }
    String what =
        type == YardPlugin.class
            ? "broke in " + method.getName()
            : "broke in its "
                + type.getSimpleName().toLowerCase(java.util.Locale.ROOT)
                + " "
                + real.getClass().getSimpleName();
    throw guest.broken(what, thrown);
  }

  private Finding fault(String what, Throwable thrown) {
    return Finding.of(
        "kernel.plugin-fault",
        Severity.WARNING,
        what
            + " of the plugin "
            + guest.id()
            + " ("
            + guest.jar().getFileName()
            + ") broke and says nothing: "
            + Guest.cause(thrown),
        Guest.WAY_OUT,
        PLUGIN);
  }

  private Table table(String id, Throwable thrown) {
    return Table.titled(id, "Not made: a table of the plugin " + guest.id())
        .column(Column.text("what", "What"))
        .column(Column.text("cause", "Cause"))
        .row(
            Cell.text("the table " + id + " broke, from " + guest.jar().getFileName()),
            Cell.text(Guest.cause(thrown)))
        .note(Guest.WAY_OUT + ".")
        .build();
  }
}
