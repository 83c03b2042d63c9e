using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>A certificate for this machine's loopback address that nobody else vouches for.</summary>
internal static class OwnCertificate
{
    public static void Write(string file, string password)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=127.0.0.1", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddIpAddress(IPAddress.Loopback);
        request.CertificateExtensions.Add(names.Build());
        var now = TimeProvider.System.GetUtcNow();
        using var certificate = request.CreateSelfSigned(now.AddDays(-1), now.AddDays(1));
        File.WriteAllBytes(file, certificate.Export(X509ContentType.Pfx, password));
    }
}
