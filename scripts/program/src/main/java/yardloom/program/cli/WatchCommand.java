package yardloom.program.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.recall.Recall;
import yardloom.kernel.study.Outcome;
import yardloom.program.output.SheetSet;
import yardloom.program.watch.Watching;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.SheetMemory;

/** Shows a plan on a page that follows each save. */
@Command(
    name = "watch",
    description =
        "Show a plan in the browser of this machine; it is drawn again whenever its files are"
            + " saved. Ctrl-C ends it.",
    footer = {"", "Example:", "  yardloom watch yard.groovy"})
final class WatchCommand implements Callable<Integer> {
  private final Console console;
  private final Path base;

  @Mixin private PlanArgument argument;

  WatchCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() throws InterruptedException {
    Path script = base.resolve(argument.plan());
    try (Watching watching =
        new Watching(script, base, argument.settings(), drawer(Toolkit.load(), script))) {
      console.say(argument.plan() + " is shown at " + watching.address());
      console.say("Save the plan and the page follows. Ctrl-C ends.");
      new CountDownLatch(1).await();
      return ExitCode.FINE;
    } catch (IOException e) {
      throw new PlanException(
          ProblemCode.FILE,
          new SourceRef(argument.plan().toString(), 0, 0),
          "there is no such file, or its folder cannot be watched");
    }
  }

  /** Draws as {@code draw} does, and works out only what is not as it was the last time. */
  static Watching.Drawer drawer(Toolkit toolkit, Path script) {
    Recall recall = new Recall();
    SheetMemory memory = new SheetMemory();
    return new Watching.Drawer() {
      private Outcome last;

      @Override
      public Outcome study(
          Map<String, String> values, String inView, Consumer<List<ComposedSheet>> first) {
        Plan plan = toolkit.read(script, values);
        if (last != null) {
          ahead(plan, inView).ifPresent(first);
        }
        Outcome outcome = toolkit.study(plan, recall);
        recall.keep();
        last = outcome;
        return outcome;
      }

      /** What is wrong with the plan is told by the whole run. */
      private Optional<List<ComposedSheet>> ahead(Plan plan, String page) {
        String inView = SheetSet.sheetOf(page, last);
        try {
          Optional<Outcome> outcome = toolkit.ahead(plan, recall, last, inView);
          recall.keepPart();
          return outcome.map(o -> SheetSet.ahead(o, Papers.of(null, plan), inView, memory));
        } catch (RuntimeException e) {
          return Optional.empty();
        }
      }

      @Override
      public List<ComposedSheet> sheets(Outcome outcome) {
        return SheetSet.of(outcome, Papers.of(null, outcome.plan()), memory, hands());
      }

      @Override
      public Hands hands() {
        return toolkit.hands();
      }
    };
  }
}
