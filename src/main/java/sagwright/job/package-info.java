/**
 * One class for each thing that the maker asks for, whether by window or by command: evaluate a
 * sheet, record a test, import, grade, rank.
 *
 * <p>Brings rooms together; knows no screen, no command line, no serial port.
 */
package sagwright.job;
