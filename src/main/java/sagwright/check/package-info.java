/**
 * How the bench is proved: {@link sagwright.check.LineCalibration} of load and gauge from points
 * with the terms of ISO 7500-1, {@link sagwright.check.FrameCompliance} from a stout bar, {@link
 * sagwright.check.CheckRod} and its {@link sagwright.check.ControlChart}.
 *
 * <p>Terms and sources: docs/calibration-terms.md. Knows no file, no store and no screen.
 */
package sagwright.check;
