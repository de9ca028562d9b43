package stillturning.report.record;

import stillturning.parts.element.Cell;
import stillturning.reliability.asbuilt.DischargeLog;
import stillturning.reliability.asbuilt.FittedBattery;

/**
 * What a log says of a battery.
 *
 * @param battery its id
 * @param stated as the study has it
 * @param file name of the log
 */
public record Fit(
        String battery,
        String label,
        Cell stated,
        FittedBattery fitted,
        String file,
        DischargeLog log) {}
