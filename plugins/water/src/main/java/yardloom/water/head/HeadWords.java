package yardloom.water.head;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words for what the tap gives and what stands behind it. */
public final class HeadWords {
  private HeadWords() {}

  @Verb(
      help =
          "Says how much water the tap gives through the pressure regulator, zones keep below it;"
              + " and the pressure at the closed tap, or the tank that waters by its height alone.",
      example = "supply flow: 4.gpm, pressure: 45.psi")
  public static void supply(
      PlanScope in,
      @Opt(
              name = "flow",
              help = "measured with a bucket and a watch, regulator in place",
              fallback = "by `bucketTest`, else what half-inch line carries, 200 gph (757 L/h)")
          Flow flow,
      @Opt(
              name = "pressure",
              help = "by a gauge, with the tap closed",
              fallback = "not known; the regulator is taken to hold")
          Pressure pressure,
      @Opt(
              name = "tank",
              help = "the name of the tank whose water runs into the lines by its height",
              fallback = "none: water of the mains")
          String tank) {
    if (flow == null && pressure == null && tank == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION, "supply needs a flow, a pressure or the name of a tank");
    }
    if (pressure != null && tank != null) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "supply has a pressure and a tank; the height of the tank's water is its pressure");
    }
    if (flow != null) {
      check(flow);
    }
    if (pressure != null && (pressure.psi() < 5 || pressure.psi() > 150)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a closed tap stands between 5 psi (34 kPa) and 150 psi (1,034 kPa), got %s; name a"
                  + " tank with `tank:`",
              Say.both(Measure.PRESSURE, pressure)));
    }
    if (in.draft().attributes().has(Supply.KEY)) {
      throw new PlanException(ProblemCode.DUPLICATE, in.place(), "the supply is already given");
    }
    Supply supply =
        new Supply(
            Optional.ofNullable(flow), Optional.ofNullable(pressure), Optional.ofNullable(tank));
    in.draft().attributes().add(Supply.KEY, supply, in.place());
  }

  static void check(Flow flow) {
    if (flow.gallonsPerMinute() < 0.1 || flow.gallonsPerMinute() > 100) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a garden supply gives between 0.1 gpm (23 L/h) and 100 gpm (22,700 L/h), got %s;"
                  + " check the unit",
              Say.both(Measure.FLOW, flow)));
    }
  }

  @Verb(
      help =
          "Says how long the fully open tap took to fill a bucket; zones take three quarters of"
              + " that flow.",
      example = "bucketTest volume: 5.gal, seconds: 38")
  public static void bucketTest(
      PlanScope in,
      @Opt(name = "volume", help = "what the bucket holds", required = true) Volume volume,
      @Opt(name = "seconds", help = "time until it is full", required = true) Number seconds) {
    if (!(seconds.doubleValue() > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a bucket fills in more than 0 seconds, got " + seconds);
    }
    Supply.Bucket bucket = new Supply.Bucket(volume, TimeSpan.seconds(seconds.doubleValue()));
    check(bucket.flow());
    if (in.draft().attributes().has(Supply.BUCKET)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the bucket test is already given");
    }
    in.draft().attributes().add(Supply.BUCKET, bucket, in.place());
  }

  @Verb(
      help = "Says what stands between the tap and the lines, in the order in which water passes.",
      example = "headAssembly regulator: 25.psi, backflow: 'double check'")
  public static void headAssembly(
      PlanScope in,
      @Opt(
              name = "regulator",
              help = "pressure that it lets through",
              fallback = "25 psi (172 kPa)")
          Pressure regulator,
      @Opt(
              name = "backflow",
              help = "what keeps garden water out of the drinking water, as the local code asks",
              fallback = "vacuum breaker",
              choices = HeadAssembly.Backflow.class)
          String backflow,
      @Opt(name = "timer", help = "whether a timer opens the water", fallback = "true")
          Boolean timer) {
    Pressure set = regulator == null ? HeadAssembly.USUAL.regulator() : regulator;
    if (set.psi() < 8 || set.psi() > 60) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "regulators for dripline let 8 psi (55 kPa) to 60 psi (414 kPa) through, got %s;"
                  + " check the unit",
              Say.both(Measure.PRESSURE, set)));
    }
    if (in.draft().attributes().has(HeadAssembly.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the head assembly is already given");
    }
    HeadAssembly.Backflow kind =
        Choices.parse(HeadAssembly.Backflow.class, backflow, HeadAssembly.USUAL.backflow());
    in.draft()
        .attributes()
        .add(
            HeadAssembly.KEY,
            new HeadAssembly(set, kind, timer == null || timer, List.of()),
            in.place());
  }
}
