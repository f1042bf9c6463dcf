package sagwright.job;

import sagwright.bench.Calibration;
import sagwright.sheet.Sheet;
import sagwright.workshop.Blank;
import sagwright.workshop.WorkshopOrder;

/**
 * What is known before a test's first reading.
 *
 * @param blank that lies on the bench
 * @param before the sheet of the test without its run: shaft, set-up, instrument
 * @param calibration in force, complete
 * @param order that the blank is tried for, null for none
 */
public record TestSetting(
    Blank blank, Sheet before, Calibration calibration, WorkshopOrder order) {}
