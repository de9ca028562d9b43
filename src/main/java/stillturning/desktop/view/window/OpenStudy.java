package stillturning.desktop.view.window;

import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import javafx.application.Platform;
import stillturning.desktop.view.Area;
import stillturning.desktop.view.AreaHost;
import stillturning.desktop.view.breaking.BreakArea;
import stillturning.desktop.view.decide.DecideArea;
import stillturning.desktop.view.draw.DrawArea;
import stillturning.desktop.view.explain.ExplainArea;
import stillturning.desktop.view.size.SizeArea;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.FileUpkeep;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.explain.Explaining;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.desktop.viewmodel.size.Proposing;
import stillturning.desktop.viewmodel.size.Sizes;
import stillturning.dossier.NamedFailures;

/** The study that is open, and the areas that show it; an area is made when it is first shown. */
final class OpenStudy implements AutoCloseable {

    private final Desk desk;
    private final OfferedDrawings offers;
    private final FileUpkeep upkeep;
    private final AreaHost host;
    private final Map<AreaName, Area> areas = new EnumMap<>(AreaName.class);
    private final Runnable stopListening;

    OpenStudy(Desk desk, FileUpkeep.Teller teller, ZoneId zone, AreaHost host) {
        this.desk = desk;
        this.offers = new OfferedDrawings(desk);
        this.upkeep = new FileUpkeep(desk.draft(), teller, zone);
        this.host = host;
        this.stopListening = desk.draft().listen(state -> Platform.runLater(this::changed));
    }

    private void changed() {
        desk.changed();
        upkeep.tidy();
    }

    Desk desk() {
        return desk;
    }

    FileUpkeep upkeep() {
        return upkeep;
    }

    /** The area of a name, with this study in it. */
    Area area(AreaName name) {
        return areas.computeIfAbsent(name, this::made);
    }

    private Area made(AreaName name) {
        return switch (name) {
            case DRAW -> new DrawArea(desk, offers);
            case DECIDE -> new DecideArea(new Deciding(desk, offers));
            case SIZE -> size();
            case BREAK -> new BreakArea(desk);
            case EXPLAIN -> new ExplainArea(new Explaining(desk, NamedFailures::cases), host);
            case START -> throw new IllegalArgumentException("the start needs no study");
        };
    }

    private Area size() {
        Sizes sizes = new Sizes(desk, place -> desk.go(AreaName.DRAW, place.path()));
        return new SizeArea(desk, sizes, new Proposing(desk, sizes));
    }

    @Override
    public void close() {
        stopListening.run();
        desk.draft().leave();
    }
}
