package stillturning.files.move;

/** What a move does to a drawing. */
public enum MoveKind {
    /** A second path to a bus or a load. */
    SECOND_PATH,
    /** A load's input moved to another bus. */
    OTHER_SOURCE,
    /** A bus split in two. */
    SPLIT_BUS,
    /** A ground, a connector, a hole or a bundle shared no longer. */
    SEPARATED,
    /** A battery added. */
    BATTERY_ADDED,
    /** A battery removed. */
    BATTERY_REMOVED,
    /** A battery of another size or chemistry. */
    BATTERY_RESIZED,
    /** A charging path by other means. */
    CHARGING_PATH,
    /** Over-voltage protection. */
    OVER_VOLTAGE,
    /** Something shown to the pilot. */
    WARNING_ADDED,
    /** A protector added, or of another rating or class. */
    PROTECTOR,
    /** A load moved between breaker and controller. */
    SWITCHED_OTHERWISE,
    /** A part in line removed. */
    PART_REMOVED,
    /** A whole path removed. */
    PATH_REMOVED,
    /** An act of the pilot added, removed or put elsewhere in its order. */
    ACT_CHANGED
}
