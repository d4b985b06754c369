using System.Formats.Asn1;
using System.Net;
using System.Security.Cryptography.X509Certificates;

namespace Ashery.Web.Home;

/// <summary>
/// What an authority may speak for (RFC 5280, 4.2.1.10): a phone that trusts ours trusts it for the home network alone, so that a stolen key cannot
/// pretend to be a bank.
/// </summary>
internal static class NameConstraints
{
    private const string Oid = "2.5.29.30";

    private static readonly (string Network, int Bits)[] Networks =
        [("10.0.0.0", 8), ("172.16.0.0", 12), ("192.168.0.0", 16), ("127.0.0.0", 8), ("fc00::", 7), ("::1", 128)];

    public static X509Extension HomeOnly(IEnumerable<string> names)
    {
        var der = new AsnWriter(AsnEncodingRules.DER);
        using (der.PushSequence())
        using (der.PushSequence(new Asn1Tag(TagClass.ContextSpecific, 0)))
        {
            foreach (var name in names)
            {
                using (der.PushSequence())
                {
                    der.WriteCharacterString(UniversalTagNumber.IA5String, name, new Asn1Tag(TagClass.ContextSpecific, 2));
                }
            }

            foreach (var (network, bits) in Networks)
            {
                var address = IPAddress.Parse(network).GetAddressBytes();
                using (der.PushSequence())
                {
                    der.WriteOctetString([.. address, .. Mask(address.Length, bits)], new Asn1Tag(TagClass.ContextSpecific, 7));
                }
            }
        }

        return new X509Extension(Oid, der.Encode(), critical: true);
    }

    private static byte[] Mask(int bytes, int bits) =>
        [.. Enumerable.Range(0, bytes).Select(i => (byte)(0xff00 >> Math.Clamp(bits - (8 * i), 0, 8)))];
}
