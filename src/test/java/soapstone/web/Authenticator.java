package soapstone.web;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.time.Instant;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** The app on somebody's phone: codes after RFC 6238, written from the standard and not with the site's own code. */
final class Authenticator {

    private static final String BASE_32 = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

    private Authenticator() {}

    /** @param secret 32 signs of Base32, which are 20 bytes */
    static String code(String secret, Instant now) throws Exception {
        BigInteger bits = BigInteger.ZERO;
        for (char sign : secret.toCharArray()) {
            bits = bits.shiftLeft(5).or(BigInteger.valueOf(BASE_32.indexOf(sign)));
        }
        byte[] key = new byte[20];
        for (int i = 0; i < key.length; i++) {
            key[i] = bits.shiftRight(8 * (key.length - 1 - i)).byteValue();
        }
        Mac mac = Mac.getInstance("HmacSHA1");
        mac.init(new SecretKeySpec(key, "HmacSHA1"));
        byte[] hash = mac.doFinal(ByteBuffer.allocate(8).putLong(now.getEpochSecond() / 30).array());
        int code = ByteBuffer.wrap(hash).getInt(hash[19] & 0xf) & Integer.MAX_VALUE;
        return String.format("%06d", code % 1_000_000);
    }
}
