package soapstone.school;

import java.io.ByteArrayOutputStream;
import java.util.Locale;

/** Bytes in capital letters and the digits 2 to 7, five bits each: RFC 4648, section 6, without the padding at the end. */
final class Base32 {

    private static final String SIGNS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    private static final int BITS = 5;

    private Base32() {}

    static String write(byte[] bytes) {
        StringBuilder out = new StringBuilder();
        int held = 0;
        int bits = 0;
        for (byte b : bytes) {
            held = (held << Byte.SIZE | b & 0xff) & 0xfff;
            for (bits += Byte.SIZE; bits >= BITS; bits -= BITS) {
                out.append(SIGNS.charAt(held >> bits - BITS & 0x1f));
            }
        }
        return bits == 0 ? out.toString() : out.append(SIGNS.charAt(held << BITS - bits & 0x1f)).toString();
    }

    /** @throws IllegalArgumentException if a sign is none of Base32; small letters and gaps are read */
    static byte[] read(String text) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int held = 0;
        int bits = 0;
        for (char sign : text.replaceAll("[\\s=]", "").toUpperCase(Locale.ROOT).toCharArray()) {
            int value = SIGNS.indexOf(sign);
            if (value < 0) {
                throw new IllegalArgumentException("Base32 has the letters A to Z and the digits 2 to 7, not another sign");
            }
            held = (held << BITS | value) & 0xfff;
            bits += BITS;
            if (bits >= Byte.SIZE) {
                bits -= Byte.SIZE;
                out.write(held >> bits);
            }
        }
        return out.toByteArray();
    }
}
