package stillturning.report.drawing;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Writes one picture as PNG, by way of its SVG; needs no screen. */
final class PngWriter {

    private final Picture picture;

    PngWriter(Picture picture) {
        this.picture = picture;
    }

    byte[] bytes(int sharpness) {
        BufferedImage image =
                new BufferedImage(
                        (int) Math.ceil(picture.width() * sharpness),
                        (int) Math.ceil(picture.height() * sharpness),
                        BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        canvas.setColor(Color.WHITE);
        canvas.fillRect(0, 0, image.getWidth(), image.getHeight());
        canvas.scale(sharpness, sharpness);
        canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        canvas.setRenderingHint(
                RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        document()
                .renderWithPlatform(
                        NullPlatformSupport.INSTANCE,
                        canvas,
                        new ViewBox(0, 0, (float) picture.width(), (float) picture.height()));
        canvas.dispose();
        return png(image);
    }

    private SVGDocument document() {
        byte[] svg = picture.toSvg().getBytes(StandardCharsets.UTF_8);
        SVGDocument document =
                new SVGLoader()
                        .load(new ByteArrayInputStream(svg), null, LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException(
                    "the drawing library cannot read the picture " + picture.id());
        }
        return document;
    }

    private static byte[] png(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, "png", bytes)) {
                throw new IllegalStateException("this Java writes no PNG");
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}
