package yardloom.water.pipe.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;
import yardloom.water.pipe.formula.PipeNetwork.Reservoir;

/**
 * A tree or loop of garden tubes by a number: the same number gives the same network, as parts and
 * as the engine's text. Outlets of one network share an exponent, as the engine asks.
 */
final class RandomNetwork {
  static final String SOURCE = "s";

  final List<Joint> joints = new ArrayList<>();
  final List<Pipe> pipes = new ArrayList<>();
  final double headM;
  final double exponent;

  RandomNetwork(long seed) {
    Random random = new Random(seed);
    Friction law =
        new DarcyWeisbach(
            DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S, DarcyWeisbach.ENGINE_GRAVITY);
    headM = 14 + 10 * random.nextDouble();
    exponent = new double[] {0.5, 0.46, 0.62, 1.0}[random.nextInt(4)];
    int count = 2 + random.nextInt(50);
    for (int i = 0; i < count; i++) {
      Emitter outlet =
          random.nextInt(4) == 0
              ? null
              : Emitter.rated((1 + 7 * random.nextDouble()) / 3.6e6, 10, exponent);
      joints.add(new Joint("j" + i, 3 * random.nextDouble(), 0, outlet));
      // Mostly on from one of the last, as rows are, now and then a branch from far back.
      int back = random.nextInt(5) == 0 ? random.nextInt(Math.max(1, i)) : Math.max(0, i - 1);
      pipes.add(pipe(i == 0 ? SOURCE : "j" + back, "j" + i, random, law));
    }
    int loops = random.nextBoolean() ? 0 : 1 + random.nextInt(6);
    for (int k = 0; k < loops && count > 2; k++) {
      int to = 2 + random.nextInt(count - 2);
      pipes.add(pipe("j" + random.nextInt(to - 1), "j" + to, random, law));
    }
  }

  private Pipe pipe(String from, String to, Random random, Friction law) {
    double boreM = 0.011 + 0.014 * random.nextDouble();
    double lengthM = 0.2 + 7.8 * random.nextDouble();
    return new Pipe("p" + pipes.size(), from, to, lengthM, boreM, law, 0.3 * random.nextInt(7));
  }

  PipeNetwork network() {
    return new PipeNetwork(
        joints, List.of(new Reservoir(SOURCE, headM)), pipes, DarcyWeisbach.ENGINE_GRAVITY);
  }

  /** The engine's input: litres a second, millimetres, metres. */
  String inp() {
    StringBuilder text = new StringBuilder("[TITLE]\nrandom\n[JUNCTIONS]\n");
    for (Joint joint : joints) {
      text.append(String.format(Locale.ROOT, "%s %.12g 0%n", joint.id(), joint.elevationM()));
    }
    text.append(String.format(Locale.ROOT, "[RESERVOIRS]%n%s %.12g%n[PIPES]%n", SOURCE, headM));
    for (Pipe pipe : pipes) {
      text.append(
          String.format(
              Locale.ROOT,
              "%s %s %s %.12g %.12g 0.0015 %.12g Open%n",
              pipe.id(),
              pipe.from(),
              pipe.to(),
              pipe.lengthM(),
              pipe.diameterM() * 1000,
              pipe.minorK()));
    }
    text.append("[EMITTERS]\n");
    for (Joint joint : joints) {
      if (joint.emitter() != null) {
        text.append(
            String.format(
                Locale.ROOT, "%s %.12g%n", joint.id(), joint.emitter().coefficient() * 1000));
      }
    }
    return text
        + String.format(
            Locale.ROOT,
            "[OPTIONS]%nUNITS LPS%nHEADLOSS D-W%nACCURACY 1e-8%nTRIALS 500%nEMITTER EXPONENT %.3g%n"
                + "[TIMES]%nDURATION 0%n[END]%n",
            exponent);
  }
}
