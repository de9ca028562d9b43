package stillturning.desktop.view.picture;

import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import stillturning.report.drawing.Paper;

/** The colours of a picture on a region: it is dark where the region's own background is. */
final class RegionColours {
    private final Region region;
    private Paper paper = Paper.LIGHT;
    private String colour = paper.ground();

    RegionColours(Region region) {
        this.region = region;
    }

    /** Told when all colours have changed. */
    void onChange(Runnable action) {
        region.backgroundProperty()
                .addListener(
                        (of, old, now) -> {
                            String before = colour;
                            look();
                            if (!before.equals(colour)) {
                                action.run();
                            }
                        });
    }

    private void look() {
        Background background = region.getBackground();
        if (background != null
                && !background.getFills().isEmpty()
                && last(background).getFill() instanceof Color fill
                && fill.isOpaque()) {
            paper = fill.getBrightness() < 0.5 ? Paper.DARK : Paper.LIGHT;
            colour =
                    String.format(
                            "#%02x%02x%02x",
                            Math.round(fill.getRed() * 255),
                            Math.round(fill.getGreen() * 255),
                            Math.round(fill.getBlue() * 255));
        }
    }

    private static BackgroundFill last(Background background) {
        return background.getFills().get(background.getFills().size() - 1);
    }

    /** On the screen, for one of the picture; paper is the background itself. */
    String colour(String ofPicture) {
        return ofPicture.equals(Paper.LIGHT.ground()) ? colour : paper.colour(ofPicture);
    }
}
