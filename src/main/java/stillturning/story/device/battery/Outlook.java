package stillturning.story.device.battery;

/** A battery's charge and warmth as they are, and how they may yet end. */
public record Outlook(CellDevice cell, double charge, boolean fills, double rise, double settled) {

    public static Outlook of(CellDevice cell) {
        return new Outlook(
                cell,
                cell.value(),
                cell.perSecond() > 0,
                cell.warmth().map(Warmth::value).orElse(0.0),
                cell.warmth().map(Warmth::restingRise).orElse(0.0));
    }

    public void end(boolean warm) {
        put(fills ? 1 : charge, warm ? Math.max(rise, settled) : 0);
    }

    public void back() {
        put(charge, rise);
    }

    private void put(double fraction, double above) {
        cell.charge(fraction);
        cell.warmth().ifPresent(warmth -> warmth.value(above));
    }
}
