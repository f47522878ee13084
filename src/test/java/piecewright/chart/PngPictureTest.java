package piecewright.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;

/** Read back by the JDK's own reader of PNG. */
class PngPictureTest {
    private static String svg() {
        Drawing pen = new Drawing(new Markup()).begin(100, 50, "title", "description");
        pen.line(new Spot(10, 10), new Spot(90, 10), Stroke.of("#AD2A56", 4));
        pen.words(10, 40, "Malt <b>", Letters.PLAIN.sized(14));
        pen.end();
        return pen.markup().written();
    }

    @Test
    void linesAndLettersStandWhereTheSvgHasThemTwoDotsToAUnit() throws IOException, UndrawableException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngPicture.of(svg())));
        assertEquals(200, image.getWidth());
        assertEquals(100, image.getHeight());
        assertEquals(0xAD2A56, image.getRGB(100, 20) & 0xFFFFFF);
        assertEquals(0xFFFFFF, image.getRGB(100, 40) & 0xFFFFFF);
        int dark = 0;
        for (int x = 20; x < 120; x++) for (int y = 56; y < 84; y++) if ((image.getRGB(x, y) & 0xFF) < 90) dark++;
        assertTrue(dark > 100, "letters must be drawn: " + dark);
    }

    @Test
    void itCarriesOurMarkAndIsTheSameEachTime() throws UndrawableException {
        byte[] first = PngPicture.of(svg());
        assertTrue(new String(first, 0, 400, StandardCharsets.ISO_8859_1).contains(Drawing.OURS));
        assertArrayEquals(first, PngPicture.of(svg()));
    }
}
