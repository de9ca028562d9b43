package stillturning.report.drawing.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Polyline;
import stillturning.report.drawing.XmlText;

class TimePlotTest {
    private static final Pattern POINT = Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)");

    private static Plot plot(double until, Series... series) {
        return new Plot("p", "t", until, List.of(volts(List.of(series))), List.of(), List.of());
    }

    private static Graph volts(List<Series> series, Threshold... thresholds) {
        return new Graph("Voltage (V)", series, List.of(thresholds), new Graph.AsFound());
    }

    private static List<Double> heights(Document document, String series) {
        List<Double> heights = new ArrayList<>();
        for (Element group : XmlText.elements(document, "g")) {
            if (group.getAttribute("data-part").startsWith(series)) {
                Element path = (Element) group.getElementsByTagName("path").item(0);
                Matcher points = POINT.matcher(path.getAttribute("d"));
                while (points.find()) {
                    heights.add(Double.parseDouble(points.group(2)));
                }
            }
        }
        return heights;
    }

    @Test
    void aNarrowPlotKeepsItsLettersAndStaysOnItsPaper() {
        Plot plot = ExamplePlots.shortThenDischarge();
        PlotSheet narrow = TimePlot.sheet(plot, 560);
        assertEquals(560, narrow.picture().width());
        assertEquals(TimePlot.of(plot).smallestLetters(), narrow.picture().smallestLetters());
        for (PlotSheet.Panel panel : narrow.panels()) {
            assertTrue(panel.box().width() > 40 && panel.box().right() < 560, panel::toString);
        }
    }

    @Test
    void placesAndTimesOfAPanelAnswerEachOther() {
        Plot plot = ExamplePlots.shortThenDischarge();
        PlotSheet sheet = TimePlot.sheet(plot, TimePlot.BROAD);
        assertEquals(TimePlot.of(plot), sheet.picture());
        assertTrue(sheet.panels().size() > 1);
        assertTrue(sheet.panels().stream().anyMatch(panel -> panel.shows(3600)));
        for (PlotSheet.Panel panel : sheet.panels()) {
            double middle = (panel.fromSeconds() + panel.toSeconds()) / 2;
            Point at = new Point(panel.x(middle), panel.box().y() + 1);
            assertEquals(middle, sheet.secondsAt(at).orElseThrow(), 1e-9);
            assertEquals(panel.fromSeconds(), panel.secondsAt(0));
            assertTrue(panel.box().right() <= sheet.picture().width());
        }
        assertTrue(sheet.secondsAt(new Point(1, 1)).isEmpty());
    }

    @Test
    void samePlotSameTextOfAFewKilobytes() {
        String svg = TimePlot.of(ExamplePlots.shortThenDischarge()).toSvg();
        assertEquals(svg, TimePlot.of(ExamplePlots.shortThenDischarge()).toSvg());
        assertTrue(svg.length() < 20_000, () -> svg.length() + " characters");
    }

    @Test
    void oneSpikeAmongThousandsOfSamplesIsDrawnToItsTip() throws Exception {
        List<Series.Sample> samples = new ArrayList<>();
        for (int i = 0; i <= 5000; i++) {
            samples.add(new Series.Sample(i * 0.01, i == 2500 ? 3 : i == 4000 ? 19 : 12));
        }
        Plot plot = plot(50, new Series("bus", samples));
        List<Double> heights = heights(XmlText.parsed(TimePlot.of(plot).toSvg()), "series 0");
        ValueAxis scale = ValueAxis.of(plot.graphs().get(0));
        double lowest = heights.stream().mapToDouble(y -> y).max().orElseThrow();
        double highest = heights.stream().mapToDouble(y -> y).min().orElseThrow();
        double unit = (lowest - highest) / (scale.share(19) - scale.share(3));
        double level = heights.get(0);
        assertEquals(scale.share(12) - scale.share(3), (lowest - level) / unit, 1e-3);
        assertTrue(heights.size() < 12, () -> heights.size() + " points");
    }

    private static Plot eventsAt(double until, double... seconds) {
        List<EventMark> events = new ArrayList<>();
        for (double at : seconds) {
            events.add(new EventMark(events.size() + 1, at));
        }
        return new Plot("p", "t", until, List.of(volts(List.of())), events, List.of());
    }

    // computed here
    @Test
    void millisecondsAndAnHourGetPanelsOfTheirOwn() {
        List<TimeWindow> windows = TimeWindows.of(ExamplePlots.shortThenDischarge());
        assertEquals(3, windows.size());
        assertEquals(0.1, windows.get(0).to(), 1e-9);
        assertEquals(7, windows.get(1).to(), 1e-9);
        assertEquals(3600, windows.get(2).to());
    }

    @Test
    void whatHappensAtTheEndWithinASecondIsEnlargedToo() {
        List<TimeWindow> windows =
                TimeWindows.of(eventsAt(2400, 0, 20, 2046, 2046.005, 2046.03, 2047));
        assertTrue(windows.stream().anyMatch(w -> w.origin() == 0 && w.to() < 100), "" + windows);
        TimeWindow end = windows.get(1);
        assertTrue(end.holds(2046) && end.holds(2046.03) && end.to() - end.from() < 1.5, "" + end);
        assertEquals("34 min 6 s", TimeUnit.clock(2046));
        assertEquals("34 min 272 ms", TimeUnit.clock(2040.272));
        assertEquals("1 min", TimeUnit.clock(60));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void enlargedStretchesLieInTheStoryAndTheWholeComesLast(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] times = new double[random.nextInt(1, 60)];
        for (int i = 1; i < times.length; i++) {
            times[i] = Math.exp(random.nextDouble(-6, 8));
        }
        List<TimeWindow> windows = TimeWindows.of(eventsAt(3600, times));
        assertTrue(windows.size() <= 4, "" + windows);
        TimeWindow whole = windows.get(windows.size() - 1);
        assertEquals(new TimeWindow(0, 3600), whole);
        windows.forEach(w -> assertTrue(whole.holds(w) && w.from() < w.to(), "" + w));
    }

    @Test
    void eventsWithinOneStretchShareOnePanel() {
        assertEquals(1, TimeWindows.of(ExamplePlots.overVoltage()).size());
    }

    @Test
    void everyEventNumberIsWrittenOrCoveredByARange() {
        String svg = TimePlot.of(ExamplePlots.shortThenDischarge()).toSvg();
        for (String words : List.of("1", "2", "3", "4", "5", "6", "7", "1–3")) {
            assertTrue(svg.contains(">" + words + "</text>"), words);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void eventNumbersNeverOverlap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<EventMark> events = new ArrayList<>();
        for (int i = 1; i <= 200; i++) {
            events.add(new EventMark(i, seed * i * 0.01 + (random.nextInt(5) == 0 ? 0.5 : 0)));
        }
        Box panel = new Box(100, 50, 250, 200);
        List<Mark> marks = new EventStrip(events, new TimeWindow(0, 10), panel).marks(300);
        double last = Double.NEGATIVE_INFINITY;
        int pills = 0;
        for (Mark mark : marks) {
            if (mark instanceof Mark.Text text) {
                double half = PlotPainter.width(text.words(), text.type()) / 2;
                assertTrue(text.x() - half > last, text.words());
                last = text.x() + half;
                pills++;
            }
        }
        assertTrue(pills > 0 && last < panel.right() + 10);
    }

    @Test
    void thresholdsCloseTogetherKeepTheirLabelsApart() throws Exception {
        Plot plot =
                new Plot(
                        "p",
                        "",
                        10,
                        List.of(
                                volts(
                                        List.of(),
                                        new Threshold("limit a", 12),
                                        new Threshold("limit b", 12.01),
                                        new Threshold("limit c", 0))),
                        List.of(),
                        List.of());
        List<Double> lines =
                XmlText.elements(XmlText.parsed(TimePlot.of(plot).toSvg()), "text").stream()
                        .filter(text -> text.getTextContent().startsWith("limit"))
                        .map(text -> Double.parseDouble(text.getAttribute("y")))
                        .sorted()
                        .toList();
        assertEquals(3, lines.size());
        assertTrue(lines.get(1) - lines.get(0) >= 12);
    }

    @Test
    void statesAreBarsWithPatternTextAndLegend() throws Exception {
        Document document = XmlText.parsed(TimePlot.of(ExamplePlots.shortThenDischarge()).toSvg());
        String words = document.getDocumentElement().getTextContent();
        assertTrue(words.contains("interrupted"));
        long stopped =
                XmlText.elements(document, "text").stream()
                        .filter(text -> text.getTextContent().equals("stopped"))
                        .count();
        assertTrue(stopped >= 1);
    }

    @Test
    void aSecondGraphStandsBelowTheFirstOnTheSameAxisOfTime() throws Exception {
        Document document = XmlText.parsed(TimePlot.of(ExamplePlots.shortThenDischarge()).toSvg());
        double lowestVolts =
                heights(document, "series 0").stream().mapToDouble(y -> y).max().orElseThrow();
        List<Double> charge = heights(document, "series 2");
        assertTrue(charge.stream().allMatch(y -> y > lowestVolts));
        // 95 % and 2 % of an axis from 0 to 100 that is 84 high
        double high = charge.stream().mapToDouble(y -> y).min().orElseThrow();
        double low = charge.stream().mapToDouble(y -> y).max().orElseThrow();
        assertEquals(0.93 * 84, low - high, 0.02);
        long whole =
                XmlText.elements(document, "text").stream()
                        .filter(text -> text.getTextContent().startsWith("whole story"))
                        .count();
        assertEquals(1, whole);
    }

    @Test
    void aPngHasTheSizeOfThePictureAndShowsIt() throws Exception {
        Picture picture = TimePlot.of(ExamplePlots.shortThenDischarge());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.toPng(2)));
        assertEquals(2 * picture.width(), image.getWidth());
        assertEquals(2 * picture.height(), image.getHeight());
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                colours.add(image.getRGB(x, y) & 0xffffff);
            }
        }
        assertEquals(0xffffff, image.getRGB(0, 0) & 0xffffff);
        // the first series, the second, and a bar of what stands still
        assertTrue(colours.containsAll(Set.of(0x000000, 0x12508f, 0x333333)), "" + colours);
    }

    @Test
    void hostileTextsAndFlatLinesAreDrawn() throws Exception {
        String hostile = "<&\"\u0001" + "很长的名字".repeat(40);
        Plot plot =
                new Plot(
                        "p",
                        hostile,
                        1e-4,
                        List.of(
                                new Graph(
                                        hostile,
                                        List.of(
                                                new Series(
                                                        hostile,
                                                        List.of(
                                                                new Series.Sample(0, 12),
                                                                new Series.Sample(1e-4, 12)))),
                                        List.of(new Threshold(hostile, 12)),
                                        new Graph.AsFound())),
                        List.of(new EventMark(-3, 0)),
                        List.of(
                                new StateRow(
                                        hostile,
                                        List.of(
                                                new StateRow.RowSpan(
                                                        0,
                                                        1e-4,
                                                        hostile,
                                                        StateRow.Fill.HATCHED)))));
        Document document = XmlText.parsed(TimePlot.of(plot).toSvg());
        assertFalse(heights(document, "series 0").isEmpty());
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> plot(0));
        assertThrows(IllegalArgumentException.class, () -> plot(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> new Series.Sample(0, Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Series("s", List.of(new Series.Sample(1, 0), new Series.Sample(0, 0))));
        assertThrows(IllegalArgumentException.class, () -> new Graph.FixedRange(1, 1));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void droppedPointsLieWithinTheToleranceOfWhatIsKept(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Point> points = new ArrayList<>();
        double y = 0;
        for (int i = 0; i < 400; i++) {
            y += random.nextDouble(-1, 1);
            points.add(new Point(i * random.nextDouble(0.9, 1), y));
        }
        List<Point> kept = Polyline.simplified(points, 0.5);
        assertTrue(kept.size() < points.size());
        assertEquals(points.get(0), kept.get(0));
        assertEquals(points.get(399), kept.get(kept.size() - 1));
        for (Point point : points) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 1; i < kept.size(); i++) {
                nearest = Math.min(nearest, distance(point, kept.get(i - 1), kept.get(i)));
            }
            assertTrue(nearest <= 0.5 + 1e-9, "" + point);
        }
    }

    private static double distance(Point p, Point a, Point b) {
        double square = Math.pow(b.x() - a.x(), 2) + Math.pow(b.y() - a.y(), 2);
        double dot = (p.x() - a.x()) * (b.x() - a.x()) + (p.y() - a.y()) * (b.y() - a.y());
        double share = square == 0 ? 0 : Math.min(1, Math.max(0, dot / square));
        Point foot = new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
        return Math.hypot(p.x() - foot.x(), p.y() - foot.y());
    }

    // computed here
    @Test
    void ticksAreRoundNumbers() {
        assertEquals(List.of(0.0, 2.0, 4.0, 6.0, 8.0), Ticks.within(0, 8, 6).values());
        assertEquals(0.05, Ticks.step(0.021), 1e-12);
        assertEquals("0.3", Ticks.text(0.1 + 0.2));
        assertEquals("−20", Ticks.text(-20));
        assertEquals("0", Ticks.text(-0.0));
    }
}
