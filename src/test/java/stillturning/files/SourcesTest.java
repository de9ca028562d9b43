package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.parts.Part;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Guard.Action;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.parts.element.Management.Temperatures;
import stillturning.parts.protection.OvervoltageGuard;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;

/** What a file says of batteries, alternators and guards, and what the catalogue adds. */
class SourcesTest {

    @TempDir private Path folder;

    private <P extends Part> P read(Class<P> kind, String id, String line) throws IOException {
        String one =
                SampleStudy.ONE.replace(
                        "  battery: {is: battery, zone: tail}\n",
                        line.startsWith("battery:")
                                ? "  " + line + "\n"
                                : "  battery: {is: battery, zone: tail}\n  " + line + "\n");
        ReadStudy read = SampleStudy.read(folder, SampleStudy.STUDY, one);
        assertTrue(read.study().isPresent(), read.problems().toString());
        return assertInstanceOf(kind, SampleStudy.one(read).part(id).orElseThrow());
    }

    @Test
    void ageLowersTheCapacityAndRaisesTheResistance() throws IOException {
        Battery battery =
                read(
                        Battery.class,
                        "battery",
                        "battery: {is: battery, zone: tail, capacity: 20 Ah, resistance: 10 mohm,"
                                + " health: 50 %}");
        assertEquals(10 * 3600, battery.capacity().coulombs(), 1e-9);
        assertEquals(0.020, battery.ohms(), 1e-12);
    }

    @Test
    void aManagementOfFourLimitsComesBackByDefaultAndWatchesNoTemperature() throws IOException {
        Management management =
                read(
                                Battery.class,
                                "battery",
                                "battery: {is: battery, class: lifepo4, zone: tail, nominal: 24 V,"
                                        + " management: {under-voltage: 21 V, over-voltage: 30 V,"
                                        + " over-current: 200 A, after: 1 s}}")
                        .management()
                        .orElseThrow();
        assertEquals(new Limit(21, 1), management.underVolts());
        assertEquals(new Limit(30, 1), management.overVolts());
        assertEquals(new Limit(200, 1), management.overAmps());
        assertEquals(Double.POSITIVE_INFINITY, management.chargeAmps().at());
        assertEquals(Optional.empty(), management.temperatures());
        assertEquals(
                new Management.Reconnection(new Limit(26, 5), 30, 30, 3),
                management.reconnection());
    }

    @Test
    void aManagementWrittenInFullIsTakenAtItsWord() throws IOException {
        Management management =
                read(
                                Battery.class,
                                "battery",
                                "battery: {is: battery, class: lifepo4, zone: tail, management:"
                                        + " {under-voltage: 10 V, over-voltage: 15 V, over-current:"
                                        + " 200 A, after: 1 s, charge-current: 40 A, hot: 60 °C,"
                                        + " cold-for-charging: 0 °C, times: {under-voltage: 2 s,"
                                        + " over-voltage: 3 s, over-current: 10 ms, charge-current:"
                                        + " 4 s, temperature: 5 s}, reconnects: {charger: 13.2 V,"
                                        + " charger-for: 6 s, below: 14.4 V, pause: 10 s, tries: 1,"
                                        + " cooled: 45 °C}}}")
                        .management()
                        .orElseThrow();
        assertEquals(
                new Management(
                        new Limit(10, 2),
                        new Limit(15, 3),
                        new Limit(200, 0.01),
                        new Limit(40, 4),
                        Optional.of(new Temperatures(new Limit(60, 5), new Limit(0, 5), 45)),
                        new Management.Reconnection(new Limit(13.2, 6), 14.4, 10, 1)),
                management);
    }

    @Test
    void anAlternatorOfTheUsualClassIsUnsteadyAloneAndJumps() throws IOException {
        Alternator alternator =
                read(Alternator.class, "second", "second: {is: alternator, zone: engine}");
        assertEquals(WithoutBattery.UNSTEADY, alternator.alone().then());
        assertEquals(35, alternator.alone().clampVolts());
        assertEquals(0.4, alternator.alone().dumpSeconds());
        assertEquals(alternator.regulation().setVolts(), alternator.fullFieldVolts());
        Alternator magnets =
                read(
                        Alternator.class,
                        "second",
                        "second: {is: alternator, class: permanent-magnet, zone: engine,"
                                + " without-battery: gives-up}");
        assertEquals(WithoutBattery.GIVES_UP, magnets.alone().then());
        assertEquals(0, magnets.fullFieldVolts());
    }

    @Test
    void aGuardOpensUnlessItIsSaidToShort() throws IOException {
        String plain = "guard: {is: overvoltage-guard, zone: panel}";
        assertEquals(
                Action.DISCONNECTS, read(OvervoltageGuard.class, "guard", plain).trip().action());
        String crowbar = "guard: {is: overvoltage-guard, class: crowbar, zone: panel}";
        assertEquals(Action.SHORTS, read(OvervoltageGuard.class, "guard", crowbar).trip().action());
        String acts = "guard: {is: overvoltage-guard, acts: shorts, zone: panel}";
        assertEquals(Action.SHORTS, read(OvervoltageGuard.class, "guard", acts).trip().action());
    }
}
