package yardloom.kernel.unit;

/** An amount of money in the plan's own currency. */
public final class Money extends Quantity<Money> {
  /** Nothing at all. */
  public static final Money ZERO = new Money(0);

  private Money(double amount) {
    super(amount);
  }

  /** The plan's currency. */
  public static Money amount(double value) {
    return new Money(Unit.MONEY_UNIT.toSi(value));
  }

  /** The value in the plan's currency. */
  public double amount() {
    return in(Unit.MONEY_UNIT);
  }

  @Override
  public Dimension dimension() {
    return Dimension.MONEY;
  }

  @Override
  Money of(double newSi) {
    return new Money(newSi);
  }
}
