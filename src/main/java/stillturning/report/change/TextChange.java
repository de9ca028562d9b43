package stillturning.report.change;

/**
 * A value of a file that is written otherwise than before.
 *
 * @param where path in the file: {@code parts.battery.capacity}
 * @param line where it stands now; 0 where it is gone
 * @param before empty where it was not there
 * @param after empty where it is gone
 */
public record TextChange(String file, int line, String where, String before, String after) {}
