package sagwright.screen.bench;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/**
 * A short sound for each step of a test, made of plain tones. Sound is an extra: where there is
 * none, nothing is heard and nothing is said.
 */
final class Tones {
  private static final float RATE_HZ = 22_050;
  private static final double LOUDNESS = 0.25;

  /** Fades in and out over so long, so that a tone does not click. */
  private static final double FADE_S = 0.008;

  private final ExecutorService player =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "tones");
            thread.setDaemon(true);
            return thread;
          });

  /** Plays the sound of a phase, if it has one. Returns at once. */
  void play(Phase phase) {
    double[] hz = tonesOf(phase);
    if (hz.length > 0) {
      player.execute(() -> sound(samples(hz)));
    }
  }

  void close() {
    player.shutdownNow();
  }

  /** Each tone lasts a ninth of a second; 0 is a pause. */
  private static double[] tonesOf(Phase phase) {
    return switch (phase) {
      case HOLD_STILL -> new double[] {440};
      case LOAD_SLOWLY -> new double[] {440, 660};
      case LET_OFF -> new double[] {880, 0, 880};
      case TOO_MUCH -> new double[] {990, 0, 990, 0, 990, 0, 990};
      case DONE, TURN -> new double[] {660, 880, 1100};
      case BROKEN_OFF, NO_ANSWER -> new double[] {440, 330};
      case LINE_LOST -> new double[] {330, 0, 330, 0, 330};
      case NO_BLANK, NO_HEAD, READY -> new double[0];
    };
  }

  private static byte[] samples(double[] hz) {
    int each = (int) (RATE_HZ / 9);
    byte[] samples = new byte[hz.length * each];
    double fade = FADE_S * RATE_HZ;
    for (int tone = 0; tone < hz.length; tone++) {
      for (int i = 0; i < each; i++) {
        double envelope = Math.min(1, Math.min(i, each - i) / fade);
        double wave = Math.sin(2 * Math.PI * hz[tone] * i / RATE_HZ);
        samples[tone * each + i] = (byte) Math.round(127 * LOUDNESS * envelope * wave);
      }
    }
    return samples;
  }

  private static void sound(byte[] samples) {
    AudioFormat format = new AudioFormat(RATE_HZ, 8, 1, true, false);
    try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
      line.open(format);
      line.start();
      line.write(samples, 0, samples.length);
      line.drain();
    } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
      // no mixer here, or it is taken: the words on the screen say the same
    }
  }
}
