package yardloom.water.pipe.formula;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

/** Reads the engine's text input as far as the reference networks use it. */
final class InpNetwork {
  private static final double FOOT = 0.3048;
  private static final double PSI_PER_FOOT = 0.4333;
  private static final double GPM = 231 * 16.387064e-6 / 60;

  /** Of the water by which the engine's US report turns feet into psi: 0.4333 psi for a foot. */
  static final double DENSITY =
      Pressure.psi(PSI_PER_FOOT).pascals() / (FOOT * DarcyWeisbach.GRAVITY);

  final double sourceHeadM;
  final String supply;
  final PipeNetwork network;

  private InpNetwork(double sourceHeadM, String supply, PipeNetwork network) {
    this.sourceHeadM = sourceHeadM;
    this.supply = supply;
    this.network = network;
  }

  static InpNetwork read(String name) throws IOException {
    Map<String, List<String[]>> sections = sections(name);
    Map<String, String> options = new HashMap<>();
    for (String[] line : sections.get("OPTIONS")) {
      options.put(
          String.join(" ", List.of(line).subList(0, line.length - 1)), line[line.length - 1]);
    }
    boolean us = options.get("UNITS").equals("GPM");
    double length = us ? FOOT : 1;
    double diameter = us ? FOOT / 12 : 0.001;
    double flow = us ? GPM : 0.001 / 60;
    double exponent = Double.parseDouble(options.get("EMITTER EXPONENT"));
    double perMetre = us ? Math.pow(PSI_PER_FOOT / FOOT, exponent) : 1;
    Map<String, Emitter> emitters = new HashMap<>();
    for (String[] e : sections.getOrDefault("EMITTERS", List.of())) {
      emitters.put(e[0], new Emitter(Double.parseDouble(e[1]) * flow * perMetre, exponent));
    }
    List<PipeNetwork.Joint> joints = new ArrayList<>();
    for (String[] j : sections.get("JUNCTIONS")) {
      joints.add(
          new PipeNetwork.Joint(
              j[0],
              Double.parseDouble(j[1]) * length,
              Double.parseDouble(j[2]) * flow,
              emitters.get(j[0])));
    }
    List<PipeNetwork.Pipe> pipes = new ArrayList<>();
    for (String[] p : sections.get("PIPES")) {
      double roughness = Double.parseDouble(p[5]);
      Friction friction =
          options.get("HEADLOSS").equals("H-W")
              ? new HazenWilliams(roughness)
              : new DarcyWeisbach(
                  roughness / 1000, Water.VISCOSITY_M2S, DarcyWeisbach.ENGINE_GRAVITY);
      pipes.add(
          new PipeNetwork.Pipe(
              p[0],
              p[1],
              p[2],
              Double.parseDouble(p[3]) * length,
              Double.parseDouble(p[4]) * diameter,
              friction,
              Double.parseDouble(p[6])));
    }
    String[] source = sections.get("RESERVOIRS").get(0);
    double head = Double.parseDouble(source[1]) * length;
    return new InpNetwork(
        head,
        pipes.get(0).id(),
        new PipeNetwork(
            joints,
            List.of(new PipeNetwork.Reservoir(source[0], head)),
            pipes,
            DarcyWeisbach.ENGINE_GRAVITY));
  }

  /** Pressure as the engine's US report has it. */
  static double psi(double metres) {
    return Water.pressure(Length.metres(metres), DENSITY).psi();
  }

  private static Map<String, List<String[]>> sections(String name) throws IOException {
    Map<String, List<String[]>> sections = new HashMap<>();
    List<String[]> current = new ArrayList<>();
    try (InputStream in = InpNetwork.class.getResourceAsStream("networks/" + name + ".inp")) {
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\\R")) {
        String text = line.trim();
        if (text.startsWith("[")) {
          current = new ArrayList<>();
          sections.put(text.substring(1, text.length() - 1).toUpperCase(Locale.ROOT), current);
        } else if (!text.isEmpty() && !text.startsWith(";")) {
          current.add(text.split("\\s+"));
        }
      }
    }
    return sections;
  }
}
