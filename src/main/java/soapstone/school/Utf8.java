package soapstone.school;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Bytes read as UTF-8 (RFC 3629), or where they are not.
 *
 * @param text  what was read
 * @param line  of the first byte that does not fit, from 1; 0 when all fit
 * @param found that byte, such as {@code 0xE9}, or the two bytes that begin UTF-16
 */
record Utf8(String text, int line, String found) {

    boolean isRight() {
        return line == 0;
    }

    static Utf8 of(byte[] bytes) {
        if (isUtf16(bytes)) {
            return new Utf8("", 1, String.format("0x%02X 0x%02X", bytes[0], bytes[1]));
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(in, out, true);
        String text = out.flip().toString();
        if (result.isUnderflow()) {
            return new Utf8(text, 0, "");
        }
        return new Utf8(text, 1 + (int) text.chars().filter(c -> c == '\n').count(), String.format("0x%02X", bytes[in.position()]));
    }

    private static boolean isUtf16(byte[] bytes) {
        return bytes.length > 1 && (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE || bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF);
    }
}
