/**
 * The records of a workshop in one SQLite file: {@link sagwright.workshop.Workshop} is the door,
 * behind it {@link sagwright.workshop.Blanks}, {@link sagwright.workshop.Runs}, {@link
 * sagwright.workshop.Orders}, {@link sagwright.workshop.Grades} and what else there is. {@link
 * sagwright.workshop.RunJournal} keeps a run's bytes while they arrive.
 *
 * <p>Whatever was measured stays: newer rows follow, an undone action hides its rows. Each call is
 * one transaction. Sole user of java.sql and Jdbi. Works nothing out and knows no screen.
 */
package sagwright.workshop;
