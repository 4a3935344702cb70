package yardloom.water.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Scope;
import yardloom.water.roof.formula.FirstFlush;
import yardloom.water.tank.formula.TankBehaviour.Order;
import yardloom.water.tank.formula.TankSize;

/** The block of a tank. */
public final class TankScope extends Scope {
  /** What the block has said so far. */
  static final class Given {
    private Volume each;
    private int count = 1;
    private Length width;
    private Length depth;
    private boolean isRound;
    private Length height;
    private Length stand = Length.ZERO;
    private final List<String> serves = new ArrayList<>();
    private Volume otherUse = Volume.ZERO;
    private Length firstFlush = FirstFlush.LEAST;
    private double screened = TankWords.USUAL_SCREEN;
    private Order order = Order.YIELD_AFTER_SPILL;
    private Double cost;

    TankPlan plan(String name, Point at, String roof, SourceRef place) {
      if (each == null) {
        throw new PlanException(
            ProblemCode.MISSING_OPTION,
            place,
            "the tank '"
                + name
                + "' has no size; say `round diameter: 2.ft, height: 3.ft` or `box width: 4.ft,"
                + " depth: 4.ft, height: 5.ft` in its block");
      }
      return new TankPlan(
          name,
          at,
          new TankPlan.Body(each, count, width, depth, isRound, height, stand),
          new TankPlan.Filling(roof, firstFlush, screened),
          new TankPlan.Drawing(serves, otherUse, order),
          Optional.ofNullable(cost));
    }
  }

  private final Given given;

  TankScope(Given given, SourceRef place) {
    super(place);
    this.given = given;
  }

  void round(Length diameter, Length height, int count) {
    size(TankSize.cylinder(diameter, height), diameter, diameter, height, count);
    given.isRound = true;
  }

  void box(Length width, Length depth, Length height, int count) {
    size(width.by(depth).deep(height), width, depth, height, count);
  }

  private void size(Volume each, Length width, Length depth, Length height, int count) {
    if (given.each != null) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          place(),
          "the tank has its size already; say `round` or `box` once");
    }
    given.each = each;
    given.width = width;
    given.depth = depth;
    given.height = height;
    given.count = count;
  }

  void stand(Length height) {
    given.stand = height;
  }

  void serves(List<String> names) {
    given.serves.addAll(names);
  }

  void otherUse(Volume daily) {
    given.otherUse = daily;
  }

  void inlet(Length firstFlush, double screened) {
    given.firstFlush = firstFlush;
    given.screened = screened;
  }

  void order(Order order) {
    given.order = order;
  }

  void cost(double amount) {
    given.cost = amount;
  }

  @Override
  public TankScope at(SourceRef newPlace) {
    return new TankScope(given, newPlace);
  }
}
