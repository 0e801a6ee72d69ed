package foretress.vault;

import com.google.crypto.tink.Aead;
import foretress.running.Hmac;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** A client's own data key, unwrapped: it seals what was said, and gives names to what must be told equal without being opened. */
final class DataKey {
    private static final Pattern PLACE = Pattern.compile("[a-z_]+\\.[a-z_0-9]+\\.\\S+");
    private static final Pattern COLUMN = Pattern.compile("[a-z_]+\\.[a-z_0-9]+");

    private final Aead aead;
    private final Hmac forCodes;

    DataKey(Aead aead, byte[] forCodes) {
        this.aead = aead;
        this.forCodes = new Hmac(forCodes);
    }

    String seal(String place, byte[] plain, SizeClass least) throws GeneralSecurityException {
        return SizeClass.MARK
            + Base64.getEncoder().encodeToString(aead.encrypt(SizeClass.fill(plain, least), bound(PLACE, place)));
    }

    byte[] open(String place, String sealed) throws GeneralSecurityException {
        boolean filled = sealed.startsWith(SizeClass.MARK);
        byte[] text = Base64.getDecoder().decode(filled ? sealed.substring(SizeClass.MARK.length()) : sealed);
        byte[] plain = aead.decrypt(text, bound(PLACE, place));
        return filled ? SizeClass.unfill(plain) : plain;
    }

    /** HMAC-SHA256 in 64 hexadecimal digits; the same bytes have another name in another column, and under another client's key. */
    String code(String column, byte[] plain) {
        return HexFormat.of().formatHex(forCodes.of(bound(COLUMN, column), new byte[1], plain));
    }

    private static byte[] bound(Pattern pattern, String where) {
        if (!pattern.matcher(where).matches()) {
            throw new IllegalStateException("a place is table.column.id and a column is table.column, not " + where);
        }
        return where.getBytes(StandardCharsets.UTF_8);
    }
}
