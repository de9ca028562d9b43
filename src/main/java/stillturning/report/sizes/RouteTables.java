package stillturning.report.sizes;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;
import static stillturning.report.table.Unit.BORE;
import static stillturning.report.table.Unit.CELSIUS;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import stillturning.model.wiring.Bundles;
import stillturning.quantity.Formats;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WirePassage;

/** Where wires pass together: how thick, how bent, through what, and who must not be there. */
public final class RouteTables {

    /** What holes, bundles and crossings measure. */
    private static final List<Column<WirePassage>> MEASURES =
            List.of(
                    Column.<WirePassage>words("passage", 22, RouteTables::name).key("passage"),
                    figures("wires", 5, (WirePassage p) -> String.valueOf(p.wires().size())),
                    Column.<WirePassage>number("bundle", BORE, p -> p.tied().metres())
                            .value("bundleMetres", p -> p.tied().metres()),
                    Column.<WirePassage>number("bend at least", BORE, p -> p.tied().bendMetres())
                            .value("bendMetres", p -> p.tied().bendMetres()),
                    Column.<WirePassage>number("grommet", BORE, p -> p.tied().grommetMetres())
                            .value("grommetMetres", p -> p.tied().grommetMetres()),
                    Column.<WirePassage>number("hole", BORE, p -> p.tied().holeMetres())
                            .value("holeMetres", p -> p.tied().holeMetres()),
                    Column.<WirePassage>number("bare hole", BORE, p -> p.tied().bareHoleMetres())
                            .value("bareHoleMetres", p -> p.tied().bareHoleMetres()),
                    Column.<WirePassage>number(
                                    "around", CELSIUS, 0, p -> p.surroundings().celsius())
                            .value("celsius", p -> p.surroundings().celsius()));

    /** Who passes, and what is to be minded. */
    private static final List<Column<WirePassage>> COMPANY =
            List.of(
                    words("passage", 22, RouteTables::name),
                    Column.<WirePassage>words("mind", 44, RouteTables::mind).key("mind"),
                    Column.<WirePassage>words("which", 30, p -> String.join(", ", p.wires()))
                            .key("wires"));

    /** All of it. */
    public static final List<Column<WirePassage>> PASSAGES =
            Stream.concat(MEASURES.stream(), COMPANY.stream()).toList();

    private RouteTables() {}

    private static String name(WirePassage passage) {
        return passage.kind().name().toLowerCase(Locale.ROOT) + " " + passage.name();
    }

    /** What is to be minded, the gravest first. */
    private static String mind(WirePassage passage) {
        List<String> all = new ArrayList<>();
        passage.company()
                .engine()
                .ifPresent(
                        seconds ->
                                all.add(
                                        "part at least "
                                                + String.join(" from ", passage.company().apart())
                                                + ": none of them ends the engine alone, together"
                                                + " they do"
                                                + (seconds > 0
                                                        ? " in " + Formats.lasting(seconds)
                                                        : " at once")));
        if (!passage.company().unguarded().isEmpty() && passage.wires().size() > 1) {
            all.add(
                    "no protector guards "
                            + String.join(", ", passage.company().unguarded())
                            + ": lead alone");
        }
        if (passage.wires().size() > Bundles.MOST_WIRES
                || passage.tied().metres() > Bundles.MOST_METRES) {
            all.add("too many or too thick for one bundle: tie as several");
        }
        if (passage.surroundings().firewall()) {
            all.add("firewall: fireproof grommet or putty, no gap");
        }
        if (passage.surroundings().hot()) {
            all.add(
                    "keep away from exhaust and what is hot, no soft polyethylene; insulation"
                            + " stands "
                            + Formats.fixed(passage.surroundings().insulationCelsius(), 0)
                            + " °C");
        }
        return String.join("; ", all);
    }

    static Table<?> passages(SizingReport report, SizeTables made) {
        return made.table(
                "routing",
                "Holes, bundles and crossings",
                MEASURES,
                report.wires().passages(),
                "Diameters from conductor, stranding and a wall of 0.010 in (from memory), bundles"
                        + " by 1.2 times the root of the sum of squares (a maker's example, weak)."
                        + " bend: ten times the thickest wire (TM 1-1500-204-23-4); where you follow"
                        + " the stricter reading, ten times the bundle. grommet and hole: a tenth of"
                        + " room and a wall of 2.5 mm, common practice and a guess: its maker's sheet"
                        + " decides. bare hole: where a clamp keeps 3/8 in to its edge, else a grommet"
                        + " (AC 43.13-1B, 11-115).");
    }

    static Table<?> company(SizingReport report, SizeTables made) {
        return made.table(
                "routing-wires",
                "What passes there, and what to mind",
                COMPANY,
                report.wires().passages(),
                "Support at least every 24 in (AC 43.13-1B, 11-96), slack of at most 1/2 in"
                        + " (11-118), 6 in from fuel lines, never under 2 in (11-96); no distance from"
                        + " hot parts is published. Wires of doubled vital equipment and unprotected"
                        + " power wires are not bundled with others (FAA-H-8083-31 ch. 9, second"
                        + " source).",
                "Crossings are where wires have to go from zone to zone by the shortest way;"
                        + " whether they share a hole there is yours to say (shares: hole).");
    }
}
