package org.borewright.page.card;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.EnumMap;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * A code (ISO/IEC 18004) that a telephone reads off the card, with the quiet zone of four modules that belongs to it. Level M is read with
 * up to 15 % of it under oil.
 *
 * @param size modules of a side, quiet zone and all
 * @param path the dark modules as the path of a picture, one module to the unit
 * @param png the same as an image, in Base64
 */
record Code(int size, String path, String png) {

    private static final int QUIET_ZONE = 4;
    private static final int DOTS_TO_A_MODULE = 8;
    private static final int WHITE = 0xFFFFFF;

    /** The code that says a text, as an address. */
    static Code of(String said) {
        BitMatrix modules = modules(said);
        return new Code(modules.getWidth(), path(modules), png(modules));
    }

    private static BitMatrix modules(String said) {
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        hints.put(EncodeHintType.MARGIN, QUIET_ZONE);
        hints.put(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name());
        hints.put(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M);
        try {
            return new QRCodeWriter().encode(said, BarcodeFormat.QR_CODE, 0, 0, hints);
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no code holds an address of " + said.length() + " characters", tooLong);
        }
    }

    /** Each run of dark modules in a row is one piece. */
    private static String path(BitMatrix modules) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int from = 0;
            while (from < modules.getWidth()) {
                int to = from;
                while (to < modules.getWidth() && modules.get(to, y)) {
                    to++;
                }
                if (to > from) {
                    path.append('M')
                            .append(from)
                            .append(' ')
                            .append(y)
                            .append('h')
                            .append(to - from);
                    path.append("v1h-").append(to - from).append('z');
                }
                from = to + 1;
            }
        }
        return path.toString();
    }

    private static String png(BitMatrix modules) {
        int side = modules.getWidth() * DOTS_TO_A_MODULE;
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_BINARY);
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                image.setRGB(x, y, modules.get(x / DOTS_TO_A_MODULE, y / DOTS_TO_A_MODULE) ? 0 : WHITE);
            }
        }
        try (ByteArrayOutputStream file = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", file);
            return Base64.getEncoder().encodeToString(file.toByteArray());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
