package stillturning.story.device.battery;

/**
 * A battery's charge and warmth as they are, and how they may yet end.
 *
 * @param charge share of a full one, 0 to 1
 * @param fills whether it is being charged
 * @param rise how much warmer than its zone it is, as {@link Warmth} counts it
 * @param settled where that would settle
 */
public record Outlook(CellDevice cell, double charge, boolean fills, double rise, double settled) {

    /** As the battery is now. */
    public static Outlook of(CellDevice cell) {
        return new Outlook(
                cell,
                cell.value(),
                cell.perSecond() > 0,
                cell.warmth().map(Warmth::value).orElse(0.0),
                cell.warmth().map(Warmth::restingRise).orElse(0.0));
    }

    /** Puts the battery at the end of its charging, as cold or as warm as it may yet become. */
    public void end(boolean warm) {
        put(fills ? 1 : charge, warm ? Math.max(rise, settled) : 0);
    }

    /** Puts it back. */
    public void back() {
        put(charge, rise);
    }

    private void put(double fraction, double above) {
        cell.charge(fraction);
        cell.warmth().ifPresent(warmth -> warmth.value(above));
    }
}
