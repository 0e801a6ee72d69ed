package foretress.seal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** A key that seals papers, with the certificate by which anybody can check the seal. */
record SealingKey(PrivateKey secret, X509Certificate certificate) {
    private static final String ALIAS = "seal";
    /** ECDSA on the curve P-256 with SHA-256: FIPS 186-5 and ETSI TS 119 312 both take it. */
    static final String ALGORITHM = "SHA256withECDSA";
    private static final int YEARS = 20;
    private static final int SERIAL_BITS = 128;

    /** A new key whose certificate nobody but itself has signed. */
    static SealingKey make(String salon, Instant now) {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"));
            KeyPair pair = generator.generateKeyPair();
            X500Name name = new X500NameBuilder(BCStyle.INSTANCE).addRDN(BCStyle.CN, salon).build();
            var builder = new JcaX509v3CertificateBuilder(name, new BigInteger(SERIAL_BITS, new SecureRandom()),
                Date.from(now), Date.from(now.atZone(ZoneOffset.UTC).plusYears(YEARS).toInstant()), name,
                pair.getPublic());
            builder.addExtension(Extension.keyUsage, true,
                new KeyUsage(KeyUsage.digitalSignature | KeyUsage.nonRepudiation));
            return new SealingKey(pair.getPrivate(), new JcaX509CertificateConverter()
                .getCertificate(builder.build(new JcaContentSignerBuilder(ALGORITHM).build(pair.getPrivate()))));
        } catch (GeneralSecurityException | OperatorException | IOException e) {
            throw new IllegalStateException("no sealing key can be made", e);
        }
    }

    /** As a PKCS#12 store (RFC 7292) under the passphrase. */
    byte[] stored(char[] passphrase) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry(ALIAS, secret, passphrase, List.of(certificate).toArray(X509Certificate[]::new));
            var bytes = new ByteArrayOutputStream();
            store.store(bytes, passphrase);
            return bytes.toByteArray();
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException("the sealing key cannot be stored", e);
        }
    }

    /** @throws GeneralSecurityException when that is not its passphrase, or it is damaged */
    static SealingKey opened(byte[] stored, char[] passphrase) throws GeneralSecurityException {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(stored), passphrase);
            return new SealingKey((PrivateKey) store.getKey(ALIAS, passphrase),
                (X509Certificate) store.getCertificate(ALIAS));
        } catch (IOException e) {
            throw new GeneralSecurityException("the sealing key does not open", e);
        }
    }
}
