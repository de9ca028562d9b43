package stillturning.screen.window;

import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.application.Platform;
import stillturning.desk.AreaName;
import stillturning.desk.Desk;
import stillturning.desk.News;
import stillturning.desk.Upkeep;
import stillturning.screen.Area;
import stillturning.screen.Surroundings;

/** The study that is open, and the areas that show it; an area is made when it is first shown. */
final class OpenStudy implements AutoCloseable {

    private final Desk desk;
    private final Upkeep upkeep;
    private final Surroundings around;
    private final Map<AreaName, Area> areas = new EnumMap<>(AreaName.class);
    private final Runnable deaf;

    OpenStudy(Desk desk, Consumer<News> teller, ZoneId zone, Surroundings around) {
        this.desk = desk;
        this.upkeep = new Upkeep(desk.draft(), teller, zone);
        this.around = around;
        this.deaf = desk.draft().listen(state -> Platform.runLater(desk::changed));
    }

    Desk desk() {
        return desk;
    }

    Upkeep upkeep() {
        return upkeep;
    }

    /** The area of a name, with this study in it. */
    Area area(AreaName name) {
        return areas.computeIfAbsent(name, this::made);
    }

    private Area made(AreaName name) {
        throw new IllegalArgumentException(name.words());
    }

    @Override
    public void close() {
        deaf.run();
        desk.draft().leave();
    }
}
