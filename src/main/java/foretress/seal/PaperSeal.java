package foretress.seal;

import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfSignature;
import com.lowagie.text.pdf.PdfSignatureAppearance;
import com.lowagie.text.pdf.PdfStamper;
import com.lowagie.text.pdf.PdfString;
import foretress.knowledge.Sha256;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.bouncycastle.asn1.ASN1EncodableVector;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.DefaultSignedAttributeTableGenerator;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.OperatorException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;

/**
 * Puts the salon's seal on a paper: an electronic seal in the form of PAdES baseline B (ETSI EN 319 142-1), appended, so that the paper's
 * own bytes stay the beginning of the sealed ones. It proves that the file came from the holder of the key and has not changed since.
 */
final class PaperSeal {
    /** Bytes kept free for the signature; one of this kind takes about a thousand. */
    static final int ROOM = 4096;

    private PaperSeal() {}

    static byte[] put(byte[] paper, SealingKey key, Instant at) {
        try {
            var sealed = new ByteArrayOutputStream();
            PdfSignatureAppearance appearance =
                PdfStamper.createSignature(new PdfReader(paper), sealed, '\0', null, true).getSignatureAppearance();
            var entry = new PdfSignature(PdfName.ADOBE_PPKLITE, new PdfName("ETSI.CAdES.detached"));
            entry.setDate(
                new PdfDate(GregorianCalendar.from(at.truncatedTo(ChronoUnit.SECONDS).atZone(ZoneOffset.UTC))));
            appearance.setCryptoDictionary(entry);
            var room = new HashMap<PdfName, Integer>(Map.of(PdfName.CONTENTS, ROOM * 2 + 2));
            appearance.preClose(room);
            byte[] signature = signed(appearance.getRangeStream().readAllBytes(), key);
            var contents = new PdfDictionary();
            contents.put(PdfName.CONTENTS, new PdfString(Arrays.copyOf(signature, ROOM)).setHexWriting(true));
            appearance.close(contents);
            return sealed.toByteArray();
        } catch (IOException | GeneralSecurityException | CMSException | OperatorException e) {
            throw new IllegalStateException("the paper could not be sealed", e);
        }
    }

    /** A detached signature in CMS (RFC 5652) that names its certificate (RFC 5035); the time stands in the file, as the standard wants it. */
    private static byte[] signed(byte[] data, SealingKey key)
        throws GeneralSecurityException, CMSException, OperatorException, IOException {
        byte[] print = HexFormat.of().parseHex(Sha256.of(key.certificate().getEncoded()));
        var named = new ASN1EncodableVector();
        named.add(new Attribute(PKCSObjectIdentifiers.id_aa_signingCertificateV2,
            new DERSet(new SigningCertificateV2(List.of(new ESSCertIDv2(print)).toArray(ESSCertIDv2[]::new)))));
        var attributes = new DefaultSignedAttributeTableGenerator(new AttributeTable(named)) {
            @Override
            @SuppressWarnings("rawtypes")
            public AttributeTable getAttributes(Map parameters) {
                return super.getAttributes(parameters).remove(CMSAttributes.signingTime);
            }
        };
        var generator = new CMSSignedDataGenerator();
        generator.addSignerInfoGenerator(
            new JcaSignerInfoGeneratorBuilder(new JcaDigestCalculatorProviderBuilder().build())
                .setSignedAttributeGenerator(attributes)
                .build(new JcaContentSignerBuilder(SealingKey.ALGORITHM).build(key.secret()), key.certificate()));
        generator.addCertificates(new JcaCertStore(List.of(key.certificate())));
        return generator.generate(new CMSProcessableByteArray(data), false).toASN1Structure()
            .getEncoded(ASN1Encoding.DER);
    }
}
