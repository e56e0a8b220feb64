package org.borewright.page.card;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Reads codes back, as a telephone does that is held over a card. */
final class CodeReader {

    /** To a module. */
    static final int DOTS = 4;

    /** By how many degrees it is turned, one look after the other. */
    private static final int[] LOOKS = {0, 4, -9};

    private static final Pattern RUN = Pattern.compile("M([0-9]+) ([0-9]+)h([0-9]+)v1h-([0-9]+)z");

    private CodeReader() {}

    /** What the code in an image says: held straight, and where a code is not made out so, as one in a hundred is, a little askew. */
    static String read(BufferedImage image) {
        return IntStream.of(LOOKS)
                .mapToObj(degrees -> look(degrees == 0 ? image : turned(image, degrees)))
                .reduce((before, now) -> before.isEmpty() ? now : before)
                .filter(read -> !read.isEmpty())
                .orElse("no code");
    }

    private static BufferedImage turned(BufferedImage image, int degrees) {
        int side = Math.max(image.getWidth(), image.getHeight()) * 5 / 4;
        BufferedImage turned = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = turned.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, side, side);
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.rotate(Math.toRadians(degrees), side / 2.0, side / 2.0);
        pen.drawImage(image, (side - image.getWidth()) / 2, (side - image.getHeight()) / 2, null);
        pen.dispose();
        return turned;
    }

    private static String look(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] dots = image.getRGB(0, 0, width, height, null, 0, width);
        try {
            return new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots))))
                    .getText();
        } catch (ReaderException notMadeOut) {
            return "";
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
