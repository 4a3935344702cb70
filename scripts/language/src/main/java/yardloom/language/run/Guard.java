package yardloom.language.run;

import groovy.lang.Closure;
import java.util.function.Consumer;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.vocab.Scope;
import yardloom.language.limit.Meter;

/** Called by compiled scripts only: places of words, steps, blocks. */
public final class Guard {
  private Guard() {}

  /** The scope as seen from a word's place; the word begins. */
  public static Scope at(Scope scope, String file, int line, int column) {
    return begin(scope, new SourceRef(file, line, column, Callers.line()));
  }

  /** The same at a place that already knows who called its helper. */
  static Scope begin(Scope scope, SourceRef place) {
    Meter meter = Meter.present();
    meter.step();
    meter.enter(place);
    return scope.at(place);
  }

  /** The word that gave {@code result} has ended. */
  public static Object leave(Object result) {
    Meter meter = Meter.present();
    if (result instanceof Handle) {
      meter.element();
    }
    meter.leave();
    return result;
  }

  /** A word without result has ended. */
  public static void left() {
    Meter.present().leave();
  }

  /** One round of a loop, or one call of a helper or closure. */
  public static void step() {
    Meter.present().step();
  }

  /** A block as words take it; what is wrong in it is told at the script's end. */
  public static Consumer<Scope> block(Closure<?> body) {
    return block((Scope scope) -> body.call(scope));
  }

  static Consumer<Scope> block(Consumer<Scope> body) {
    return scope -> {
      Meter meter = Meter.present();
      int open = meter.openWords();
      try {
        body.accept(scope);
      } catch (RuntimeException e) {
        Run.present().failed(e, meter, open);
      }
    };
  }

  /** A part of a body that is too long for one method. */
  public static Object part(Closure<?> body) {
    return body.call();
  }

  /** Stands where an expression had a problem; never reached, as such scripts do not run. */
  public static Object hole() {
    throw new IllegalStateException("a script with problems was run");
  }
}
