using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace TrimOut.Office.Running;

/// <summary>A certificate of one's own for a server, and the root that it is signed by: for a trial, where nobody else is asked to sign.</summary>
/// <param name="Root">The root, as PEM: what devices trust.</param>
/// <param name="Server">The server's certificate, as PEM.</param>
/// <param name="Key">The server's private key, as PEM.</param>
public sealed record OwnCertificate(string Root, string Server, string Key)
{
    /// <summary>Makes both. The root's private key is thrown away: it signs nothing else.</summary>
    /// <param name="host">The server's name or address.</param>
    /// <param name="now">The clock; they hold for ten years.</param>
    public static OwnCertificate For(string host, TimeProvider now)
    {
        var (from, to) = (now.GetUtcNow().AddDays(-1), now.GetUtcNow().AddYears(10));
        using var rootKey = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var rootAsked = new CertificateRequest("CN=TrimOut trial office", rootKey, HashAlgorithmName.SHA256);
        rootAsked.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, true, 0, true));
        rootAsked.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign, true));
        using var root = rootAsked.CreateSelfSigned(from, to);
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var asked = new CertificateRequest($"CN={host}", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        if (IPAddress.TryParse(host, out var address))
            names.AddIpAddress(address);
        else
            names.AddDnsName(host);
        asked.CertificateExtensions.Add(names.Build());
        asked.CertificateExtensions.Add(new X509BasicConstraintsExtension(false, false, 0, true));
        asked.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.1")], false));
        using var server = asked.Create(root, from, to, RandomNumberGenerator.GetBytes(16));
        return new OwnCertificate(root.ExportCertificatePem(), server.ExportCertificatePem(), key.ExportPkcs8PrivateKeyPem());
    }
}
