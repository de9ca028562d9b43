package stillturning.files.move;

/** What a move does to a drawing. */
public enum MoveKind {
    SECOND_PATH("a second path to a bus or a load"),
    OTHER_SOURCE("a load's input moved to another bus"),
    SPLIT_BUS("a bus split in two"),
    SEPARATED("a ground, a connector, a hole or a bundle shared no longer"),
    BATTERY_ADDED("a battery added"),
    BATTERY_REMOVED("a battery removed"),
    BATTERY_RESIZED("a battery of another size or chemistry"),
    CHARGING_PATH("a charging path by other means"),
    OVER_VOLTAGE("over-voltage protection"),
    PROTECTOR("a protector added, or of another rating or class"),
    SWITCHED_OTHERWISE("a load moved between breaker and controller"),
    PART_REMOVED("a part in line removed"),
    PATH_REMOVED("a whole path removed"),
    ACT_CHANGED("an act of the pilot added, removed or put elsewhere in its order");

    private final String words;

    MoveKind(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
