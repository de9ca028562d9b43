package stillturning.report.record;

import stillturning.reliability.asbuilt.Explanation;

/**
 * A value of the study that would explain what was measured, in the unit in which it is written.
 *
 * @param file name of the file in the study's folder
 * @param path of it there
 * @param stated as it is
 * @param needed what it would have to be
 * @param half half the interval of 95 % of that
 */
public record ExplainedValue(
        Explanation explanation,
        String file,
        String path,
        String stated,
        String needed,
        String half) {}
