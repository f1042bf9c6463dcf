package sagwright.screen;

import java.util.concurrent.Executor;
import sagwright.workshop.WorkshopException;

/** What all desks do alike: work goes to the work thread, and its end is told to a reply. */
public abstract class Desk {
  private final Executor work;

  /**
   * @param work one thread, the workshop's one writer
   */
  protected Desk(Executor work) {
    this.work = work;
  }

  /** Something that takes time, and may be refused. */
  protected interface Job {
    /**
     * @throws WorkshopException where the workshop refuses; its message is one line for people
     */
    void run() throws WorkshopException;
  }

  /** Runs on the work thread and tells the reply what became of it. */
  protected final void atWork(Reply reply, Job job) {
    work.execute(
        () -> {
          try {
            job.run();
            reply.done();
          } catch (WorkshopException e) {
            reply.refused(e.getMessage());
          } catch (RuntimeException e) {
            System.getLogger(getClass().getName()).log(System.Logger.Level.ERROR, "at the desk", e);
            reply.refused("the program stumbled: see its log");
          }
        });
  }

  /** The same where nobody waits for the end; a refusal goes to the log. */
  protected final void atWork(Job job) {
    atWork(
        new Reply() {
          @Override
          public void done() {
            // nobody waits for it
          }

          @Override
          public void refused(String why) {
            System.getLogger(Desk.class.getName()).log(System.Logger.Level.WARNING, why);
          }
        },
        job);
  }
}
