package org.borewright.page.card;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads codes back, as a telephone does that is held over a card. */
final class CodeReader {

    /** To a module. */
    static final int DOTS = 4;

    private static final Pattern RUN = Pattern.compile("M([0-9]+) ([0-9]+)h([0-9]+)v1h-([0-9]+)z");

    private CodeReader() {}

    /** What the code in an image says. */
    static String read(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] dots = image.getRGB(0, 0, width, height, null, 0, width);
        try {
            return new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots))))
                    .getText();
        } catch (NotFoundException none) {
            return "no code";
        } catch (ReaderException broken) {
            return "broken: " + broken;
        }
    }

    /** The picture that the path of a page draws; every piece of it must be a run of modules. */
    static BufferedImage drawn(String path, int size) {
        BufferedImage image = new BufferedImage(size * DOTS, size * DOTS, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, image.getWidth(), image.getHeight());
        pen.setColor(Color.BLACK);
        Matcher runs = RUN.matcher(path);
        int end = 0;
        while (runs.find()) {
            if (runs.start() != end || !runs.group(3).equals(runs.group(4))) {
                throw new IllegalArgumentException(path.substring(end));
            }
            end = runs.end();
            MatchResult run = runs.toMatchResult();
            pen.fillRect(
                    Integer.parseInt(run.group(1)) * DOTS,
                    Integer.parseInt(run.group(2)) * DOTS,
                    Integer.parseInt(run.group(3)) * DOTS,
                    DOTS);
        }
        pen.dispose();
        return image;
    }
}
