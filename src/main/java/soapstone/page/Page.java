package soapstone.page;

import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A whole page as it goes over the wire, in UTF-8. */
public final class Page {

    private static final int USUAL = 16 * 1024;

    private final byte[] bytes;

    private Page(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The page in UTF-8; not to be changed. */
    public byte[] bytes() {
        return bytes;
    }

    /** The page as text. */
    @Override
    public String toString() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /**
     * Takes a page piece by piece. Each piece is turned into bytes as it comes: nearly all are plain ASCII, which costs no
     * more than a copy, where a whole page with one fraction or dash in it would have to be turned sign by sign.
     */
    static final class Sink extends Writer {

        private byte[] bytes = new byte[USUAL];
        private int length;

        Page page() {
            return new Page(Arrays.copyOf(bytes, length));
        }

        @Override
        public void write(char[] signs, int from, int count) {
            room(count);
            int at = length;
            for (int i = from; i < from + count; i++) {
                char c = signs[i];
                if (c >= 0x80) {
                    append(new String(signs, from, count));
                    return;
                }
                bytes[at++] = (byte) c;
            }
            length = at;
        }

        @Override
        public void write(String text, int from, int count) {
            append(count == text.length() ? text : text.substring(from, from + count));
        }

        @Override
        public void write(int sign) {
            append(String.valueOf((char) sign));
        }

        private void append(String text) {
            byte[] more = text.getBytes(StandardCharsets.UTF_8);
            room(more.length);
            System.arraycopy(more, 0, bytes, length, more.length);
            length += more.length;
        }

        private void room(int more) {
            if (length + more > bytes.length) {
                bytes = Arrays.copyOf(bytes, Math.max(length + more, 2 * bytes.length));
            }
        }

        @Override
        public void flush() {
            // The bytes are where they belong.
        }

        @Override
        public void close() {
            // Nothing is held open.
        }
    }
}
