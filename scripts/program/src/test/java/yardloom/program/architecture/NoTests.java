package yardloom.program.architecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;

/** Leaves out tests, also those that come in the kernel's test jar. */
public final class NoTests implements ImportOption {
  @Override
  public boolean includes(Location location) {
    return Predefined.DO_NOT_INCLUDE_TESTS.includes(location) && !location.contains("-tests.jar");
  }
}
