package soapstone.paper;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;
import soapstone.page.Html;

/** The number of a sheet as a square that a hand-held scanner reads and types. */
final class SheetCode {

    /** Around it stays white what a scanner needs; the margin of the sheet gives the rest. */
    private static final int QUIET = 2;

    private SheetCode() {}

    /**
     * As one path of a drawing, black on white.
     *
     * @param alt what it is, for whoever does not see it
     */
    static Html drawing(String number, String alt) {
        BitMatrix modules = modules(number);
        int side = modules.getWidth();
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                int from = x;
                while (x < side && modules.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append('M').append(from).append(' ').append(y).append('L').append(x).append(' ').append(y).append('L').append(x).append(' ').append(y + 1)
                            .append('L').append(from).append(' ').append(y + 1).append('Z');
                }
            }
        }
        return new Html("<svg class=\"code\" viewBox=\"0 0 " + side + " " + side + "\" alt=\"" + Drawn.escaped(alt) + "\"><g class=\"section\" fill=\"#000\"><path d=\"" + path
                + "\"/></g></svg>");
    }

    private static BitMatrix modules(String number) {
        try {
            return new QRCodeWriter().encode(number, BarcodeFormat.QR_CODE, 1, 1, Map.of(EncodeHintType.MARGIN, QUIET, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.Q));
        } catch (WriterException e) {
            throw new IllegalArgumentException("a sheet's number is short: " + number, e);
        }
    }
}
