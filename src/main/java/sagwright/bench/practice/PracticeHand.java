package sagwright.bench.practice;

import java.util.Random;
import sagwright.bench.Instruction;

/**
 * A hand that does as it is told: loads unevenly, a little late in letting off, and holds still
 * otherwise. Stepped in the head's time by one thread, told from another.
 */
final class PracticeHand {
  private static final double LOADING_S = 5;
  private static final double LETTING_OFF_S = 3;
  private static final double REACTION_S = 0.35;

  /** Before it begins to load: the maker looks up from the screen. */
  private static final double UNHURRIED_S = 0.9;

  /** How long the hand keeps up one speed, about. */
  private static final double SPEED_MEMORY_S = 0.4;

  private static final double TREMOR_HZ = 8;
  private static final double TREMOR_SHARE = 0.004;

  private final Random random;
  private final double unevenness;
  private volatile Wish wish = new Wish(Instruction.DONE, 1);
  private Wish heeded = wish;
  private double sinceToldS;
  private double speed;
  private double forceN;
  private double timeS;

  /** What the hand was last told, and how far that test is to load. */
  private record Wish(Instruction instruction, double targetN) {}

  PracticeHand(long seed, double unevenness) {
    this.random = new Random(seed);
    this.unevenness = unevenness;
  }

  void tell(Instruction instruction, double targetN) {
    if (wish.instruction != instruction || wish.targetN != targetN) {
      wish = new Wish(instruction, targetN);
    }
  }

  /** Lets go at once: another shaft is laid. */
  void letGo() {
    forceN = 0;
    tell(Instruction.DONE, wish.targetN);
  }

  /** Goes on by so many seconds; the force in N then. */
  double step(double seconds) {
    timeS += seconds;
    if (!wish.equals(heeded)) {
      heeded = wish;
      sinceToldS = 0;
    }
    sinceToldS += seconds;
    double pull = seconds / SPEED_MEMORY_S;
    speed += -pull * speed + Math.sqrt(2 * pull) * random.nextGaussian();
    double uneven = Math.max(0, 1 + unevenness * speed); // it may stop, but does not turn back
    boolean loads = heeded.instruction == Instruction.LOAD_SLOWLY;
    if (loads && sinceToldS > UNHURRIED_S) {
      forceN += heeded.targetN / LOADING_S * uneven * seconds;
    } else if (!loads && sinceToldS > REACTION_S) {
      forceN -= heeded.targetN / LETTING_OFF_S * uneven * seconds;
    } else if (!loads && heeded.instruction == Instruction.LET_OFF) {
      forceN += heeded.targetN / LOADING_S * 0.3 * uneven * seconds;
    }
    forceN = Math.max(0, forceN);
    double tremor = TREMOR_SHARE * unevenness * Math.sin(2 * Math.PI * TREMOR_HZ * timeS);
    return forceN * (1 + tremor);
  }
}
