package foretress.seal;

import com.lowagie.text.pdf.AcroFields;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import foretress.knowledge.Sha256;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.cert.X509Certificate;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.ASN1InputStream;
import org.bouncycastle.asn1.ASN1Primitive;
import org.bouncycastle.asn1.DERNull;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.CMSObjectIdentifiers;
import org.bouncycastle.asn1.cms.ContentInfo;
import org.bouncycastle.asn1.cms.IssuerAndSerialNumber;
import org.bouncycastle.asn1.cms.SignedData;
import org.bouncycastle.asn1.cms.SignerIdentifier;
import org.bouncycastle.asn1.cms.SignerInfo;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.nist.NISTObjectIdentifiers;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.asn1.x9.X9ObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorException;

/**
 * Says what became of a sealed paper, more strictly than a viewer does: published attacks on signed PDF files (pdf-insecurity.org, 2018 to
 * 2021) live on what a viewer forgives. One seal, of the kind {@link PaperSeal} puts, over every byte of the file but its own signature.
 */
public final class SealCheck {
    /** What a file is. */
    public enum Verdict {
        /** Sealed with one of the salon's keys, and not a byte is other than it was then. */
        UNCHANGED,
        /** Sealed with one of the salon's keys and whole up to the end of the seal; more was written behind it. */
        ADDED_TO,
        /** It carries the salon's seal, or parts of one, and is not as it was sealed. */
        CHANGED,
        /** A whole seal, by a key that is not the salon's. */
        OTHER_SEAL,
        /** Nothing is sealed in it. */
        NOT_SEALED,
        /** Not a PDF file that can be read. */
        UNREADABLE
    }

    private static final String SUB_FILTER = "ETSI.CAdES.detached";
    /** Either way of writing it (RFC 5754). */
    private static final List<AlgorithmIdentifier> SHA_256 =
        List.of(new AlgorithmIdentifier(NISTObjectIdentifiers.id_sha256),
            new AlgorithmIdentifier(NISTObjectIdentifiers.id_sha256, DERNull.INSTANCE));
    private static final AlgorithmIdentifier ECDSA = new AlgorithmIdentifier(X9ObjectIdentifiers.ecdsa_with_SHA256);

    private static final Pattern RANGE =
        Pattern.compile("/ByteRange ?\\[ ?0 \\d{1,10} (\\d{1,10}) (\\d{1,10}) *]");

    private final byte[] file;
    private final Collection<X509Certificate> salon;

    private SealCheck(byte[] file, Collection<X509Certificate> salon) {
        this.file = file;
        this.salon = salon;
    }

    /** @param salon the certificates of every key the salon has had */
    public static Verdict of(byte[] file, Collection<X509Certificate> salon) {
        Verdict verdict = new SealCheck(file, salon).verdict();
        return verdict == Verdict.CHANGED && withoutTail(file)
            .filter(sealed -> new SealCheck(sealed, salon).verdict() == Verdict.UNCHANGED).isPresent()
                ? Verdict.ADDED_TO
                : verdict;
    }

    /** The file up to where its first seal says that it ends; empty where it ends there, or says nothing. */
    private static Optional<byte[]> withoutTail(byte[] file) {
        Matcher range = RANGE.matcher(new String(file, StandardCharsets.ISO_8859_1));
        if (!range.find()) {
            return Optional.empty();
        }
        long end = Long.parseLong(range.group(1)) + Long.parseLong(range.group(2));
        return end < file.length ? Optional.of(Arrays.copyOf(file, (int) end)) : Optional.empty();
    }

    private Verdict verdict() {
        if (!startsWith("%PDF-")) {
            return Verdict.UNREADABLE;
        }
        boolean marked = new String(file, StandardCharsets.ISO_8859_1).contains("/ByteRange");
        try {
            AcroFields fields = new PdfReader(file).getAcroFields();
            List<String> names = List.copyOf(fields.getSignedFieldNames());
            if (names.isEmpty()) {
                return marked ? Verdict.CHANGED : Verdict.NOT_SEALED;
            }
            return names.size() == 1 && fields.getTotalRevisions() == 1
                && fields.signatureCoversWholeDocument(names.get(0))
                    ? sealed(fields.getSignatureDictionary(names.get(0)))
                    : Verdict.CHANGED;
        } catch (Exception unreadable) {
            return marked ? Verdict.CHANGED : Verdict.UNREADABLE;
        }
    }

    private Verdict sealed(PdfDictionary entry) throws Exception {
        Optional<int[]> gap = gap(entry.getAsArray(PdfName.BYTERANGE));
        if (!SUB_FILTER.equals(PdfName.decodeName(String.valueOf(entry.getAsName(PdfName.SUBFILTER))))
            || gap.isEmpty()) {
            return Verdict.CHANGED;
        }
        byte[] padded = HexFormat.of().parseHex(
            new String(file, gap.get()[0] + 1, gap.get()[1] - gap.get()[0] - 2, StandardCharsets.ISO_8859_1));
        byte[] signature;
        try (var in = new ASN1InputStream(padded)) {
            ASN1Primitive first = in.readObject();
            signature = Arrays.copyOf(padded, first.getEncoded().length);
            if (!Arrays.equals(signature, first.getEncoded()) || !isZero(padded, signature.length)
                || !isWritten(padded, gap.get()[0] + 1)) {
                return Verdict.CHANGED;
            }
        }
        return signed(new CMSSignedData(new CMSProcessableByteArray(covered(gap.get())), signature));
    }

    /** Where the signature stands, brackets included: everything before and after it is covered, and nothing twice. */
    private Optional<int[]> gap(PdfArray range) {
        if (range == null || range.size() != 4) {
            return Optional.empty();
        }
        int[] at = new int[4];
        for (int i = 0; i < 4; i++) {
            at[i] = range.getAsNumber(i).intValue();
        }
        boolean whole =
            at[0] == 0 && at[1] > 0 && at[2] - at[1] == PaperSeal.ROOM * 2 + 2 && at[2] + at[3] == file.length
                && file[at[1]] == '<' && file[at[2] - 1] == '>';
        return whole ? Optional.of(new int[] { at[1], at[2] }) : Optional.empty();
    }

    /** The digits are the very ones that are written for these bytes: a letter in the other case is a change, too. */
    private boolean isWritten(byte[] bytes, int from) {
        String digits = new String(file, from, bytes.length * 2, StandardCharsets.ISO_8859_1);
        return digits.equals(HexFormat.of().formatHex(bytes));
    }

    private static boolean isZero(byte[] bytes, int from) {
        for (int i = from; i < bytes.length; i++) {
            if (bytes[i] != 0) {
                return false;
            }
        }
        return true;
    }

    private byte[] covered(int[] gap) {
        var covered = new ByteArrayOutputStream(file.length);
        covered.write(file, 0, gap[0]);
        covered.write(file, gap[1], file.length - gap[1]);
        return covered.toByteArray();
    }

    private Verdict signed(CMSSignedData signature) throws Exception {
        List<SignerInformation> signers = List.copyOf(signature.getSignerInfos().getSigners());
        List<X509CertificateHolder> carried = List.copyOf(signature.getCertificates().getMatches(null));
        if (signers.size() != 1 || carried.size() != 1 || !isOfOurForm(signature, signers.get(0), carried.get(0))
            || !verifies(signers.get(0), carried.get(0))) {
            return Verdict.CHANGED;
        }
        byte[] by = carried.get(0).getEncoded();
        for (X509Certificate known : salon) {
            if (Arrays.equals(known.getEncoded(), by)) {
                return Verdict.UNCHANGED;
            }
        }
        return Verdict.OTHER_SEAL;
    }

    /** Written anew from its signed parts it is the same, byte for byte: nothing a signature does not cover can be other than we write it. */
    private static boolean isOfOurForm(CMSSignedData signature, SignerInformation signer, X509CertificateHolder by)
        throws IOException {
        AlgorithmIdentifier digest = signer.toASN1Structure().getDigestAlgorithm();
        var one = new SignerInfo(new SignerIdentifier(new IssuerAndSerialNumber(by.getIssuer(), by.getSerialNumber())),
            SHA_256.contains(digest) ? digest : SHA_256.get(0), signer.toASN1Structure().getAuthenticatedAttributes(),
            ECDSA, new DEROctetString(signer.getSignature()), null);
        var whole = new ContentInfo(CMSObjectIdentifiers.signedData,
            new SignedData(new DERSet(one.getDigestAlgorithm()), new ContentInfo(CMSObjectIdentifiers.data, null),
                new DERSet(by.toASN1Structure()), null, new DERSet(one)));
        return Arrays.equals(whole.getEncoded(ASN1Encoding.DER), signature.getEncoded());
    }

    private static boolean verifies(SignerInformation signer, X509CertificateHolder by) throws Exception {
        try {
            return signer.getSID().match(by) && namesItsCertificate(signer, by)
                && signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(by));
        } catch (CMSException | OperatorException wrong) {
            return false;
        }
    }

    private static boolean namesItsCertificate(SignerInformation signer, X509CertificateHolder by) throws Exception {
        Attribute named = signer.getSignedAttributes().get(PKCSObjectIdentifiers.id_aa_signingCertificateV2);
        byte[] print = HexFormat.of().parseHex(Sha256.of(by.getEncoded()));
        return named != null && Arrays.equals(print,
            SigningCertificateV2.getInstance(named.getAttributeValues()[0]).getCerts()[0].getCertHash());
    }

    private boolean startsWith(String start) {
        return new String(file, 0, Math.min(start.length(), file.length), StandardCharsets.ISO_8859_1).equals(start);
    }
}
