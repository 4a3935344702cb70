package yardloom.kernel.spi;

/** The level of the interfaces that plugins compile against. */
public final class Spi {
  /**
   * This kernel's level. A compile-time constant on purpose: the compiler copies it into a plugin,
   * so that the plugin tells the level it was compiled against.
   */
  public static final int LEVEL = 1;

  /** The oldest level that this kernel still runs. */
  public static final int OLDEST = 1;

  private Spi() {}
}
