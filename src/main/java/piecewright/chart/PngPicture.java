package piecewright.chart;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.AWTError;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Pictures of ours as PNG, two dots to a unit; drawn in memory, with the letters the window has, on no display. */
public final class PngPicture {
    private static final int DOTS_PER_UNIT = 2;
    private static final String METADATA = "javax_imageio_png_1.0";
    /** A picture fetches nothing; the largest of ours, with the cures of every style, has under three thousand shapes. */
    private static final LoaderContext LIMITED = LoaderContext.builder()
            .externalResourcePolicy(ResourcePolicy.DENY_ALL)
            .documentLimits(new DocumentLimits(30, 15, 20_000))
            .build();

    private static final List<String> LETTERS = List.of("Lato-Regular.ttf", "Lato-Bold.ttf");

    private PngPicture() {}

    /** The picture of an SVG text of ours. */
    public static byte[] of(String svg) throws UndrawableException {
        try {
            withOurLetters();
            return written(drawn(svg));
        } catch (IOException | FontFormatException | RuntimeException | LinkageError | InternalError | AWTError none) {
            throw new UndrawableException(none);
        }
    }

    /** Registering twice does nothing. */
    private static void withOurLetters() throws IOException, FontFormatException {
        for (String name : LETTERS) {
            try (InputStream stream = Objects.requireNonNull(
                    PngPicture.class.getResourceAsStream("/piecewright/desktop/fonts/" + name))) {
                GraphicsEnvironment.getLocalGraphicsEnvironment()
                        .registerFont(Font.createFont(Font.TRUETYPE_FONT, stream));
            }
        }
    }

    private static BufferedImage drawn(String svg) {
        SVGDocument document = Objects.requireNonNull(
                new SVGLoader().load(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)), null, LIMITED));
        int width = (int) Math.ceil(document.size().width) * DOTS_PER_UNIT;
        int height = (int) Math.ceil(document.size().height) * DOTS_PER_UNIT;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        document.render((java.awt.Component) null, pen, new ViewBox(width, height));
        pen.dispose();
        return image;
    }

    /** With the mark that tells our pictures from others, as PNG's own text. */
    private static byte[] written(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), null);
        IIOMetadataNode entry = new IIOMetadataNode("tEXtEntry");
        entry.setAttribute("keyword", "Software");
        entry.setAttribute("value", Drawing.OURS);
        IIOMetadataNode texts = new IIOMetadataNode("tEXt");
        texts.appendChild(entry);
        IIOMetadataNode root = new IIOMetadataNode(METADATA);
        root.appendChild(texts);
        metadata.mergeTree(METADATA, root);
        ByteArrayOutputStream octets = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(octets)) {
            writer.setOutput(stream);
            writer.write(new IIOImage(image, null, metadata));
        } finally {
            writer.dispose();
        }
        return octets.toByteArray();
    }
}
